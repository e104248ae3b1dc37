// What must not meet: a plan with a forbidden combination stops, unless its code is acknowledged.

import { quantity } from "../quantity";
import { type Cautions, cautions, type Incompatibility, type MaterialOfStrength } from "../substance";
import { PlanError } from "./error";
import { remembering } from "./lazy";
import type { Setting } from "./setting";

/** Cautions by the texts they were asked for. */
const remembered = /* @__PURE__ */ remembering<Cautions>(64);
const lookedUp = (texts: readonly (string | MaterialOfStrength)[]): Cautions =>
  remembered(JSON.stringify(texts), () => cautions(texts));

/** A material with its strength, where that is a mass fraction. */
function withStrength({ shelf, form }: Setting["materials"][number]): string | MaterialOfStrength {
  if (shelf.strength === undefined) return form.toString();
  const strength = quantity(shelf.strength as "5 %");
  return ["number", "mass fraction"].includes(strength.dimension)
    ? { material: form.toString(), strength: String(strength.to("%").value) + " %" }
    : form.toString();
}

/** Cautions for materials and products; refuses materials that must not meet. */
export function cautionsFor(setting: Setting): Cautions {
  const materials = setting.materials.map(withStrength);
  const products = setting.products.filter((s) => s.formula.compositionText !== "H2O").map((s) => s.formula.toString());
  const names = new Set(materials.map((m) => (typeof m === "string" ? m : m.material)));
  const all = lookedUp([...materials, ...products.filter((p) => !names.has(p))]);
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
