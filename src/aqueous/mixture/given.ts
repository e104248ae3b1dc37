// The caller's own constants: added to the tables in place of theirs, or used alone.
import { parseFormula } from "../../formula";
import { ownRow } from "../../foundation/facts";
import { remembering } from "../../foundation/memo";
import { ACID_STEPS } from "../../ion/internal";
import { isQuantity, type QuantityLike } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { COMPLEXES } from "../data/complexes";
import { AqueousError } from "../error";
import { givenConstant } from "./constant";
import { termsOf } from "./material";
import { Network } from "./network";
import { atomsOf, HYDRON, keyOf, type Term } from "./notation";
import { addConversions, PKW, network as tabulated, wholeNetwork } from "./tabulated";

/** A decimal logarithm, as text or number, with an uncertainty where the caller knows one. */
export type LogarithmLike = QuantityLike | number;

/** Constants of the caller, as decimal logarithms (`p` for minus). Tabulated ones of the same things are not used then. */
export interface GivenConstants {
  /** Use nothing of the tables. */
  readonly only?: boolean;
  /** Of water, minus log10 of its ion product. */
  readonly pKw?: LogarithmLike;
  /** Of an acid, one for each hydron, the first one first: `{ H2CO3: ["6.35", "10.33"] }`. */
  readonly pKa?: Readonly<Record<string, LogarithmLike | readonly LogarithmLike[]>>;
  /** Of a solid that dissociates into its ions. */
  readonly pKsp?: Readonly<Record<string, LogarithmLike>>;
  /** Of a complex made of a metal ion and one kind of ligand. */
  readonly logBeta?: Readonly<Record<string, LogarithmLike>>;
  /** Of a gas: minus log10 of molality / atm. */
  readonly pKH?: Readonly<Record<string, LogarithmLike>>;
}

export const GIVEN_FIELDS = { only: true, pKw: true, pKa: true, pKsp: true, logBeta: true, pKH: true } as const;

/** A constant as it was given; one of the caller's own facts keeps its source. */
function read(like: LogarithmLike, symbol: string, label: string) {
  const own = isQuantity(like) && like.source !== undefined ? { source: like.source } : {};
  const text = typeof like === "number" ? String(like) : like;
  return givenConstant(symbol, label, expectDimension(text, "number", symbol, { symbol, label, ...own }));
}

/** The formula with one hydron less. */
export function withoutHydron(text: string): string {
  const known = ACID_STEPS().find(({ acid }) => keyOf(acid) === keyOf(text));
  if (known !== undefined) return known.base;
  const atoms = new Map(atomsOf(text));
  const left = (atoms.get("H") ?? 0) - 1;
  if (left < 0) {
    throw new AqueousError("aqueous.bad-option", `${text} has no proton to give`, { details: { acid: text } });
  }
  if (left === 0) atoms.delete("H");
  else atoms.set("H", left);
  const charge = (atoms.get("e") ?? 0) - 1;
  atoms.delete("e");
  const body = [...atoms].map(([symbol, n]) => `${symbol}${n === 1 ? "" : n}`).join("");
  return charge === 0 ? body : `${body}^${Math.abs(charge) === 1 ? "" : Math.abs(charge)}${charge > 0 ? "+" : "-"}`;
}

let ligandNames: readonly string[] | undefined;

/** The metal ion and the ligands of a complex, `[Ag(NH3)2]^+`. */
function partsOf(complex: string): { readonly metal: string; readonly ligand: string; readonly n: number } {
  ligandNames ??= [...new Set([...COMPLEXES().map(({ ligand }) => ligand), ...ACID_STEPS().map(({ base }) => base)])];
  const atoms = atomsOf(complex);
  const charge = atoms.get("e") ?? 0;
  const metals = COMPLEXES().map(({ metal }) => metal);
  let other: { metal: string; ligand: string; n: number } | undefined;
  for (const ligand of ligandNames) {
    const own = atomsOf(ligand);
    const symbols = [...own.keys()].filter((symbol) => symbol !== "e");
    const n = Math.min(...symbols.map((symbol) => (atoms.get(symbol) ?? 0) / own.get(symbol)!));
    if (!Number.isInteger(n) || n < 1) continue;
    const rest = [...atoms].filter(([symbol, count]) => symbol !== "e" && count !== n * (own.get(symbol) ?? 0));
    if (rest.length !== 1) continue;
    const [symbol, count] = rest[0]!;
    const z = charge - n * (own.get("e") ?? 0);
    if (count - n * (own.get(symbol) ?? 0) !== 1 || z <= 0 || z > 4) continue;
    const metal = `${symbol}${z === 1 ? "" : `^${z}`}+`;
    if (metals.includes(metal)) return { metal, ligand, n };
    other ??= { metal, ligand, n };
  }
  if (other !== undefined) return other;
  throw new AqueousError("aqueous.bad-option", `the metal ion and the ligand of ${complex} are not seen`, {
    input: complex,
    position: 0,
    hint: "write it with its charge, such as [Ag(NH3)2]^+",
  });
}

const asList = <T>(value: T | readonly T[]): readonly T[] => (Array.isArray(value) ? value : [value as T]);

const whole = /* @__PURE__ */ remembering<Network>(1);

/** The network of the tables, with the constants of the caller's own facts; made once for each set of facts. */
export function network(): Network {
  const own = ownRow<GivenConstants>("constants", () => "given");
  return own === undefined ? tabulated() : whole("", () => filled(wholeNetwork(), own));
}

/** The network of the tables and the caller's constants, or of these alone. */
export function networkWith(given: GivenConstants | undefined): Network {
  if (given === undefined) return network();
  guard.fields(given, GIVEN_FIELDS, "constants");
  if (given.only === true) return filled(new Network(), given);
  const own = ownRow<GivenConstants>("constants", () => "given");
  const made = wholeNetwork();
  return filled(own === undefined ? made : filled(made, own), given);
}

/** A network with constants in place of what it has for the same things. */
function filled(made: Network, given: GivenConstants): Network {
  const alone = given.only === true;
  if (alone || given.pKw !== undefined) {
    const pKw = given.pKw === undefined ? PKW : read(given.pKw, "pKw", "ionic product of water, given");
    made.form("OH-", () => [[[-1, HYDRON]], [[pKw, -1]]]);
  }
  if (alone) addConversions(made);
  for (const [acid, list] of Object.entries(given.pKa ?? {})) {
    let from = acid;
    for (const [i, like] of asList(list).entries()) {
      const base = withoutHydron(from);
      const symbol = `pKa(${parseFormula(from)})`;
      const constant = read(like, symbol, `pKa of ${acid}, step ${i + 1}, given`);
      made.form(from, () => [
        [
          [1, base],
          [1, HYDRON],
        ],
        [[constant, 1]],
      ]);
      from = base;
    }
  }
  for (const [complex, like] of Object.entries(given.logBeta ?? {})) {
    const { metal, ligand, n } = partsOf(complex);
    const constant = read(like, `log β(${parseFormula(complex)})`, `stability constant of ${complex}, given`);
    made.form(complex, () => [
      [
        [1, metal],
        [n, ligand],
      ],
      [[constant, 1]],
    ]);
  }
  for (const [solid, like] of Object.entries(given.pKsp ?? {})) {
    const formula = parseFormula(solid);
    const terms = termsOf(formula, made);
    const constant = read(like, `pKsp(${formula})`, `pKsp of ${solid}, given`);
    made.removePhases(({ formula: other }) => keyOf(other) === keyOf(String(formula)));
    made.addPhase({ kind: "solid", formula: solid, name: solid, form: undefined, row: undefined, notes: [] }, () => [
      terms,
      [[constant, -1]],
    ]);
  }
  const dissolved: Readonly<Record<string, Term[]>> = { CO2: [[1, "H2CO3"]], SO2: [[1, "H2SO3"]] };
  for (const [gas, like] of Object.entries(given.pKH ?? {})) {
    const constant = read(like, `pKH(${gas})`, `Henry constant of ${gas}, given`);
    made.removePhases(({ kind, formula }) => kind === "gas" && keyOf(formula) === keyOf(gas));
    made.addPhase({ kind: "gas", formula: gas, name: gas, form: undefined, row: undefined, notes: [] }, () => [
      dissolved[gas] ?? [[1, gas]],
      [[constant, -1]],
    ]);
  }
  return made;
}
