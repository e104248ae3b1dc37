// What the product may really be: the formulas a precipitate of this metal is known to have, and what the same metal would
// weigh as each of them.
import { type Formula, molarMass, parseFormula } from "../formula";
import type { Quantity } from "../quantity";
import type { Formed } from "./account";
import { nameOfFormula } from "./material";

/** The product under another formula, for the same metal. */
export interface Candidate {
  readonly formula: string;
  /** The formula the plan is made for. */
  readonly wanted: boolean;
  readonly theoreticalYield: Quantity<"mass">;
}

/** Carbonates a bench precipitation of each metal may give, wanted or not (bench-practice ignition table, own arithmetic). */
const CARBONATES: Readonly<Record<string, readonly string[]>> = {
  Cu: ["Cu2(OH)2CO3", "Cu3(OH)2(CO3)2", "CuCO3"],
  Zn: ["Zn5(CO3)2(OH)6", "ZnCO3"],
  Mg: [
    "Mg5(CO3)4(OH)2·4H2O",
    "Mg4(CO3)3(OH)2·3H2O",
    "Mg4(CO3)3(OH)2·4H2O",
    "Mg5(CO3)4(OH)2·5H2O",
    "MgCO3·3H2O",
    "MgCO3",
  ],
  Ni: ["Ni3(CO3)(OH)4·4H2O", "Ni3(CO3)(OH)4", "NiCO3"],
  Co: ["Co2(OH)2CO3", "CoCO3"],
  Pb: ["Pb3(CO3)2(OH)2", "PbCO3"],
};

/** Elements that are not what a product is named for. */
const COMMON = new Set(["C", "H", "N", "O", "S", "P", "F", "Cl", "Br", "I", "Na", "K", "D", "T"]);

/** The element a product is weighed by: its only metal, if it has just one. */
export function keyElement(product: Formula): string | undefined {
  const metals = product.symbols.filter((symbol) => !COMMON.has(symbol));
  return metals.length === 1 ? metals[0] : undefined;
}

const isCarbonate = (formula: Formula): boolean => /CO3/.test(formula.toString()) && formula.symbols.includes("O");

/** Is this one of the carbonates the table knows, water of crystallization aside? */
export function isKnownCarbonate(formula: Formula): boolean {
  const key = keyElement(formula);
  return key !== undefined && isCarbonate(formula) && CARBONATES[key] !== undefined;
}

/** The carbonates of the same metal as a product, other than itself; none for what is no carbonate. */
export function carbonatesLike(product: Formula): Formula[] {
  const key = keyElement(product);
  if (key === undefined || !isCarbonate(product)) return [];
  return (CARBONATES[key] ?? []).map((text) => parseFormula(text)).filter((f) => !f.hasSameComposition(product));
}

export function candidatesFor(product: Formula, formed: Formed, extra: readonly string[]): Candidate[] {
  const wanted: Candidate = { formula: formed.formula, wanted: true, theoreticalYield: formed.mass };
  const key = keyElement(product);
  if (key === undefined) return [wanted];
  const known = isCarbonate(product) ? (CARBONATES[key] ?? []) : [];
  const others = [...known, ...extra].map((text) => parseFormula(text)).filter((f) => !f.hasSameComposition(product));
  const seen = new Set<string>();
  const metal = formed.amount
    .times(product.count(key))
    .named({ symbol: `n(${key})`, rule: `amount of ${key} = amount × atoms of ${key} in the formula` });
  return [
    wanted,
    ...others.flatMap((formula) => {
      const name = nameOfFormula(formula);
      const atoms = formula.count(key);
      if (seen.has(name) || atoms.n === 0n) return [];
      seen.add(name);
      const theoreticalYield = metal
        .dividedBy(atoms)
        .times(molarMass(formula))
        .to("g")
        .named({
          symbol: `m(${name})`,
          label: `the same ${key} as ${name}`,
          rule: `mass = amount of ${key} / atoms in the formula × molar mass`,
        });
      return [{ formula: name, wanted: false, theoreticalYield }];
    }),
  ];
}
