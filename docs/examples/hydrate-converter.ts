// A recipe asks for one form of a salt, the shelf has another: how much of it is the same? Try it:
// npx tsx --tsconfig test/tsconfig.json docs/examples/hydrate-converter.ts "12.5 g" CuSO4 "blue vitriol"
import { equivalentMass, identify, molarMass, parseFormula, type Quantity, quantity, soldHydrates } from "preparative";

/** The formula that a word or formula stands for; a word that leaves the form open is asked about. */
export function formulaFor(text: string): string {
  const { formula, meanings, hint } = identify(text);
  if (formula !== undefined) return formula;
  const choices = meanings.map((one) => `${one.formula} (${one.name})`).join(", ");
  throw new Error(choices === "" ? `"${text}" is not known: ${hint}` : `"${text}" may be ${choices}`);
}

export function convert(mass: string, asked: string, onShelf: string): string[] {
  const [from, to] = [formulaFor(asked), formulaFor(onShelf)];
  const wanted = quantity(mass);
  const same = equivalentMass(wanted as Quantity<"mass">, { from, to });
  const line = (formula: string): string =>
    `${parseFormula(formula).toUnicode()} ${molarMass(formula).format({ decimals: 2 })}`;
  return [
    `${wanted} of ${line(from)}`,
    `is as much as ${same.format({ decimals: 2 })} of ${line(to)}`,
    `sold as ${soldHydrates(to)
      .map((form) => form.formula.toUnicode())
      .join(", ")}`,
  ];
}

const [, script, mass, asked, onShelf] = process.argv;
if (script?.endsWith("hydrate-converter.ts")) {
  console.log(convert(mass ?? "12.5 g", asked ?? "CuSO4", onShelf ?? "blue vitriol").join("\n"));
}
