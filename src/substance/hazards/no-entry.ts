// What is said where no classification was found.
import { byElements } from "../../formula/internal";
import { list } from "../../foundation/wording";
import { anhydrousKey, type Notation, readNotation, textOf } from "../../ion/internal";
import { FOOD_ADDITIVES } from "../data/food-additives";
import { DISPOSAL, HAZARD_FIELD_SOURCES } from "../data/hazards";
import { KIN_ADVICE, NOT_LISTED } from "../data/not-listed";
import { citeHazard } from "../data/sources";
import type { Asked, SubstanceCautions } from "./entry";
import { dangerOf } from "./never-made";

const NOT_LOOKED_UP = "not looked up in any list here: read the safety data sheet";
const NOT_LISTED_TEXT = "not in the harmonised list of the EU: its safety data sheet says what the supplier found";
const NO_DISPOSAL = "Ask hazardous-waste collection; the local rules decide.";

/** Rows by substance, crystal water aside. */
const byCore = <Row extends { readonly formula: string }>(rows: readonly Row[]): ReadonlyMap<string, Row> =>
  new Map(rows.map((row) => [anhydrousKey(readNotation(row.formula)).key, row]));

const additives = /* @__PURE__ */ byElements(FOOD_ADDITIVES, ({ formula }) => formula, byCore);

const unlisted = /* @__PURE__ */ byElements(
  () => NOT_LISTED().flatMap(({ formulas, source }) => formulas.map((formula) => ({ formula, source }))),
  ({ formula }) => formula,
  byCore,
);

/** What is known of the element that matters most. */
const kinOf = ({ parts }: Notation): (typeof KIN_ADVICE)[number] | undefined =>
  KIN_ADVICE.find(({ element }) => parts.some(({ counts }) => counts.has(element)));

/** What the label of an unlisted compound says of its element; undefined where nothing is known. */
export function labelByKin(formula: string): string | undefined {
  const { onLabel, text } = kinOf(readNotation(formula)) ?? {};
  return onLabel ? text?.split(":")[0] : undefined;
}

/** A formula that no classification has: a food, one that was looked up in vain, or one that nobody looked up. */
export function noEntry(material: string, { formula, notation }: Asked): SubstanceCautions {
  const { key } = anhydrousKey(notation);
  const text = textOf(notation);
  const food = additives(text).get(key);
  const source = food?.source ?? unlisted(text).get(key)?.source;
  const kin = food === undefined ? kinOf(notation) : undefined;
  const danger = dangerOf(notation);
  const deadly = danger === undefined || danger.opens ? [] : [`${danger.name}: ${DEADLY[danger.code]}`];
  const says = food !== undefined ? foodText(food.number) : source === undefined ? NOT_LOOKED_UP : undefined;
  return {
    material,
    formula,
    status: food !== undefined ? "food" : source === undefined ? "not looked up" : "not listed",
    ...(food?.number === undefined ? {} : { additive: food.number }),
    pictograms: [],
    statements: [],
    cautions: [...deadly, ...(says === undefined ? [] : [says]), ...(kin === undefined ? [] : [kin.text])],
    firstAid: [],
    protection: [],
    disposal: kin === undefined ? NO_DISPOSAL : DISPOSAL[kin.disposal],
    notes:
      food === undefined
        ? source === undefined
          ? []
          : [NOT_LISTED_TEXT]
        : ["never eat what has been in a workshop; other grades may contain more"],
    ...(source === undefined ? {} : { source, citation: citeHazard(source) }),
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

const foodText = (number: string | undefined): string =>
  number === undefined ? "a food: no hazard is listed here" : `a food additive (${number}): no hazard is listed here`;

/** What is said of a substance that no plan makes. */
const DEADLY: Readonly<Record<string, string>> = {
  explosive:
    "goes off at a touch, spark or knock; do not make it, move it or throw it away: call those who remove explosives",
  "deadly-gas": "a breath of it kills; do not make it",
};

/** A text that is no name and no formula known here. */
export function unread(material: string, nearest: readonly string[]): SubstanceCautions {
  const near = nearest.length === 0 ? [] : [`did you mean ${list(nearest, "or")}`];
  return {
    material,
    status: "not read",
    pictograms: [],
    statements: [],
    firstAid: [],
    protection: [],
    cautions: [[`not read: "${material}" is not a name or formula known here`, ...near].join("; ")],
    disposal: NO_DISPOSAL,
    notes: ["not known here, so nothing is said of what it must not meet", ...near],
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

/** A good that no formula stands for. */
export const withoutFormula = (material: string, what: string): SubstanceCautions => ({
  material,
  status: "not looked up",
  pictograms: [],
  statements: [],
  firstAid: [],
  protection: [],
  cautions: [NOT_LOOKED_UP],
  disposal: NO_DISPOSAL,
  notes: [`${what}: no formula stands for it, so nothing is said of what it must not meet`],
  adviceSource: HAZARD_FIELD_SOURCES.cautions,
});
