// Wrong kinds of arguments are refused by the name of the argument, never by a TypeError.
import {
  atomicWeight,
  attempt,
  element,
  empiricalFormula,
  formationEnthalpy,
  massAs,
  oxideEquivalents,
  temperatureRise,
  tryMolarMass,
  tryParseFormula,
} from "preparative";
import { expect, it } from "vitest";

type Door = (...args: unknown[]) => { readonly ok: boolean; readonly error?: { code: string; message: string } };

it.each<[string, unknown, unknown[], string, string]>([
  [
    "a property of every object as element",
    (...args: Parameters<typeof element>) => attempt(() => element(...args)),
    ["constructor"],
    "element.unknown",
    "constructor",
  ],
  [
    "a convention nobody knows",
    (...args: Parameters<typeof atomicWeight>) => attempt(() => atomicWeight(...args)),
    ["Pb", { convention: "midpiont" }],
    "element.bad-option",
    "convention",
  ],
  ["no formula", tryMolarMass, [undefined], "formula.not-text", "formula"],
  ["a convention of a molar mass", tryMolarMass, ["Pb", { convention: 1 }], "formula.bad-option", "convention"],
  ["null for options", tryMolarMass, ["Pb", null], "formula.bad-option", "options"],
  ["null for options of reading", tryParseFormula, ["CuSO4·nH2O", null], "formula.bad-option", "options"],
  ["a list as the number n", tryParseFormula, ["CuSO4·nH2O", { n: [3] }], "formula.unknown-number", "n ="],
  [
    "no basis",
    (...args: Parameters<typeof massAs>) => attempt(() => massAs(...args)),
    ["1 g", "ZnCO3"],
    "formula.not-text",
    "as must",
  ],
  [
    "oxides that are no list",
    (...args: Parameters<typeof oxideEquivalents>) => attempt(() => oxideEquivalents(...args)),
    ["FeO", { oxides: "FeO" }],
    "formula.bad-option",
    "oxides",
  ],
  [
    "an analysis as text",
    (...args: Parameters<typeof empiricalFormula>) => attempt(() => empiricalFormula(...args)),
    ["C 40 %"],
    "formula.no-composition",
    "object",
  ],
  [
    "a multiplier as text",
    (...args: Parameters<typeof empiricalFormula>) => attempt(() => empiricalFormula(...args)),
    [{ C: 1 }, { maxMultiplier: "9" }],
    "formula.bad-option",
    "maxMul",
  ],
  [
    "a form that is not text",
    (...args: Parameters<typeof formationEnthalpy>) => attempt(() => formationEnthalpy(...args)),
    ["SiO2", { form: 1 }],
    "thermochemistry.bad-option",
    "form",
  ],
  [
    "no request",
    (...args: Parameters<typeof temperatureRise>) => attempt(() => temperatureRise(...args)),
    [],
    "thermochemistry.missing-option",
    "request",
  ],
  [
    "a hydrate that is no formula",
    (...args: Parameters<typeof temperatureRise>) => attempt(() => temperatureRise(...args)),
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
