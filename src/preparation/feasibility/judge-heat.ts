// What heat does to a dry solid, by the table of thermal steps.

import { parseFormula } from "../../formula";
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
  const step = steps.find(({ remains, leaves }) =>
    [...remains, ...leaves].some((one) => sameCore(parseFormula(one.formula), formula)),
  );
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
