// What a redox reaction and the making of a complex are watched for: what is over of the agent or of the ligand.

import { gasVolume } from "../../amount";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import { FREED_FROM_EXCESS } from "../data/waste";
import { alcoholOnTable, liquorAtCrystals } from "../procedure/alcohol";
import { POT } from "../procedure/bench";
import { inTheWay } from "../procedure/mixed-hot";
import { isByLye, isPeroxide } from "../procedure/roles";
import { useOf } from "../procedure/use";
import { isAcid, isAmmonia } from "../reaction/acids";
import { keyElement } from "../reaction/candidates";
import { gasRow, isGas } from "../reaction/fluids";
import { formulaFrom } from "../reaction/species";
import type { Setting } from "../request/setting";
import { hydronsGivenBy } from "../safety/waste-treatment";
import { type Check, check, shown, type Watched } from "./check";
import { planned } from "./exact";
import { calledLeft, type Feeding, feedingsOf, isOver, leftOf } from "./left-over";

/** What keeps a complex whole, in words: its plain salt takes more of the ligand than the usual excess. */
function wholeBy(ligand: Feeding, { setting, roles }: Watched): string {
  if (isOver(ligand)) return "the excess keeps the complex whole";
  if (isByLye(setting, roles) && isAcid(ligand.material.form))
    return "no more is needed: its acid salt would crystallise beside the complex";
  const salt = inTheWay(setting, roles);
  return salt === undefined
    ? `${shown(planned("usualExcess"), 2)} excess is usual, so that the complex stays whole`
    : `where ${formulaFrom(salt).toUnicode()} stays undissolved it takes more`;
}

/** What the making of a complex is watched for. */
export function complexFormation(watched: Watched): Check[] {
  const { setting } = watched;
  const key = keyElement(setting.product.formula);
  const bringing = feedingsOf(watched).filter(
    ({ material }) => key !== undefined && material.form.count(key).n === 0n && !isPeroxide(material),
  );
  const isLigand = ({ material }: Feeding): boolean =>
    watched.roles[watched.setting.materials.indexOf(material)] === "ligand";
  const ligand = bringing.find(({ material }) => isAmmonia(material.form)) ?? bringing.find(isLigand) ?? bringing[0];
  const checks: Check[] = [];
  if (ligand !== undefined)
    checks.push(
      check(
        `${shown(ligand.supplied.timesStoichiometric)} times the ${ligand.material.shelf.name} that the formula contains; ${wholeBy(ligand, watched)}`,
        ligand.supplied.timesStoichiometric,
      ),
    );
  const offered = watched.work.drafts.find(({ operation, alcohol }) => operation === "cool" && alcohol !== undefined);
  // where some stands on the table, how much is usual
  const alcohols = setting.asides.filter((one) => useOf(one, setting) === "alcohol").map(({ shelf }) => shelf.name);
  const isOnTable = alcohols.length > 0;
  const poured = watched.work.drafts.find(
    ({ vessel, materials = [] }) => vessel === POT && alcohols.some((name) => materials.includes(name)),
  );
  const { isolation, product } = watched.batch;
  const frame = { kind: "complex formation", theory: product.theoreticalYield, isolation } as const;
  const usual =
    offered?.alcohol ?? (isOnTable && poured !== undefined ? liquorAtCrystals(frame, poured.before) : undefined);
  if (usual !== undefined)
    checks.push(
      check(
        `as much alcohol as liquor, ${shown(usual, 2)}, precipitates most of it (common practice)${shortOf(usual, setting)}`,
        usual,
      ),
    );
  return checks;
}

/** What is on the table where it is less alcohol than usual, in words. */
function shortOf(usual: Quantity, setting: Setting): string {
  const all = alcoholOnTable(setting);
  return all !== undefined && usual.compare(all.times(planned("moreThanAlcohol"))) > 0
    ? `; of the ${shown(all, 2)} that is planned it keeps more: another ${shown(usual.minus(all), 1)} brings that out`
    : "";
}

/** What leaves the work as vapour, by its composition. */
const leavesOf = ({ work }: Watched): ReadonlySet<string> =>
  new Set(
    work.drafts
      .flatMap(({ left }) => left)
      .flatMap(({ what, pot }) => (what === "vapour" ? pot.books.dissolved : []))
      .map(({ matter }) => matter.key),
  );

/** Gas that an acid among the products frees from what is over, in words; undefined where there is none. */
function freedFrom({ setting, batch }: Watched, { material, left }: Feeding): string | undefined {
  const row = FREED_FROM_EXCESS.find(({ group }) => madeOf(material.form).groups.has(group));
  const acid = setting.products.find(({ formula }) => hydronsGivenBy(formula) > 0n && !isGas(formula, true));
  if (row === undefined || acid === undefined) return undefined;
  if (batch.gas.some(({ key }) => key === row.gas)) return undefined;
  const { temperature, pressure } = setting;
  const volume = gasVolume(left as Quantity<"amount of substance">, { temperature, pressure });
  return `gives off up to ${shown(volume.to("L"), 2)} of ${row.gas} with the ${acid.name}${gasRow(formulaFrom(row.gas))?.hood === true ? ", most of it as it is warmed: under a hood, or not at all" : ""}`;
}

/** What a redox reaction is watched for. */
export function redox(watched: Watched): Check[] {
  const over = feedingsOf(watched).filter(isOver);
  const roleOf = ({ material }: Feeding) => watched.roles[watched.setting.materials.indexOf(material)]!;
  const isAgent = (f: Feeding): boolean => ["oxidiser", "reducer"].includes(roleOf(f));
  // a little alcohol or sulfite does no harm in a waste jar; what oxidises sets others alight or free
  const isOxidiser = (f: Feeding): boolean => roleOf(f) === "oxidiser";
  const checks = over.flatMap((f) =>
    f.isSolid
      ? [check(`${shown(leftOf(f))} of ${f.material.shelf.name} is left over: it is filtered or lifted off`, leftOf(f))]
      : isAgent(f)
        ? [
            check(
              `${shown(leftOf(f))} of ${calledLeft(f)} is left over and ${leavesOf(watched).has(matterOf(f.material.form).core.key) ? "leaves with the first of the steam" : isOxidiser(f) ? "must be used up before the waste is stored" : (freedFrom(watched, f) ?? "stays in the liquor")}`,
              leftOf(f),
            ),
          ]
        : [],
  );
  const isHeated = watched.work.drafts.some(({ operation, vessel }) => operation === "heat" && vessel === POT);
  if ("rise" in watched.batch.heat && !isHeated) {
    const { rise } = watched.batch.heat.rise;
    if (rise.compare(planned("warm")) >= 0)
      checks.push(
        check(`it would warm by ${shown(rise, 2).replace("ΔK", "K")} if all came at once: in portions, and cool`, rise),
      );
  }
  return checks;
}
