// A compound as routes see it: what it is without crystal water, its ions, the form it stands in. Hydrates are one compound.
import { type Formula, parseFormula } from "../formula";
import { attempt } from "../foundation/error";
import { once, remembering } from "../foundation/memo";
import { type Constitution, constitutionOf } from "../ion";
import { fateInRoom, SETTLES, type SettlesRow, SYRUPS } from "../preparation/internal";
import { trySolubilityOf } from "../solubility";

/** One compound, crystal water left out. */
export interface Compound {
  /** Equal for all hydrates and ways of writing. */
  readonly key: string;
  /** Forms that are known, as tables or the shelf write them. */
  readonly forms: readonly string[];
  readonly made: Constitution;
  /** The only cation, or undefined. */
  readonly cation: string | undefined;
  /** The only anion, or undefined. */
  readonly anion: string | undefined;
}

const formulas = /* @__PURE__ */ remembering<Formula>(3000);

/** A formula, read once. */
export const formulaFrom = (text: string): Formula => formulas(text, () => parseFormula(text));

const constitutions = /* @__PURE__ */ remembering<Constitution | undefined>(3000);

/** What a formula is made of; undefined for what no rule reads. */
export const madeOf = (text: string): Constitution | undefined =>
  constitutions(text, () => {
    const read = attempt(() => constitutionOf(formulaFrom(text)));
    return read.ok && read.value.kind !== "open" ? read.value : undefined;
  });

/** What a formula is without its crystal water; undefined for what no rule reads. */
export const keyOf = (text: string): string | undefined => {
  const made = madeOf(text);
  return made === undefined ? undefined : made.anhydrousIdentity;
};

/** A compound from its forms. */
export function compoundOf(key: string, forms: readonly string[], made: Constitution): Compound {
  const { cations, anions, ligands, molecules } = made;
  const simple = ligands.length === 0 && molecules.length === 0;
  return {
    key,
    forms,
    made,
    cation: simple && cations.length === 1 ? cations[0]!.formula : undefined,
    anion: simple && anions.length === 1 ? anions[0]!.formula : undefined,
  };
}

const settled = /* @__PURE__ */ once(() => new Map(SETTLES.map((row) => [keyOf(row.formula), row])));
const syrups = /* @__PURE__ */ once(() => new Map(SYRUPS.map((row) => [keyOf(row.formula), row])));

/** The form in which it is got at the bench, where its curve does not say. */
export const settlesAs = (key: string): SettlesRow | undefined => settled().get(key);

/** Why it is kept in solution; undefined for what can be brought out. */
export const whyDissolved = ({ key }: Compound): string | undefined => syrups().get(key)?.why;

const stands = /* @__PURE__ */ remembering<string>(2000);
const ROOM = "20 °C";

/** The form in which a compound stands at the temperature of a room: what its curve says, else the known one with most water. */
export const formOf = ({ key, forms, made }: Compound): string =>
  stands(`${key} ${forms.join(" ")}`, () => {
    const settled = settlesAs(key);
    if (settled !== undefined) return settled.settles;
    if (forms.length === 1 && made.waters === 0 && made.kind !== "salt") return forms[0]!;
    for (const form of forms) {
      const known = trySolubilityOf(form, ROOM);
      if (!known.ok) continue;
      const solid = known.value.solidPhase;
      if (solid !== undefined && keyOf(solid) === key)
        return forms.find((one) => madeOf(one)?.identity === madeOf(solid)?.identity) ?? solid;
    }
    return forms.reduce((a, b) => ((madeOf(b)?.waters ?? 0) > (madeOf(a)?.waters ?? 0) ? b : a));
  });

const fates = /* @__PURE__ */ remembering<boolean | undefined>(2000);

/** Does it precipitate from water? Undefined where nobody knows. */
export const falls = (compound: Compound): boolean | undefined =>
  fates(compound.key, () => fateInRoom(formulaFrom(formOf(compound))).precipitated);

/** Is one of these ions among its cations? */
export const hasCation = ({ made }: Compound, ...cations: readonly string[]): boolean =>
  made.cations.some(({ formula }) => cations.includes(formula));
