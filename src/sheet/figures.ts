// Figures for paper: as many digits as a hand can use, in units it can measure.
import { tryParseFormula } from "../formula";
import { memoised } from "../foundation/memo";
import { capital } from "../foundation/wording";
import type { Quantity } from "../quantity";

const FIGURES = 3;

/** A value to so many figures, without uncertainty. */
export function about(q: Quantity, unit?: string, figures: number = FIGURES): string {
  const shown = unit === undefined ? q : q.to(unit);
  const { value } = shown;
  const magnitude = value.isZero() ? 0 : value.e;
  return magnitude >= figures
    ? shown.format({ decimals: figures - 1 - magnitude, uncertainty: "none" })
    : shown.format({ significant: figures });
}

/** Volumes in mL or L, masses in g or kg, whichever a person would say. */
export function handy(q: Quantity, figures: number = FIGURES): string {
  if (q.dimension === "volume") return about(q, q.in("L").greaterThanOrEqualTo(1) ? "L" : "mL", figures);
  if (q.dimension === "mass") return about(q, q.in("kg").greaterThanOrEqualTo(10) ? "kg" : "g", figures);
  return about(q, undefined, figures);
}

const NOTHING = / ± 0(?:\.0+)?(?= |$)/;

/** A value with its uncertainty, to so many decimals; without it where it is less than they show. */
export function withUncertainty(q: Quantity, decimals: number): string {
  return q.format({ decimals, uncertainty: "plus-minus" }).replace(NOTHING, "");
}

/** A share in percent with its uncertainty. */
export const shareWithUncertainty = (q: Quantity): string => withUncertainty(q.to("%"), 1);

/** A formula as printed, where the text is one. */
export const pretty = /* @__PURE__ */ memoised(300, (text): string => {
  const formula = tryParseFormula(text);
  return formula.ok ? formula.value.toUnicode() : text;
});

/** A remark as a sentence, whatever it begins with. */
export const sentence = (text: string): string => `${capital(text)}.`;

/** The size of a vessel, without zeros after the point. */
export const sizeOf = (q: Quantity): string =>
  handy(q).replace(/(\.\d*?)0+(?= )/, (_, digits: string) => (digits === "." ? "" : digits));
