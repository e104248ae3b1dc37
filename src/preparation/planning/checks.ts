// What each kind of preparation is watched for, with its figures: what is over and where it goes, when it is done. Excesses
// stay as they were asked for; where none was, a remark says which one is usual.

import { parseFormula } from "../../formula";
import { thermalStepsOf } from "../../substance/internal";
import { whereItCrystallises } from "../feasibility/form-in-water";
import { restOf } from "../procedure/kiln-masses";
import type { ProcedureKind } from "../procedure/kinds";
import { isMetal } from "../reaction/acids";
import { isLedIn } from "../reaction/fluids";
import { ofBasicPack } from "./basic-pack";
import { type Check, check, shown, type Watched } from "./check";
import { displacement, metalAndAcid, neutralisation } from "./check-acid";
import { crystallisation, doubleSalt } from "./check-crystals";
import { precipitation } from "./check-precipitation";
import { complexFormation, redox } from "./check-redox";
import { isWorthAWord, lessThanAll, planned } from "./exact";
import { feedingsOf } from "./left-over";

/** More than twice the need of anything; what is left of a metal is lifted or filtered out, and a gas passes through, as their own words say. */
const farOver = (watched: Watched): Check[] =>
  feedingsOf(watched)
    .filter(
      ({ material, supplied }) =>
        supplied.timesStoichiometric.compare(planned("largeExcess")) > 0 &&
        !isMetal(material.form) &&
        !isLedIn(material),
    )
    .map(({ supplied }) =>
      check(
        `${supplied.material} is ${shown(supplied.timesStoichiometric)} times the need: the excess stays in the liquor, in the product or in the air`,
        supplied.timesStoichiometric,
      ),
    );

/** Another hydrate than the one asked for, and where that one is made. */
function otherForm({ setting: { product, asked, temperature }, batch }: Watched): Check[] {
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

function thermalDecomposition({ batch, setting, work }: Watched): Check[] {
  const { theoreticalYield, name } = batch.product;
  const fired = work.drafts.find(({ operation }) => operation === "fire");
  if (fired === undefined || setting.materials.length > 1) return [];
  const start = fired.before.mass;
  const { water } = restOf(work.drafts, fired, theoreticalYield);
  // all that the crucible holds when its mass stands still, as its step has it: also the salts that a pack is known to have
  const rest = fired.after.mass.minus(water).minus(theoreticalYield);
  const isInert = isWorthAWord(rest, theoreticalYield);
  const end = isInert ? theoreticalYield.plus(rest) : theoreticalYield;
  const loss = lessThanAll(end.dividedBy(start))
    .to("%")
    .named({
      symbol: "loss",
      label: "loss when all is done",
      rule: isInert ? "loss = 1 - (theory + what stays) / portion" : "loss = 1 - theory / portion",
    });
  const made = isInert
    ? `, ${shown(theoreticalYield)} of ${name} and ${shown(rest, 2)} of what the pack has besides`
    : ` of ${name}`;
  const wet = water.isPositive()
    ? `; up to ${shown(end.plus(water))} only if the ${shown(water, 2)} that the pack has besides is not water`
    : "";
  const basic = ofBasicPack(setting.materials[0]!.form, theoreticalYield);
  const sold =
    basic === undefined
      ? []
      : [
          check(
            `if it stands still at ${shown(isInert ? basic.mass.plus(rest) : basic.mass)} instead, the pack was ${basic.formula}, which is sold by the same name, and the ${name} is right`,
            basic.mass,
          ),
        ];
  const verb = loss.isPositive() ? `loses ${shown(loss)}` : `gains ${shown(loss.negated())}`;
  return [
    check(
      `it is done when ${shown(start)} has ${loss.isPositive() ? "fallen" : "risen"} to ${shown(end)}${made} (${verb}) and stays there${wet}`,
      loss,
    ),
    ...sold,
  ];
}

const CHECKS: Readonly<Record<ProcedureKind, (watched: Watched) => Check[]>> = {
  precipitation,
  neutralisation: (watched) => [...neutralisation(watched), ...crystallisation(watched)],
  "metal and acid": (watched) => [...metalAndAcid(watched), ...crystallisation(watched)],
  displacement,
  "double salt": doubleSalt,
  crystallisation,
  "thermal decomposition": thermalDecomposition,
  "complex formation": complexFormation,
  redox,
  other: () => [],
};

/** What a batch is watched for. */
export const checksOf = (kind: ProcedureKind, watched: Watched): Check[] => [
  ...otherForm(watched),
  ...CHECKS[kind](watched),
  ...farOver(watched),
];
