// What a liquor of several salts lets go of at a temperature: the product keeps its own solubility in pure water, the others that less
// what ions of their own from elsewhere take of it, a hydrate that comes takes water away from all, and what no table has a figure
// for stays where it is.

import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { keptBeside } from "../../foundation/memo";
import { type Quantity, quantity } from "../../quantity";
import { trySolubilityOf } from "../../solubility";
import { fallingFrom, saturatedBy, settleSalts } from "../../solubility/internal";
import { type Entry, massOf } from "../contents/entry";
import { type Matter, massOfWater, matterOf } from "../contents/matter";
import type { Coming } from "../operation/concentrate";
import { exact, planned } from "../planning/exact";
import { spelledLike } from "../reaction/spelling";
import { sharesKept } from "./common-ion";

/** A salt's figure at a temperature, and the solid it crystallises as. */
interface Saturated {
  readonly perHundredGramsWater: Quantity<"mass">;
  readonly solid: Matter;
  /** Grams of anhydrous salt that a gram of water keeps. */
  readonly perGram: number;
  /** Grams of water that a gram of it binds as it crystallises. */
  readonly binds: number;
}

/** Kept by the objects themselves: the search of a way asks for the same few hundreds of times. */
const figuresOf = /* @__PURE__ */ keptBeside((matter: Matter) =>
  keptBeside((at: Quantity<"temperature">) => read(matter, at)),
);

function read(matter: Matter, at: Quantity<"temperature">): Saturated | undefined {
  const found = trySolubilityOf(matter.formula, at);
  if (!found.ok) return undefined;
  const { perHundredGramsWater, solidPhase } = found.value;
  // a table that does not name the solid leaves it the form that is asked about
  const solid = solidPhase === undefined ? matter : matterOf(spelledLike(parseFormula(solidPhase), matter.formula));
  const dry = matter.core.molarMass.toNumber("g/mol");
  return {
    perHundredGramsWater,
    solid,
    perGram: perHundredGramsWater.toNumber("g") / 100,
    binds: solid.waters.toNumber("") * (massOfWater(exact("1 mol")).toNumber("g") / dry),
  };
}

/** The figure of a salt at a temperature; undefined where the table has none. */
export function saturatedAt(matter: Matter, at: Quantity<"temperature">): Saturated | undefined {
  return figuresOf(matter)(at);
}

/** The same of a hot liquor: where the table ends below it, that of the usual hot solution, which is the least of what dissolves better hot. */
export const saturatedHot = (matter: Matter, hot: Quantity<"temperature">): Saturated | undefined =>
  saturatedAt(matter, hot) ?? saturatedAt(matter, planned("hot") as Quantity<"temperature">);

/** The same as figures of the balance. */
const saturated = /* @__PURE__ */ keptBeside(({ perHundredGramsWater, solid }: Saturated) =>
  saturatedBy(perHundredGramsWater, solid.formula.toString()),
);

/** The same of a salt of which only a share is kept. */
const saturatedLess = ({ perHundredGramsWater, solid }: Saturated, share: number): ReturnType<typeof saturated> =>
  saturatedBy(perHundredGramsWater.times(quantity(share.toPrecision(6))), solid.formula.toString());

/** What comes out of a liquor, and the water that is left in it. */
interface Settled {
  readonly coming: readonly Coming[];
  readonly water: Quantity;
}

/** What is dissolved, and what of it is the product. */
interface Liquor {
  readonly entries: readonly Entry[];
  readonly product: Matter;
  /** Stays dissolved whatever its figure says. */
  readonly staying?: Entry | undefined;
}

/** A substance of a liquor with its mass without crystal water. */
interface Solute {
  readonly matter: Matter;
  readonly dry: Quantity;
}

const withoutWater = ({ matter, amount }: Entry): Solute => ({
  matter,
  dry: massOf({ matter: matter.core, amount }),
});

/**
 * What of a liquor so much water lets go at a temperature, as the solids that stand there; undefined where the crystals would bind all
 * the water.
 */
export function settledFrom(
  { entries, product, staying }: Liquor,
  water: Quantity,
  at: Quantity<"temperature">,
): Settled | undefined {
  const solutes = entries.filter(({ matter }) => !matter.isWater).map(withoutWater);
  const known = solutes.flatMap((solute, i) => {
    const figure = saturatedAt(solute.matter, at);
    return figure === undefined ? [] : [{ ...solute, figure, i }];
  });
  const plain = ({ matter, dry }: Solute, stays: boolean): Salt => ({ matter, dry: dry.toNumber("g"), stays });
  const salts = [
    ...solutes.map((one) => plain(one, false)),
    ...(staying === undefined ? [] : [plain(withoutWater(staying), true)]),
  ];
  const kept = fallingBeside(salts, product, water.toNumber("g"), at).shares;
  const settled = attempt(() =>
    settleSalts(
      known.map(({ dry, figure, i }) => ({
        dry,
        saturated: kept[i] === 1 ? saturated(figure) : saturatedLess(figure, kept[i]!),
      })),
      water,
    ),
  );
  if (!settled.ok) return undefined;
  const coming = known.flatMap(({ matter, figure }, i): Coming[] => {
    const dry = settled.value.solids[i]!;
    if (!dry.isPositive()) return [];
    return [{ matter: figure.solid, amount: dry.dividedBy(matter.core.molarMass).to("mol") }];
  });
  return { coming, water: settled.value.water };
}

/** One salt of a liquor in plain grams, for the search of a way. */
export interface Salt {
  /** Without crystal water. */
  readonly dry: number;
  readonly matter: Matter;
  /** Share of what the water can keep that it is trusted to keep; all of it unless given. */
  readonly keeps?: number;
  /** It stays dissolved, whatever its figure says. */
  readonly stays?: boolean;
}

/** What a step of the balance may still move a share by, and how often it is tried. */
const STILL = 1e-7;
const OFTEN = 12;

/** What precipitates of salts whose ions meet, and the share of its own solubility that is kept of each. */
function fallingBeside(salts: readonly Salt[], product: Matter, water: number, at: Quantity<"temperature">) {
  const alone = salts.map(({ dry, matter, keeps = 1, stays = false }) => {
    const figure = stays ? undefined : saturatedAt(matter, at);
    // what no table has a figure for stays where it is
    return { matter, dry, perGram: keeps * (figure?.perGram ?? Number.POSITIVE_INFINITY), binds: figure?.binds ?? 0 };
  });
  let shares: readonly number[] = salts.map(() => 1);
  let per = alone;
  let found = fallingFrom(per, water);
  for (let k = 0; k < OFTEN && found.water !== undefined; k += 1) {
    const next = sharesKept(alone, product, found.water);
    const moved = next.reduce((most, share, i) => Math.max(most, Math.abs(share - shares[i]!)), 0);
    if (moved <= STILL) break;
    shares = next;
    per = alone.map((one, i) => ({ ...one, perGram: one.perGram * next[i]! }));
    found = fallingFrom(per, water);
  }
  return { per, found, shares };
}

/** The same in plain grams: what comes of each salt, without and with its crystal water, and the water left; undefined as above. */
export function balanceOf(
  salts: readonly Salt[],
  product: Matter,
  water: number,
  at: Quantity<"temperature">,
): { readonly dry: number[]; readonly solids: number[]; readonly water: number } | undefined {
  const {
    per,
    found: { falls, water: left },
  } = fallingBeside(salts, product, water, at);
  if (left === undefined) return undefined;
  const out = per.map(({ dry, perGram }, i) => (falls[i] ? dry - perGram * left : 0));
  return { dry: out, solids: out.map((dry, i) => dry * (1 + per[i]!.binds)), water: left };
}
