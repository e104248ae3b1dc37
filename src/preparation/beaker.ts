// What the liquor of a precipitation keeps of the product: the equilibrium of all that is in it, not the solubility in pure
// water. The acid, ammonium or carbon dioxide that the reaction itself makes is counted, and so is an excess of precipitant.
import { type AqueousComposition, type CarbonDioxide, tryAqueousComposition } from "../aqueous";
import type { Quantity } from "../quantity";
import type { Account } from "./account";
import type { Setting } from "./setting";

/** The product in the liquor, at equilibrium. */
export interface InBeaker {
  readonly composition: AqueousComposition;
  /** The ion of the product that runs out first: what is left of it tells what is left of the product. */
  readonly ion: string;
  /** Product that stays in solution, as mass of the product's own formula. */
  readonly dissolved: Quantity<"mass">;
  /** Does the liquor hold carbonate? Then airing changes it. */
  readonly carbonate: boolean;
  /** How many times the water it was computed with: 1, or more where the liquor is too strong for the model. */
  readonly times: number;
}

/** Beyond this many times the water a weaker liquor says little. */
const MOST_TIMES = 8;

/** Ions whose salts dissolve: they tell nothing about what falls out. */
const SOLUBLE = new Set(["Li+", "Na+", "K+", "Rb+", "Cs+", "NH3", "H+", "OH-", "NO3-", "ClO4-", "CH3COO-"]);

/** Everything in the pot after the reaction as it is written: products, and what is left over. */
function contents({ products, materials }: Setting, account: Account) {
  const formed = products.map(({ formula }, i) => ({ formula, amount: account.formed[i]!.amount }));
  const left = materials.map(({ species }, i) => ({ formula: species.formula, amount: account.supplied[i]!.left }));
  return [...formed, ...left].filter(
    // an element alone is a metal or a gas: it takes no part in the equilibria of ions
    ({ formula, amount }) => amount.isPositive() && formula.symbols.length > 1,
  );
}

/** The liquor at equilibrium; undefined where it is not known or too strong. */
export function inBeaker(
  setting: Setting,
  account: Account,
  water: Quantity<"mass"> | undefined,
  carbonDioxide: CarbonDioxide,
): InBeaker | undefined {
  if (water?.isPositive() !== true) return undefined;
  const { product, temperature } = setting;
  const dissolved = contents(setting, account);
  let times = 1;
  let found = tryAqueousComposition({ water, dissolved, carbonDioxide, temperature });
  // a liquor too strong for the activity model is judged by a weaker one of the same make
  while (!found.ok && found.error.code === "aqueous.too-strong" && times < MOST_TIMES) {
    times *= 1.25;
    found = tryAqueousComposition({
      water: water.times(times.toPrecision(6)) as Quantity<"mass">,
      dissolved,
      carbonDioxide,
      temperature,
    });
  }
  if (!found.ok) return undefined;
  const composition = found.value;
  const units = account.formed[setting.products.indexOf(product)]!.amount;
  const alone = tryAqueousComposition({
    water: "1000 kg",
    dissolved: [{ formula: product.formula, amount: "1 mmol" }],
    temperature,
  });
  if (!alone.ok) return undefined;
  let scarce: { ion: string; left: Quantity; total: number; count: number } | undefined;
  for (const { formula, amount, share } of alone.value.filtrate) {
    if (SOLUBLE.has(formula) || share === undefined) continue;
    const here = composition.filtrate.find((one) => one.formula === formula);
    if (here?.share === undefined) continue;
    const count = (amount.in("mmol").toNumber() / share.value.toNumber()) | 0 || 1;
    const total = here.amount.in("mol").toNumber() / here.share.value.toNumber() / count;
    if (scarce === undefined || total < scarce.total) scarce = { ion: formula, left: here.amount, total, count };
  }
  if (scarce === undefined || !units.isPositive()) return undefined;
  const mass = scarce.left
    .dividedBy(scarce.count)
    .times(product.molarMass)
    .to("g")
    .named({
      symbol: "m(dissolved)",
      label: `${product.name} that stays in the liquor`,
      rule: `${scarce.ion} left at equilibrium, as ${product.name}`,
    }) as Quantity<"mass">;
  const carbonate = composition.filtrate.some(({ formula }) => formula === "CO3^2-");
  return { composition, ion: scarce.ion, dissolved: mass, carbonate, times };
}
