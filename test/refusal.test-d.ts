import { expectTypeOf, test } from "vitest";
import {
  type NameReading,
  tryBenchSheet,
  tryFindRoutes,
  tryFormulaOf,
  tryParseFormula,
  tryPlanPreparation,
  trySolubilityOf,
} from "../src/index";

test("a code tells the details of its own layer and of those below", () => {
  const name = tryFormulaOf("alum");
  if (!name.ok && name.error.code === "substance.ambiguous-name")
    expectTypeOf(name.error.details.readings).toEqualTypeOf<readonly NameReading[]>();
  const formula = tryParseFormula("CuSo4");
  if (!formula.ok && formula.error.code === "formula.unknown-symbol")
    expectTypeOf(formula.error.details.written).toBeString();
  const solubility = trySolubilityOf("CuSo4", "20 °C");
  if (!solubility.ok && solubility.error.code === "formula.unknown-symbol")
    expectTypeOf(solubility.error.details.written).toBeString();
  const plan = tryPlanPreparation({} as never);
  if (!plan.ok && plan.error.code === "plan.does-not-go")
    expectTypeOf(plan.error.details.reasons[0]!.text).toBeString();
  if (!plan.ok && plan.error.code === "equation.underdetermined")
    expectTypeOf(plan.error.details.elementary).toEqualTypeOf<readonly string[]>();
  const routes = tryFindRoutes({ shelf: [] });
  if (!routes.ok && routes.error.code === "route.refused-target") expectTypeOf(routes.error.details.class).toBeString();
  const sheet = tryBenchSheet({} as never);
  if (!sheet.ok && sheet.error.code === "plan.unmatched-material")
    expectTypeOf(sheet.error.details.material).toBeString();
});

test("a code that does not exist does not compile", () => {
  const plan = tryPlanPreparation({} as never);
  // @ts-expect-error misspelt
  if (!plan.ok) expectTypeOf(plan.error.code === "plan.doesnt-go").toBeBoolean();
});
