// Hazards of what is handled, by the strength that is really used, and what protects.
import type { Plan } from "../../preparation";
import type { SubstanceCautions } from "../../substance";
import { officialText } from "../../substance/internal";
import type { Block, Cell } from "../document/blocks";
import { capital, pretty } from "../figures";
import { pictogram } from "../pictures/pictogram";
import { filled, type SheetWords } from "../words";
import type { OnPaper } from "./context";

/** Materials, product and gases; a salt in the liquor only where it is classified. */
function isHandled({ weighings, product, gas }: Plan, one: SubstanceCautions): boolean {
  if (one.status === "classified") return true;
  const name = pretty(one.material);
  return (
    weighings.some(({ form }) => form === name) ||
    name === product.formula ||
    gas.some(({ formula }) => formula === name)
  );
}

/** Each statement as its label prints it, with its code. */
export const statementsOf = ({ statements }: SubstanceCautions): string =>
  statements.map(({ code, paraphrase }) => `${officialText(code) ?? capital(paraphrase)} (${code}).`).join(" ");

/** What the classification says, in one sentence. */
function hazardOf(one: SubstanceCautions, words: SheetWords): string {
  if (one.status === "food")
    return one.additive === undefined ? words.food : filled(words.additive, { number: one.additive });
  if (one.status === "not looked up" || one.status === "not read") return words.notLookedUp;
  if (one.status === "not classified") return one.strength === undefined ? words.noClass : words.dilute;
  const statements = statementsOf(one);
  return one.signalWord === undefined
    ? statements
    : `${one.signalWord === "Danger" ? words.dangerWord : words.warningWord}: ${statements}`;
}

function nameOf({ weighings, product }: Plan, one: SubstanceCautions): string {
  const name = pretty(one.material);
  const material = weighings.find(({ form }) => form === name)?.material;
  const own = material ?? (name === product.formula && product.name !== name ? product.name : undefined);
  const strength = one.strength === undefined ? "" : `, ${one.strength}`;
  return own === undefined ? `${name}${strength}` : `${own}, ${name}${strength}`;
}

const pictogramsOf = ({ pictograms }: SubstanceCautions): Cell => ({
  svg: pictograms.map(({ code, paraphrase }) => pictogram(code, paraphrase)).join(""),
  text: pictograms.map(({ code }) => code).join(" "),
});

/** Protection that the codes of what is handled ask for. */
function protection({ plan, words }: OnPaper): string[] {
  const codes = plan.cautions.substances.flatMap(({ statements }) => statements.map(({ code }) => code));
  const any = (pattern: RegExp): boolean => codes.some((code) => pattern.test(code));
  const hood = plan.gas.some((one) => one.hood) || any(/^H33[01]|^EUH0(?:29|31|32)/);
  const gasses = plan.gas.length > 0;
  return [
    ...(any(/^H31[4589]/) || gasses ? [words.goggles] : []),
    ...(any(/^H31[0-7]/) ? [words.gloves] : []),
    ...(any(/^H314/) ? [words.apron] : []),
    ...(hood ? [words.hood] : gasses || any(/^H33[2-6]/) ? [words.air] : []),
    ...(any(/^H22[0-8]|^H27[0-2]|^H26[01]/) || plan.gas.some(({ formula }) => formula === "H₂") ? [words.flame] : []),
    ...(any(/^H334|^H350|^H341|^H372/) ? [words.dust] : []),
    words.read,
  ];
}

export function hazardBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const { substances, incompatibilities, closing } = plan.cautions;
  const rows = substances
    .filter((one) => isHandled(plan, one))
    .map((one): Cell[] => [
      nameOf(plan, one),
      pictogramsOf(one),
      hazardOf(one, words),
      one.status === "not looked up" || one.status === "food" ? "" : one.cautions.join("; "),
    ]);
  const apart = incompatibilities.map(
    ({ materials, what, condition }) =>
      `${words.together}: ${materials.map(pretty).join(" + ")}: ${what}${condition === undefined ? "" : ` (${condition})`}.`,
  );
  const known = plan.assumptions
    .filter(({ value }) => plan.request.acknowledge?.includes(value) === true)
    .map(({ value, what }) => `${words.check}: ${value} (${what}).`);
  const items = [...new Set([...apart, ...known])];
  return [
    { kind: "heading", text: words.hazards },
    { kind: "table", head: [words.material, words.pictogram, words.statement, words.careful], rows },
    ...(items.length === 0 ? [] : [{ kind: "list", items } as const]),
    { kind: "ticks", items: protection(on) },
    { kind: "paragraph", text: closing, small: true },
  ];
}
