// Reactions that differ only in ions which are washed out.
import type { Candidate } from "./candidates";
import type { Compound } from "./compound";
import { BASIC } from "./kinds";

/** A reaction by the ions that its product takes. */
export function likeness(
  { family, product, feeds }: Candidate,
  isNamed: (feed: Compound) => boolean = () => false,
): string {
  const own = new Set([...product.made.cations, ...product.made.anions].map(({ formula }) => formula));
  const names = feeds.map((feed) => {
    if (isNamed(feed)) return feed.key;
    if (feed.made.kind === "element" || feed.made.molecules.length > 0) return feed.key;
    const ions = [...feed.made.cations, ...feed.made.anions]
      .map(({ formula }) => formula)
      .filter((ion) => own.has(ion) || BASIC.has(ion));
    return ions.length === 0 ? "*" : ions.sort().join(" ");
  });
  return `${family.code} ${product.key} < ${names.join(" | ")}`;
}
