// Cautions where they are needed: step by step of the work, from what is handled in each and from what the step does.

import { ALKALI_METALS } from "../../element/internal";
import type { Formula } from "../../formula";
import { frozen } from "../../foundation/frozen";
import { lazily } from "../../foundation/lazy";
import { once, remembering } from "../../foundation/memo";
import { readableInside } from "../../foundation/readable";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import type { Cautions, SubstanceCautions } from "../../substance";
import { madeOf, thermalStepsOf } from "../../substance/internal";
import { cite, type SourceKey } from "../data/sources";
import {
  type FumeGround,
  IGNITION_FUMES,
  WORK_CAUTIONS,
  type WorkCautionRow,
  type WorkCondition,
  type WorkStep,
} from "../data/work-cautions";
import { isHeatSensitive } from "../identity/by-ignition";
import { residueOf } from "../identity/ignition";
import type { BatchFigures } from "../planning/batch-figures";
import { planned } from "../planning/exact";
import { dryingOf } from "../procedure/drying";
import { kindOf as kindOfSetting } from "../procedure/kind";
import { isWashedWithAlcohol } from "../procedure/protection";
import { useOf } from "../procedure/use";
import { absorbentOf } from "../reaction/absorbing";
import { isAcid, isAmmonia } from "../reaction/acids";
import { gasRow, isGas } from "../reaction/fluids";
import { nameOfFormula, type Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { type Acknowledged, inWords } from "./combinations";

/** One caution with its ground. */
export interface StepCaution {
  /** Formula, or formulas that must not meet, as printed; undefined where the work itself asks for care. */
  readonly about: string | undefined;
  /** The caution itself, for a person to read. */
  readonly text: string;
  /** Key of the source; `cite` prints it. */
  readonly source: SourceKey;
  /** The source in words, with the index number of a classification. */
  readonly citation: string;
  /** Which adding it belongs to: where diluted acid is met, a solid goes into acid, or gas leaves; undefined for each that reacts. */
  readonly adding?: "acid" | "solid" | "gas";
}

/** A step of the work and what to mind in it. */
export interface StepCautions {
  /** Which part of the work. */
  readonly step: WorkStep;
  /** Formulas of what is handled, as printed. */
  readonly handled: readonly string[];
  /** Those of the work first, then of the substances that are handled in this step; under `waste` how to get rid of each. */
  readonly cautions: readonly StepCaution[];
}

interface Given {
  readonly setting: Setting;
  readonly batch: BatchFigures;
}

const caution = (about: string | undefined, text: string, source: SourceKey, citation = cite(source)): StepCaution => ({
  about,
  text,
  source,
  citation,
});

/** More than a tenth, up to which a liquid counts as dilute; a solution whose strength cannot be determined counts as strong. */
const isMoreThanDilute = ({ massFraction }: Material): boolean => (massFraction()?.compare(planned("dilute")) ?? 1) > 0;

const isStrongAcid = (m: Material): boolean => m.isSolution && isAcid(m.form) && isMoreThanDilute(m);
const isAlkali = ({ form }: Material): boolean => {
  const { cations, anions } = constitutionOf(form);
  const hydroxide = anions.length === 1 && anions[0]!.formula === "OH-";
  return hydroxide && cations.every(({ element = "" }) => ALKALI_METALS.has(element));
};
const isWarm = (rise: Quantity): boolean => rise.compare(planned("warm")) >= 0;
const isAmmoniaWater = (m: Material): boolean => m.isSolution && isAmmonia(m.species.formula) && isMoreThanDilute(m);
const isStrongAlkali = (m: Material): boolean => isAlkali(m) && isMoreThanDilute(m);
const kindOf = ({ setting }: Given): string => kindOfSetting(setting);
/** All that is taken in hand, what takes no part in the equation with it. */
const packsOf = ({ materials, asides }: Setting): readonly Material[] => [...materials, ...asides];
/** Alcohol goes into the liquor or over the crystals, or the steps say that it may. */
const meetsAlcohol = ({ setting: { request, asides, product }, batch: { isolation } }: Given): boolean =>
  isolation.how === "unknown" ||
  request.washing?.rinse === "alcohol" ||
  asides.some((one) => useOf(one, product.formula) === "alcohol");
const handlesAmmonia = ({ setting }: Given): boolean =>
  [...setting.reactants, ...setting.products].some((s) => isAmmonia(s.formula));

/** Some of the gas goes through a wash bottle, and with it all. */
const isTrapped = ({ setting }: Given): boolean =>
  setting.products.some(
    (one) => one !== setting.product && isGas(one.formula, setting.wet) && absorbentOf(one.formula) !== undefined,
  );

/** A dry product that an oven, or a mistake with one, changes. */
function isHurtByHeat(product: Formula): boolean {
  const { upTo } = dryingOf(product);
  const changes = thermalStepsOf(product)[0]?.from;
  if (changes !== undefined && changes.compare(planned("overheated")) <= 0) return true;
  return upTo !== undefined && upTo.compare(planned("oven")) < 0;
}

/** When a row of the table holds. */
const HOLDS: Readonly<Record<WorkCondition, (given: Given) => boolean>> = {
  "strong acid": ({ setting }) => packsOf(setting).some(isStrongAcid),
  "strong alkali": ({ setting }) => packsOf(setting).some(isStrongAlkali),
  "strong ammonia": ({ setting }) => packsOf(setting).some(isAmmoniaWater),
  "dissolving warms": ({ batch }) => batch.dissolvingHeat.some((one) => "rise" in one && isWarm(one.rise.rise)),
  "mixing warms": ({ batch: { heat } }) => "rise" in heat && isWarm(heat.rise.rise),
  boils: ({ batch: { heat } }) => "rise" in heat && heat.rise.boils === true,
  "heat not known": (given) =>
    "missing" in given.batch.heat &&
    (given.setting.materials.some(isStrongAcid) || ["redox", "displacement", "metal and acid"].includes(kindOf(given))),
  "diluted acid": ({ setting, batch }) =>
    setting.materials.some((m, i) => {
      const feed = batch.feeds[i]!;
      return isStrongAcid(m) && feed.how === "solution" && feed.dilution !== undefined;
    }),
  gas: (given) => given.batch.gas.length > 0 && (!given.setting.wet || !isTrapped(given)),
  "gas through a trap": (given) => given.setting.wet && isTrapped(given),
  "gas for the hood": ({ batch }) => batch.gas.some((gas) => gas.hood),
  "flammable gas": ({ setting }) =>
    setting.products.some(({ formula }) => isGas(formula, setting.wet) && gasRow(formula)?.burns === true),
  oxygen: ({ setting }) => setting.products.some(({ formula }) => isOneOf(formula, "O2")),
  "solid into acid": ({ setting, batch }) =>
    batch.vessel?.intoAcid === true && setting.materials.some(({ form }) => isAcid(form)),
  ammonia: handlesAmmonia,
  "ammonia in a hot liquor": (given) => handlesAmmonia(given) && given.batch.crystallising?.asItForms === false,
  "ammonia in a cold liquor": (given) => handlesAmmonia(given) && given.batch.crystallising?.asItForms !== false,
  redox: (given) => kindOf(given) === "redox",
  antisolvent: meetsAlcohol,
  "washed with alcohol": ({ setting: { product, wet } }) => wet && isWashedWithAlcohol(product.formula),
  crystallising: ({ batch }) => batch.crystallising?.asItForms === false,
  "drying limit": ({ setting: { product, wet } }) => wet && isHurtByHeat(product.formula),
  "heat sets it off": ({ setting }) => isHeatSensitive(setting.product.formula),
  "acid left": ({ setting, batch }) =>
    setting.wet &&
    (setting.asides.some(({ form }) => isAcid(form)) ||
      setting.materials.some(({ form }, i) => isAcid(form) && batch.materialBalance.supplied[i]!.left.isPositive())),
  "metals left": ({ batch }) => batch.waste.metals.some((metal) => metal.precipitate),
  always: () => true,
};

/** Materials that a row is about, where it is about some of them and not the work as a whole. */
function concerned({ step, when }: WorkCautionRow, { setting, batch }: Given): readonly Material[] | undefined {
  if (step !== "weighing" && step !== "dissolving") return undefined;
  const packs = packsOf(setting);
  if (when === "strong acid") return packs.filter(isStrongAcid);
  if (when === "strong alkali") return packs.filter(isStrongAlkali);
  if (when === "strong ammonia") return packs.filter(isAmmoniaWater);
  if (when !== "dissolving warms") return undefined;
  const warms = (name: string): boolean =>
    batch.dissolvingHeat.some((one) => one.material === name && "rise" in one && isWarm(one.rise.rise));
  return setting.materials.filter(({ shelf }) => warms(shelf.name));
}

/** Cautions of mixing that do not belong to every adding that reacts. */
const ADDING: Partial<Record<WorkCondition, StepCaution["adding"]>> = {
  "diluted acid": "acid",
  "solid into acid": "solid",
  gas: "gas",
  "gas through a trap": "gas",
  "gas for the hood": "gas",
  "flammable gas": "gas",
  oxygen: "gas",
};

/** The cautions of a row that holds: one for each material that it is about, or one for the work. */
function ofWork(row: WorkCautionRow, given: Given): StepCaution[] {
  const about = concerned(row, given)?.map(({ form }) => nameOfFormula(form)) ?? [undefined];
  const adding = row.step === "mixing" ? ADDING[row.when] : undefined;
  return about.map((name) => ({
    ...caution(name, row.text, row.source),
    ...(adding === undefined ? {} : { adding }),
  }));
}

const saidOf = /* @__PURE__ */ new WeakMap<
  SubstanceCautions,
  { readonly name: string; readonly said: StepCaution[] }
>();

/** What the classification says and our own reminders, each with its own source; kept with the entry, which plans share. */
function ofSubstance(name: string, entry: SubstanceCautions): readonly StepCaution[] {
  const before = saidOf.get(entry);
  if (before?.name === name) return before.said;
  const said = frozen(wordsFor(name, entry), readableInside);
  saidOf.set(entry, { name, said });
  return said;
}

function wordsFor(name: string, entry: SubstanceCautions): StepCaution[] {
  const own = entry.cautions.map((text) => caution(name, text, entry.adviceSource));
  if (entry.source === undefined) return own;
  const signal = entry.signalWord === undefined ? "" : `${entry.signalWord}: `;
  const codes = entry.statements.map((one) => `${one.paraphrase} (${one.code})`).join("; ");
  const none =
    entry.strength === undefined ? "no hazard listed in the source" : "too dilute for any statement of its class";
  const said = codes === "" ? `${none}, which is not the same as safe` : `${signal}${codes}`;
  const which = entry.strength ?? entry.form;
  const form = which === undefined ? "" : ` [${which}]`;
  return [caution(name, `${said}${form}`, entry.source, entry.citation), ...own];
}

/** A substance of the plan: its text in the cautions, and as printed. */
interface Handled {
  readonly text: string;
  readonly name: string;
}

const handledOf = ({ formula, name }: Pick<Species, "formula" | "name">): Handled => ({
  text: formula.toString(),
  name,
});

/** What is handled in each step, in the order of the bench; a step in which nothing is, is left out. */
function handledIn(given: Given): readonly (readonly [WorkStep, readonly Handled[]])[] {
  const { setting, batch } = given;
  const { materials, products, product, wet } = setting;
  const inHand = ({ form }: Material): Handled => ({ text: form.toString(), name: nameOfFormula(form) });
  const taken = materials.map(inHand);
  const aside = setting.asides.map(inHand);
  const isFluid = (species: Species): boolean => isGas(species.formula, wet);
  const gases = products.filter(isFluid).map(handledOf);
  const beside = products.filter((s) => s !== product && !s.isWater && !isFluid(s)).map(handledOf);
  const dissolved = taken.filter((_, i) => {
    const { how } = batch.feeds[i]!;
    return how === "dissolve" || how === "unknown" || (how === "solution" && isMoreThanDilute(materials[i]!));
  });
  const over = taken.filter((_, i) => batch.materialBalance.supplied[i]!.left.isPositive());
  const own = isFluid(product) ? [] : [handledOf(product)];
  const isKept = batch.isolation.how === "liquor";
  const steps: [WorkStep, readonly Handled[]][] = [
    ["weighing", [...taken, ...aside]],
    ["dissolving", wet ? [...dissolved, ...setting.asides.filter(isStrongAcid).map(inHand)] : []],
    ["mixing", wet ? [...taken, ...aside, ...gases] : []],
    ["heating", wet ? [] : [...taken, ...aside, ...gases]],
    ["isolating", wet ? [...own, ...beside] : []],
    ["drying", isKept ? [] : own],
    ["ignition test", isKept || ignitionOf(setting) === undefined ? [] : own],
    ["waste", [...over, ...aside, ...beside, ...(isKept ? [] : own)]],
  ];
  return steps.filter(([, handled]) => handled.length > 0);
}

const holds = (formula: Formula, symbol: string): boolean => formula.count(symbol).n !== 0n;

/** Whether a solid has what the fume comes from. */
const GIVES_OFF: Readonly<Record<FumeGround, (formula: Formula) => boolean>> = {
  sulfur: (formula) => holds(formula, "S"),
  "nitrogen oxides": (formula) => ["nitrate", "nitrite"].some((name) => madeOf(formula).groups.has(name)),
  ammonia: (formula) => madeOf(formula).ammonium || madeOf(formula).ammonia,
  organic: (formula) => madeOf(formula).organic,
  cyanide: (formula) => madeOf(formula).cyanide !== undefined || madeOf(formula).groups.has("thiocyanate"),
  chlorine: (formula) => holds(formula, "Cl"),
  carbonate: (formula) => madeOf(formula).groups.has("carbonate"),
};

const rememberedFumes = /* @__PURE__ */ remembering<readonly StepCaution[] | undefined>(200);

/** What red heat drives out of the product; undefined where it leaves nothing by which the product is recognised. */
function ignitionOf({ product: { formula, name } }: Setting): readonly StepCaution[] | undefined {
  return rememberedFumes(formula.toString(), () => {
    const left = residueOf(formula, undefined)?.residue;
    if (left === undefined || left.hasSameComposition(formula)) return undefined;
    return IGNITION_FUMES.filter(
      ({ of, element }) => GIVES_OFF[of](formula) && (element === undefined || left.count(element).n === 0n),
    ).map((row) => caution(name, row.text, row.source));
  });
}

/** Which step it is where materials and products come together. */
const meetsIn = ({ wet }: Setting): WorkStep => (wet ? "mixing" : "heating");

/** The rows of the table for each step, in its order. */
const workCautions = /* @__PURE__ */ once(() => {
  const rows = new Map<WorkStep, WorkCautionRow[]>();
  for (const row of WORK_CAUTIONS()) rows.set(row.step, [...(rows.get(row.step) ?? []), row]);
  return rows as ReadonlyMap<WorkStep, readonly WorkCautionRow[]>;
});

/** The cautions of a step are put together when they are looked at: some ask for heats that nothing else needs. */
export function stepCautionsOf(
  setting: Setting,
  batch: BatchFigures,
  known: Cautions,
  acknowledged: readonly Acknowledged[],
): StepCautions[] {
  const given = { setting, batch };
  const steps = handledIn(given);
  const everything = steps.flatMap(([, list]) => list);
  const entriesFor = ({ text }: Handled): readonly SubstanceCautions[] =>
    known.substances.filter((entry) => entry.material === text);
  const printed = (text: string): string => everything.find((one) => one.text === text)?.name ?? text;
  const together = (): StepCaution[] =>
    known.incompatibilities.map(({ materials, what, condition, source, citation }) => {
      const text = condition === undefined ? what : `${what} (${condition})`;
      return caution(materials.map(printed).join(" and "), text, source, citation);
    });
  const meant = acknowledged.map((one) =>
    caution(undefined, inWords({ ...one, about: one.about.map(printed) }), one.source),
  );
  const isNew = ({ text }: Handled, before: number): boolean =>
    !steps.slice(0, before).some(([, list]) => list.some((one) => one.text === text));
  return steps.map(([step, list], at) =>
    lazily<StepCautions>({
      step: () => step,
      handled: () => [...new Set(list.map((one) => one.name))],
      cautions: () =>
        unique([
          ...(workCautions().get(step) ?? [])
            .filter(({ when }) => HOLDS[when](given))
            .flatMap((row) => ofWork(row, given)),
          ...(step === "ignition test" ? (ignitionOf(setting) ?? []) : []),
          ...(step === meetsIn(setting) ? [...meant, ...together()] : []),
          ...list
            .filter((one) => isNew(one, at))
            .flatMap((one) => entriesFor(one).flatMap((entry) => ofSubstance(one.name, entry))),
          ...(step === "waste" ? list : []).flatMap((one) =>
            entriesFor(one).map((entry) => caution(one.name, entry.disposal, entry.adviceSource)),
          ),
        ]),
    }),
  );
}

/** The same words about the same thing once. */
function unique(cautions: readonly StepCaution[]): StepCaution[] {
  const seen = new Set<string>();
  return cautions.filter(({ about, text }) => {
    const key = `${about} ${text}`;
    return !seen.has(key) && seen.add(key) !== undefined;
  });
}
