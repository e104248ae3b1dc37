// A product that should fall: does it, how much of it, and what else stands when the whole mixture has come to rest?
import type { SolidsAllowed } from "../../aqueous";
import type { Phase } from "../../aqueous/mixture/network";
import type { Key } from "../../aqueous/mixture/notation";
import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { saltConversion } from "../../solubility";
import { fateOf } from "../fate";
import { type Beaker, componentsOf, printed, ratio, type Standing, served, settle } from "./beaker";
import type { Case } from "./case";
import type { Basis, Figure, Reason, Ruling, Solid } from "./feasibility";
import { coatOf } from "./judge-solid";
import { type Beakers, beakersOf, brief, gramsOf, holds, type Pot, percent, potOf } from "./pot";

/** From this share of the theory on it goes; below the other it does not. */
export const GOES = 0.95;
export const NOTHING = 0.02;
/** Another solid leads from this share of the metal on; from the smaller one where nothing of the product stands. */
const LEADS = 0.5;
const LEADS_ALONE = 0.2;
/** Foreign solids above this part of the product's mass cannot be called a trace. */
const TRACE = 0.05;
/** Two shares are told apart from this difference on. */
const DIFFERS = 0.02;
/** How many standard uncertainties of its constant a product may be off before a refusal stands. */
const SURE = 2;

type Composition = ReadonlyMap<Key, number>;
const isCation = (key: Key): boolean => key.endsWith("+") && key !== "H+";

/** The metal of a solid, or whatever it is made of where it has none. */
const keyOf = (of: Composition): Key => [...of.keys()].find(isCation) ?? [...of.keys()].find((k) => k !== "H+") ?? "H+";

/** Part of its metal that is in a solid. */
function shareOf({ phase, moles }: Standing, beaker: Beaker): number {
  const metals = [...phase.of.keys()].filter(isCation);
  const keys = metals.length > 0 ? metals : [keyOf(phase.of)];
  return Math.min(1, Math.max(...keys.map((key) => (moles * phase.of.get(key)!) / beaker.total(key))));
}

/** Formula units of the product that stand in a beaker. */
export function standingOf(beaker: Beaker, of: Composition): number {
  return beaker.solids.reduce((n, { phase, moles }) => n + moles * (ratio(phase.of, of) ?? 0), 0);
}

export const solidsIn = (beaker: Beaker): Solid[] =>
  beaker.solids.map((one) => ({ formula: printed(one.phase), moles: one.moles, share: shareOf(one, beaker) }));

const figure = (value: number, unit: string, label: string): Figure => ({ value, unit, label });

export const conditions = ({ pH, water }: Beaker): Figure[] => [
  figure(pH, "", "pH of the liquor"),
  figure(water * 1000, "g", "water for one mole of product"),
];

/** The product and what it may be called in a sentence. */
interface Wanted {
  readonly c: Case;
  readonly of: Composition;
  readonly isIt: (phase: Phase) => boolean;
  readonly pot: Pot;
}

const list = (beaker: Beaker): string =>
  beaker.solids.length === 0
    ? "nothing falls"
    : beaker.solids
        .slice(0, 3)
        .map((one) => `${percent(shareOf(one, beaker))} as ${printed(one.phase)}`)
        .join(", ");

/** Is a standing solid one that was put in? */
const putInAs = ({ c }: Wanted, phase: Phase): boolean =>
  c.put.some(({ species }) => {
    const of = componentsOf(species.formula);
    return (
      of !== undefined &&
      ratio(phase.of, of) !== undefined &&
      fateOf(species.formula, c.setting.temperature).fallsOut === true
    );
  });

const theory = (share: number): Figure => figure(share, "", "share of the theory that stands");

function carbonDioxideReasons(wanted: Wanted, { kept, gone, differs }: Beakers): Reason[] {
  if (!differs) return [];
  const [a, b] = [standingOf(kept, wanted.of), standingOf(gone, wanted.of)].map((n) => Math.min(1, n));
  const { name } = wanted.c.product.species;
  if (Math.abs(a! - b!) < DIFFERS) return [];
  return [
    {
      code: "carbon-dioxide-kept",
      text: `while the carbon dioxide stays: ${percent(a!)} of the ${name}, pH ${kept.pH.toFixed(1)}; ${list(kept)}`,
      figures: [theory(a!), ...conditions(kept)],
      source: "constants",
    },
    {
      code: "carbon-dioxide-gone",
      text: `once it has gone, by airing or boiling: ${percent(b!)} of the ${name}, pH ${gone.pH.toFixed(1)}; ${list(gone)}`,
      figures: [theory(b!), ...conditions(gone)],
      source: "constants",
    },
  ];
}

/** Why not all of it falls. */
function heldBack(wanted: Wanted, beaker: Beaker, share: number, keeping: "kept" | "leaves"): Reason[] {
  const { c, of } = wanted;
  const reasons: Reason[] = [];
  const bare = c.put.some(({ left, species }) => left > 0 && !species.isWater) ? potOf(c, false) : undefined;
  if (bare !== undefined) {
    const without = settle(bare.pours, c.water, c.celsius, { carbonDioxide: keeping, solids: "fresh" });
    const before = without === undefined ? 0 : Math.min(1, standingOf(without, of));
    // a metal salt that is over makes another solid of it, a base or ligand takes it back
    const turned = foreign(wanted, beaker).some(({ phase }) =>
      [...of.keys()].some((key) => isCation(key) && phase.of.has(key)),
    );
    if (before - share > DIFFERS)
      reasons.push({
        code: turned ? "excess" : "redissolves",
        text: `${turned ? "the excess makes another solid of it" : "the excess takes it back"}: without it ${percent(before)} stands, with it ${percent(share)}`,
        figures: [figure(before, "", "share that stands without the excess"), theory(share)],
        source: "constants",
      });
  }
  const freed = c.made.find(({ made }) => made.acid !== undefined && made.kind === "acid");
  if (freed !== undefined && beaker.pH < 4)
    reasons.push({
      code: "acid-holds-back",
      text: `${freed.species.name} that is set free makes the liquor pH ${beaker.pH.toFixed(1)} and keeps ${percent(1 - share)} dissolved: a base or the salt in place of the acid brings it down`,
      figures: [figure(1 - share, "", "share that the acid keeps"), figure(beaker.pH, "", "pH of the liquor")],
      source: "constants",
    });
  const aged = settle(wanted.pot.pours, c.water, c.celsius, { carbonDioxide: keeping, solids: "aged" });
  const later = aged === undefined ? share : Math.min(1, standingOf(aged, of));
  if (aged !== undefined && later - share > DIFFERS)
    reasons.push({
      code: "aged",
      text: `after standing ${percent(later)} of it stands, pH ${aged.pH.toFixed(1)}`,
      figures: [figure(later, "", "share of the theory after standing"), ...conditions(aged)],
      source: "constants",
    });
  return reasons;
}

/** One sparingly soluble solid into another of the same cation: the constant and what it asks for. */
function swapReason({ c }: Wanted): Reason[] {
  const falls = (one: Case["put"][number] | Case["made"][number]): boolean =>
    fateOf(one.species.formula, c.setting.temperature).fallsOut === true;
  const from = c.put.find(
    (one) => falls(one) && one.made.cations.some((x) => c.product.made.cations.some((y) => x.formula === y.formula)),
  );
  if (from === undefined || from.made.kind !== "salt") return [];
  const found = attempt(() => saltConversion({ from: from.species.formula, to: c.product.species.formula }));
  if (!found.ok) return [];
  const K = found.value.equilibriumRatio.value.toNumber();
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

/** Does a solid dissolve well, so that more water takes it? */
export const isSoluble =
  ({ setting }: Case) =>
  (phase: Phase): boolean =>
    fateOf(phaseFormula(phase), setting.temperature).fallsOut === false;

const foreign = (wanted: Wanted, beaker: Beaker): Standing[] => {
  const soluble = isSoluble(wanted.c);
  return beaker.solids.filter(({ phase }) => !wanted.isIt(phase) && !putInAs(wanted, phase) && !soluble(phase));
};

/** Foreign solids that count beside the product, by mass. */
function beside(wanted: Wanted, beaker: Beaker, share: number): Standing[] {
  const grams = gramsOf(wanted.c.product.species.formula, share);
  return foreign(wanted, beaker).filter(
    ({ phase, moles }) => moles > 1e-6 && gramsOf(phaseFormula(phase), moles) > TRACE * Math.max(grams, 1e-9),
  );
}

const phaseFormula = (phase: Phase): Parameters<typeof gramsOf>[0] => parsed(phase.formula);

/** A solid beside the product, or in its place. */
function besideReason({ c }: Wanted, { phase, moles }: Standing, share: number): Reason {
  const other = printed(phase);
  const mass = gramsOf(phaseFormula(phase), moles);
  const own = gramsOf(c.product.species.formula, share);
  return {
    code: share < NOTHING ? "another-solid" : "second-solid",
    text:
      share < NOTHING
        ? `${other} falls in place of ${c.product.species.name}: ${brief(mass)} g for one mole asked for`
        : `${other} falls as well: ${brief(mass)} g beside ${brief(own)} g of ${c.product.species.name}, and no washing parts them`,
    figures: [figure(mass, "g", `${other} for one mole of product`)],
    source: "constants",
  };
}

/** The rule for a product that the tables have no constant for. */
function withoutConstant(wanted: Wanted, beakers: Beakers): Ruling {
  const { c } = wanted;
  const { name, formula } = c.product.species;
  const fate = fateOf(formula, c.setting.temperature);
  const others = foreign(wanted, beakers.kept);
  const metals = [...wanted.of.keys()].filter(isCation);
  const takes = others.some(({ phase }) => metals.some((key) => phase.of.has(key)));
  const stays = beakers.kept.solids.filter(({ phase }) => putInAs(wanted, phase));
  if (fate.fallsOut === true && !takes && stays.length === 0)
    return {
      verdict: "goes",
      solids: [{ formula: name, moles: 1, share: 1 }],
      reasons: [
        {
          code: "missing",
          text: `${fate.why}; no solubility product is known, so what the liquor keeps cannot be told`,
          source: "commonPractice",
        },
      ],
    };
  return {
    verdict: "unknown",
    solids: [],
    reasons: [
      {
        code: "missing",
        text: `missing: the solubility product of ${name}${beakers.kept.solids.length > 0 ? `; of the solids that are known there would stand ${list(beakers.kept)}` : ""}`,
        source: "constants",
      },
    ],
  };
}

/** Would the refusal still stand if the product's constant were off by twice its uncertainty? */
function isSure(wanted: Wanted, pot: Pot, keeping: "kept" | "leaves", phases: readonly Phase[]): boolean {
  const by = SURE * Math.max(...phases.map(({ shares }) => shares[0]?.[0].standardUncertainty ?? 0));
  if (by === 0) return true;
  const moved = settle(pot.pours, wanted.c.water, wanted.c.celsius, {
    carbonDioxide: keeping,
    solids: "fresh",
    lower: { by, which: wanted.isIt },
  });
  return moved === undefined || standingOf(moved, wanted.of) < NOTHING;
}

/** The verdict on a product that should fall; undefined where its ions are not known. */
export function judgePrecipitate(c: Case): Ruling | undefined {
  const of = componentsOf(c.product.species.formula);
  const pot = potOf(c);
  if (of === undefined || pot === undefined) return undefined;
  const isIt = (phase: Phase): boolean => phase.kind === "solid" && ratio(phase.of, of) !== undefined;
  const wanted: Wanted = { c, of, isIt, pot };
  let beakers = beakersOf(c, pot);
  if (beakers === undefined || !holds(beakers, of)) return undefined;
  const own = beakers.kept.conditions.flatMap(({ phase }) => (phase !== undefined && isIt(phase) ? [phase] : []));
  const later = beakers.kept.excluded.filter(({ phase, why }) => isIt(phase) && /^forms (?:by|from)/.test(why));
  const never = beakers.kept.excluded.some(({ phase, why }) => isIt(phase) && why === "not met at the bench");
  if (own.length === 0 && later.length === 0 && !never) return withoutConstant(wanted, beakers);
  const slow: Reason[] = [];
  let allowedSolids: SolidsAllowed = "fresh";
  const better = (pair: Beakers): number => Math.max(standingOf(pair.kept, of), standingOf(pair.gone, of));
  if (own.length === 0 && later.length > 0) {
    const more = { allow: later.map(({ phase }) => phase.formula) };
    const allowed = beakersOf(c, pot, { solids: more });
    if (allowed !== undefined && better(allowed) > better(beakers) + DIFFERS) {
      slow.push({
        code: "aged",
        text: `${c.product.species.name} ${later[0]!.why}; at once: ${list(beakers.kept)}`,
        source: "commonPractice",
      });
      beakers = allowed;
      allowedSolids = more;
    }
  }
  const { kept, gone } = beakers;
  const declared = c.made.some(({ species }) => species.formula.compositionText === "CO2");
  const goneIsBetter = standingOf(gone, of) > standingOf(kept, of);
  // Who writes carbon dioxide on the right lets it go or keeps it as the product asks; else the pot is open as pots are.
  const [beaker, keeping] = (declared ? goneIsBetter : !goneIsBetter)
    ? ([gone, "leaves"] as const)
    : ([kept, "kept"] as const);
  const share = Math.min(1, standingOf(beaker, of));
  const coats = coatOf(c);
  const others = beside(wanted, beaker, share);
  const lead = foreign(wanted, beaker).filter(
    (one) => shareInMetal(one, wanted, beaker) >= (share < NOTHING ? LEADS_ALONE : LEADS),
  );
  const reasons: Reason[] = [
    {
      code: "equilibrium",
      text: `${percent(share)} of the ${c.product.species.name} stands at pH ${beaker.pH.toFixed(1)}${beaker.solids.length > 0 ? `: ${list(beaker)}` : ""}`,
      figures: [theory(share), ...conditions(beaker)],
      source: "constants",
    },
    ...slow,
    ...coats,
    ...carbonDioxideReasons(wanted, beakers),
    ...swapReason(wanted),
  ];
  if (share < GOES) {
    reasons.push(...heldBack(wanted, beaker, share, keeping));
    for (const { phase } of beaker.solids)
      if (putInAs(wanted, phase) && !wanted.isIt(phase))
        reasons.push({
          code: "stays",
          text: `${printed(phase)} stays what it is: it dissolves less than what it should become`,
          source: "constants",
        });
  }
  for (const one of others) reasons.push(besideReason(wanted, one, share));
  const solids = solidsIn(beaker);
  const basis: Basis = {
    pours: pot.pours.map(({ formula, moles }) => ({ formula: formula.toString(), moles })),
    water: beaker.water,
    carbonDioxide: keeping,
    solids: allowedSolids,
    celsius: served(c.celsius),
    units: new Map(
      beaker.solids.flatMap(({ phase }): [string, number][] => {
        const units = ratio(phase.of, of);
        return units === undefined ? [] : [[phase.formula, units]];
      }),
    ),
  };
  const ruled = (verdict: Ruling["verdict"]): Ruling => ({ verdict, share, solids, reasons, basis });
  if (lead.length > 0) return ruled("another solid forms");
  if (share >= GOES) {
    if (others.length > 0) return ruled("another solid forms");
    // how far a coated grain goes is no question of equilibrium
    return coats.length > 0 ? { ...ruled("goes in part"), share: undefined } : ruled("goes");
  }
  if (share >= NOTHING) return ruled("goes in part");
  if (own.length > 0 && !isSure(wanted, pot, keeping, own))
    return {
      ...ruled("unknown"),
      reasons: [
        ...reasons,
        {
          code: "missing",
          text: `missing: a surer solubility product of ${c.product.species.name}; within the doubt of the known one it may fall or not`,
          source: "constants",
        },
      ],
    };
  const decisive = (one: Reason): boolean => DECISIVE.has(one.code);
  return {
    ...ruled("does not go"),
    reasons: [...reasons.filter(decisive), ...reasons.filter((one) => !decisive(one))],
  };
}

/** What is told first of a product that does not form. */
const DECISIVE: ReadonlySet<Reason["code"]> = /* @__PURE__ */ new Set<Reason["code"]>([
  "redissolves",
  "acid-holds-back",
  "stays",
  "solid-to-solid",
]);

/** Part of the product's metal that a solid takes. */
function shareInMetal({ phase, moles }: Standing, { of }: Wanted, beaker: Beaker): number {
  const metals = [...of.keys()].filter(isCation);
  return Math.max(0, ...metals.map((key) => (moles * (phase.of.get(key) ?? 0)) / beaker.total(key)));
}

const formulas = /* @__PURE__ */ remembering<ReturnType<typeof parseFormula>>(300);
const parsed = (text: string): ReturnType<typeof parseFormula> => formulas(text, () => parseFormula(text));
