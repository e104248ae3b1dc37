// A mixture over a range of pH: what is left of each metal, and which solids stand.

import { readable } from "../../foundation/readable";
import { type MassText, type Quantity, type QuantityLike, quantity, type VolumeText } from "../../quantity";
import { guard } from "../argument";
import { ADDITION_FIELDS, type AdditionOptions } from "../dose/addition";
import { AqueousError } from "../error";
import type { Dissolved } from "../mixture/material";
import { pHInput } from "../mixture/request";
import { debyeHueckelSlope } from "../solve/davies";
import { aqueousComposition, originOf } from "./composition";
import { shownFormula } from "./parts";

/** Ions, and the range to look over. */
export interface OverPHRequest extends AdditionOptions {
  /** Ions or salts with their concentration; what holds the pH is not among them. */
  readonly ions: readonly Dissolved[];
  /** Default 1 L. */
  readonly water?: QuantityLike<"mass" | "volume", MassText | VolumeText>;
  /** pH at which the range begins. */
  readonly from: number | string;
  /** pH at which the range ends. */
  readonly to: number | string;
  /** Default 0.1. */
  readonly step?: number;
}

/** The mixture at one pH. */
export interface AtPH {
  /** The pH that is held at this point. */
  readonly pH: number;
  /** Dissolved, mol/L, by ion. */
  readonly dissolved: Readonly<Record<string, number>>;
  /** Standing, mol/L, by formula. */
  readonly solids: Readonly<Record<string, number>>;
}

/** A mixture over a range of pH. */
export interface OverPH {
  /** One for each step of pH, beginning at `from`. */
  readonly points: readonly AtPH[];
  /** Each metal or other ion that a solid takes: where least of it is dissolved. */
  readonly least: readonly {
    readonly ion: string;
    readonly pH: Quantity<"number">;
    readonly concentration: Quantity<"concentration">;
  }[];
  /** Formulas of the solids that stand somewhere. */
  readonly solids: readonly string[];
  /** What the constants do not cover, in words; figures that depend on it are doubtful. */
  readonly unknown: readonly string[];
}

const FIELDS = { ions: true, water: true, from: true, to: true, step: true, ...ADDITION_FIELDS } as const;
const MOST_POINTS = 2000;

/**
 * What stays dissolved, and which solids stand, over a range of pH.
 *
 * @param request - ions or salts, the range (-1 to 15) and the step
 * @returns points with plain numbers in mol/L, for a drawing, and the pH of least solubility of each ion
 * @throws {AqueousError} as `aqueousComposition`
 * @category In the beaker
 * @example
 * const over = solidsOverPH({ ions: [{ formula: "ZnSO4", concentration: "0.01 mol/L" }], from: 6, to: 14 });
 * over.least[0]?.pH.format({ decimals: 0, uncertainty: "none" }) // => "9"
 */
export function solidsOverPH(request: OverPHRequest): OverPH {
  guard.fields(request, FIELDS, "request");
  const [from, to] = [pHInput(request.from, "from"), pHInput(request.to, "to")].map((q) => q.toNumber()) as [
    number,
    number,
  ];
  const step = request.step ?? 0.1;
  guard.number(step, "step");
  if (!(step > 0) || !(to > from) || (to - from) / step > MOST_POINTS) {
    throw new AqueousError("aqueous.bad-option", `a range of pH with at most ${MOST_POINTS} steps is needed`, {
      details: { from, to, step },
    });
  }
  const { ions, from: _, to: __, step: ___, water = "1 L", ...options } = request;
  const first = aqueousComposition({ ...(options as object), water, dissolved: ions, pH: from });
  const { solved, read } = originOf(first);
  const { model, totals, kilograms } = solved;
  const { equilibrium, species, conditions, components } = model;
  const { system, tableau } = equilibrium;
  const perLitre = kilograms / read.water.toNumber("kg");
  const names = components.map((key) => shownFormula(model.network.formulaOf(key)));
  const points: AtPH[] = [];
  const stood = new Set<string>();
  const taken = new Set<number>();
  const count = Math.round((to - from) / step);
  for (let i = 0; i <= count; i += 1) {
    const pH = from + ((to - from) * i) / count;
    system.lnK[system.m + model.heldPH] = -pH * Math.LN10;
    equilibrium.solve(totals, read.ideal ? 0 : debyeHueckelSlope(model.celsius), i > 0);
    const dissolved: Record<string, number> = {};
    for (let j = 1; j < components.length; j += 1) {
      let sum = 0;
      for (let k = 0; k < species.length; k += 1)
        sum += (species[k]!.expression.of.get(components[j]!) ?? 0) * tableau.c[k]!;
      if (totals[j]! > 0) dissolved[names[j]!] = sum * perLitre;
    }
    const solids: Record<string, number> = {};
    for (let k = 0; k < tableau.basis.length; k += 1) {
      const j = tableau.basis[k]! - system.m;
      if (j < 0 || conditions[j]!.kind !== "solid") continue;
      const { formula, expression } = conditions[j]!;
      solids[formula] = equilibrium.amountOf(k) * perLitre;
      stood.add(formula);
      for (const key of expression.of.keys()) taken.add(components.indexOf(key));
    }
    points.push({ pH: Number(pH.toFixed(6)), dissolved, solids });
  }
  const least = [...taken]
    .filter((j) => j > 0 && species[j]!.charge > 0)
    .sort((a, b) => a - b)
    .map((j) => {
      const ion = names[j]!;
      let best = points[0]!;
      for (const point of points) if (point.dissolved[ion]! < best.dissolved[ion]!) best = point;
      return {
        ion,
        pH: quantity({ value: best.pH, unit: "" }, { symbol: "pH", label: `pH at which least ${ion} is dissolved` }),
        concentration: quantity(
          { value: best.dissolved[ion]!.toPrecision(4), unit: "mol/L" },
          { symbol: `c(${ion})`, label: `least ${ion} dissolved` },
        ),
      };
    });
  const over = Object.freeze(readable({ points, least, solids: [...stood], unknown: first.unknown }));
  given.add(over);
  return over;
}

/** Answers of `solidsOverPH`, so that a picture is drawn of nothing else. */
const given = /* @__PURE__ */ new WeakSet<object>();

/** Is this an answer of `solidsOverPH`? */
export const isOverPH = (value: unknown): value is OverPH =>
  typeof value === "object" && value !== null && given.has(value);
