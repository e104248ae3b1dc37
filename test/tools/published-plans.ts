// Plans from published preparations: the amounts as printed, the excesses they come to, whatever must be acknowledged.
import { isPreparativeError, type Plan, type PlanRequest, planPreparation, quantity } from "preparative";
import type { PublishedPreparation } from "../data/preparations";

type Materials = PlanRequest["materials"];

/** What a request is made from. */
interface Printed extends Pick<PublishedPreparation, "id" | "recipe"> {
  readonly expected: {
    readonly limiting?: string | undefined;
    readonly supplied: Readonly<Record<string, { readonly times: string | undefined }>>;
  };
}

/** The request of a published preparation; undefined where the amount that limits is not told. */
export function requestOf({ recipe, expected, id }: Printed): PlanRequest | undefined {
  const { limiting } = expected;
  if (limiting === undefined || Array.isArray(recipe.equation)) return undefined;
  const parts = recipe.materials;
  const materials: Materials[number][] = [];
  let scale: PlanRequest["scale"] | undefined;
  for (const [i, part] of parts.entries()) {
    const form = (Array.isArray(part.form) ? part.form[0] : part.form) as string;
    const times = Number(expected.supplied[form]?.times ?? "1");
    const name = `${part.name ?? form} ${i}`;
    const isLimiting = form === limiting;
    const printed = Array.isArray(part.amount) ? part.amount[0] : part.amount;
    // Of what a recipe gives no amount, the plan takes what the equation needs.
    if (printed === undefined && isLimiting) return undefined;
    const amount = quantity((printed ?? "1 mol") as "1 g");
    if (part.aside === true) {
      const told = /^(?:mass|volume)$/.test(amount.dimension) ? { portion: amount as never } : {};
      materials.push({
        name,
        form,
        aside: true,
        ...told,
        ...(part.strength === undefined ? {} : { strength: part.strength as never }),
      });
      continue;
    }
    if (isLimiting && scale === undefined) scale = { material: name, portion: amount as never };
    materials.push({
      name,
      form,
      ...(part.strength === undefined ? {} : { strength: part.strength as never }),
      ...(part.density === undefined ? {} : { density: part.density as never }),
      ...(isLimiting || !(times > 1) ? {} : { excess: `${((times - 1) * 100).toFixed(1)} %` as "1 %" }),
    });
  }
  if (scale === undefined) return undefined;
  return {
    title: id,
    equation: recipe.equation as string,
    product: recipe.product as string,
    materials,
    scale,
    readability: { mass: "0.001 g", volume: "0.001 mL" },
  };
}

/** A plan with its dangers acknowledged; or the code it is refused by. */
export function planOrCode(request: PlanRequest): Plan | string {
  const codes: string[] = [];
  for (let i = 0; i < 6; i += 1) {
    try {
      return planPreparation({ ...request, acknowledge: codes });
    } catch (error) {
      if (!isPreparativeError(error)) throw error;
      const found = /acknowledge: \["([^"]+)"\]/.exec(error.hint ?? "")?.[1];
      if (found === undefined || codes.includes(found)) return error.code;
      codes.push(found);
    }
  }
  return "too many dangers";
}
