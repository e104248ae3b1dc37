// Wrong units are compile errors.
import { expectTypeOf, test } from "vitest";
import { amountOf, dilute, gasVolume, massOf, titrate } from "../../src/amount";
import { pHOf } from "../../src/aqueous";
import { molarMass } from "../../src/formula";
import { equivalentMass, hydrationNumber } from "../../src/hydrate";
import { type Quantity, quantity } from "../../src/quantity";

test("a wrong unit in a literal does not compile", () => {
  // @ts-expect-error a volume is no mass
  amountOf("1 L", "NaCl");
  // @ts-expect-error a mass is no amount
  massOf("1 g", "NaCl");
  // @ts-expect-error moles are no assay
  amountOf("1 g", "NaCl", { assay: "1 mol" });
  // @ts-expect-error a pressure is no temperature
  gasVolume("1 mol", { temperature: "1 bar" });
  // @ts-expect-error a strength needs a unit of strength
  dilute({ from: "5 g", take: "1 L", makeUpTo: "2 L" });
  // @ts-expect-error a titre is a volume
  titrate({ titrant: { strength: "0.1 mol/L" }, titre: "1 g" });
  // @ts-expect-error moles are weighed nowhere
  equivalentMass("1 mol", { from: "MgSO4", to: "MgSO4·7H2O" });
  // @ts-expect-error a mass is needed
  hydrationNumber({ before: "5 mL", after: "3 g", anhydrous: "CuSO4" });
  // @ts-expect-error the dimension of a quantity is known too
  amountOf(quantity("1 L"), "NaCl");
  // @ts-expect-error nor is a molar mass a mass
  amountOf(molarMass("NaCl"), "NaCl");
  // @ts-expect-error or a pH
  amountOf(pHOf({ water: "1 L", dissolved: [] }), "NaCl");
});

test("results know their dimension", () => {
  expectTypeOf(amountOf("1 g", "NaCl")).toEqualTypeOf<Quantity<"amount of substance">>();
  expectTypeOf(massOf("1 mol", "NaCl")).toEqualTypeOf<Quantity<"mass">>();
  expectTypeOf(gasVolume("1 mol")).toEqualTypeOf<Quantity<"volume">>();
});
