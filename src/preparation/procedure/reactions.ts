// What reacts in the vessel: the equation, acid that came along, peroxide over the need; and what the liquor
// keeps of the solids that form.

import { type Formula, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { keptAtEquilibrium, keptByParts, keptRange } from "../contents/kept-by-liquor";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { dissolve as redissolve, type Term } from "../contents/react";
import { standsInstead, staysDissolved } from "../contents/solids-standing";
import type { Reaction } from "../operation/add";
import { exact, planned } from "../planning/exact";
import { isAcid, isLye } from "../reaction/acids";
import { fateOf, keptByWater } from "../reaction/fate";
import { isGas, isLedIn } from "../reaction/fluids";
import { acidAfterLye, acidsIn, basesIn, givingAmong, neutralisation } from "../reaction/neutralising";
import type { Species } from "../reaction/species";
import type { Bench } from "./bench";
import { fizzed } from "./other-solid";
import { isPeroxide } from "./roles";

/** Where the products go. */
function wheretoOf(bench: Bench, species: Species): Term["whereto"] {
  const { setting, isolation } = bench.frame;
  if (isGas(species.formula, setting.wet)) return "gas";
  if (!setting.wet) return "left by heat";
  if (species === setting.product) return isolation.how === "precipitate" ? "precipitated" : "dissolved";
  return fateOf(species.formula, setting.temperature).precipitated === true ? "precipitated" : "dissolved";
}

/** The equation as terms of a reaction. */
export function mainReaction(bench: Bench): Reaction {
  const { setting, account } = bench.frame;
  const brought = new Set(setting.materials.map(({ species }) => species));
  const used = setting.reactants.map((species): Term => {
    const isAir = !brought.has(species) && !species.isWater;
    return { matter: matterOf(species.formula), count: -species.coefficient, whereto: isAir ? "air" : "dissolved" };
  });
  const made = setting.products.map(
    (species): Term => ({
      matter: matterOf(species.formula),
      count: species.coefficient,
      whereto: wheretoOf(bench, species),
    }),
  );
  return { terms: [...used, ...made], extent: account.extent };
}

/** Peroxide over what the equation uses decomposes. */
export function peroxideLeft(bench: Bench): Reaction[] {
  return bench.frame.setting.materials.flatMap((material, i): Reaction[] => {
    const { left } = bench.frame.account.supplied[i]!;
    return isPeroxide(material) && left.isPositive() ? [peroxideDecay(left)] : [];
  });
}

/** So much peroxide comes apart: 2 H2O2 -> 2 H2O + O2. */
export function peroxideDecay(amount: Quantity): Reaction {
  const term = (formula: string, count: bigint, whereto: Term["whereto"]): Term => ({
    matter: matterOf(parseFormula(formula)),
    count,
    whereto,
  });
  return {
    terms: [term("H2O2", -2n, "dissolved"), term("H2O", 2n, "dissolved"), term("O2", 1n, "gas")],
    extent: amount.dividedBy(exact("2")),
  };
}

/** A gas is led in with what of it is not absorbed: that leaves again. */
export const gasLeft = ({ frame: { setting, account } }: Bench): Reaction[] =>
  setting.materials.flatMap((material, i): Reaction[] => {
    const { form } = material;
    const { left, excess } = account.supplied[i]!;
    // What rounding put over stays in the liquor.
    if (!isLedIn(material) || !left.isPositive() || excess.compare(planned("asGoodAsNone")) < 0) return [];
    const matter = matterOf(form);
    return [
      {
        terms: [
          { matter, count: -1n, whereto: "dissolved" },
          { matter, count: 1n, whereto: "gas" },
        ],
        extent: left,
      },
    ];
  });

/** Acid that came along in a shop material is neutralised by the base of the plan, a carbonate or hydroxide by its acid. */
export function alsoUsed(bench: Bench): Reaction[] {
  const { materials, temperature } = bench.frame.setting;
  const giving = givingAmong(materials)?.material;
  if (giving === undefined) return [];
  const isSolid = (formula: Formula): boolean => fateOf(formula, temperature).precipitated === true;
  return materials.flatMap((material, i) => {
    const portion = bench.frame.portions[i]!;
    return [
      ...acidsIn(material, portion).flatMap(({ acid, amount }): Reaction[] => {
        const found = neutralisation(giving.form, acid);
        return found === undefined ? [] : [{ terms: found.terms, extent: amount.dividedBy(found.acids) }];
      }),
      ...(isAcid(giving.form) ? basesIn(material, portion) : []).flatMap(({ base, amount }): Reaction[] => {
        const found = neutralisation(base, giving.form);
        if (found === undefined) return [];
        const terms = found.terms.map(
          (term): Term =>
            term.count > 0n && term.whereto === "dissolved" && isSolid(term.matter.formula)
              ? { ...term, whereto: "precipitated" }
              : term,
        );
        const bases = -terms.find(({ matter }) => matter.key === matterOf(base).key)!.count;
        return [{ terms, extent: amount.dividedBy(bases) }];
      }),
    ];
  });
}

/** Lye and acid that are both more than the equation uses neutralise each other. */
export function baseLeft({ frame: { setting, account, portions } }: Bench): Reaction[] {
  const staged = acidAfterLye(setting.materials)?.acid;
  // Acid that the account leaves to the lye is in the vessel all the same.
  const left = (i: number): Quantity => {
    const material = setting.materials[i]!;
    if (i !== staged) return account.supplied[i]!.left;
    return material.amountIn(portions[i]!).minus(account.extent.times(material.species.coefficient));
  };
  const over = (of: (form: Formula) => boolean): number =>
    setting.materials.findIndex(({ form }, i) => of(form) && left(i).isPositive());
  const [base, acid] = [over(isLye), over(isAcid)];
  if (base < 0 || acid < 0) return [];
  const found = neutralisation(setting.materials[base]!.form, setting.materials[acid]!.form);
  if (found === undefined) return [];
  const bases = -found.terms[0]!.count;
  const [byBase, byAcid] = [
    left(base).dividedBy(exact(String(bases))),
    left(acid).dividedBy(exact(String(found.acids))),
  ];
  return [{ terms: found.terms, extent: byBase.compare(byAcid) < 0 ? byBase : byAcid }];
}

/** What the water keeps of each solid that forms goes back into it. */
export function settled(bench: Bench, reacted: Pot): Pot {
  const { setting } = bench.frame;
  const pot = fizzed(bench, reacted);
  const put = setting.reactants.map(({ formula }) => formula);
  let after = pot;
  for (const { matter, origin, amount } of pot.books.solids) {
    if (origin === "put in" && fateOf(matter.formula, setting.temperature).precipitated === false)
      after = redissolve(after, matter, amount);
    if (origin !== "precipitated") continue;
    const { water: of } = after.books;
    const known = (T: Quantity<"temperature">) => (of.isPositive() ? keptByWater(matter.formula, of, T) : undefined);
    const inWater = (): Quantity | undefined =>
      (known(setting.temperature) ?? known(exact("25 °C") as Quantity<"temperature">))
        ?.dividedBy(matter.molarMass)
        .to("mol");
    const atEquilibrium = keptAtEquilibrium(pot, matter);
    const parts = atEquilibrium === undefined ? keptByParts(pot, matter, put) : undefined;
    const instead = atEquilibrium === undefined && parts === undefined ? standsInstead(pot, matter) : [];
    if (parts !== undefined) {
      const text = `by the equilibrium no more ${matter.name} stays dissolved than of ${list(parts.names)}: its own solubility product is not known, and that it is the solid that forms is common practice`;
      after = after.with({ unknown: [...after.books.unknown, text] });
    }
    const isProduct = matter.key === matterOf(setting.product.formula).key;
    if (instead.length > 0) {
      const text = `by the equilibrium ${list(instead)} stands in place of ${matter.name}: see whether it goes`;
      after = after.with({ unknown: [...after.books.unknown, text] });
    }
    const kept =
      atEquilibrium ??
      parts?.kept ??
      (staysDissolved(pot, matter) ? amount : undefined) ??
      (bench.others.has(matter.key) ? undefined : inWater());
    if (kept === undefined || (!isProduct && !kept.isPositive())) continue;
    after = redissolve(after, matter, kept);
    if (isProduct)
      bench.kept = {
        amount: kept,
        by: atEquilibrium !== undefined || kept === amount ? "equilibrium" : (parts?.names ?? "water"),
        range: () => (atEquilibrium === undefined ? undefined : keptRange(pot, matter)),
      };
  }
  const { key, name } = matterOf(setting.product.formula);
  const beside = after.books.solids
    .filter(({ matter }) => bench.others.has(matter.key))
    .map(({ matter }) => matter.name);
  if (beside.length > 0 && after.books.solids.every(({ matter }) => matter.key !== key)) {
    const text = `by the equilibrium ${list(beside)} stands in place of ${name}: see whether it goes`;
    after = after.with({ unknown: [...after.books.unknown, text] });
  }
  return after;
}
