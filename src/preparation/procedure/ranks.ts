// In which order the materials come together: what goes into the vessel first has the lowest rank, what is added last and in portions
// the highest.

import type { Formula } from "../../formula";
import { once } from "../../foundation/memo";
import { madeOf } from "../../substance/internal";
import { THROUGH_HALOGEN } from "../data/agents";
import { SLOW_COMPLEXES } from "../data/ends";
import { isAcid, isAmmonia, isLye } from "../reaction/acids";
import { isLedIn, staysInWater } from "../reaction/fluids";
import { gelRow } from "../reaction/gel";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { baseBeforeSalt, baseInAcid } from "./base-in-acid";
import { isBase } from "./kind";
import { inTheWay } from "./mixed-hot";
import { isPouredInto } from "./protection";
import { isAcidOf, isByLye, isOxidisingAgent, type Role, sharesAnion } from "./roles";

/** Where nothing else is known of a material. */
const RANKS: Readonly<Record<Role, number>> = {
  "metal salt": 0,
  salt: 0,
  water: 0,
  acid: 1,
  metal: 2,
  ligand: 3,
  base: 3,
  precipitant: 4,
  "gas-giving base": 4,
  reducer: 5,
  oxidiser: 6,
};

/** Ahead of all else. */
const FIRST = -1;
/** After the ligand that is hot in the vessel, or binds the metal before another anion does. */
const AFTER_LIGAND = 3.5;
/** After the anion and before what reduces. */
const AFTER_ANION = 4.5;
/** After the base that the acid dissolves, or the acid is spent on it, or has less water for it. */
const AFTER_BASE = 4.5;
/** After the metal is dissolved. */
const AFTER_LYE = 5;
/** A little at a time into all that is dissolved: brown gas comes of each drop. */
const LATE = 5;
/** A gas of which water takes little is led into all the rest. */
const LED_IN = 7;

/** Acid sets brown gas free from a nitrite: it comes last, a little at a time. */
const isNitriteThere = ({ materials }: Setting): boolean =>
  materials.some(({ form }) => madeOf(form).groups.has("nitrite"));

/** A base that is not a part of the product comes after what brings its anion, or the hydroxide precipitates first. */
function isAfterAnion({ materials, product }: Setting, roles: readonly Role[], i: number): boolean {
  const brings = (j: number): boolean => sharesAnion(materials[j]!.form, product.formula);
  return (
    roles[i] === "precipitant" &&
    isBase(materials[i]!.form) &&
    !brings(i) &&
    roles.some((role, j) => j !== i && role === "precipitant" && brings(j))
  );
}

/**
 * Permanganate goes into what it oxidises: each portion shows by its purple whether it has reacted. So does chromate or dichromate of
 * which a complex is made: its reducer is the ligand, and gas comes from the two.
 */
const isColouredOxidiser = (setting: Setting, { form, species }: Material): boolean =>
  (madeOf(form).groups.has("permanganate") || (madeOf(setting.product.formula).complex && isReducedForComplex(form))) &&
  isOxidisingAgent(setting, species);

/** Would it give the free halogen to an oxidiser that is poured into it? */
const isThroughHalogen = ({ product }: Setting, { form }: Material): boolean =>
  THROUGH_HALOGEN.some(({ from, to }) => madeOf(form).groups.has(from) && madeOf(product.formula).groups.has(to));

/** Does it bring the metal of a slow complex as an oxidiser? */
const isReducedForComplex = (form: Formula): boolean =>
  SLOW_COMPLEXES.some(({ reduced }) => reduced?.groups.some((one) => madeOf(form).groups.has(one)));

/** What the rest is poured into: soap, which sets in lumps in what is cold; and acid for a jelly, or it sets around what is poured. */
function isBeforeAll({ materials, product }: Setting, roles: readonly Role[], i: number): boolean {
  const { form } = materials[i]!;
  const isJelly = gelRow(product.formula)?.sets === true;
  return isJelly
    ? isAcid(form) && (roles[i] === "acid" || roles[i] === "precipitant")
    : roles[i] === "precipitant" && isPouredInto(form);
}

/** Ammonia stands beside the carbonate of a complex before the metal comes, which would precipitate as carbonate. */
const isCarbonated = ({ materials, product }: Setting): boolean =>
  madeOf(product.formula).complex &&
  sharesCarbonate(product.formula) &&
  materials.some(({ form }) => isAmmonia(form)) &&
  materials.some(({ form }) => sharesCarbonate(form));

const sharesCarbonate = (form: Formula): boolean => madeOf(form).groups.has("carbonate");

/** A plan's materials with what is asked of all of them. */
interface Together {
  readonly setting: Setting;
  readonly roles: readonly Role[];
  readonly byLye: boolean;
  readonly hot: boolean;
  readonly carbonated: boolean;
  readonly fromBase: boolean;
  readonly throughHalogen: readonly boolean[];
  /** The salt that waits until the base has gone into the acid. */
  readonly afterBase: number | undefined;
}

/** A reason for another place than the part it plays gives a material; the first that holds decides. */
interface Place {
  readonly rank: number;
  readonly holds: (all: Together, i: number) => boolean;
}

const formAt = ({ setting }: Together, i: number): Formula => setting.materials[i]!.form;

const PLACES = /* @__PURE__ */ once((): readonly Place[] => [
  { rank: 0, holds: (all, i) => all.carbonated && (isAmmonia(formAt(all, i)) || sharesCarbonate(formAt(all, i))) },
  { rank: AFTER_LIGAND, holds: ({ carbonated, roles }, i) => carbonated && roles[i] === "metal salt" },
  { rank: 0, holds: (all, i) => all.byLye && isLye(formAt(all, i)) },
  { rank: AFTER_BASE, holds: ({ fromBase, roles }, i) => fromBase && roles[i] === "metal" },
  { rank: AFTER_BASE, holds: ({ afterBase }, i) => i === afterBase },
  { rank: AFTER_LYE, holds: ({ byLye, setting, roles }, i) => byLye && isAcidOf(setting, roles, i) },
  { rank: LATE, holds: ({ roles, setting }, i) => roles[i] === "acid" && isNitriteThere(setting) },
  { rank: FIRST, holds: ({ setting, roles }, i) => isBeforeAll(setting, roles, i) },
  { rank: LED_IN, holds: (all, i) => isLedIn(all.setting.materials[i]!) && !staysInWater(formAt(all, i)) },
  { rank: RANKS.oxidiser, holds: ({ throughHalogen }, i) => throughHalogen[i]! },
  {
    rank: RANKS.salt,
    holds: ({ roles, throughHalogen }, i) => roles[i] === "oxidiser" && throughHalogen.includes(true),
  },
  { rank: RANKS.oxidiser, holds: ({ setting }, i) => isColouredOxidiser(setting, setting.materials[i]!) },
  { rank: AFTER_LIGAND, holds: ({ roles, hot }, i) => roles[i] === "metal salt" && hot },
  { rank: AFTER_ANION, holds: ({ setting, roles }, i) => isAfterAnion(setting, roles, i) },
]);

/** Ranks of the materials, in their order. */
export function ranksOf(setting: Setting, roles: readonly Role[]): readonly number[] {
  const all: Together = {
    setting,
    roles,
    byLye: isByLye(setting, roles),
    hot: inTheWay(setting, roles) !== undefined,
    carbonated: isCarbonated(setting),
    fromBase: baseInAcid(setting) !== undefined,
    afterBase: baseBeforeSalt(setting)?.salt,
    throughHalogen: setting.materials.map((one) => isThroughHalogen(setting, one)),
  };
  return roles.map((role, i) => PLACES().find(({ holds }) => holds(all, i))?.rank ?? RANKS[role]);
}

/** Materials in the order in which they come together; equal ranks by formula, never by the order of the request. */
export function inOrder(
  { materials }: Setting,
  ranks: readonly number[],
  isSolid: (i: number) => boolean,
): readonly number[] {
  const nameOf = (i: number): string => `${materials[i]!.formName} ${materials[i]!.shelf.name}`;
  const order = materials.map((_, i) => i).sort((a, b) => ranks[a]! - ranks[b]! || (nameOf(a) < nameOf(b) ? -1 : 1));
  // A solid is stirred into what is liquid, not the other way round.
  const liquid = order.findIndex((i) => !isSolid(i));
  return liquid <= 0 ? order : [order[liquid]!, ...order.filter((_, at) => at !== liquid)];
}
