// Metals and everything else that hands electrons on: the series of potentials, what stops a metal that may, what water takes.

import { atomsOf, network } from "../../aqueous/internal";
import { constitutionOf } from "../../ion";
import { isCationElement, isOneOf } from "../../ion/internal";
import { APART_IN_ACID, COUPLES, type CoupleRow, IN_LYE, IN_WATER, OXIDISING_ACIDS, PASSIVE } from "../data/couples";
import { isAmmonia, isMetal } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { componentsOf, ratio } from "./beaker";
import type { Case, Put } from "./case";
import type { Figure, Reason, Ruling } from "./feasibility";
import { mixedWith } from "./held-back";
import { isMetalPiece, judgeHot, never } from "./hot-only";
import { gramsOf } from "./pot";
import { figure } from "./standing";

/** Above this it goes, below the second it does not; between them concentrations decide. V. */
const GOES = 0;
const NEVER = -0.15;
/** ln 10 × RT/F at 25 °C, V. */
const NERNST = 0.0592;
/** The figure of one potential less the other. */
export const DIFFERENCE = "difference";
/** Potential of hydrogen at pH 7, V. */
const NEUTRAL_WATER = -0.41;

interface Change {
  readonly symbol: string;
  readonly from: number;
  readonly to: number;
}

/** The couple of a change, and its potential; undefined where the table has none. */
function couple({ symbol, from, to }: Change): CoupleRow | undefined {
  const [low, high] = from < to ? [from, to] : [to, from];
  return COUPLES().find((row) => row.element === symbol && row.low === low && row.high === high);
}

/**
 * Volts times electrons by which an insoluble salt that forms binds an ion: the ion is held at what the salt lets go. It
 * lowers the potential the ion comes from, and raises the one it is reduced to.
 */
function bound(symbol: string, { made }: Case, charge: number): number {
  let most = 0;
  for (const { species } of made) {
    const { cations } = constitutionOf(species.formula);
    const own = cations.find(({ element, charge: z }) => element === symbol && z === charge);
    const of = own === undefined ? undefined : componentsOf(species.formula);
    if (of === undefined || own === undefined) continue;
    for (const phase of network().phasesWithin(of.keys())) {
      if (phase.kind !== "solid" || phase.row?.soluble === true || ratio(phase.of, of) === undefined) continue;
      const pK = Number(phase.row?.pKsp ?? 0);
      const count =
        phase.of.get([...phase.of.keys()].find((key) => of.has(key) && atomsOf(key).has(symbol)) ?? "") ?? 1;
      most = Math.max(most, (NERNST * pK) / count);
    }
  }
  return most;
}

const volts = (value: number, label: string): Figure => ({ value, unit: "V", label });
const shown = (value: number): string => `${value < 0 ? "-" : "+"}${Math.abs(value).toFixed(2)} V`;

/** Ligands that move a potential far from the table. */
function hasLigand({ put, made }: Case): boolean {
  const strong = new Set(["CN-", "S^2-", "HS-", "S2O3^2-", "C10H12N2O8^4-"]);
  return (
    put.some(({ made: m }) => m.anions.some(({ formula }) => strong.has(formula))) ||
    [...put, ...made].some(({ made: m, species }) => m.complex !== undefined || isAmmonia(species.formula))
  );
}

/** Magnesium and its like in water and nothing else. */
const inWaterAlone = (name: string): Ruling => ({
  verdict: "goes in part",
  solids: [],
  reasons: [{ code: "passive", text: `${name} in water is slow: ${IN_WATER.film}`, source: IN_WATER.source }],
});

/** A metal in an acid, in lye or in water, where hydrogen is written. */
function withHydrogen(c: Case, metal: Put): Ruling | undefined {
  const symbol = metal.species.formula.symbols[0]!;
  const acid = c.put.find(({ made }) => made.acid !== undefined);
  const name = metal.species.name;
  if (acid === undefined) {
    const lye = c.put.some(({ made }) => made.anions.some(({ formula }) => formula === "OH-"));
    const own = COUPLES().find((row) => row.element === symbol && row.low === 0)!;
    const potential = Number(own.volts);
    if (lye && (IN_LYE.metals as readonly string[]).includes(symbol)) return undefined;
    if ((IN_WATER.metals as readonly string[]).includes(symbol)) return undefined;
    if ((IN_WATER.slowly as readonly string[]).includes(symbol))
      return c.put.every((one) => one === metal || one.species.isWater) ? inWaterAlone(name) : undefined;
    const salt = c.put.some(({ made }) => made.cations.some(({ charge }) => charge > 1));
    // salts of small, highly charged cations are acid enough for a base metal
    if (salt && potential < -0.7) return undefined;
    return never({
      code: "potentials",
      text: `${name} gives no hydrogen with ${lye ? "lye" : "water"}: ${lye ? `only ${IN_LYE.metals.join(", ")} do` : `its potential is ${shown(potential)}, and neutral water asks for less than ${shown(NEUTRAL_WATER)} and a metal without a film`}`,
      figures: [volts(potential, `standard potential of ${symbol}`)],
      source: own.source,
    });
  }
  const anions = acid.made.anions.map(({ formula }) => formula);
  if (
    anions.some((one) => (OXIDISING_ACIDS.anions as readonly string[]).includes(one)) &&
    !(OXIDISING_ACIDS.but as readonly string[]).includes(symbol)
  )
    return never({
      code: "potentials",
      text: `nitric acid gives nitrogen oxides with ${name}, no hydrogen: nitrate is reduced first (+0.96 V)`,
      figures: [volts(0.96, "standard potential of nitrate to nitrogen monoxide")],
      source: OXIDISING_ACIDS.source,
    });
  return undefined;
}

/** What stops a metal in an acid though its potential allows it. */
function passive(c: Case, metal: Put): { stops: boolean; reason: Reason } | undefined {
  const symbol = metal.species.formula.symbols[0]!;
  const acid = c.put.find(({ made }) => made.acid !== undefined);
  // lye takes the film, and the metal, before the acid comes
  const inLye = c.put.some(({ made }) => made.anions.some(({ formula }) => formula === "OH-"));
  if (acid === undefined || (inLye && (IN_LYE.metals as readonly string[]).includes(symbol))) return undefined;
  const oxidiser = c.put.some(({ species }) => isOneOf(species.formula, "H2O2", "O2"));
  const row = PASSIVE.find(
    (one) => one.metal === symbol && acid.made.anions.some(({ formula }) => one.anions.includes(formula)),
  );
  if (row === undefined || (oxidiser && row.stops)) return undefined;
  return {
    stops: row.stops,
    reason: {
      code: "passive",
      text: `${metal.species.name} in ${acid.species.name} ${row.stops ? "stops at once" : "is slow"}: ${row.why}`,
      source: row.source,
    },
  };
}

/** A metal that displaces another one, unless water or acid takes it first. */
function eatsWater(c: Case, metal: Put): Ruling | undefined {
  const symbol = metal.species.formula.symbols[0]!;
  const displaced = c.made.find(
    ({ made, species }) =>
      made.kind === "element" &&
      COUPLES().some((r) => r.element === species.formula.symbols[0] && r.low === 0) &&
      species.formula.symbols[0] !== "H",
  );
  if (displaced === undefined || !c.setting.wet) return undefined;
  const name = metal.species.name;
  const potentialOf = (element: string | undefined): number =>
    Number(COUPLES().find((r) => r.element === element && r.low === 0)!.volts);
  const [own, other] = [potentialOf(symbol), potentialOf(displaced.species.formula.symbols[0])];
  const series = `${symbol} ${shown(own)}, against ${shown(NEUTRAL_WATER)} of hydrogen from neutral water and ${shown(other)} of ${displaced.species.name}`;
  const figures = [
    volts(own, `standard potential of ${symbol}`),
    volts(NEUTRAL_WATER, "potential of hydrogen from neutral water"),
    volts(other, `standard potential of ${displaced.species.name}`),
  ];
  if ((IN_WATER.metals as readonly string[]).includes(symbol))
    return never({
      code: "attacks-water",
      text: `${name} gives hydrogen with water before it displaces ${displaced.species.name}: its hydroxide forms, and that of the other metal precipitates (${series})`,
      figures,
      source: IN_WATER.source,
    });
  if ((IN_WATER.slowly as readonly string[]).includes(symbol) && other < -0.25)
    return {
      verdict: "goes in part",
      solids: [],
      reasons: [
        {
          code: "attacks-water",
          text: `${name} gives hydrogen with the salt solution as well: hydrogen and basic salts form beside ${displaced.species.name} (${series})`,
          figures,
          source: IN_WATER.source,
        },
      ],
    };
  return undefined;
}

/** Rules by potentials; undefined where nothing changes its oxidation state, or nothing speaks against it. */
export function judgeMetal(c: Case): Ruling | undefined {
  const ruled = byPotentials(c);
  return ruled?.verdict === "goes" ? beside(c, ruled) : ruled;
}

/** A metal that comes with an insoluble salt of the one that displaces it: the two are one powder. */
function beside(c: Case, ruled: Ruling): Ruling {
  const { made, product, setting } = c;
  if (!isMetal(product.species.formula)) return ruled;
  const second = made.find(
    (one) =>
      one !== product &&
      one.made.kind === "salt" &&
      fateOf(one.species.formula, setting.temperature).precipitated === true,
  );
  if (second === undefined) return ruled;
  const { name, formula } = second.species;
  const mass = gramsOf(formula, second.moles);
  const text = mixedWith(name, mass, product.species.name, gramsOf(product.species.formula, 1));
  return {
    ...ruled,
    verdict: "another solid forms",
    solids: [
      { formula: name, moles: second.moles, share: 1 },
      { formula: product.species.name, moles: 1, share: 1 },
    ],
    reasons: [
      {
        code: "second-solid",
        text,
        figures: [figure(mass, "g", `${name} for one mole of product`)],
        source: "commonPractice",
      },
      ...ruled.reasons,
    ],
  };
}

/** An anion that the acid beside it takes apart into just what the equation writes. */
function apartInAcid({ put, made }: Case): Ruling | undefined {
  if (!put.some((one) => one.made.acid !== undefined && !one.made.acid.veryWeak)) return undefined;
  const row = APART_IN_ACID.find(
    ({ anion, gives }) =>
      put.some((one) => one.made.anions.some(({ formula }) => formula === anion)) &&
      gives.every((text) => made.some(({ species }) => isOneOf(species.formula, text))),
  );
  if (row === undefined) return undefined;
  return { verdict: "goes", solids: [], reasons: [{ code: "apart-in-acid", text: row.why, source: row.source }] };
}

/** The same, whatever solid comes with a metal. */
function byPotentials(c: Case): Ruling | undefined {
  const { redox, put, setting } = c;
  if (redox === undefined || !setting.wet) return undefined;
  const metal = put.find(isMetalPiece);
  const hydrogen = c.made.some(({ species }) => isOneOf(species.formula, "H2"));
  if (metal !== undefined && hydrogen) {
    const ruled = withHydrogen(c, metal);
    if (ruled !== undefined) return ruled;
  }
  const apart = apartInAcid(c);
  if (apart !== undefined) return apart;
  const eaten = metal === undefined ? undefined : eatsWater(c, metal);
  if (eaten !== undefined) return eaten;
  const film = metal === undefined ? undefined : passive(c, metal);
  const state = (f: { s: bigint; n: bigint; d: bigint }): number => (Number(f.s) * Number(f.n)) / Number(f.d);
  const up = redox.oxidised.map(({ symbol, from, to }) => ({ symbol, from: state(from), to: state(to) }));
  const down = redox.reduced.map(({ symbol, from, to }) => ({ symbol, from: state(from), to: state(to) }));
  const [rising, falling] = [up.map(couple), down.map(couple)];
  const hotter = judgeHot(c);
  if (hotter !== undefined) return hotter;
  const inLye = put.some(({ made }) => made.anions.some(({ formula }) => formula === "OH-"));
  const judged = rising.length > 0 && falling.length > 0 && ![...rising, ...falling].includes(undefined);
  const isOfMetals = [...up, ...down].some(({ symbol }) => isCationElement(symbol));
  if (judged && !inLye && !(isOfMetals && hasLigand(c))) {
    const moved = (r: CoupleRow, state: number, sign: 1 | -1): { row: CoupleRow; volts: number } => ({
      row: r,
      volts: Number(r.volts) + (sign * bound(r.element, c, state)) / (r.high - r.low),
    });
    const reducing = rising.map((r, i) => moved(r!, up[i]!.to, -1));
    const giver = reducing.reduce((a, b) => (b.volts > a.volts ? b : a));
    const taker = falling.map((r, i) => moved(r!, down[i]!.to, 1)).reduce((a, b) => (b.volts < a.volts ? b : a));
    const difference = taker.volts - giver.volts;
    const figures = [
      volts(taker.volts, `potential of ${taker.row.element} ${taker.row.high} to ${taker.row.low}`),
      volts(giver.volts, `potential of ${giver.row.element} ${giver.row.high} to ${giver.row.low}`),
      volts(difference, DIFFERENCE),
    ];
    const text = `${taker.row.element}(${taker.row.high}) to ${taker.row.element}(${taker.row.low}) stands at ${shown(taker.volts)}, ${giver.row.element}(${giver.row.high}) to ${giver.row.element}(${giver.row.low}) at ${shown(giver.volts)}: the difference is ${shown(difference)}`;
    // the weaker of the two grounds
    const source = giver.row.source === "memory" ? giver.row.source : taker.row.source;
    const reason: Reason = { code: "potentials", text, figures, source };
    if (difference < NEVER)
      return never({
        ...reason,
        text: `${giver.row.element}(${giver.row.low}) does not reduce ${taker.row.element}(${taker.row.high}): ${text}`,
      });
    if (film !== undefined)
      return {
        verdict: film.stops ? "does not go" : "goes",
        share: film.stops ? 0 : undefined,
        solids: [],
        reasons: [film.reason, reason],
      };
    if (difference < GOES)
      return {
        verdict: "goes in part",
        solids: [],
        reasons: [{ ...reason, text: `${text}, so concentrations decide` }],
      };
    return { verdict: "goes", solids: [], reasons: [reason] };
  }
  if (film !== undefined)
    return {
      verdict: film.stops ? "does not go" : "goes",
      share: film.stops ? 0 : undefined,
      solids: [],
      reasons: [film.reason],
    };
  return undefined;
}
