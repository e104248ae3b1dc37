// What published classifications say about each material, and which of them must not meet. Reminders, not training:
// every answer ends by deferring to the safety data sheet, the local rules and a qualified person.

import type { Fields } from "../../foundation/argument";
import { attempt, type Result } from "../../foundation/error";
import { factsInForce, lookingIn, under } from "../../foundation/facts";
import { readNotation, tryReadNotation } from "../../ion/internal";
import { quantity } from "../../quantity";
import { guard } from "../argument";
import type { SolidForm } from "../data/hazards";
import type { Circumstance } from "../data/incompatibilities";
import { readableText, type SubstanceRefusal } from "../error";
import { nearestNames } from "../names/formula-of";
import { goodNamed } from "../names/goods";
import { withoutLabelWords } from "../names/label-words";
import { mayBeShortName, type Resolved, resolveAll } from "../names/resolve";
import { MOST_NEAREST } from "../names/words";
import { formulasMeantBy, formulasSoldAs, nearestShopNames, strengthsSoldAs } from "../shop/sold-goods";
import {
  type Asking,
  type CautionOptions,
  type Cautions,
  cautionsOver,
  checkedCircumstances,
  checkedList,
  checkedState,
} from "./entries";
import type { Asked } from "./entry";
import type { Meeting } from "./incompatibility";

const OF_STRENGTH = {
  material: true,
  strength: true,
  inCylinder: true,
  dissolved: true,
  state: true,
} as const satisfies Fields<MaterialOfStrength>;

/** A material with its strength, on which statements and rules for strong solutions rest, or in its cylinder. */
export interface MaterialOfStrength {
  /** Name or formula. */
  readonly material: string;
  /** Mass fraction, such as "5 %". */
  readonly strength?: string;
  /** A gas under pressure: statements and pictogram of the cylinder are added. */
  readonly inCylinder?: boolean;
  /** It stays dissolved in water, at a strength that is not known: dangers by fire of the dry solid are left out. */
  readonly dissolved?: boolean;
  /** The form of a solid, where its forms are classified apart, as powder and pieces of a metal; read from the name where it is left out. */
  readonly state?: SolidForm;
}

/** Formulas a text may stand for: a formula, or all readings of a name with the forms sold under it. */
function meanings(material: string): Resolved[] {
  const sold = formulasSoldAs(material);
  // `TSP` is a good of the shop before it is tritium, sulfur and phosphorus
  const isGood = sold.length > 0 && mayBeShortName(material);
  const known = isGood ? [] : resolveAll(material);
  if (known.length > 0 && tryReadNotation(material) !== undefined) return known;
  const formulas = new Set([...known.map((one) => one.formula), ...sold]);
  // a name of the caller's own adds a meaning here and takes none away: what is said of a danger is never less
  if (factsInForce() !== undefined)
    for (const { formula } of under(undefined, () => meanings(material))) formulas.add(formula);
  // a name that only shares words with a good, such as "pool shock", is taken for it where nothing else is known
  if (formulas.size === 0 && /\p{L}/u.test(material))
    for (const formula of goodNamed(material)?.contains ?? formulasMeantBy(material)) formulas.add(formula);
  return [...formulas].map((formula) => ({ given: material, formula, notation: readNotation(formula) }));
}

/** Names near to a text that was not read, of substances and of goods. */
const nearestTo = (text: string): string[] =>
  [...new Set([...nearestNames(text), ...nearestShopNames(text)])].slice(0, MOST_NEAREST);

/** Mass fraction in percent. */
function percentOf(strength: string | undefined): number | undefined {
  return strength === undefined
    ? undefined
    : quantity(strength as "5 %")
        .in("%")
        .toNumber();
}

/** Each strength that was given or is sold under a name, mass %; one of `undefined` where none is known. */
function percentsOf(text: string, formula: string, strength: string | undefined): (number | undefined)[] {
  if (strength !== undefined) return [percentOf(strength)];
  if (tryReadNotation(text) !== undefined) return [undefined];
  const sold = new Set([...strengthsSoldAs(text, formula), ...under(undefined, () => strengthsSoldAs(text, formula))]);
  return sold.size === 0 ? [undefined] : [...sold];
}

/**
 * What published classifications say about each material, and which of them must not meet. A material without an entry
 * says so and points to its safety data sheet; it is never called safe. A text that is not read is said aloud: no silence
 * covers it.
 *
 * @param materials - names, shop names or formulas; with `strength` (mass fraction in water) the statements that apply at
 * that strength, and rules for strong solutions left out at 10 % and below and met above; shop solutions as strong as they are sold; with
 * `inCylinder` a gas under pressure; with `dissolved` a solid in its liquor, and with `state` a solid in one of its forms
 * @param options - `circumstances`: "closed vessel", "kitchen"; `facts`: facts of the caller's own, whose hazards and rules are
 * added to ours and take none away
 * @returns one or more entries per material (a shop name may stand for several substances, a substance for several forms)
 * @throws {SubstanceError} `substance.bad-input`, `substance.too-long`; {@link QuantityError} for what is not a strength
 * @source CLP Annex VI (17th adaptation) and two national lists, as `source` of each entry and of each code says; paraphrases,
 * cautions and disposal notes are our own
 * @category Cautions
 * @example
 * cautions(["CuSO4·5H2O"]).substances[0]?.signalWord // => "Danger"
 * cautions(["CuSO4·5H2O"]).substances[0]?.statements[0]?.source // => "clpAnnexVI"
 * cautions(["CuSO4·3H2O"]).substances[0]?.classifiedAs // => "CuSO4"
 * cautions([{ material: "CH3COOH", strength: "20 %" }]).substances[0]?.statements.map((one) => one.code) // => ["H315", "H319"]
 * cautions(["aluminium foil"]).substances.map((one) => one.form) // => ["massive"]
 * cautions([{ material: "NaNO3", dissolved: true }]).substances[0]?.statements.map((one) => one.code) // => ["H319"]
 * cautions(["white vinegar"]).substances[0]?.status // => "not classified"
 * cautions(["moon dust"]).substances[0]?.status // => "not read"
 * cautions(["viengar"]).notRead[0]?.nearest // => ["vinegar"]
 * cautions(["bleach", "vinegar"]).incompatibilities[0]?.code // => "hypochlorite-acid"
 */
export function cautions(materials: readonly (string | MaterialOfStrength)[], options?: CautionOptions): Cautions {
  const circumstances = checkedCircumstances(options);
  return lookingIn(options?.facts, guard, () => cautionsWhere(materials, circumstances));
}

/** The same, with what is known of the way the materials meet. */
export function cautionsWhere(
  materials: readonly (string | MaterialOfStrength)[],
  circumstances: readonly Circumstance[],
  meeting?: Meeting,
): Cautions {
  const list = checkedList(materials).map((one): Asking => {
    if (typeof one === "object" && one !== null) guard.fields(one, OF_STRENGTH, "a material");
    const {
      material,
      strength,
      inCylinder = false,
      dissolved = false,
      state,
    }: MaterialOfStrength = typeof one === "object" && one !== null ? one : { material: one };
    const text = readableText(material, "a name or a formula");
    const read = meanings(text);
    const label = read.length > 0 || goodNamed(text) !== undefined ? undefined : withoutLabelWords(text);
    const name = label?.text ?? text;
    const stated = strength ?? label?.percent;
    const asked = (label === undefined ? read : meanings(name)).flatMap((meaning) =>
      percentsOf(name, meaning.formula, stated).map((percent): Asked => {
        return {
          ...meaning,
          given: text,
          inCylinder: inCylinder === true,
          dissolved: dissolved === true,
          ...(state === undefined ? {} : { state: checkedState(state) }),
          ...(percent === undefined ? {} : { percent }),
        };
      }),
    );
    const good = asked.length === 0 ? goodNamed(text) : undefined;
    const nearest = asked.length === 0 && good === undefined ? nearestTo(text) : [];
    return { text, asked, percent: percentOf(stated), nearest, ...(good === undefined ? {} : { good: good.what }) };
  });
  return cautionsOver(list, circumstances, meeting);
}

/**
 * As {@link cautions}, with the error returned instead of thrown.
 *
 * @category Cautions
 * @example
 * tryCautions([""]).ok // => false
 */
export function tryCautions(
  materials: readonly (string | MaterialOfStrength)[],
  options?: CautionOptions,
): Result<Cautions, SubstanceRefusal> {
  return attempt(() => cautions(materials, options));
}
