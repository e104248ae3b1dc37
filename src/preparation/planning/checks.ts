// What each kind of preparation is watched for, with its figures: what is over and where it goes, when it is done. Excesses
// stay as they were asked for; where none was, a remark says which one is usual.

import { type Formula, molarMass, parseFormula } from "../../formula";
import { type Quantity, sum } from "../../quantity";
import { madeOf, thermalStepsOf } from "../../substance/internal";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { TAKES_BACK } from "../data/insoluble";
import { whereItCrystallises } from "../feasibility/form-in-water";
import { POT, type Work } from "../procedure/bench";
import { isAcidSalt, isMetal } from "../procedure/kind";
import type { ProcedureKind } from "../procedure/kinds";
import { isByLye, isLye, isPeroxide, type Role } from "../procedure/roles";
import type { Supplied } from "../reaction/account";
import { isAcid, isAmmonia } from "../reaction/acids";
import { keyElement } from "../reaction/candidates";
import { fateOf } from "../reaction/fate";
import { isVolatile } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import type { BatchFigures } from "./batch-figures";
import { exact, lessThanAll, planned } from "./exact";

/** One thing to watch. */
export interface Check {
  /** One sentence for a person to read. */
  readonly text: string;
  /** The figure behind it. */
  readonly figure: Quantity | undefined;
}

/** Crystals as the steps have them: from how much water, and how many. */
interface Grown {
  readonly water: Quantity;
  readonly formula: string;
  readonly mass: Quantity;
}

interface Given {
  readonly setting: Setting;
  readonly batch: BatchFigures;
  /** The work that is looked at: what is over, and what comes out, stands in its vessels. */
  readonly work: Work;
  readonly roles: readonly Role[];
}

interface Feeding {
  readonly material: Material;
  readonly supplied: Supplied;
  readonly isSolid: boolean;
  /** What is left of it is dissolved, and no filter takes it off. */
  readonly dissolves: boolean;
  /** What stands in the vessel once everything has reacted. */
  readonly left: Quantity;
}

const shown = (q: Quantity, figures = 3): string => q.format({ significant: figures, uncertainty: "none" });
const check = (text: string, figure?: Quantity): Check => ({ text, figure });

/** How much of a material stands in a vessel, dissolved or solid. */
function standingOf({ form }: Material, pot: Pot | undefined): Quantity {
  const { key } = matterOf(form).core;
  const own = [...(pot?.books.dissolved ?? []), ...(pot?.books.solids ?? [])].filter(
    ({ matter }) => matter.core.key === key,
  );
  return own.reduce((all, { amount }) => all.plus(amount), exact("0 mol"));
}

/** What is fed; water that stands among the materials is neither precipitant nor excess. */
const feedingsOf = ({ setting, batch, work }: Given): Feeding[] =>
  setting.materials
    .map((material, i): Feeding => {
      const supplied = batch.materialBalance.supplied[i]!;
      // Of two packs of the same each has its share of what is over.
      const alike = setting.materials.flatMap((one, j) =>
        one.species === material.species ? [batch.materialBalance.supplied[j]!.amount] : [],
      );
      const all = standingOf(material, work.reacted ?? work.liquor);
      const left = alike.length === 1 ? all : all.times(supplied.amount).dividedBy(sum(alike));
      const feed = batch.feeds[i]!;
      const dissolves = feed.how !== "solid" || feed.dissolves;
      return { material, supplied, isSolid: feed.how === "solid", dissolves, left };
    })
    .filter(({ material }) => !material.species.isWater);

/** Mass of the form that is left over. */
const leftOf = ({ left, material }: Feeding): Quantity => left.times(molarMass(material.form)).to("g");

/** What is left of it in words: of a solution it is what was dissolved. */
const calledLeft = ({ material }: Feeding): string => (material.isSolution ? material.formName : material.shelf.name);

const isOver = ({ supplied, left }: Feeding): boolean =>
  left.compare(supplied.amount.times(planned("asGoodAsNone"))) > 0;

/** Crystals of the step in which the pot cools; undefined where nothing is cooled. */
function grownIn({ drafts }: Work): Grown | undefined {
  const cooled = drafts.find(({ operation, vessel }) => operation === "cool" && vessel === POT);
  const own = cooled?.after.books.solids.find(({ origin }) => origin === "crystallised");
  return cooled === undefined || own === undefined
    ? undefined
    : { water: cooled.before.books.water, formula: own.matter.name, mass: massOf(own) };
}

/** Does any excess of this precipitant take the product back? */
export function takesBack(precipitant: Formula, metal: string | undefined): boolean {
  const { groups, ammonia } = madeOf(precipitant);
  // Lime and its like do not: only hydroxides of the alkalis are that strong.
  const isLime = groups.has("hydroxide") && !isLye(precipitant);
  return (
    metal !== undefined &&
    !isLime &&
    TAKES_BACK.some((row) => (row.group === "ammonia" ? ammonia : groups.has(row.group)) && row.metals.includes(metal))
  );
}

/** Metal salts that are over: the precipitant is short, and their metal stays in the liquor. */
const carriersOver = (
  key: string | undefined,
  feedings: readonly Feeding[],
  temperature: Quantity<"temperature">,
): Check[] =>
  feedings
    .filter((f) => key !== undefined && f.material.form.count(key).n !== 0n && isOver(f))
    .map((f) => {
      const need = exact("1").dividedBy(f.supplied.timesStoichiometric).to("%");
      return check(
        `the precipitant is ${shown(need)} of what the ${f.material.shelf.name} needs: ${shown(leftOf(f))} of that stays ${
          fateOf(f.material.form, temperature).precipitated === true ? "undissolved, with the product" : "in the liquor"
        }`,
        need,
      );
    });

/** More than twice the need of anything. */
const farOver = (given: Given): Check[] =>
  feedingsOf(given)
    .filter(({ supplied }) => supplied.timesStoichiometric.compare(planned("largeExcess")) > 0)
    .map(({ supplied }) =>
      check(
        `${supplied.material} is ${shown(supplied.timesStoichiometric)} times the need: the excess stays in the liquor, in the product or in the air`,
        supplied.timesStoichiometric,
      ),
    );

function precipitation(given: Given): Check[] {
  const { setting, batch } = given;
  const key = keyElement(setting.product.formula);
  const checks: Check[] = [];
  if (batch.completeness !== undefined) checks.push(check(batch.completeness.test));
  const feedings = feedingsOf(given);
  const precipitant =
    key === undefined ? undefined : feedings.find(({ material }) => material.form.count(key).n === 0n);
  if (precipitant === undefined) return checks;
  const { name } = precipitant.material.shelf;
  const short = carriersOver(key, feedings, setting.temperature);
  if (takesBack(precipitant.material.form, key))
    checks.push(check(`no excess of ${name}: it takes the product back into solution`, precipitant.supplied.excess));
  else if (short.length > 0) checks.push(...short);
  else if (!feedings.some(isOver))
    checks.push(
      check(
        `no excess is planned: ${shown(planned("usualExcess"), 2)} excess of ${name} is usual, so that all of the ${key} precipitates`,
        planned("usualExcess"),
      ),
    );
  return checks;
}

function neutralisation(given: Given): Check[] {
  const feedings = feedingsOf(given);
  const acid = feedings.find(({ material }) => isAcid(material.form));
  const solid = feedings.find((f) => f !== acid);
  if (acid === undefined || solid === undefined) return [];
  const name = solid.material.shelf.name;
  if (isAcidSalt(given.setting.product.formula))
    return [
      isOver(solid)
        ? check(`${shown(leftOf(solid))} of ${name} is in excess: it makes another salt of the product`, leftOf(solid))
        : check(`no excess of ${name}: it would make another salt of the product`),
    ];
  const free = (one: Feeding): string => `${shown(leftOf(one))} of ${calledLeft(one)}`;
  if (isOver(acid) && isVolatile(acid.material.form))
    return [
      check(
        `${free(acid)} is left free; it leaves as the liquor is boiled down and the crystals are dried`,
        leftOf(acid),
      ),
    ];
  if (isOver(acid))
    return [
      check(
        `${free(acid)} is left free: the crystals contain acid; plan an excess of ${name} instead${solid.dissolves ? ", or neutralise by paper" : ""}`,
        leftOf(acid),
      ),
    ];
  // A base that is dissolved is not filtered off: ammonia leaves with the steam, soda and lye stay.
  if (isOver(solid) && solid.dissolves)
    return [
      check(
        isVolatile(solid.material.form)
          ? `${free(solid)} is left free; it leaves as the liquor is boiled down`
          : `${free(solid)} is left free: add acid until the paper shows neutral`,
        leftOf(solid),
      ),
    ];
  if (isOver(solid))
    return [
      check(`filter ${shown(leftOf(solid))} of ${name} off at the end: the liquor is then free of acid`, leftOf(solid)),
    ];
  if (solid.dissolves && !isVolatile(solid.material.form))
    return [
      check(
        `no excess is planned: keep a little of the ${name} back and bring the liquor to neutral by the paper with it; ${
          isVolatile(acid.material.form)
            ? `acid that is left leaves with the steam, ${name} would stay in the crystals`
            : "what is left of either stays in the crystals"
        }`,
      ),
    ];
  return [
    check(
      `no excess is planned: ${shown(planned("usualExcess"), 2)} excess of ${name} is usual${solid.dissolves ? "" : ", filtered off at the end"}, so that no free acid is left`,
      planned("usualExcess"),
    ),
  ];
}

function metalAndAcid(given: Given): Check[] {
  const feedings = feedingsOf(given);
  const metal = feedings.find(({ material }) => isMetal(material.form));
  const checks = given.batch.gas
    .filter((gas) => gas.limit !== undefined || gas.hood)
    .map((gas) =>
      check(
        gas.hood
          ? `${shown(gas.volume)} of ${gas.formula}: under a hood`
          : `${shown(gas.volume)} of ${gas.formula}: no flame, open window, never a closed vessel`,
        gas.volume,
      ),
    );
  if (metal === undefined) return checks;
  const { name } = metal.material.shelf;
  if (isOver(metal))
    checks.push(
      check(
        `filter ${shown(leftOf(metal))} of ${name} off at the end: it keeps the liquor reduced and free of acid`,
        leftOf(metal),
      ),
    );
  else if (!isByLye(given.setting, given.roles))
    checks.push(
      check(
        `the metal runs out: acid stays free; ${shown(planned("usualExcess"), 2)} excess of ${name} is usual`,
        metal.supplied.excess,
      ),
    );
  return checks;
}

function displacement(given: Given): Check[] {
  const metal = feedingsOf(given).find(({ material }) => isMetal(material.form));
  if (metal === undefined) return [];
  const { name } = metal.material.shelf;
  return isOver(metal)
    ? [
        check(
          `${shown(leftOf(metal))} of ${name} is left in the product unless it is lifted out or a dilute acid takes it`,
          leftOf(metal),
        ),
      ]
    : [
        check(
          `it is done when the last ${name} is gone; a drop of the liquor on a clean piece of it shows whether any salt is left`,
        ),
      ];
}

function doubleSalt(given: Given): Check[] {
  const over = feedingsOf(given).filter(isOver);
  const checks = over.map((f) =>
    check(
      `${shown(leftOf(f))} of ${f.material.shelf.name} is in excess of the ratio of the double salt: it may crystallise beside it`,
      leftOf(f),
    ),
  );
  if (checks.length === 0)
    checks.push(check("the salts are in the ratio of the double salt: nothing else should crystallise"));
  return [...checks, ...crystallisation(given)];
}

function crystallisation({ batch, setting, work }: Given): Check[] {
  const grown = grownIn(work);
  const { crystallising } = batch;
  if (crystallising === undefined) return [];
  const { cooling, saltPair, hot, cold } = crystallising;
  const at = (q: Quantity): string => q.format({ decimals: 0, uncertainty: "none" });
  if (crystallising.asItForms && "missing" in cooling) return [check(cooling.missing)];
  if ("missing" in cooling) return [check(`no crop by cooling can be calculated: ${cooling.missing}`)];
  if (saltPair !== undefined)
    return [
      check(
        `in ${shown(cooling.totalWater)} of water ${saltPair.filteredHot.isPositive() ? `${shown(saltPair.filteredHot)} of the other salt stays on the filter at ${at(hot)}, and` : `the other salt stays dissolved, and`} ${shown(saltPair.crop)} of ${setting.product.name} crystallises at ${at(cold)}, ${shown(saltPair.purity)} pure`,
        saltPair.crop,
      ),
    ];
  if (grown === undefined)
    return [
      check(
        `cooling brings only ${shown(cooling.crop.share)} of it: the liquor is evaporated and gives all ${shown(batch.product.theoreticalYield)}`,
        batch.product.theoreticalYield,
      ),
    ];
  // Less than the theory is there where a solid stayed, more comes where the liquor is boiled down further.
  const isAsked = grown.formula === setting.product.name;
  const share = isAsked ? grown.mass.dividedBy(batch.product.theoreticalYield).to("%") : cooling.crop.share;
  return [
    check(
      `from ${shown(grown.water)} of water at ${at(hot)}, cooled to ${at(cold)}, ${shown(grown.mass)} of ${grown.formula} crystallises, ${shown(share)} of it`,
      grown.mass,
    ),
  ];
}

function thermalDecomposition({ batch, setting, work }: Given): Check[] {
  const { theoreticalYield, name } = batch.product;
  const fired = work.drafts.find(({ operation }) => operation === "fire");
  if (fired === undefined || setting.materials.length > 1) return [];
  const start = fired.before.mass;
  const loss = lessThanAll(theoreticalYield.dividedBy(start))
    .to("%")
    .named({ symbol: "loss", label: "loss when all is done", rule: "loss = 1 - theory / portion" });
  const verb = loss.isPositive() ? `loses ${shown(loss)}` : `gains ${shown(loss.negated())}`;
  return [
    check(
      `it is done when ${shown(start)} has fallen to ${shown(theoreticalYield)} of ${name} (${verb}) and stays there`,
      loss,
    ),
  ];
}

function complexFormation(given: Given): Check[] {
  const { setting, batch } = given;
  const key = keyElement(setting.product.formula);
  const bringing = feedingsOf(given).filter(
    ({ material }) => key !== undefined && material.form.count(key).n === 0n && !isPeroxide(material),
  );
  const isLigand = ({ material }: Feeding): boolean =>
    given.roles[given.setting.materials.indexOf(material)] === "ligand";
  const ligand = bringing.find(({ material }) => isAmmonia(material.form)) ?? bringing.find(isLigand) ?? bringing[0];
  const checks: Check[] = [];
  if (ligand !== undefined)
    checks.push(
      check(
        `${shown(ligand.supplied.timesStoichiometric)} times the ${ligand.material.shelf.name} that the formula contains; ${isOver(ligand) ? "the excess keeps the complex whole" : `${shown(planned("usualExcess"), 2)} excess is usual, so that the complex stays whole`}`,
        ligand.supplied.timesStoichiometric,
      ),
    );
  const liquor = given.work.liquor?.volume;
  if (batch.isolation.how !== "precipitate" && batch.vessel !== undefined && liquor !== undefined)
    checks.push(
      check(`as much alcohol as liquor, ${shown(liquor, 2)}, precipitates most of it (common practice)`, liquor),
    );
  return checks;
}

function redox(given: Given): Check[] {
  const over = feedingsOf(given).filter(isOver);
  const isAgent = ({ material }: Feeding): boolean =>
    ["oxidiser", "reducer"].includes(given.roles[given.setting.materials.indexOf(material)]!);
  const checks = over.flatMap((f) =>
    f.isSolid
      ? [check(`${shown(leftOf(f))} of ${f.material.shelf.name} is left over: it is filtered or lifted off`, leftOf(f))]
      : isAgent(f)
        ? [
            check(
              `${shown(leftOf(f))} of ${calledLeft(f)} is left over and must be used up before the waste is stored`,
              leftOf(f),
            ),
          ]
        : [],
  );
  const isHeated = given.work.drafts.some(({ operation, vessel }) => operation === "heat" && vessel === POT);
  if ("rise" in given.batch.heat && !isHeated) {
    const { rise } = given.batch.heat.rise;
    if (rise.compare(planned("warm")) >= 0)
      checks.push(
        check(`it would warm by ${shown(rise, 2).replace("ΔK", "K")} if all came at once: in portions, and cool`, rise),
      );
  }
  return checks;
}

const CHECKS: Readonly<Record<ProcedureKind, (given: Given) => Check[]>> = {
  precipitation,
  neutralisation: (given) => [...neutralisation(given), ...crystallisation(given)],
  "metal and acid": (given) => [...metalAndAcid(given), ...crystallisation(given)],
  displacement,
  "double salt": doubleSalt,
  crystallisation,
  "thermal decomposition": thermalDecomposition,
  "complex formation": complexFormation,
  redox,
  other: () => [],
};

export function checksOf(
  kind: ProcedureKind,
  setting: Setting,
  batch: BatchFigures,
  work: Work,
  roles: readonly Role[],
): Check[] {
  const given = { setting, batch, work, roles };
  return [...otherForm(given), ...CHECKS[kind](given), ...farOver(given)];
}

/** Another hydrate than the one asked for, and where that one is made. */
function otherForm({ setting: { product, asked, temperature }, batch }: Given): Check[] {
  if (product.formula.hasSameComposition(asked.formula)) return [];
  const { theoreticalYield } = batch.product;
  const where = whereItCrystallises(asked.formula);
  const heated = thermalStepsOf(product.formula).find(
    ({ remains }) => remains.length === 1 && parseFormula(remains[0]!.formula).hasSameComposition(asked.formula),
  );
  const ways = [
    ...(where === undefined ? [] : [`crystallises ${where}`]),
    ...(heated === undefined
      ? []
      : [`is what heat leaves of it from ${heated.from.format({ uncertainty: "none" })} on`]),
  ];
  const elsewhere = ways.length === 0 ? "" : `; ${asked.name} ${ways.join(", and ")}`;
  return [
    check(
      `at ${shown(temperature, 2)} water gives ${product.name}, not ${asked.name}: all masses here are of that, ${shown(theoreticalYield)} at 100 % yield${elsewhere}`,
      theoreticalYield,
    ),
  ];
}
