// Hazards of what is handled, by the strength that is really used, and what protects.
import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { capital } from "../../foundation/wording";
import type { Plan } from "../../preparation";
import { ALCOHOL, gasesThatMayCome, grindingOf, isFreeHalogen } from "../../preparation/internal";
import type { SubstanceCautions } from "../../substance";
import {
  DRIES_TO_OXIDISER,
  firstAidFor,
  type OfficialPrecaution,
  officialPrecautions,
  officialText,
  protectionFor,
} from "../../substance/internal";
import type { Block, Cell } from "../document/blocks";
import { pretty } from "../figures";
import { pictogram } from "../pictures/pictogram";
import { filled, type SheetWords } from "../words";
import { type OnPaper, weighedAs } from "./context";
import { givesFuel, irritatesHot, isFired, keepsFlamesOff } from "./heat";

/** What takes no part in the equation and is handled all the same, under its formula as printed. */
const asidesOf = ({ request }: Plan): ReadonlyMap<string, string> =>
  new Map(request.materials.flatMap(({ aside, form, name }) => (aside === true ? [[pretty(String(form)), name]] : [])));

/** Materials, product and gases; a salt in the liquor only where it is classified. */
function isHandled(plan: Plan, one: SubstanceCautions): boolean {
  if (one.status === "classified") return true;
  const name = pretty(one.material);
  return (
    plan.weighings.some(({ form }) => form === name) ||
    asidesOf(plan).has(name) ||
    name === weighedAs(plan).formula ||
    plan.gas.some(({ formula }) => formula === name)
  );
}

/** Each statement as its label prints it, with its code. */
export const statementsOf = ({ statements }: SubstanceCautions): string =>
  statements.map(({ code, paraphrase }) => `${officialText(code) ?? capital(paraphrase)} (${code}).`).join(" ");

/** The group of compounds whose classification stands in for a formula without an entry; undefined for an entry of its own. */
const kinOf = ({ classifiedAs }: SubstanceCautions): string | undefined =>
  classifiedAs === undefined || attempt(() => parseFormula(classifiedAs)).ok ? undefined : classifiedAs;

/** What the classification says, in one sentence. */
function hazardOf(one: SubstanceCautions, words: SheetWords): string {
  if (one.status === "food")
    return one.additive === undefined ? words.food : filled(words.additive, { number: one.additive });
  if (one.status === "not listed") return words.notListed;
  if (one.status === "not looked up" || one.status === "not read") return words.notLookedUp;
  if (one.status === "not classified")
    return one.strength === undefined && one.dissolved !== true ? words.noClass : words.dilute;
  const kin = kinOf(one);
  const statements = `${statementsOf(one)}${kin === undefined ? "" : ` ${filled(words.takenAs, { kin })}`}`;
  return one.signalWord === undefined
    ? statements
    : `${one.signalWord === "Danger" ? words.dangerWord : words.warningWord}: ${statements}`;
}

/** What to care for, without the line that only says that nothing was found, and without what is said once for all. */
export const ownCautions = ({ status, cautions }: SubstanceCautions): readonly string[] =>
  status === "food"
    ? []
    : cautions.filter((text) => text !== DRIES_TO_OXIDISER && (status !== "not looked up" || !text.startsWith(status)));

function nameOf({ plan, words }: OnPaper, one: SubstanceCautions): string {
  const { weighings, product, alcohol } = plan;
  const name = pretty(one.material);
  const material = weighings.find(({ form }) => form === name)?.material ?? asidesOf(plan).get(name);
  const asAlcohol = alcohol !== undefined && one.material === ALCOHOL ? words.alcoholName : undefined;
  const own = material ?? asAlcohol ?? (name === product.formula && product.name !== name ? product.name : undefined);
  const strength = one.strength === undefined ? "" : `, ${one.strength}`;
  return `${own === undefined ? "" : `${own}, `}${name}${strength}`;
}

/** Entries of one material in several forms: aluminium as powder is not aluminium as sheet. */
const formsOf = ({ cautions }: Plan, { material }: SubstanceCautions): readonly SubstanceCautions[] =>
  cautions.substances.filter((other) => other.material === material);

/** The name with the form, where there are several. */
const nameWithForm = (on: OnPaper, one: SubstanceCautions): string =>
  one.form === undefined || formsOf(on.plan, one).length === 1 ? nameOf(on, one) : `${nameOf(on, one)} (${one.form})`;

function pictogramsOf(entries: readonly SubstanceCautions[]): Cell {
  const pictograms = new Map(
    entries.flatMap((one) => one.pictograms.map(({ code, paraphrase }) => [code, paraphrase])),
  );
  return {
    svg: [...pictograms].map(([code, paraphrase]) => pictogram(code!, paraphrase!)).join(""),
    text: [...pictograms.keys()].join(" "),
  };
}

/** One row for a material, whatever forms it may be in. */
function rowOf(on: OnPaper, entries: readonly SubstanceCautions[]): Cell[] {
  const { words } = on;
  const [first] = entries;
  const hazard =
    entries.length === 1
      ? hazardOf(first!, words)
      : entries
          .map((one) => filled(words.ofForm, { form: one.form ?? "", hazard: hazardOf(one, words).replace(/\.$/, "") }))
          .join("; ");
  return [nameOf(on, first!), pictogramsOf(entries), hazard, [...new Set(entries.flatMap(ownCautions))].join("; ")];
}

/** What dries to an oxidiser, said once. */
function driesLine({ plan }: OnPaper): string[] {
  const names = plan.cautions.substances
    .filter(({ cautions }) => cautions.includes(DRIES_TO_OXIDISER))
    .map(({ material }) => pretty(material));
  return names.length === 0 ? [] : [`${[...new Set(names)].join(" + ")}: ${DRIES_TO_OXIDISER}.`];
}

/** A precautionary statement with the names of what asks for it. */
interface AskedPrecaution extends Pick<OfficialPrecaution, "code" | "text" | "source"> {
  readonly materials: readonly string[];
}

/** Precautionary statements that what is handled asks for, in the order of a label. */
export function precautionsOf(on: OnPaper): readonly AskedPrecaution[] {
  const { plan } = on;
  const handled = plan.cautions.substances
    .filter((one) => isHandled(plan, one))
    .map((one) => ({ name: nameWithForm(on, one), codes: one.statements.map(({ code }) => code) }));
  // one code may stand in two wordings: the eyes of one material, hands and eyes of another
  const asked = handled.flatMap(({ name, codes }) => officialPrecautions(codes).map((one) => ({ name, one })));
  const order = officialPrecautions(handled.flatMap(({ codes }) => codes)).map(({ code }) => code);
  const wordings = [...new Set(asked.map(({ one }) => one))].sort(
    (one, other) => order.indexOf(one.code) - order.indexOf(other.code),
  );
  return wordings.map((wording) => ({
    code: wording.code,
    text: wording.text,
    source: wording.source,
    materials: asked.filter(({ one }) => one === wording).map(({ name }) => name),
  }));
}

/** How the solids of a charge are ground together. */
const howGround = (plan: Plan) =>
  grindingOf(
    [...plan.weighings.map(({ form }) => form), ...asidesOf(plan).keys(), plan.product.formula].map((one) =>
      parseFormula(one),
    ),
  );

/** Protection that the codes of what is handled ask for. */
function protection({ plan, words }: OnPaper): string[] {
  const codes = plan.cautions.substances.flatMap(({ statements }) => statements.map(({ code }) => code));
  const kinds = new Set(protectionFor(codes).map(({ kind }) => kind));
  const airs = plan.gas.length > 0 || kinds.has("air") || plan.alcohol !== undefined || irritatesHot(plan);
  const isOfDust = kinds.has("dust");
  const ground = isFired(plan) && plan.weighings.length > 1 ? howGround(plan) : undefined;
  const dust = ground === "wet" ? words.dustOfSlip : isFired(plan) ? words.dryDust : words.dust;
  const asks = new Set(plan.steps.flatMap(({ cautions }) => cautions.map((one) => one.asks)));
  const isSplashed = asks.has("gloves and apron");
  const hood =
    asks.has("fume hood") ||
    plan.gas.some((one) => one.hood) ||
    plan.steps.some(({ apparatus }) => apparatus === "fume hood") ||
    kinds.has("hood") ||
    gasesThatMayCome(plan.cautions, plan.equation.reactants).length > 0 ||
    isFreeHalogen(parseFormula(plan.product.formula));
  return [
    // worn for any work of this kind, whatever the codes say (common practice)
    words.goggles,
    ...(kinds.has("gloves") || isSplashed || asks.has("gloves") ? [words.gloves] : []),
    ...(kinds.has("apron") || isSplashed ? [words.apron] : []),
    ...(hood ? [words.hood] : airs ? [givesFuel(plan) ? words.airOfFuel : isOfDust ? words.airOfDust : words.air] : []),
    ...(asks.has("vented kiln") ? [words.ventedKiln] : []),
    ...(keepsFlamesOff(plan) ? [words.flame] : []),
    ...(kinds.has("fuel") ? [words.fuel] : []),
    ...(isOfDust || kinds.has("mask") ? [dust] : []),
    ...(kinds.has("unborn") ? [words.unborn] : []),
    words.read,
  ];
}

export function hazardBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const { substances, incompatibilities, closing } = plan.cautions;
  const handled = substances.filter((one) => isHandled(plan, one));
  const aid = firstAidFor(handled.flatMap(({ statements }) => statements.map(({ code }) => code)));
  const materials = [...new Set(handled.map(({ material }) => material))];
  const rows = materials.map((material) =>
    rowOf(
      on,
      handled.filter((one) => one.material === material),
    ),
  );
  const apart = incompatibilities.map(
    ({ materials, what, condition }) =>
      `${words.together}: ${materials.map(pretty).join(" + ")}: ${what}${condition === undefined ? "" : ` (${condition})`}.`,
  );
  const known = plan.assumptions
    .filter(({ value }) => plan.request.acknowledge?.includes(value) === true)
    .map(({ value, what }) => `${words.check}: ${value} (${what}).`);
  const items = [...new Set([...apart, ...driesLine(on), ...known])];
  return [
    { kind: "heading", text: words.hazards },
    { kind: "table", head: [words.material, words.pictogram, words.statement, words.careful], rows },
    ...(items.length === 0 ? [] : [{ kind: "list", items } as const]),
    { kind: "ticks", items: protection(on) },
    ...(aid.length === 0
      ? []
      : [{ kind: "paragraph", text: `${words.firstAid}: ${aid.join("; ")}.`, small: true } as const]),
    { kind: "paragraph", text: closing, small: true },
  ];
}
