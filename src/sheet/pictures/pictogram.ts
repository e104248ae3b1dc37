// The nine pictograms of the Globally Harmonized System, drawn anew after the shapes of its Annex 1 (open United Nations
// standard): a red diamond with a black figure.
import { inMarkup } from "../../foundation/printed";

const FIGURES: Readonly<Record<string, string>> = {
  // exploding bomb
  GHS01:
    '<circle cx="46" cy="60" r="14"/><path d="M55 47l6-8M63 30l3-9M70 36l9-4M69 44l9 4M58 27l-4-7"/><path d="M22 78l8-6M30 40l-8-5M64 74l10 4" />',
  // flame
  GHS02:
    '<path d="M50 22c4 14 18 18 14 36c-2 9-8 12-14 12s-13-4-14-13c-1-7 4-11 5-18c4 3 5 6 6 9c3-8 4-16 3-26z"/><path d="M32 76h36"/>',
  // flame over a circle
  GHS03:
    '<path d="M50 18c3 10 13 13 10 25c-1 6-5 8-10 8s-9-3-10-9c-1-5 3-8 4-13c3 2 3 4 4 6c2-5 3-11 2-17z"/><circle cx="50" cy="64" r="11" fill="none"/><path d="M34 80h32"/>',
  // gas cylinder
  GHS04: '<path d="M24 58l40-18c4-2 8-1 10 3s0 8-4 10L30 71c-3 1-6 0-8-5s0-7 2-8z"/><path d="M22 62l-6 3" />',
  // liquids on a bar and a hand
  GHS05:
    '<path d="M26 36l18-12l4 6l-18 12z" fill="#fff"/><path d="M74 36L56 24l-4 6l18 12z" fill="#fff"/><path d="M29 47v3M29 55v3M71 47v3M71 55v3"/><path d="M18 66h9l2-4l3 4h14v5H18z"/><path d="M53 71c3-6 9-7 14-6l4-4l4 5l8 2v7H53z"/>',
  // skull and crossbones
  GHS06:
    '<path d="M50 24c11 0 17 8 17 16c0 6-3 9-6 11v7H39v-7c-3-2-6-5-6-11c0-8 6-16 17-16z"/><circle cx="43" cy="41" r="4" fill="#fff" stroke="none"/><circle cx="57" cy="41" r="4" fill="#fff" stroke="none"/><path d="M30 62l40 14M70 62L30 76" />',
  // exclamation mark
  GHS07: '<path d="M45 24h10l-3 34h-4z"/><circle cx="50" cy="70" r="5.5"/>',
  // starburst on a chest
  GHS08:
    '<circle cx="50" cy="28" r="8"/><path d="M28 76c0-22 6-36 22-36s22 14 22 36z"/><path d="M50 46l3 8l8-3l-4 7l8 4l-8 3l4 8l-8-3l-3 8l-3-8l-8 3l4-8l-8-3l8-4l-4-7l8 3z" fill="#fff" stroke="none"/>',
  // dead tree and fish
  GHS09:
    '<path d="M20 70h60" /><path d="M36 70V36M36 52l-9-9M36 47l9-10M36 58l10-7" /><path d="M50 62c8-9 18-9 24 0c-6 8-16 8-24 0zM74 62l7-6v12z"/>',
};

/**
 * A pictogram as SVG; empty text for a code that has none.
 *
 * @internal
 */
export function pictogram(code: string, name: string): string {
  const figure = FIGURES[code];
  if (figure === undefined) return "";
  return `<svg class="pictogram" viewBox="0 0 100 100" width="42" height="42" role="img" aria-label="${inMarkup(`${code} ${name}`)}"><path d="M50 3L97 50L50 97L3 50Z" fill="#fff" stroke="#c8102e" stroke-width="6"/><g fill="#000" stroke="#000" stroke-width="3.4" stroke-linecap="round" stroke-linejoin="round">${figure}</g></svg>`;
}
