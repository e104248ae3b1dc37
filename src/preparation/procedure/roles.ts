// The part each material plays, read from what it is made of and what the product is: never from the order of the request.

import { redoxAnalysis } from "../../equation";
import { isNonmetal } from "../../equation/internal";
import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { madeOf } from "../../substance/internal";
import { AGENTS, THROUGH_HALOGEN } from "../data/agents";
import { SLOW_COMPLEXES } from "../data/ends";
import { absorbentOf } from "../reaction/absorbing";
import { isAcid, isAmmonia, isLye, isMetal } from "../reaction/acids";
import { keyElement } from "../reaction/candidates";
import { isGas, isLedIn, staysInWater } from "../reaction/fluids";
import { gelRow } from "../reaction/gel";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isBase } from "./kind";
import type { ProcedureKind } from "./kinds";
import { inTheWay } from "./mixed-hot";
import { isPouredInto } from "./protection";

/** Parts that materials play. */
export type Role =
  | "metal salt"
  | "salt"
  | "precipitant"
  | "acid"
  | "base"
  | "gas-giving base"
  | "metal"
  | "oxidiser"
  | "reducer"
  | "ligand"
  | "water";

/** Anions that leave as gas when an acid or a metal salt takes the base, with the element of the gas. */
const GIVES_GAS: Readonly<Record<string, string>> = {
  carbonate: "C",
  hydrogencarbonate: "C",
  sulfite: "S",
  hydrogensulfite: "S",
  sulfide: "S",
};

/** Is the base in the vessel before what takes it: acid for whose gas there is a trap, or a gas that is led in? */
const isWetFirst = ({ materials, products, wet }: Setting): boolean =>
  materials.some((one) => isLedIn(one) && !staysInWater(one.form)) ||
  products.some(({ formula }) => isGas(formula, wet) && absorbentOf(formula) !== undefined);

function givesGas(form: Formula, setting: Setting): boolean {
  const gases = setting.products.filter(({ formula }) => isGas(formula, setting.wet));
  return [...madeOf(form).groups].some((group) => {
    const element = GIVES_GAS[group];
    return element !== undefined && gases.some(({ formula }) => formula.count(element).n !== 0n);
  });
}

const rememberedAgents = /* @__PURE__ */ remembering<{ oxidising: readonly string[]; reducing: readonly string[] }>(
  128,
);

function agentsOf({ equation }: Setting): { oxidising: readonly string[]; reducing: readonly string[] } {
  return rememberedAgents(String(equation), () => {
    const found = attempt(() => redoxAnalysis(equation));
    if (!found.ok || !found.value.isRedox) return { oxidising: [], reducing: [] };
    const keys = (list: readonly Formula[]) => list.map((formula) => formula.compositionText);
    return { oxidising: keys(found.value.oxidisingAgents), reducing: keys(found.value.reducingAgents) };
  });
}

export const isPeroxide = ({ form }: Pick<Material, "form">): boolean => isOneOf(form, "H2O2");

/** Something that is put in for its oxidising or reducing, not for its ions. */
export const isAgent = (form: Formula, as: "oxidiser" | "reducer"): boolean =>
  AGENTS.some(
    (row) =>
      row.as === as && (isOneOf(form, ...row.molecules) || row.groups.some((name) => madeOf(form).groups.has(name))),
  );

/** Is it an oxidiser that eats paper, and of which many are as dark as ink? */
export const isHarshOxidiser = (form: Formula): boolean =>
  AGENTS.some(
    ({ as, mild, groups, molecules }) =>
      as === "oxidiser" &&
      mild !== true &&
      (isOneOf(form, ...molecules) || groups.some((name) => madeOf(form).groups.has(name))),
  );

/** Is a lower oxide or hydroxide made in lye? What reduces it comes after the lye, an acid too: without lye it reduces to the metal. */
const isReducedInLye = ({ materials, product }: Setting): boolean =>
  product.formula.count("O").n !== 0n &&
  product.formula.symbols.every((symbol) => symbol === "O" || symbol === "H" || !isNonmetal(symbol)) &&
  materials.some(({ form }) => isLye(form));

/** Does the material bring an anion of the product? */
export const sharesAnion = (form: Formula, product: Formula): boolean => {
  const own = madeOf(product).groups;
  return [...madeOf(form).groups].some((group) => group !== "ammonium" && own.has(group));
};

function roleOf(material: Material, setting: Setting, kind: ProcedureKind, precipitates: boolean): Role {
  const { form, species } = material;
  const { product } = setting;
  const key = keyElement(product.formula);
  const carries = key !== undefined && form.count(key).n !== 0n;
  const agents = agentsOf(setting);
  if (species.isWater) return "water";
  if (isMetal(form)) return "metal";
  if (isPeroxide(material)) return "oxidiser";
  const is = (by: readonly string[], as: "oxidiser" | "reducer"): boolean =>
    by.includes(species.formula.compositionText) && isAgent(form, as);
  if (kind !== "displacement") {
    // the potassium, or manganese, of a permanganate says nothing of what that is there for
    const brings = carries && !madeOf(form).groups.has("permanganate");
    if (!brings && !isAcid(form) && is(agents.oxidising, "oxidiser")) return "oxidiser";
    if (!carries && (!isAcid(form) || isReducedInLye(setting)) && is(agents.reducing, "reducer")) return "reducer";
  }
  const others = setting.materials.filter((one) => one !== material);
  // The ammonium salt stands in the vessel before ammonia comes, or the hydroxide precipitates first.
  const isAmmoniumSalt = madeOf(form).ammonium && others.some((one) => isAmmonia(one.form));
  if (kind === "complex formation" && !carries && isAmmoniumSalt) return "salt";
  if (kind === "complex formation" && !carries && (isAmmonia(form) || sharesAnion(form, product.formula)))
    return "ligand";
  if (isAcid(form)) {
    const meetsBase = others.some((one) => isBase(one.form) || isMetal(one.form) || givesGas(one.form, setting));
    return precipitates && !meetsBase && sharesAnionOfAcid(form, product.formula) ? "precipitant" : "acid";
  }
  if (!material.isSolution && givesGas(form, setting)) return isWetFirst(setting) ? "salt" : "gas-giving base";
  if (isBase(form)) return precipitates && !carries ? "precipitant" : "base";
  // Of two salts with the metal of the product the one that has its anion too brings the anion.
  const brings = (one: Formula): boolean => sharesAnion(one, product.formula);
  const isOther = others.some((one) => one.form.count(key ?? "").n !== 0n && !brings(one.form));
  if (carries) return precipitates && brings(form) && isOther ? "precipitant" : "metal salt";
  if (kind === "complex formation") return "ligand";
  if (!precipitates) return "salt";
  return sharesAnion(form, product.formula) || !others.some((one) => bringsAnion(one, setting))
    ? "precipitant"
    : "salt";
}

/** An acid's own anion is in the product: oxalic acid makes oxalates. */
const sharesAnionOfAcid = (acid: Formula, product: Formula): boolean =>
  sharesAnion(acid, product) || acid.symbols.every((s) => s === "H" || product.count(s).n !== 0n);

const bringsAnion = ({ form }: Material, { product }: Setting): boolean =>
  (isBase(form) && keyElement(product.formula) !== undefined && form.count(keyElement(product.formula)!).n === 0n) ||
  (keyElement(product.formula) !== undefined &&
    form.count(keyElement(product.formula)!).n === 0n &&
    sharesAnion(form, product.formula));

const remembered = /* @__PURE__ */ remembering<readonly Role[]>(200);

/** The roles of the materials, in their order. */
export function rolesOf(setting: Setting, kind: ProcedureKind, precipitates: boolean): readonly Role[] {
  const { equation, product, materials } = setting;
  const forms = materials.map(({ form, isSolution }) => `${form}${isSolution ? " l" : ""}`).join(" ");
  return remembered(`${kind} ${precipitates} ${equation} ${product.formula} ${forms}`, () =>
    materials.map((material) => roleOf(material, setting, kind, precipitates)),
  );
}

/** What goes into the vessel first has the lowest rank; what is added last and in portions the highest. */
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

/** An acid, whatever it is in there for: oxalic acid is the ligand of oxalato complexes. */
const isAcidOf = (setting: Setting, roles: readonly Role[], i: number): boolean =>
  roles[i] === "acid" || (roles[i] === "ligand" && isAcid(setting.materials[i]!.form));

/** Metal, lye and acid together: the lye dissolves the metal, and the acid comes after. */
export const isByLye = (setting: Setting, roles: readonly Role[]): boolean =>
  roles.includes("metal") &&
  roles.some((_, i) => isAcidOf(setting, roles, i)) &&
  setting.materials.some(({ form }) => isLye(form));

/** Acid sets brown gas free from a nitrite: it comes last, a little at a time. */
const isNitriteThere = ({ materials }: Setting): boolean =>
  materials.some(({ form }) => madeOf(form).groups.has("nitrite"));

/** A gas of which water takes little is led into all the rest. */
const LED_IN = 7;

/** After the anion and before what reduces. */
const AFTER_ANION = 4.5;

/** After the ligand that is hot in the vessel. */
const AFTER_LIGAND = 3.5;

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
  agentsOf(setting).oxidising.includes(species.formula.compositionText);

/** Would it give the free halogen to an oxidiser that is poured into it? */
const isThroughHalogen = ({ product }: Setting, { form }: Material): boolean =>
  THROUGH_HALOGEN.some(({ from, to }) => madeOf(form).groups.has(from) && madeOf(product.formula).groups.has(to));

/** Does it bring the metal of a slow complex as an oxidiser? */
const isReducedForComplex = (form: Formula): boolean =>
  SLOW_COMPLEXES.some(({ reduced }) => reduced?.groups.some((one) => madeOf(form).groups.has(one)));

/** Ahead of all else. */
const FIRST = -1;

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

/** Ranks of the materials, in their order. */
export function ranksOf(setting: Setting, roles: readonly Role[]): readonly number[] {
  const byLye = isByLye(setting, roles);
  const hot = inTheWay(setting, roles) !== undefined;
  const carbonated = isCarbonated(setting);
  const throughHalogen = setting.materials.map((one) => isThroughHalogen(setting, one));
  return roles.map((role, i) => {
    if (carbonated && (isAmmonia(setting.materials[i]!.form) || sharesCarbonate(setting.materials[i]!.form))) return 0;
    if (carbonated && role === "metal salt") return AFTER_LIGAND;
    if (byLye && isLye(setting.materials[i]!.form)) return 0;
    if (byLye && isAcidOf(setting, roles, i)) return 5;
    if (role === "acid" && isNitriteThere(setting)) return 5;
    if (isBeforeAll(setting, roles, i)) return FIRST;
    if (isLedIn(setting.materials[i]!) && !staysInWater(setting.materials[i]!.form)) return LED_IN;
    if (throughHalogen[i]) return RANKS.oxidiser;
    if (role === "oxidiser" && throughHalogen.includes(true)) return RANKS.salt;
    if (isColouredOxidiser(setting, setting.materials[i]!)) return RANKS.oxidiser;
    // hot the ligand is there first, and the metal goes into it
    if (role === "metal salt" && hot) return AFTER_LIGAND;
    return isAfterAnion(setting, roles, i) ? AFTER_ANION : RANKS[role];
  });
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
