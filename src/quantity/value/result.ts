// What a result is shown in: dimension of a sum, unit of a product, decimals of a difference, and which kinds never meet.
import { QuantityError } from "../error";
import { type Dimension, isNumber, sameExponents } from "./dimension";
import type { Node } from "./graph";
import { readUnit, type Unit, usualUnit } from "./unit";

/** @internal */
export const mismatch = (a: Dimension, b: Dimension, verb: string): QuantityError =>
  new QuantityError("quantity.wrong-dimension", `cannot ${verb} ${a.name} and ${b.name}`, {
    details: { expected: a.name, received: b.name },
  });

/** May the two be compared and shown as each other? A plain number may stand for any fraction; two kinds never meet. */
export const meets = (a: Dimension, b: Dimension): boolean =>
  a === b || (isNumber(a) && isNumber(b) && (a.kind === "" || b.kind === ""));

const isTemperature = (d: Dimension): boolean => d.name === "temperature";

/** Dimension of a sum or difference, with the rules for temperatures and fraction kinds. */
export function sumDimension(a: Dimension, b: Dimension, verb: "plus" | "minus"): Dimension {
  if (a === b) {
    if (!isTemperature(a)) return a;
    if (verb === "minus") return readUnit("ΔK").dimension;
    throw new QuantityError("quantity.wrong-dimension", "two temperatures cannot be added", {
      hint: "add a temperature difference, such as 5 Δ°C",
    });
  }
  if (sameExponents(a, b)) {
    if (isTemperature(a) && b.kind === "difference") return a;
    if (verb === "plus" && isTemperature(b) && a.kind === "difference") return b;
    if (isNumber(a) && (a.kind === "" || b.kind === "")) return a.kind === "" ? b : a;
  }
  throw mismatch(a, b, verb === "plus" ? "add" : "subtract");
}

/** Unit of a scaled value: a multiple of a temperature is counted from absolute zero, so it is shown in kelvin. */
export const plainUnit = (a: Node): Unit => (a.unit.offset.n === 0n ? a.unit : readUnit("K"));

/** Two figures written to as many decimals of one unit have a sum and a difference to as many: 24.40 - 0.10 is 24.30. */
export function commonDecimals(unit: Unit, nodes: readonly Node[]): number | undefined {
  const shared = nodes[0]?.decimals;
  const same = (node: Node): boolean =>
    node.decimals === shared && node.unit === unit && node.leaf?.variance === undefined;
  return unit.offset.n === 0n && nodes.every(same) ? shared : undefined;
}

/**
 * Unit to show a product or quotient in: the operand's own when the other is a pure number, the divisor's where it is what
 * results (10 mL × 25 mL / 100 mL), else the usual one.
 */
export function resultUnit(dimension: Dimension, a: Node, b: Node): Unit {
  if (dimension === a.dimension && isNumber(b.dimension)) return plainUnit(a);
  if (dimension === b.dimension && isNumber(a.dimension)) return plainUnit(b);
  return usualUnit(dimension);
}
