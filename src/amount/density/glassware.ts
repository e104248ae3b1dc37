// Volumes as measured: what the mark on a flask, pipette, burette or cylinder is worth.
import { type Fields, shown } from "../../foundation/argument";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { grouped, oneOf, positive, type TemperatureLike, type VolumeLike } from "../argument";
import { GLASSWARE, type GlasswareKind } from "../data/glassware";
import { cite } from "../data/sources";
import { AmountError } from "../error";

export const GLASS = {
  with: true,
  class: true,
  size: true,
  distribution: true,
  temperature: true,
} as const satisfies Fields<Glassware>;

export type { GlasswareKind } from "../data/glassware";

/** What a volume was measured with. */
export interface Glassware {
  /** Kind of vessel that the volume was measured with. */
  readonly with: GlasswareKind;
  /** Accuracy class; B unless given. */
  readonly class?: "A" | "B" | undefined;
  /** Nominal size of a burette or cylinder, where only part of it was used; the smallest that holds the volume unless given. */
  readonly size?: VolumeLike | undefined;
  /** How the tolerance is spread: rectangular unless given. */
  readonly distribution?: "rectangular" | "triangular" | undefined;
  /** Temperature of the liquid, if it was not 20 °C; water expands by 0.021 % for each kelvin. */
  readonly temperature?: TemperatureLike | undefined;
}

const PART_FILLED: ReadonlySet<GlasswareKind> = new Set(["burette", "measuring cylinder"]);

/** Water from 15 °C to 25 °C: 0.021 % for each kelvin, with the glass left out, which moves 20 times less. */
const EXPANSION = { value: "0.00021", halfWidth: "0.00005", unit: "K^-1" } as const;
const FARTHEST_KELVIN = 10;

/**
 * A volume as measured, with the tolerance of the glassware as its uncertainty.
 *
 * @param volume - nominal or read volume, > 0
 * @param glassware - what it was measured with, its class, and where needed its size and temperature
 * @returns the volume in mL with standard uncertainty: tolerance/√3, or /√6 if triangular
 * @throws {AmountError} `amount.glassware` for a size that is not made or a volume that is not a mark, `amount.not-positive`,
 *   `amount.outside-range` more than 10 K from 20 °C
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source ISO 1042, 648, 385, 4788 (tolerances from memory); JCGM 100:2008, 4.3.7 and 4.3.9 for the distributions
 * @category Solutions
 * @example
 * measuredVolume("250 mL", { with: "volumetric flask", class: "A" }).toString() // => "250.000 ± 0.087 mL"
 */
export function measuredVolume(volume: VolumeLike, glassware: Glassware): Quantity<"volume"> {
  const { with: kind, class: grade = "B", size, distribution = "rectangular", temperature } = grouped(glassware, GLASS);
  oneOf(grade, ["A", "B"], "accuracy class");
  oneOf(distribution, ["rectangular", "triangular"], "distribution of a tolerance");
  const V = positive(volume, "volume", "volume");
  const row = GLASSWARE.find((candidate) => candidate.kind === kind);
  if (row === undefined) {
    throw new AmountError("amount.glassware", `${shown(kind)} is not a kind of volumetric ware`, {
      hint: GLASSWARE.map((r) => r.kind).join(", "),
    });
  }
  const wanted = size === undefined ? V : positive(size, "volume", "size");
  const mL = wanted.in("mL");
  const part = PART_FILLED.has(kind) && size === undefined;
  const found = row.sizes.find(([nominal]) => (part ? mL.lessThanOrEqualTo(nominal) : mL.equals(nominal)));
  if (found === undefined || V.compare({ value: found[0], unit: "mL" }) > 0) {
    throw new AmountError("amount.glassware", `no ${kind} of ${wanted} is tabulated`, {
      hint: `sizes: ${row.sizes.map(([nominal]) => nominal).join(", ")} mL`,
      details: { kind, volume: String(wanted) },
    });
  }
  const [nominal, a, b] = found;
  const tolerance = grade === "A" ? a : b;
  const marked = quantity(
    { value: V.in("mL"), unit: "mL", halfWidth: tolerance, distribution },
    {
      symbol: V.symbol ?? "V",
      label: V.label === undefined || V.label === "volume" ? `${kind}, ${nominal} mL, class ${grade}` : V.label,
      source: cite(row.source),
    },
  );
  if (temperature === undefined) return marked;
  const away = expectDimension(temperature, "temperature", "temperature").minus("20 °C");
  if (Math.abs(away.toNumber("ΔK")) > FARTHEST_KELVIN) {
    throw new AmountError("amount.outside-range", "glassware is calculated within 10 K of 20 °C", {
      details: { quantity: "temperature", low: "10 °C", high: "30 °C" },
    });
  }
  const expansion = quantity(EXPANSION, {
    symbol: "β(H₂O)",
    label: "cubic expansion of water near 20 °C",
    source: cite("commonPractice"),
  });
  return marked
    .times(quantity("1").minus(expansion.times(away)))
    .named({ symbol: "V(20 °C)", rule: "volume at 20 °C = volume × (1 - β (T - 20 °C))" });
}
