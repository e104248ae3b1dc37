// A product that stays in the liquor: do the solids dissolve, do its ions stay, and does the acid let go of its hydrogen?

import { chargeOf, type Key, keyOf, type Phase } from "../../aqueous/internal";
import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import type { Poured } from "../contents/equilibrium";
import { MIXED_HOT } from "../data/firing";
import { planned } from "../planning/exact";
import { fateOf } from "../reaction/fate";
import { isGas, isMiscible } from "../reaction/fluids";
import type { Species } from "../reaction/species";
import { type Beaker, componentsOf, printed, ratio, settle, unitsIn } from "./beaker";
import type { Case, Put } from "./case";
import type { Reason, Ruling } from "./feasibility";
import { judgePair } from "./judge-pair";
import { coatOf } from "./judge-solid";
import { beakerOf, holds, percent, potOf } from "./pot";
import { conditions, GOES, isCation, isSoluble, NOTHING, solidsIn } from "./standing";

const HYDRON = "H+";
/** Less of the product's ions than this in the state they should be in is no solution of it. */
const HALF = 0.5;
/** A solid that was put in and stays but for less than this has dissolved, and reacted with nothing. */
const MERELY_DISSOLVED = 0.1;
/** A solid with less of the theory than this is not spoken of. */
const A_WORD = 0.005;
/** Acids that boil away from a liquor that sulfuric or phosphoric acid was put into. */
const DRIVEN_OUT = ["HCl", "HBr", "HF", "HNO3", "CH3COOH", "HCOOH"];
/** Gases that are acids as soon as they are in water. */
const ANHYDRIDES = ["CO2", "SO2"];
const DRIVES = ["H2SO4", "H3PO4"];
/** Cations whose salts crystallise with the hydrogen that such an acid keeps: of sodium chloride it leaves the acid sulfate. */
const ACID_SALTS = ["Li+", "Na+", "K+", "Rb+", "Cs+", "NH4+"];
const CARBONATE = "CO3^2-";

type Composition = ReadonlyMap<Key, number>;

/** Part of the product that the liquor can give: its scarcest ion, in solution or in the product itself. */
function shareIn(beaker: Beaker, of: Composition, soluble: (phase: Phase) => boolean): Available {
  const solid = unitsIn(beaker, of);
  // a soluble salt that stands for want of water is no loss
  const bound = (key: Key): number =>
    beaker.solids.reduce(
      (n, { phase, moles }) =>
        n + (ratio(phase.of, of) === undefined && soluble(phase) ? moles * (phase.of.get(key) ?? 0) : 0),
      0,
    );
  let share = 1;
  let scarce: Key | undefined;
  for (const [key, count] of of) {
    if (key === HYDRON) continue;
    const here = (beaker.dissolved(key) + bound(key)) / count + solid;
    if (here < share) [share, scarce] = [here, key];
  }
  return { share, scarce };
}

/** Part of the product that the liquor can give, with the ion that is scarce. */
interface Available {
  readonly share: number;
  readonly scarce: Key | undefined;
}

const least = (one: Available, other: Available): Available => (other.share < one.share ? other : one);

/** Of a product that is a base, its metal may be in solution while the base it should come from stands untouched. */
function reactedIn({ put, setting }: Case, beaker: Beaker, of: Composition): Available {
  let found: Available = { share: 1, scarce: undefined };
  if (!((of.get(HYDRON) ?? 0) < 0)) return found;
  for (const { species, moles, left } of put) {
    const own = componentsOf(species.formula);
    if (own === undefined || fateOf(species.formula, setting.temperature).precipitated !== true) continue;
    const stands = unitsIn(beaker, own) - left;
    const [metal] = own.keys();
    found = least(found, { share: 1 - Math.max(0, stands) / (moles - left), scarce: metal });
  }
  return found;
}

/**
 * Part of the product's acid ions that carries no more hydrogen than in a solution of the product: 1 where all of them are
 * what they should be.
 */
function freed(beaker: Beaker, own: Beaker, of: Composition): number {
  let least = 1;
  for (const [key, count] of of) {
    if (key === HYDRON || isCation(key)) continue;
    const carried = Math.round(own.hydrons(key));
    if (Number.isFinite(carried)) least = Math.min(least, beaker.barely(key, carried + 0.25) / count);
  }
  return least;
}

/** What should give the hydrogen of an acid that is set free: an acid, the gas of one, else an acid salt. */
function giverOf({ put }: Case): Put | undefined {
  const acid = put.find(({ made, species }) => made.acid !== undefined || isOneOf(species.formula, ...ANHYDRIDES));
  return (
    acid ??
    put.find(({ species }) => {
      const of = componentsOf(species.formula);
      return of !== undefined && (of.get(HYDRON) ?? 0) > 0 && [...of.keys()].some((key) => chargeOf(key) < 0);
    })
  );
}

/** Does an acid that leaves where it is boiled bring a salt that takes no second hydrogen with it? */
const isDrivenOut = (freed: Species, { species }: Put, { product }: Case): boolean =>
  isOneOf(freed.formula, ...DRIVEN_OUT) &&
  isOneOf(species.formula, ...DRIVES) &&
  !product.made.cations.some(({ formula }) => ACID_SALTS.includes(formula));

/** Does an acid that stays leave the product's ions as they are in its own solution? */
function acidStrength(c: Case, beaker: Beaker, of: Composition): Reason | undefined {
  const acid = giverOf(c);
  const weaker = c.made.find(({ made }) => made.kind === "acid");
  if (acid === undefined || weaker === undefined || weaker === c.product || unitsIn(beaker, of) > 0.5) return undefined;
  const own = settle([{ formula: c.product.species.formula, moles: 1 }], beaker.water, c.celsius, {
    carbonDioxide: "kept",
    solids: "fresh",
  });
  if (own === undefined) return undefined;
  const share = freed(beaker, own, of);
  if (share >= HALF) return undefined;
  if (isDrivenOut(weaker.species, acid, c)) return undefined;
  return {
    code: "acid-strength",
    text: `${acid.species.name} does not set ${weaker.species.name} free: at pH ${beaker.pH.toFixed(1)} only ${percent(share)} of the ions of ${c.product.species.name} have given up the hydrogen they should`,
    figures: [{ value: share, unit: "", label: "share of the ions without that hydrogen" }, ...conditions(beaker)],
    source: "constants",
  };
}

/** A strong acid that is to come of another acid, beside salts that stay dissolved: the ions stand as they stood before. */
function strongFromAcid(c: Case, beaker: Beaker): Reason | undefined {
  const { made, species } = c.product;
  const acid = giverOf(c);
  const beside = c.made.find((one) => one !== c.product && one.made.kind === "salt");
  if (made.acid?.strong !== true || acid === undefined || beside === undefined) return undefined;
  // sulfuric acid stays where the other is distilled off, and a salt that settles takes its ions out
  if (isOneOf(acid.species.formula, ...DRIVES) || fateOf(beside.species.formula, c.setting.temperature).precipitated)
    return undefined;
  return {
    code: "acid-strength",
    text: `${acid.species.name} does not set ${species.name} free: ${beside.species.name} stays dissolved, and the liquor, of pH ${beaker.pH.toFixed(1)}, has the ions that were put in`,
    figures: conditions(beaker),
    source: "constants",
  };
}

/** Carbonate that keeps the gas it should give: it is too weak a base for so alkaline a product, whose hydrogen it takes in part only. */
function keptGas(c: Case, beaker: Beaker): Reason | undefined {
  const { put, made, product, setting } = c;
  const gas = made.find(({ species }) => isOneOf(species.formula, "CO2"));
  // what of a sparing carbonate stays is a share of the product that the solids tell
  const bases = put.filter(
    ({ species: { formula } }) =>
      componentsOf(formula)?.has(CARBONATE) && fateOf(formula, setting.temperature).precipitated !== true,
  );
  if (gas === undefined || bases.length === 0) return undefined;
  const held = (of: Composition | undefined, moles: number): number => moles * (of?.get(CARBONATE) ?? 0);
  const over = bases.reduce((n, { species, left }) => n + held(componentsOf(species.formula), left), 0);
  // in a solid that water leaves alone it is where the equation may want it
  const isBack = isSoluble(c);
  const solid = beaker.solids.reduce((n, { phase, moles }) => n + (isBack(phase) ? held(phase.of, moles) : 0), 0);
  const share = Math.min(1, (beaker.dissolved(CARBONATE) + solid - over) / gas.moles);
  if (share < planned("keptGas").toNumber("")) return undefined;
  const names = list(bases.map(({ species }) => species.name));
  const isOfAmmonia = bases.every(({ made: { cations } }) => cations.every(({ formula }) => formula === "NH4+"));
  return {
    code: "acid-strength",
    text: `${percent(share)} of the ${gas.species.name} that the equation gives off stays in the liquor as carbonate, at pH ${beaker.pH.toFixed(1)}: ${names} is too weak a base for ${product.species.name}; take ${isOfAmmonia ? "ammonia" : "hydroxide"} in its place`,
    figures: [{ value: share, unit: "", label: `share of the ${gas.species.name} that stays` }, ...conditions(beaker)],
    source: "constants",
  };
}

/** What twice the ligand brings, where the plain salt of a complex that is mixed hot takes its metal. */
function withMoreLigand(c: Case, pot: Poured, of: Composition, taker: Phase): Reason[] {
  if (c.product.made.complex === undefined) return [];
  const anion = MIXED_HOT.anions.find((one) => taker.of.has(keyOf(one)));
  const ligand = c.put.find(({ made }) => made.anions.some(({ formula }) => formula === anion));
  if (anion === undefined || ligand === undefined) return [];
  const more = { formula: ligand.species.formula, moles: ligand.moles / c.water };
  const beaker = beakerOf(c, { ...pot, pours: [...pot.pours, more] });
  if (beaker === undefined) return [];
  const { share } = shareIn(beaker, of, isSoluble(c));
  return [
    {
      code: "excess",
      text: `with twice the ${ligand.species.name} it would be ${percent(share)}`,
      figures: [{ value: share, unit: "", label: "share of the theory in solution with twice the ligand" }],
      source: "constants",
    },
  ];
}

/** The verdict on a product that stays dissolved; undefined where its ions are not known. */
export function judgeDissolved(c: Case): Ruling | undefined {
  const of = componentsOf(c.product.species.formula);
  const pot = potOf(c);
  const beaker = of === undefined || pot === undefined ? undefined : beakerOf(c, pot);
  if (of === undefined || beaker === undefined || !holds(beaker, of)) return undefined;
  const { share, scarce } = least(shareIn(beaker, of, isSoluble(c)), reactedIn(c, beaker, of));
  const solids = solidsIn(beaker);
  const shown = solids.filter((one) => one.share >= A_WORD);
  const coats = coatOf(c);
  const { name } = c.product.species;
  const reasons: Reason[] = [
    {
      code: "equilibrium",
      text:
        shown.length === 0
          ? `everything is in solution at pH ${beaker.pH.toFixed(1)}`
          : `${percent(share)} of what ${name} needs is in solution at pH ${beaker.pH.toFixed(1)}; ${shown.map((s) => `${percent(s.share)} as ${s.formula}`).join(", ")}`,
      figures: [{ value: share, unit: "", label: "share of the theory in solution" }, ...conditions(beaker)],
      source: "constants",
    },
    ...coats,
  ];
  const weak = acidStrength(c, beaker, of) ?? strongFromAcid(c, beaker) ?? keptGas(c, beaker);
  if (weak !== undefined) return { verdict: "does not go", share: 0, solids, reasons: [weak, ...reasons] };
  if (share < GOES && scarce !== undefined) {
    const taker = beaker.solids.find(({ phase }) => phase.of.has(scarce));
    const wasPut =
      taker !== undefined &&
      c.put.some(({ species }) => {
        const put = componentsOf(species.formula);
        return put !== undefined && ratio(taker.phase.of, put) !== undefined;
      });
    if (taker !== undefined && wasPut) {
      const stays: Reason = { code: "stays", text: `${printed(taker.phase)} stays what it is`, source: "constants" };
      if (share >= MERELY_DISSOLVED) return { verdict: "goes in part", share, solids, reasons: [...reasons, stays] };
      const merely = share < NOTHING ? "" : `: the ${percent(share)} of it that dissolves has reacted with nothing`;
      return {
        verdict: "does not go",
        share,
        solids,
        reasons: [{ ...stays, text: `${stays.text}${merely}` }, ...reasons],
      };
    }
    if (taker !== undefined) reasons.push(...withMoreLigand(c, pot!, of, taker.phase));
    const other = taker !== undefined && taker.phase.of.get(scarce)! * taker.moles > 0.5 * beaker.total(scarce);
    return {
      verdict: other ? "another solid forms" : share < NOTHING ? "does not go" : "goes in part",
      share,
      solids,
      reasons,
    };
  }
  // what is distilled off does not wait for its turn to crystallise
  const isFluid = isMiscible(c.product.species.formula) || isGas(c.product.species.formula, false);
  const pair = isFluid ? undefined : judgePair(c);
  if (pair !== undefined)
    return {
      ...pair,
      solids: [...pair.solids, ...solids.filter((s) => !pair.solids.some((p) => p.formula === s.formula))],
      reasons: [...pair.reasons, ...reasons],
    };
  if (coats.length > 0) return { verdict: "goes in part", solids, reasons };
  return { verdict: "goes", share, solids, reasons };
}
