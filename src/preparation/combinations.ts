// What must not meet: a plan with a forbidden combination stops, unless its code is acknowledged.
import type { Formula } from "../formula";
import { type Cautions, cautions, type Incompatibility, type MaterialOfStrength } from "../substance";
import { isAcid } from "./acids";
import { PlanError } from "./error";
import { remembering } from "./lazy";
import type { Setting } from "./setting";

/** Cautions by the texts they were asked for. */
const remembered = /* @__PURE__ */ remembering<Cautions>(200);
const lookedUp = (texts: readonly (string | MaterialOfStrength)[]): Cautions =>
  remembered(JSON.stringify(texts), () => fast(cautions(texts)));

/** Held fast, because plans share it: nobody may strike a caution out of somebody else's plan. */
function fast(found: Cautions): Cautions {
  for (const one of [...found.substances, ...found.incompatibilities]) Object.freeze(one);
  Object.freeze(found.substances);
  Object.freeze(found.incompatibilities);
  return Object.freeze(found);
}

/** A material with its strength, where it is a solution of which the mass fraction is known. */
function withStrength({ shelf, form, massFraction }: Setting["materials"][number]): string | MaterialOfStrength {
  const strength = shelf.strength === undefined ? undefined : massFraction();
  const material = form.toString();
  return strength === undefined ? material : { material, strength: `${strength.in("%").toFixed(4)} %` };
}

/** What a reaction sets free in water is thin: the water that dissolves the feeds is more than ten times an acid's mass. */
const SET_FREE = "5 %";

/** A product; an acid that is set free in the liquor is no strong acid. */
const asFormed = (formula: Formula, wet: boolean): string | MaterialOfStrength =>
  wet && isAcid(formula) ? { material: formula.toString(), strength: SET_FREE } : formula.toString();

/** Cautions for materials and products; refuses materials that must not meet. */
export function cautionsFor(setting: Setting): Cautions {
  const materials = setting.materials.map(withStrength);
  const nameIn = (m: string | MaterialOfStrength): string => (typeof m === "string" ? m : m.material);
  const names = new Set(materials.map(nameIn));
  const products = setting.products
    .filter((s) => s.formula.compositionText !== "H2O")
    .map((s) => asFormed(s.formula, setting.wet && s !== setting.product))
    .filter((p) => !names.has(nameIn(p)));
  const all = lookedUp([...materials, ...products]);
  const acknowledged = setting.request.acknowledge ?? [];
  const meet = (one: Incompatibility): boolean => one.materials.every((m) => names.has(m));
  const forbidden = all.incompatibilities.filter(
    (one) => one.blocking && meet(one) && !acknowledged.includes(one.code),
  );
  const first = forbidden[0];
  if (first === undefined) return all;
  throw new PlanError("plan.forbidden-combination", `${first.materials.join(" and ")}: ${first.what}`, {
    hint: `if this is known and meant, acknowledge it by code: acknowledge: ["${first.code}"]`,
    details: {
      combinations: forbidden.map(({ code, materials: which, what, products: gives, citation }) => ({
        code,
        materials: which,
        what,
        products: gives,
        source: citation,
      })),
    },
  });
}
