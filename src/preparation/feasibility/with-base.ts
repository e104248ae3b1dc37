// How much of a base brings the rest of a product out of a liquor that acid keeps it in, and at which pH to stop: by the equilibrium,
// short of where anything else precipitates.
import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { type Poured, settled } from "../contents/equilibrium";
import { BASE_SEARCH, BASES_FOR_ACID, type BaseForAcidRow } from "../data/base-for-acid";
import { exact } from "../planning/exact";
import { fateOf } from "../reaction/fate";
import { type Beaker, isKnown, ratio, unitsIn } from "./beaker";
import { phaseFormula } from "./standing";

/** A liquor, and what should come out of it. */
interface Sour {
  readonly pot: Poured;
  readonly celsius: number;
  /** The product in components, and how much of it can come for each kilogram of water, mol. */
  readonly of: ReadonlyMap<string, number>;
  readonly theory: number;
}

/** So much of a base for each kilogram of water, what paper then shows, and what stands. */
interface WithBase {
  readonly moles: number;
  readonly pH: number;
  /** Part of the theory that stands with it. */
  readonly share: number;
}

/** The base of the shelf that brings no strange ion to a product. */
export function baseOfShelfFor(product: Formula): BaseForAcidRow {
  const { cations } = constitutionOf(product);
  return BASES_FOR_ACID.find(
    ({ cation }) => cation === undefined || cations.some(({ formula }) => formula === cation),
  )!;
}

const fraction = (text: string): number => exact(text).toNumber("");

/** Does a solid stand that is not the product, was none before the base came, and that no washing takes out? */
function isSpoilt({ of, celsius }: Sour, before: Beaker, beaker: Beaker): boolean {
  const at = exact(`${celsius} °C`) as Parameters<typeof fateOf>[1];
  return beaker.solids.some(
    ({ phase }) =>
      ratio(phase.of, of) === undefined &&
      !before.solids.some((one) => one.phase === phase) &&
      fateOf(phaseFormula(phase), at).precipitated !== false,
  );
}

/** Least of a base that brings nearly all out that it can, up to `most` mol; undefined where it brings hardly any, or nothing is known. */
export function withBase(sour: Sour, base: Formula, most: number): WithBase | undefined {
  const { pot, celsius, of, theory } = sour;
  if (!isKnown(base) || !(most > 0) || !(theory > 0)) return undefined;
  const { steps, nearly, worth } = BASE_SEARCH;
  const fizzed = { ...pot.fizzed, keeping: "leaves" as const };
  const at = (moles: number, near: Beaker | undefined): Beaker | undefined =>
    settled([...pot.pours, { formula: base, moles }], celsius, fizzed, { solids: "fresh", near });
  const before = settled(pot.pours, celsius, pot.fizzed);
  if (before === undefined) return undefined;
  const found: WithBase[] = [];
  let near: Beaker | undefined;
  for (let step = 1; step <= steps; step += 1) {
    const moles = (most * step) / steps;
    const beaker = at(moles, near);
    if (beaker === undefined || isSpoilt(sour, before, beaker)) break;
    near = beaker;
    found.push({ moles, pH: beaker.pH, share: Math.min(1, unitsIn(beaker, of) / theory) });
  }
  const best = Math.max(0, ...found.map(({ share }) => share));
  if (best - Math.min(1, unitsIn(before, of) / theory) < fraction(worth)) return undefined;
  return found.find(({ share }) => share >= best - fraction(nearly));
}
