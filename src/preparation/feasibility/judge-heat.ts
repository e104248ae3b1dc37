// What heat does to a dry solid, by the table of thermal steps.

import { type Formula, parseFormula } from "../../formula";
import type { ThermalStep } from "../../substance";
import { heatingOf } from "../reaction/heating";
import { sameCore } from "../reaction/species";
import type { Case } from "./case";
import type { Ruling } from "./feasibility";

/** The verdict on a thermal decomposition. */
export function judgeHeat(c: Case): Ruling {
  const { product } = c;
  const { name, formula } = product.species;
  const feed = c.put.find(({ made }) => made.kind !== "element") ?? c.put[0]!;
  const steps = heatingOf(feed.species.formula);
  const has = (one: ThermalStep, is: (made: Formula) => boolean): boolean =>
    [...one.remains, ...one.leaves].some((made) => is(parseFormula(made.formula)));
  // A hydrate on the way is not the salt: another solid, hotter.
  const step = steps.find((one) => has(one, (made) => made.hasSameComposition(formula)));
  if (step !== undefined) {
    const from = step.from.toNumber("°C");
    return {
      verdict: "goes",
      share: 1,
      solids: product.gas ? [] : [{ formula: name, moles: 1, share: 1 }],
      reasons: [
        {
          code: "thermal",
          text: `${feed.species.name} gives ${name} from ${from} °C on`,
          figures: [{ value: from, unit: "°C", label: `heat from which ${name} forms` }],
          source: step.source,
        },
      ],
    };
  }
  const hydrate = steps.findIndex((one) => has(one, (made) => sameCore(made, formula)));
  const last = steps[hydrate];
  if (last !== undefined && hydrate < steps.length - 1) {
    const next = steps.slice(hydrate + 1).find((one) => !has(one, (made) => sameCore(made, formula)));
    if (next !== undefined)
      return {
        verdict: "does not go",
        share: 0,
        solids: [],
        reasons: [
          {
            code: "thermal",
            text: `${feed.species.name} never gives ${name}: it still contains water when it turns into ${next.remains.map((one) => parseFormula(one.formula).toUnicode()).join(" and ")}, from ${next.from.toNumber("°C")} °C on, and ${next.leaves.map((one) => parseFormula(one.formula).toUnicode()).join(" and ")} leave`,
            figures: [{ value: next.from.toNumber("°C"), unit: "°C", label: "heat from which it decomposes" }],
            source: next.source,
          },
        ],
      };
  }
  return {
    verdict: "unknown",
    solids: [],
    reasons: [
      {
        code: "missing",
        text:
          steps.length === 0
            ? `missing: what heat does to ${feed.species.name}, step by step`
            : `missing: a step in which ${feed.species.name} gives ${name}; known are ${steps.map((s) => s.remains.map((one) => one.formula).join(" + ")).join(", then ")}`,
        source: steps[0]?.source ?? "commonPractice",
      },
    ],
  };
}
