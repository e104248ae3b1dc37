// What these procedures do not do: gases that are collected, liquids that are parted, solids that are none, solids in a burning
// gas, metals that burn. Refused before anything is weighed, each with another way to it.

import type { Formula } from "../../formula";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import { BURNS_IN_AIR } from "../data/firing";
import { PlanError } from "../error";
import type { Feasibility } from "../feasibility/feasibility";
import { planned } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { burns, gasInWater, gasRow, isGas, isOtherLiquid } from "../reaction/fluids";
import { keptInSolution, onlyInSolution } from "../reaction/only-in-solution";
import type { Setting } from "../request/setting";
import type { Crystallising } from "./crystallising";
import { isPurifiedHot } from "./isolation";
import { isRecrystallised } from "./kind";

const refusal = (why: string, hint = "doesItGo judges the reaction by itself"): PlanError =>
  new PlanError("plan.no-procedure", why, { hint });

/** Work that no procedure of these does, of the dry and of the wet kind. */
export function refuseWithoutProcedure(setting: Setting, feasibility: Feasibility): void {
  refuseWrittenForGas(setting);
  refuseGas(setting);
  refuseAsSolid(setting);
  refuseEmptyLiquor(setting, feasibility);
  const { wet, product, products, reactants, materials, temperature } = setting;
  if (wet) {
    if (
      isRecrystallised(reactants, products) &&
      fateOf(product.formula, temperature).precipitated === true &&
      !isPurifiedHot(setting)
    )
      throw refusal(
        `${product.name} is not purified by water: of what hot water dissolves of it too little comes back cold, or no figure tells`,
        "wash it, or make it again by a reaction",
      );
    if (isOtherLiquid(product.formula))
      throw refusal(`${product.name} is a liquid: no procedure parts liquids or distils them`);
    return;
  }
  const burning = reactants.find(({ formula }) => burns(formula));
  if (burning !== undefined)
    throw refusal(`a solid is heated in ${burning.name} in a tube furnace only: no procedure does that`);
  const led = materials.find(({ form }) => isGas(form, false));
  if (led !== undefined)
    throw refusal(`${led.shelf.name} is a gas: nothing is ground with it`, "leave it out: a solid is fired in air");
  const [first] = reactants.filter(({ formula }) => isOneOf(formula, ...BURNS_IN_AIR.elements));
  if (first !== undefined && reactants.some(({ formula }) => isOneOf(formula, "O2")))
    throw refusal(`${first.name} burns once it is hot: it is no charge for a crucible`);
}

/** By-products of the equation that stay in the liquor as salts. */
const saltsBeside = ({ products, product, wet, temperature }: Setting): Setting["products"] =>
  products.filter(
    (one) =>
      one !== product &&
      !isGas(one.formula, wet) &&
      constitutionOf(one.formula).kind === "salt" &&
      fateOf(one.formula, temperature).precipitated !== true,
  );

/**
 * Salts of one liquor that no cooling parts: evaporated, it would leave what was put in. Where another solid is known to come, the plan
 * leads with it.
 */
export function refuseUnparted(
  setting: Setting,
  batch: { readonly crystallising: Crystallising | undefined },
  { verdict }: Feasibility,
): void {
  const beside = setting.wet && verdict !== "another solid forms" ? saltsBeside(setting) : [];
  if (beside.length === 0) return;
  const { crystallising } = batch;
  if (crystallising?.otherComes !== true || !("missing" in crystallising.cooling)) return;
  throw refusal(
    `${setting.product.name} is not parted from ${list(beside.map(({ name }) => name))}: ${crystallising.cooling.missing}`,
    "doesItGo tells which salt of the liquor comes first; findRoutes looks for a way whose by-product is filtered off or leaves as gas",
  );
}

/** H2SO3 and its like are a gas in water: what is not written as gas is not led away as gas. */
function refuseWrittenForGas({ products }: Setting): void {
  for (const { formula, name } of products) {
    const meant = gasInWater(formula);
    if (meant === undefined) continue;
    throw refusal(
      `${name} is known in water only, as ${meant.gas} in it: the gas leaves, and nothing of the name crystallises`,
      `write ${meant.gas} + H2O for it`,
    );
  }
}

/** Is the acid of the gas all that stays in the liquor: everything else falls, as barium sulfate does? */
const isLeftInLiquor = ({ wet, products, product, temperature }: Setting): boolean =>
  wet &&
  isAcid(product.formula) &&
  products.every((one) => one === product || one.isWater || fateOf(one.formula, temperature).precipitated === true);

/** A gas that is wanted is driven over and caught, which is no work of these procedures; gas of a cylinder led into water is. */
function refuseGas(setting: Setting): void {
  const { products, product, materials } = setting;
  const { formula, name } = product;
  const row = gasRow(formula);
  const isLeaving = formula.phase === undefined ? row !== undefined : formula.phase === "g";
  const isSoluble = row?.keptByWater === true;
  const isBrought = ({ form }: { readonly form: Formula }): boolean => form.hasSameComposition(formula);
  if (!isLeaving || (isSoluble && (materials.some(isBrought) || isLeftInLiquor(setting)))) return;
  const others = products.filter((one) => one !== product && !one.isWater && !isGas(one.formula, setting.wet));
  const beside =
    others.length === 0
      ? ""
      : `; or plan for ${list(
          others.map((one) => one.name),
          "or",
        )}, and the gas leaves beside it`;
  throw refusal(
    `${name} is a gas: it is driven over from a closed flask and caught, and no procedure here does that`,
    isSoluble
      ? `take a solution of ${name} ready made, with its strength, or lead gas of a cylinder into water: ${name} as the only material${beside}`
      : `plan what the gas is for, with ${name} among its materials: it is led in from a cylinder or a generator${beside}`,
  );
}

/** Salts that are known as a solution: no bench gets the solid, and no jar holds it. */
function refuseAsSolid({ wet, product, materials, request }: Setting): void {
  const kept = keptInSolution(product.formula);
  const wanted = onlyInSolution(product.formula) ?? (wet && kept?.comesApart === true ? kept : undefined);
  if (wanted !== undefined && (!wet || request.isolate === true))
    throw refusal(
      `${product.name} is known as a solution only: ${wanted.why}`,
      wet ? "leave out isolate: the plan keeps it in its liquor" : "plan it in water: its liquor is kept",
    );
  for (const { form, formName, isSolution, shelf } of materials) {
    const known = onlyInSolution(form);
    if (known !== undefined && known.sold !== true && !isSolution)
      throw refusal(
        `${shelf.name}: ${formName} is known as a solution only: ${known.why}`,
        "give the strength of the solution, or the solid that the jar really holds",
      );
  }
}

/** A liquor is kept for what is in it, and another solid has taken that. */
function refuseEmptyLiquor({ keepsLiquor, product }: Setting, feasibility: Feasibility): void {
  if (!keepsLiquor || feasibility.verdict !== "another solid forms") return;
  const { share, reasons, solids } = feasibility;
  const [solid] = solids;
  if (solid === undefined || share === undefined || share.compare(planned("noLiquor")) > 0) return;
  throw refusal(
    `there is no liquor of ${product.name} to keep: ${reasons[0]!.text}`,
    `plan for ${solid.formula}, which forms in its place, or take far more water`,
  );
}
