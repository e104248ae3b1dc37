// A product that should precipitate: does it, how much of it, and what else stands when the whole mixture has come to rest?

import type { SolidsAllowed } from "../../aqueous";
import type { Phase } from "../../aqueous/internal";
import { list } from "../../foundation/wording";
import { withGas } from "../contents/equilibrium";
import { fateOf } from "../reaction/fate";
import { type Beaker, componentsOf, printed, ratio, type Standing, served, unitsIn } from "./beaker";
import { partsOf } from "./by-parts";
import type { Case } from "./case";
import type { Basis, Reason, Ruling } from "./feasibility";
import {
  besideReason,
  carbonDioxideReasons,
  DIFFERS,
  foreign,
  heldBack,
  putInAs,
  swapReason,
  theory,
  type Wanted,
} from "./held-back";
import { coatOf } from "./judge-solid";
import { isFormOf } from "./oxide-or-hydroxide";
import { type Beakers, beakerOf, beakersOf, gramsOf, holds, percent, potOf } from "./pot";
import { conditions, figure, GOES, isCation, NOTHING, phaseFormula, solidsIn, solidsListed } from "./standing";

/** Another solid leads from this share of the metal on; from the smaller one where nothing of the product stands. */
const LEADS = 0.5;
const LEADS_ALONE = 0.2;
/** Foreign solids above this part of the product's mass cannot be called a trace. */
const TRACE = 0.05;
/** How many standard uncertainties of its constant a product may be off before a refusal stands. */
const SURE = 2;

/** Foreign solids that count beside the product, by mass. */
function beside(wanted: Wanted, beaker: Beaker, share: number): Standing[] {
  const grams = gramsOf(wanted.c.product.species.formula, share);
  return foreign(wanted, beaker).filter(
    ({ phase, moles }) => moles > 1e-6 && gramsOf(phaseFormula(phase), moles) > TRACE * Math.max(grams, 1e-9),
  );
}

/** A product without a constant that is made of two solids which have one: as much as of those stands at least. */
function byParts({ c }: Wanted, { stands }: Beakers): Ruling | undefined {
  const { name, formula } = c.product.species;
  const parts = partsOf(
    stands,
    formula,
    c.put.map(({ species }) => species.formula),
  );
  if (parts === undefined || parts.share < NOTHING) return undefined;
  const { names, share } = parts;
  return {
    verdict: share >= GOES ? "goes" : "goes in part",
    share,
    solids: [{ formula: name, moles: share, share }],
    reasons: [
      {
        code: "equilibrium",
        text: `at least ${percent(share)} of the metal precipitates at pH ${stands.pH.toFixed(1)}: as much stands by the constants of ${list(names)}, and what lasts in their place dissolves no more`,
        figures: [figure(share, "", "least share of the theory that stands"), ...conditions(stands)],
        source: "constants",
      },
      {
        code: "missing",
        text: `no solubility product of ${name} is known: that this is the solid is common practice, and its composition varies`,
        source: "commonPractice",
      },
    ],
  };
}

/** The rule for a product that the tables have no constant for. */
function withoutConstant(wanted: Wanted, beakers: Beakers): Ruling {
  const { c } = wanted;
  const { name, formula } = c.product.species;
  const parts = byParts(wanted, beakers);
  if (parts !== undefined) return parts;
  const fate = fateOf(formula, c.setting.temperature);
  const others = foreign(wanted, beakers.stands);
  const metals = [...wanted.of.keys()].filter(isCation);
  const takes = others.some(({ phase }) => metals.some((key) => phase.of.has(key)));
  const stays = beakers.stands.solids.filter(({ phase }) => putInAs(wanted, phase));
  if (fate.precipitated === true && !takes && stays.length === 0)
    return {
      verdict: "goes",
      solids: [{ formula: name, moles: 1, share: 1 }],
      reasons: [
        {
          code: "missing",
          text: `${fate.why}; no solubility product is known, so what the liquor keeps cannot be determined`,
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
        text: `missing: the solubility product of ${name}${beakers.stands.solids.length > 0 ? `; of the solids that are known there would form ${solidsListed(beakers.stands)}` : ""}`,
        source: "constants",
      },
    ],
  };
}

/** What the constants of some solids may be off. */
const doubtOf = (phases: readonly Phase[]): number =>
  SURE * Math.max(0, ...phases.map(({ shares }) => shares[0]?.[0].standardUncertainty ?? 0));

/** Are all these solids further from standing than that? Then it changes nothing of the beaker. */
const isBeyond = (beaker: Beaker, phases: readonly Phase[], by: number): boolean =>
  phases.every((phase) => beaker.saturation(phase) < -by * Math.LN10);

/** Would the refusal still stand if the product's constant were off by twice its uncertainty? */
function isSure(wanted: Wanted, beaker: Beaker, phases: readonly Phase[]): boolean {
  const by = doubtOf(phases);
  if (by === 0 || isBeyond(beaker, phases, by)) return true;
  const lower = { by, which: wanted.isIt };
  const moved = beakerOf(wanted.c, wanted.pot, { solids: "fresh", lower, near: beaker });
  return moved === undefined || unitsIn(moved, wanted.of) < NOTHING;
}

/** From this share on the doubt of a constant makes no difference at the bench. */
const NEARLY_ALL = 0.98;

/** Both sides of the doubt of the product's constant, where they differ: the share that stands with either. */
function doubtReason(
  wanted: Wanted,
  beaker: Beaker,
  solids: SolidsAllowed,
  phases: readonly Phase[],
  share: number,
): Reason[] {
  const by = doubtOf(phases);
  if (by === 0 || share > NEARLY_ALL || isBeyond(beaker, phases, by)) return [];
  const ends = [-by, by].map((one) => {
    const lower = { by: one, which: wanted.isIt };
    const moved = beakerOf(wanted.c, wanted.pot, { solids, lower, near: beaker });
    return moved === undefined ? undefined : Math.min(1, unitsIn(moved, wanted.of));
  });
  const [one, other] = ends;
  if (one === undefined || other === undefined || Math.abs(one - other) < DIFFERS) return [];
  const [least, most] = [Math.min(one, other), Math.max(one, other)];
  const either = (least < NOTHING && most >= NOTHING) || (least < GOES && most >= GOES);
  return [
    {
      code: "doubt",
      text: `within the uncertainty of its constant (two standard uncertainties) ${percent(least)} to ${percent(most)} of the ${wanted.c.product.species.name} stands${either ? ": it may be either" : ""}`,
      figures: [figure(least, "", "least share that is solid"), figure(most, "", "greatest share that is solid")],
      source: "constants",
    },
  ];
}

/** The verdict on a product that should precipitate; undefined where its ions are not known. */
export function judgePrecipitate(c: Case): Ruling | undefined {
  const of = componentsOf(c.product.species.formula);
  const pot = potOf(c);
  if (of === undefined || pot === undefined) return undefined;
  const { formula } = c.product.species;
  const sameIons = (phase: Phase): boolean => phase.kind === "solid" && ratio(phase.of, of) !== undefined;
  const isIt = (phase: Phase): boolean => sameIons(phase) && isFormOf(phase, formula);
  const wanted: Wanted = { c, of, isIt, pot };
  let beakers = beakersOf(c, pot);
  if (beakers === undefined || !holds(beakers.stands, of)) return undefined;
  const own = beakers.stands.conditions.flatMap(({ phase }) => (phase !== undefined && isIt(phase) ? [phase] : []));
  const later = beakers.stands.excluded.filter(({ phase, why }) => isIt(phase) && /^forms (?:by|from)/.test(why));
  const never = beakers.stands.excluded.some(({ phase, why }) => isIt(phase) && why === "not met at the bench");
  const isTurned = beakers.stands.solids.some(({ phase }) => sameIons(phase) && !isIt(phase));
  if (own.length === 0 && later.length === 0 && !never && !isTurned) return withoutConstant(wanted, beakers);
  const slow: Reason[] = [];
  let allowedSolids: SolidsAllowed = "fresh";
  if (own.length === 0 && later.length > 0) {
    const more = { allow: later.map(({ phase }) => phase.formula) };
    const allowed = beakersOf(c, pot, { solids: more });
    if (allowed !== undefined && unitsIn(allowed.stands, of) > unitsIn(beakers.stands, of) + DIFFERS) {
      slow.push({
        code: "aged",
        text: `${c.product.species.name} ${later[0]!.why}; at once: ${solidsListed(beakers.stands)}`,
        source: "commonPractice",
      });
      beakers = allowed;
      allowedSolids = more;
    }
  }
  const beaker = beakers.stands;
  const share = isTurned ? 0 : Math.min(1, unitsIn(beaker, of));
  const coats = coatOf(c);
  const others = beside(wanted, beaker, share);
  const lead = foreign(wanted, beaker).filter(
    (one) => shareInMetal(one, wanted, beaker) >= (share < NOTHING ? LEADS_ALONE : LEADS),
  );
  const reasons: Reason[] = [
    {
      code: "equilibrium",
      text: `${percent(share)} of the ${c.product.species.name} stands at pH ${beaker.pH.toFixed(1)}${beaker.solids.every(({ phase }) => wanted.isIt(phase)) ? "" : `: ${solidsListed(beaker)}`}`,
      figures: [theory(share), ...conditions(beaker)],
      source: "constants",
    },
    ...slow,
    ...coats,
    ...doubtReason(wanted, beaker, allowedSolids, own, share),
    ...carbonDioxideReasons(wanted, beakers),
    ...swapReason(wanted),
  ];
  if (isTurned) reasons.push(turnedByHeat(c));
  if (share < GOES && !isTurned) {
    reasons.push(...heldBack(wanted, beaker, share));
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
    pours: withGas(pot.pours, pot.fizzed).map(({ formula, moles }) => ({
      formula: formula.toString(),
      moles: moles * c.water,
    })),
    water: beaker.water,
    carbonDioxide: pot.fizzed.keeping,
    solids: allowedSolids,
    celsius: served(c.celsius),
    units: new Map(
      beaker.solids.flatMap(({ phase }): [string, number][] => {
        const units = isIt(phase) ? ratio(phase.of, of) : undefined;
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
  if (own.length > 0 && !isSure(wanted, beaker, own))
    return {
      ...ruled("unknown"),
      reasons: [
        ...reasons,
        {
          code: "missing",
          text: `missing: a surer solubility product of ${c.product.species.name}; within the uncertainty of the known one it may precipitate or not`,
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

/** Water gives the hydroxide; heat makes the oxide of it. */
const turnedByHeat = ({ product }: Case): Reason => ({
  code: "another-solid",
  text: `water gives the hydroxide, not ${product.species.name}: make that, wash and dry it, and fire it to the oxide`,
  source: "commonPractice",
});

/** What is said first of a product that does not form. */
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
