// Wrong kinds of arguments are refused by the name of the argument, never by a TypeError.
import {
  tryAtomicWeight,
  tryElement,
  tryEmpiricalFormula,
  tryFormationEnthalpy,
  tryMassAs,
  tryMolarMass,
  tryOxideEquivalents,
  tryParseFormula,
  tryTemperatureRise,
} from "preparative";
import { expect, it } from "vitest";

type Door = (...args: unknown[]) => { readonly ok: boolean; readonly error?: { code: string; message: string } };

it.each<[string, unknown, unknown[], string, string]>([
  ["a property of every object as element", tryElement, ["constructor"], "element.unknown", "constructor"],
  [
    "a convention nobody knows",
    tryAtomicWeight,
    ["Pb", { convention: "midpiont" }],
    "element.bad-option",
    "convention",
  ],
  ["no formula", tryMolarMass, [undefined], "formula.not-text", "formula"],
  ["a convention of a molar mass", tryMolarMass, ["Pb", { convention: 1 }], "formula.bad-option", "convention"],
  ["null for options", tryMolarMass, ["Pb", null], "formula.bad-option", "options"],
  ["null for options of reading", tryParseFormula, ["CuSO4·nH2O", null], "formula.bad-option", "options"],
  ["a list as the number n", tryParseFormula, ["CuSO4·nH2O", { n: [3] }], "formula.unknown-number", "n ="],
  ["no basis", tryMassAs, ["1 g", "ZnCO3"], "formula.not-text", "as must"],
  ["oxides that are no list", tryOxideEquivalents, ["FeO", { oxides: "FeO" }], "formula.bad-option", "oxides"],
  ["an analysis as text", tryEmpiricalFormula, ["C 40 %"], "formula.no-composition", "object"],
  ["a multiplier as text", tryEmpiricalFormula, [{ C: 1 }, { maxMultiplier: "9" }], "formula.bad-option", "maxMul"],
  ["a form that is no text", tryFormationEnthalpy, ["SiO2", { form: 1 }], "thermochemistry.bad-option", "form"],
  ["no request", tryTemperatureRise, [], "thermochemistry.missing-option", "request"],
  [
    "a hydrate that is no formula",
    tryTemperatureRise,
    [{ heat: "1 kJ", mass: "1 kg", start: "20 °C", hydrates: [5] }],
    "formula.not-text",
    "formula",
  ],
])("%s is refused", (_, door, args, code, word) => {
  const { ok, error } = (door as Door)(...args);
  expect(ok).toBe(false);
  expect(error?.code).toBe(code);
  expect(error?.message).toContain(word);
});
