// What heat does to a solid, all the way: what one substance leaves may be the next one of the table.
import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import type { ThermalStep } from "../../substance";
import { thermalStepsOf } from "../../substance/internal";

const remembered = /* @__PURE__ */ remembering<readonly ThermalStep[]>(100);

/** The steps of a solid, and those of what alone remains after its last one; nothing where nothing is known. */
export const heatingOf = (formula: Formula): readonly ThermalStep[] =>
  remembered(String(formula), () => {
    const steps = [...thermalStepsOf(formula)];
    for (const step of steps) {
      const [only, ...others] = step.remains;
      if (step !== steps.at(-1) || only === undefined || others.length > 0) continue;
      // each later one must begin hotter, so that no row of the table leads back
      steps.push(...thermalStepsOf(parseFormula(only.formula)).filter(({ from }) => from.compare(step.from) > 0));
    }
    return steps;
  });
