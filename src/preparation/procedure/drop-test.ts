// What shows at the bench that a precipitation is complete: a drop of what was put in over the need, to some of the clear liquor.

import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { isStranger } from "../contents/solids-standing";
import { BASIC_BEFORE_HYDROXIDE } from "../data/ignition";
import { exact, planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import { isAcid, isLye } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isLedIn } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { endOf } from "./end-seen";
import { isBase } from "./kind";
import { isAgent, isByLye, type Role, sharesAnion } from "./roles";
import { asSolution } from "./words";

/** The test of the clear liquor. */
interface DropTest {
  /** What to do and what it means; or why no drop tells. */
  readonly text: string;
  /** Does it tell? */
  readonly tells: boolean;
  /** The pack of which a pinch is dissolved for it: what was weighed is in the vessel by then. */
  readonly pinchOf?: string;
  /** The material that the drop is of; undefined where no one is. */
  readonly of?: Material | undefined;
}

/** What is put in for an element: it comes by what oxidises or reduces, not by an ion that joins it. */
const agentOf = ({ product, materials }: Setting, roles: readonly Role[]): Material | undefined =>
  product.formula.symbols.length === 1
    ? materials.find((_, i) => roles[i] === "oxidiser" || roles[i] === "reducer")
    : undefined;

/** What the drop is of: the partner that is there over the need, which is the precipitant or the salt of the metal. */
function reagentOf(setting: Setting, roles: readonly Role[], { supplied }: Account): Material | undefined {
  const { materials } = setting;
  // lye has dissolved the metal, and acid brings the hydroxide back
  if (isByLye(setting, roles)) return materials.find(({ form }) => isAcid(form));
  const of = (...wanted: readonly Role[]) => materials.map((_, i) => i).filter((i) => wanted.includes(roles[i]!));
  const all = of("precipitant", "gas-giving base");
  const bringing = all.filter((i) => sharesAnion(materials[i]!.form, setting.product.formula));
  // a base beside what brings the anion shows nothing
  const precipitants = bringing.length > 0 ? bringing : all;
  const isOver = (i: number): boolean => !supplied[i]!.limiting;
  const chosen = precipitants.find(isOver) ?? of("metal salt", "salt", "acid", "base").find(isOver) ?? precipitants[0];
  return chosen === undefined ? undefined : materials[chosen];
}

/** The lye of a hydroxide whose metal comes out as a basic salt before all of it has come; no drop of lye tells that end. */
function basicSaltOf({ product, materials }: Setting, roles: readonly Role[]): Material | undefined {
  const { anions } = constitutionOf(product.formula);
  const isHydroxide = anions.length === 1 && anions[0]!.formula === "OH-";
  const metals = BASIC_BEFORE_HYDROXIDE.metals.filter((symbol) => product.formula.count(symbol).n !== 0n);
  if (!isHydroxide || metals.length === 0) return undefined;
  return materials.find(({ form }, i) => isLye(form) && roles[i] !== "acid");
}

/** A base takes some of the product back, which water alone hardly dissolves: a drop more of it gives no cloud for that. */
function isHeldByBase({ product, temperature }: Setting, reagent: Material | undefined): boolean {
  if (reagent === undefined || !isBase(reagent.form)) return false;
  const { perHundredGramsWater } = fateOf(product.formula, temperature);
  const inLitre = perHundredGramsWater?.times(exact("10")).dividedBy(product.molarMass).dividedBy(exact("1 L"));
  return inLitre === undefined || inLitre.to("mol/L").compare(planned("cloudsAbove")) <= 0;
}

/** The test for a batch; `kept` is what the liquor keeps of the product. */
export function dropTestFor(
  setting: Setting,
  roles: readonly Role[],
  account: Account,
  kept: Quantity | undefined,
  liquor: Pot | undefined,
): DropTest {
  if (roles.includes("gas-giving base") && roles.includes("acid"))
    return {
      text: `it is complete when no more gas rises and ${liquor !== undefined && isStranger(liquor, matterOf(setting.product.formula)) ? "no more solid dissolves" : "paper shows the pH that is expected"}`,
      tells: false,
    };
  const { liquor: seen, enough } = endOf(setting) ?? {};
  const oxidiser = setting.materials.find((_, i) => roles[i] === "oxidiser")?.shelf.name;
  if (enough !== undefined && oxidiser !== undefined)
    return { text: `it is complete when ${enough.replace("{oxidiser}", oxidiser)}`, tells: false };
  const reducer =
    seen === undefined
      ? undefined
      : setting.materials.find(({ form }, i) => roles[i] === "reducer" || isAgent(form, "reducer"));
  if (seen !== undefined && (reducer !== undefined || oxidiser !== undefined))
    return {
      text: `it is complete when the clear liquor is no longer ${seen}: where it is, it needs more time${reducer === undefined ? "" : ` or a little more of the ${reducer.shelf.name}`}`,
      tells: false,
    };
  const basic = basicSaltOf(setting, roles);
  if (basic !== undefined)
    return {
      text: `it is complete when the liquor stays alkaline, pH 9 and more on paper, ten minutes after the last of the ${basic.shelf.name}: with less of it a basic salt is left in the product, though the liquor is clear of metal`,
      tells: false,
    };
  const agent = agentOf(setting, roles);
  const reagent = agent ?? reagentOf(setting, roles, account);
  const name = reagent?.shelf.name ?? "precipitant";
  const tells = (text: string): DropTest => ({ text, tells: true });
  if (isOneOf(setting.product.formula, "I2"))
    return tells(
      `shake a little of the clear liquor with a drop of ${name}: if it gets darker (cloudy, in the line below), more is needed`,
    );
  if (reagent !== undefined && isLedIn(reagent))
    return tells(`lead a little ${name} through some of the clear liquor: a cloud means that more is needed`);
  if (reagent !== undefined && fateOf(reagent.form, setting.temperature).precipitated === true)
    return tells(
      `stir a pinch of ${name} into a little of the clear liquor: where it fizzes or dissolves, more is needed`,
    );
  const isInWater = reagent === undefined || (agent ?? reagent).isSolution;
  const drop = reagent === undefined ? "the precipitant" : isInWater ? name : asSolution(name);
  const strength =
    kept === undefined || liquor === undefined ? undefined : kept.dividedBy(liquor.liquor.volume).to("mol/L");
  if (
    agent === undefined &&
    !isByLye(setting, roles) &&
    !isHeldByBase(setting, reagent) &&
    strength !== undefined &&
    strength.compare(planned("cloudsAbove")) > 0
  )
    return {
      text: `no drop shows the end, for the liquor keeps so much of the product that any drop of ${drop} gives a cloud: what was weighed decides`,
      tells: false,
    };
  if (isInWater)
    return {
      ...tells(`let a little of the clear liquor stand with a drop of ${drop}: a cloud means that more is needed`),
      of: agent ?? reagent,
    };
  return {
    ...tells(`let a little of the clear liquor stand with a drop of fresh ${drop}: a cloud means that more is needed`),
    pinchOf: name,
    of: agent ?? reagent,
  };
}
