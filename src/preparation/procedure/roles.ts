// The part each material plays, read from what it is made of and what the product is: never from the order of the request.

import { redoxAnalysis } from "../../equation";
import { isNonmetal } from "../../equation/internal";
import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { madeOf } from "../../substance/internal";
import { AGENTS, SPLIT_BY_BASE } from "../data/agents";
import { absorbentOf } from "../reaction/absorbing";
import { isAcid, isAmmonia, isLye, isMetal } from "../reaction/acids";
import { keyElement } from "../reaction/candidates";
import { isGas, isLedIn, staysInWater } from "../reaction/fluids";
import type { Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isBase } from "./kind";
import type { ProcedureKind } from "./kinds";

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

/** Does it oxidise in the equation of the plan? */
export const isOxidisingAgent = (setting: Setting, { formula }: Species): boolean =>
  agentsOf(setting).oxidising.includes(formula.compositionText);

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

/** Does a base split its anion into that of the product? */
export const isSplitInto = (form: Formula, product: Formula): boolean =>
  SPLIT_BY_BASE.some(({ from, to }) => madeOf(form).groups.has(from) && madeOf(product).groups.has(to));

/** Does the material bring an anion of the product, as it is or once a base is with it? */
export const sharesAnion = (form: Formula, product: Formula): boolean => {
  const own = madeOf(product).groups;
  return [...madeOf(form).groups].some((group) => group !== "ammonium" && own.has(group)) || isSplitInto(form, product);
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

/** An acid, whatever it is in there for: oxalic acid is the ligand of oxalato complexes. */
export const isAcidOf = (setting: Setting, roles: readonly Role[], i: number): boolean =>
  roles[i] === "acid" || (roles[i] === "ligand" && isAcid(setting.materials[i]!.form));

/** Metal, lye and acid together: the lye dissolves the metal, and the acid comes after. */
export const isByLye = (setting: Setting, roles: readonly Role[]): boolean =>
  roles.includes("metal") &&
  roles.some((_, i) => isAcidOf(setting, roles, i)) &&
  setting.materials.some(({ form }) => isLye(form));
