// Why a product does not fall wholly: carbon dioxide, acid set free, an excess, age, a solid that it must come from, another one.
import type { Phase } from "../../aqueous/internal";
import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { saltConversion } from "../../solubility";
import type { Poured } from "../contents/equilibrium";
import { BASE_SEARCH } from "../data/base-for-acid";
import { protonsOf } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { type Beaker, componentsOf, printed, ratio, type Standing, unitsIn } from "./beaker";
import type { Case } from "./case";
import type { Figure, Reason } from "./feasibility";
import { type Beakers, beakerOf, brief, gramsOf, percent, withoutExcess } from "./pot";
import {
  type Composition,
  conditions,
  figure,
  isCation,
  isSoluble,
  NOTHING,
  phaseFormula,
  solidsListed,
} from "./standing";
import { baseOfShelfFor, withBase } from "./with-base";

/** Two shares are told apart from this difference on. */
export const DIFFERS = 0.02;
/** The product and what it may be called in a sentence. */
export interface Wanted {
  readonly c: Case;
  readonly of: Composition;
  readonly isIt: (phase: Phase) => boolean;
  readonly pot: Poured;
}

/** Is a standing solid one that was put in? */
export const putInAs = ({ c }: Wanted, phase: Phase): boolean =>
  c.put.some(({ species }) => {
    const of = componentsOf(species.formula);
    return (
      of !== undefined &&
      ratio(phase.of, of) !== undefined &&
      fateOf(species.formula, c.setting.temperature).precipitated === true
    );
  });

/** The share of a beaker as a figure. */
export const theory = (share: number): Figure => figure(share, "", "share of the theory that is solid");

/** How the carbon dioxide decides, where it does. */
export function carbonDioxideReasons(wanted: Wanted, { kept, gone, differs }: Beakers): Reason[] {
  if (!differs) return [];
  const [a, b] = [unitsIn(kept, wanted.of), unitsIn(gone, wanted.of)].map((n) => Math.min(1, n));
  const { name } = wanted.c.product.species;
  if (Math.abs(a! - b!) < DIFFERS) return [];
  return [
    {
      code: "carbon-dioxide-kept",
      text: `while the carbon dioxide stays: ${percent(a!)} of the ${name}, pH ${kept.pH.toFixed(1)}; ${solidsListed(kept)}`,
      figures: [theory(a!), ...conditions(kept)],
      source: "constants",
    },
    {
      code: "carbon-dioxide-gone",
      text: `once it has gone, by airing or boiling: ${percent(b!)} of the ${name}, pH ${gone.pH.toFixed(1)}; ${solidsListed(gone)}`,
      figures: [theory(b!), ...conditions(gone)],
      source: "constants",
    },
  ];
}

/** The base of the shelf that takes the acid which is set free, and how far that brings it; undefined where it helps little. */
function baseAgainst({ c, of, pot }: Wanted, { moles, species }: Case["made"][number]): Reason["base"] {
  const { formula } = c.product.species;
  const row = baseOfShelfFor(formula);
  const most = (moles * Number(protonsOf(species.formula))) / c.water;
  const found = withBase({ pot, celsius: c.celsius, of, theory: 1 / c.water }, parseFormula(row.formula), most);
  return found && { ...found, formula: row.formula, called: row.called, moles: found.moles * c.water };
}

/** Why not all of it precipitates. */
export function heldBack(wanted: Wanted, beaker: Beaker, share: number): Reason[] {
  const { c, of } = wanted;
  const reasons: Reason[] = [];
  if (c.put.some(({ left, species }) => left > 0 && !species.isWater)) {
    const without = beakerOf(c, withoutExcess(c, wanted.pot), { solids: "fresh", near: beaker });
    const before = without === undefined ? 0 : Math.min(1, unitsIn(without, of));
    // a metal salt that is over makes another solid of it, a base or ligand takes it back
    const turned = foreign(wanted, beaker).some(({ phase }) =>
      [...of.keys()].some((key) => isCation(key) && phase.of.has(key)),
    );
    if (before - share > DIFFERS)
      reasons.push({
        code: turned ? "excess" : "redissolves",
        text: `${turned ? "the excess turns it into another solid" : "the excess redissolves it"}: without it ${percent(before)} stands, with it ${percent(share)}`,
        figures: [figure(before, "", "share that is solid without the excess"), theory(share)],
        source: "constants",
      });
  }
  const freed = c.made.find(({ made }) => made.acid !== undefined && made.kind === "acid");
  if (freed !== undefined && beaker.pH < Number(BASE_SEARCH.soursBelow))
    reasons.push({
      code: "acid-holds-back",
      text: `${freed.species.name} that is set free makes the liquor pH ${beaker.pH.toFixed(1)} and keeps ${percent(1 - share)} dissolved`,
      figures: [figure(1 - share, "", "share that the acid keeps"), figure(beaker.pH, "", "pH of the liquor")],
      base: baseAgainst(wanted, freed),
      source: "constants",
    });
  const aged = beakerOf(c, wanted.pot, { solids: "aged", near: beaker });
  const later = aged === undefined ? share : Math.min(1, unitsIn(aged, of));
  if (aged !== undefined && later - share > DIFFERS)
    reasons.push({
      code: "aged",
      text: `after standing ${percent(later)} of it is solid, pH ${aged.pH.toFixed(1)}`,
      figures: [figure(later, "", "share of the theory after standing"), ...conditions(aged)],
      source: "constants",
    });
  return reasons;
}

/** One sparingly soluble solid into another of the same cation: the constant and what it asks for. */
export function swapReason({ c }: Wanted): Reason[] {
  const falls = (one: Case["put"][number] | Case["made"][number]): boolean =>
    fateOf(one.species.formula, c.setting.temperature).precipitated === true;
  const from = c.put.find(
    (one) => falls(one) && one.made.cations.some((x) => c.product.made.cations.some((y) => x.formula === y.formula)),
  );
  if (from === undefined || from.made.kind !== "salt") return [];
  const found = attempt(() => saltConversion({ from: from.species.formula, to: c.product.species.formula }));
  if (!found.ok) return [];
  const K = found.value.equilibriumRatio.toNumber();
  const fold = 1 + 1 / K;
  return [
    {
      code: "solid-to-solid",
      text: `${from.species.name} into ${c.product.species.name}: ${found.value.ionFreed} over ${found.value.ionTaken} stops at ${brief(K)}${K < 10 ? `, so all of it asks for some ${brief(fold)} times the need, or fresh liquor again and again` : ""}`,
      figures: [figure(K, "", "equilibrium constant of the exchange"), figure(fold, "", "times the need")],
      source: "constants",
    },
  ];
}

/** Solids that are neither the product, nor put in, nor washed out. */
export const foreign = (wanted: Wanted, beaker: Beaker): Standing[] => {
  const soluble = isSoluble(wanted.c);
  return beaker.solids.filter(({ phase }) => !wanted.isIt(phase) && !putInAs(wanted, phase) && !soluble(phase));
};

/** A second solid in the product, in grams of each. */
export const mixedWith = (other: string, mass: number, product: string, own: number): string =>
  `${other} precipitates as well: ${brief(mass)} g beside ${brief(own)} g of ${product}, and no washing separates them`;

/** A solid beside the product, or in its place. */
export function besideReason({ c }: Wanted, { phase, moles }: Standing, share: number): Reason {
  const other = printed(phase);
  const mass = gramsOf(phaseFormula(phase), moles);
  const own = gramsOf(c.product.species.formula, share);
  return {
    code: share < NOTHING ? "another-solid" : "second-solid",
    text:
      share < NOTHING
        ? `${other} precipitates in place of ${c.product.species.name}: ${brief(mass)} g for one mole asked for`
        : mixedWith(other, mass, c.product.species.name, own),
    figures: [figure(mass, "g", `${other} for one mole of product`)],
    source: "constants",
  };
}
