// The equation of a candidate: what comes beside the product follows from the ions, the numbers from the balancer.

import { type BalancedEquation, balance } from "../equation";
import { attempt } from "../foundation/error";
import { acidOfAnion, bareIon, saltFormula } from "../ion/internal";
import { thermalRows } from "../substance/internal";
import type { Candidate } from "./candidates";
import { type Compound, keyOf } from "./compound";
import { BASIC, CARBONATES, ION_OF_METAL } from "./kinds";

const WATER = "H2O";

/** Ions of a feed; ammonia counts as what it takes a hydron to. */
function ionsOf({ made }: Compound): { readonly cations: readonly string[]; readonly anions: readonly string[] } {
  if (made.molecules.some(({ formula }) => keyOf(formula) === keyOf("NH3")))
    return { cations: ["NH4+"], anions: ["OH-"] };
  return { cations: made.cations.map(({ formula }) => formula), anions: made.anions.map(({ formula }) => formula) };
}

/** What comes beside the product, carbon dioxide and water left out: the ions that the product does not take. */
function besideOf({ family, product, feeds }: Candidate): readonly string[] | undefined {
  if (family.code === "ammine" || family.code === "heat" || family.code === "slake") return [];
  const own = ionsOf(product);
  const all = feeds.map(ionsOf);
  const metals = feeds.filter(({ made }) => made.kind === "element");
  const peroxide = feeds.some(({ key }) => key === keyOf("H2O2"));
  const rest = (of: "cations" | "anions"): string[] =>
    [...new Set(all.flatMap((one) => one[of]))].filter((ion) => !own[of].includes(ion));
  let [cations, anions] = [rest("cations"), rest("anions").filter((ion) => !BASIC.has(ion))];
  if (product.made.kind === "element") {
    // a metal set free: the other one takes its anion
    const [salt, metal] = feeds;
    const ion = ION_OF_METAL[metal!.forms[0]!];
    return ion === undefined ? undefined : [saltFormula(ion, salt!.anion!)];
  }
  // soda and lime: the carbonate is what is filtered off
  if (family.code === "keep-filtrate" && product.anion === "OH-")
    return [saltFormula(feeds[1]!.cation!, feeds[0]!.anion!)];
  if (product.made.kind === "acid") {
    const weak = new Set(feeds.flatMap((one, i) => (i === 0 ? one.made.anions.map(({ formula }) => formula) : [])));
    anions = anions.filter((ion) => !weak.has(ion));
    cations = cations.filter((ion) => ion !== "H+");
  }
  if (family.code === "displace") return [bareIon(feeds[1]!.cation!)];
  if (metals.length > 0 && !peroxide) return ["H2"];
  if (peroxide) return [];
  const basic = all.some((one) => one.anions.some((ion) => BASIC.has(ion)));
  if (basic) cations = cations.filter((ion) => ion !== "H+");
  // a complex takes as much of the alkali as it needs: the rest goes with the other anion
  if (cations.length === 0 && anions.length > 0) cations = feeds[1]?.made.cations.map(({ formula }) => formula) ?? [];
  if (cations.length === 0) return anions.length === 0 ? [] : undefined;
  if (anions.length === 0) return basic && cations.length === 0 ? [] : undefined;
  return cations.flatMap((cation) =>
    anions.map((anion) => (cation === "H+" ? acidOfAnion(anion) : saltFormula(cation, anion))),
  );
}

/** What heat takes from the air and sets free on the way from one solid to another. */
function heatSides(
  from: string,
  to: string,
): { readonly takes: readonly string[]; readonly leaves: readonly string[] } | undefined {
  const row = thermalRows().find(
    ({ formula, steps }) =>
      keyOf(formula) === from && steps.some(({ remains }) => remains.length === 1 && keyOf(remains[0]!.formula) === to),
  );
  if (row === undefined) return undefined;
  const upTo = row.steps.findIndex(({ remains }) => remains.length === 1 && keyOf(remains[0]!.formula) === to);
  const passed = row.steps.slice(0, upTo + 1);
  const all = (of: (step: (typeof passed)[number]) => readonly { readonly formula: string }[]): string[] => [
    ...new Set(passed.flatMap((step) => of(step).map(({ formula }) => formula))),
  ];
  return { takes: all((step) => step.takes ?? []), leaves: all((step) => step.leaves) };
}

/** The balanced equation of a candidate, with the product and each feed in the form that is given; undefined where none balances. */
export function equationOf(c: Candidate, product: string, feeds: readonly string[]): BalancedEquation | undefined {
  const beside = c.beside ?? besideOf(c);
  if (beside === undefined) return undefined;
  const gives = c.feeds.some(({ made }) => made.anions.some(({ formula }) => CARBONATES.has(formula)));
  const bicarbonate = c.feeds.some(({ made }) => made.anions.some(({ formula }) => formula === "HCO3-"));
  const takes = c.product.made.anions.some(({ formula }) => CARBONATES.has(formula));
  const heat = c.family.code === "heat" ? heatSides(c.feeds[0]!.key, c.product.key) : undefined;
  const gases: (readonly string[])[] =
    heat !== undefined ? [heat.leaves] : !gives ? [[]] : takes && !bicarbonate ? [[], ["CO2"]] : [["CO2"], []];
  const waters: readonly (readonly [left: readonly string[], right: readonly string[]])[] = [
    [[], [WATER]],
    [[WATER], []],
    [[], []],
  ];
  for (const gas of gases)
    for (const [left, right] of waters) {
      const products = [product, ...beside, ...gas.filter((one) => !right.includes(one)), ...right];
      const made = attempt(() =>
        balance({
          reactants: [...new Set([...feeds, ...(heat?.takes ?? []), ...left])],
          products: [...new Set(products)],
        }),
      );
      if (made.ok) return made.value;
    }
  return undefined;
}
