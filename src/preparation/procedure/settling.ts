// What a liquor of several salts lets go of at a temperature: each keeps its own solubility in pure water, a hydrate that comes
// takes water away from all, and what no table has a figure for stays where it is.

import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { keptBeside } from "../../foundation/memo";
import type { Quantity } from "../../quantity";
import { trySolubilityOf } from "../../solubility";
import { fallingFrom, saturatedBy, settleSalts } from "../../solubility/internal";
import type { Entry } from "../contents/entry";
import { type Matter, massOfWater, matterOf } from "../contents/matter";
import type { Coming } from "../operation/concentrate";
import { exact } from "../planning/exact";
import { spelledLike } from "../reaction/spelling";

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

/** The same as figures of the balance. */
const saturated = /* @__PURE__ */ keptBeside(({ perHundredGramsWater, solid }: Saturated) =>
  saturatedBy(perHundredGramsWater, solid.formula.toString()),
);

/** What comes out of a liquor, and the water that is left in it. */
interface Settled {
  readonly coming: readonly Coming[];
  readonly water: Quantity;
}

/**
 * What of the entries so much water lets go at a temperature, as the solids that stand there; undefined where the crystals would
 * bind all the water.
 */
export function settledFrom(
  entries: readonly Entry[],
  water: Quantity,
  at: Quantity<"temperature">,
): Settled | undefined {
  const known = entries.flatMap((entry) => {
    const figure = entry.matter.isWater ? undefined : saturatedAt(entry.matter, at);
    return figure === undefined ? [] : [{ entry, figure }];
  });
  const settled = attempt(() =>
    settleSalts(
      known.map(({ entry: { matter, amount }, figure }) => ({
        dry: amount.times(matter.core.molarMass).to("g"),
        saturated: saturated(figure),
      })),
      water,
    ),
  );
  if (!settled.ok) return undefined;
  const coming = known.flatMap(({ entry, figure }, i): Coming[] => {
    const dry = settled.value.solids[i]!;
    if (!dry.isPositive()) return [];
    return [{ matter: figure.solid, amount: dry.dividedBy(entry.matter.core.molarMass).to("mol") }];
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
}

/** The same in plain grams: what comes of each salt, without and with its crystal water, and the water left; undefined as above. */
export function balanceOf(
  salts: readonly Salt[],
  water: number,
  at: Quantity<"temperature">,
): { readonly dry: number[]; readonly solids: number[]; readonly water: number } | undefined {
  const per = salts.map(({ dry, matter, keeps = 1 }) => {
    const figure = saturatedAt(matter, at);
    // what no table has a figure for stays where it is
    return { dry, perGram: keeps * (figure?.perGram ?? Number.POSITIVE_INFINITY), binds: figure?.binds ?? 0 };
  });
  const { falls, water: left } = fallingFrom(per, water);
  if (left === undefined) return undefined;
  const out = per.map(({ dry, perGram }, i) => (falls[i] ? dry - perGram * left : 0));
  return { dry: out, solids: out.map((dry, i) => dry * (1 + per[i]!.binds)), water: left };
}
