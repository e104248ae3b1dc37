// Dissolving the feeds and keeping the liquor clear: water for each soluble material, all the water there is after mixing,
// and whether by-products and excess stay dissolved in it.

import { molarMass } from "../formula";
import { isWater } from "../formula/crystal-water";
import { type Quantity, sum } from "../quantity";
import { type DissolvingWater, type LiquorCheck, staysDissolved, tryWaterToDissolve } from "../solubility";
import type { Account } from "./account";
import { fateOf } from "./fate";
import type { Material } from "./material";
import type { Species } from "./species";
import { isGas } from "./vessel";

/** How one material goes into the pot. */
export type Feed =
  | { readonly material: string; readonly how: "dissolve"; readonly dissolving: DissolvingWater }
  | { readonly material: string; readonly how: "solution"; readonly water: Quantity<"mass"> | undefined }
  | { readonly material: string; readonly how: "solid"; readonly why: string }
  | { readonly material: string; readonly how: "unknown"; readonly missing: string };

/** The liquor after mixing. */
export interface Liquor {
  /** All the water in it: added, of crystallization, of solutions, used up and set free by the reaction. */
  readonly water: Quantity<"mass"> | undefined;
  readonly check: LiquorCheck | undefined;
  readonly missing: readonly string[];
}

export function feedOf(
  material: Material,
  portion: Quantity,
  temperature: Quantity<"temperature">,
  headroom: number,
  wet: boolean,
): Feed {
  const { name } = material.shelf;
  const { form, formName } = material;
  const asSolid = (why: string): Feed => ({ material: name, how: "solid", why });
  if (!wet) return asSolid("it is heated dry");
  if (material.isSolution) return { material: name, how: "solution", water: material.solventIn(portion) };
  if (isGas(form, false)) return asSolid(`${formName} is a gas: lead it into the liquid`);
  if (form.symbols.length === 1) return asSolid(`${formName} goes into solution only as it reacts`);
  const fate = fateOf(form, temperature);
  if (fate.fallsOut === true) return asSolid(`${fate.why}: stir it in as a solid`);
  const water = tryWaterToDissolve({
    formula: form,
    mass: portion.to("g"),
    temperature,
    headroom,
  });
  if (water.ok) return { material: name, how: "dissolve", dissolving: water.value };
  return {
    material: name,
    how: "unknown",
    missing: `solubility of ${formName}: ${water.error.message.split("\n")[0]}`,
  };
}

/** Water by the equation: that of the crystals, less what the solids keep, plus what the reaction sets free. */
function waterOfReaction(
  materials: readonly Material[],
  account: Account,
  reactants: readonly Species[],
  products: readonly Species[],
): Quantity {
  const M = molarMass("H2O");
  const crystal = materials.map(({ waters, species }, i) =>
    account.supplied[i]!.amount.times(waters.minus(species.waters)),
  );
  // Reactants written as hydrates that are left over still bring their water into the liquor.
  const unused = materials.map(({ species }, i) => account.supplied[i]!.left.times(species.waters));
  const count = (side: readonly Species[]): bigint =>
    side.filter((s) => isWater(s.formula)).reduce((n, s) => n + s.coefficient, 0n);
  const net = account.extent.times(count(products) - count(reactants));
  return sum([...crystal, ...unused, net])
    .times(M)
    .to("g")
    .named({
      symbol: "m(H2O, crystals and reaction)",
      label: "water from crystals and reaction",
      rule: "mass = amount of water × molar mass",
    });
}

export function liquorOf(
  feeds: readonly Feed[],
  materials: readonly Material[],
  account: Account,
  reactants: readonly Species[],
  products: readonly Species[],
  dissolved: readonly { readonly species: Species; readonly amount: Quantity }[],
  temperature: Quantity<"temperature">,
): Liquor {
  const missing = feeds.flatMap((feed) => (feed.how === "unknown" ? [feed.missing] : []));
  const added = feeds.flatMap((feed) => {
    if (feed.how === "dissolve") return [feed.dissolving.water];
    if (feed.how !== "solution") return [];
    if (feed.water === undefined) missing.push(`density of ${feed.material}, for the water in it`);
    return feed.water === undefined ? [] : [feed.water];
  });
  if (missing.length > 0 || added.length === 0) return { water: undefined, check: undefined, missing };
  const water = sum([...added, waterOfReaction(materials, account, reactants, products)]).named({
    symbol: "m(H2O, liquor)",
    label: "all water in the liquor",
    rule: "water = added + from crystals and reaction",
  });
  // What came as a solution and is partly used up cannot fall out of the same water.
  const thinner = new Set(materials.filter((_, i) => feeds[i]!.how === "solution").map((material) => material.species));
  const substances = dissolved
    .filter(({ species, amount }) => amount.isPositive() && !thinner.has(species))
    .map(({ species, amount }) => ({ formula: species.formula, amount }));
  const check =
    substances.length === 0 || !water.isPositive()
      ? undefined
      : staysDissolved({ substances, water: water as Quantity<"mass">, temperature: temperature });
  return { water, check, missing };
}
