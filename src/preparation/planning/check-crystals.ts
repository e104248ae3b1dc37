// What crystals are watched for: from how much water they come, how many, and what may crystallise beside them.

import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { isOneOf, saltFormula } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { massOf, type SolidEntry } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import { ACID_SALTS, ASH_TEST } from "../data/crystal-test";
import { POT, type Work } from "../procedure/bench";
import { formulaFrom } from "../reaction/species";
import { type Check, check, shown, type Watched } from "./check";
import { feedingsOf, isOver, leftOf } from "./left-over";

/** Crystals as the steps have them. */
interface Grown {
  /** Water they come from. */
  readonly water: Quantity;
  readonly own: SolidEntry;
  /** Share of what was dissolved of it, as the step has it. */
  readonly share: Quantity;
  /** What comes with them. */
  readonly along: readonly SolidEntry[];
  /** What stays on the hot filter before. */
  readonly onFilter: readonly SolidEntry[];
}

const isCrystal = ({ origin }: SolidEntry): boolean => origin === "crystallised";

/** Crystals of the step in which the pot cools; undefined where nothing is cooled. */
function grownIn({ drafts }: Work, product: Matter): Grown | undefined {
  const inPot = drafts.filter(({ vessel }) => vessel === POT);
  const cooled = inPot.find(({ operation }) => operation === "cool");
  const crystals = cooled?.after.books.solids.filter(isCrystal) ?? [];
  const own = crystals.find(({ matter }) => matter.core.key === product.core.key);
  const there = cooled?.before.books.dissolved.find(({ matter }) => matter.key === product.core.key);
  if (cooled === undefined || own === undefined || there === undefined) return undefined;
  const boiled = inPot.find(({ operation }) => operation === "concentrate");
  return {
    water: cooled.before.books.water,
    own,
    share: own.amount.dividedBy(there.amount).to("%"),
    along: crystals.filter((one) => one !== own),
    onFilter: boiled?.after.books.solids.filter(isCrystal) ?? [],
  };
}

const named = (solids: readonly SolidEntry[]): string =>
  list(solids.map((one) => `${shown(massOf(one))} of ${one.matter.name}`));

/** Alkali of a pack that comes with an acid as its acid salt, and how that shows. */
function acidSalts({ setting: { materials, product } }: Watched): Check[] {
  const row = ACID_SALTS.find(({ acid }) => isOneOf(matterOf(product.formula).core.formula, acid));
  if (row === undefined) return [];
  return materials.flatMap(({ also, shelf }) =>
    row.cations.flatMap((cation) =>
      also.some(({ form }) => constitutionOf(form).cations.some(({ formula }) => formula === cation))
        ? [
            {
              text: `${formulaFrom(cation).toUnicode()} of the ${shelf.name} crystallises with it as ${formulaFrom(saltFormula(cation, row.anion)).toUnicode()}, which dissolves far less, and no rinse takes that out: ${ASH_TEST.test}; ${ASH_TEST.again}`,
              figure: undefined,
              about: "purity" as const,
            },
          ]
        : [],
    ),
  );
}

/** What crystals from a hot liquor are watched for. */
export const crystallisation = (watched: Watched): Check[] => [...crop(watched), ...acidSalts(watched)];

/** How much crystallises, from how much water, and what beside it. */
function crop({ batch, setting, work }: Watched): Check[] {
  const { crystallising } = batch;
  if (crystallising === undefined) return [];
  const grown = grownIn(work, matterOf(setting.product.formula));
  const { cooling, hot, cold } = crystallising;
  const at = (q: Quantity): string => q.format({ decimals: 0, uncertainty: "none" });
  if (crystallising.asItForms && "missing" in cooling) return [check(cooling.missing)];
  if (grown === undefined)
    return [
      "missing" in cooling
        ? check(`no crop by cooling can be calculated: ${cooling.missing}`)
        : check(
            `cooling brings only ${shown(cooling.crop.share)} of it: the liquor is evaporated and gives all ${shown(batch.product.theoreticalYield)}`,
            batch.product.theoreticalYield,
          ),
    ];
  const { water, own, share, along, onFilter } = grown;
  const mass = massOf(own);
  const filtered = onFilter.length === 0 ? "" : `${named(onFilter)} stays on the filter at ${at(hot)}, and `;
  const from =
    "missing" in cooling
      ? `from ${shown(water)} of water, cooled to ${at(cold)},`
      : `from ${shown(water)} of water at ${at(hot)}, cooled to ${at(cold)},`;
  const pure = mass.dividedBy(sum([mass, ...along.map(massOf)])).to("%");
  const beside = along.length === 0 ? "" : `; ${named(along)} crystallises with it: ${shown(pure)} pure`;
  const alone =
    crystallising.parted === undefined && onFilter.length + along.length === 0
      ? ""
      : " (each taken as if it were alone in the water)";
  const gap = "missing" in cooling ? ` (by what it dissolves cold: ${cooling.missing})` : "";
  return [
    {
      text: `${from} ${filtered}${shown(mass)} of ${own.matter.name} crystallises, ${shown(share)} of it${beside}${gap}${alone}`,
      figure: mass,
      about: "crop",
    },
  ];
}

/** What a double salt is watched for. */
export function doubleSalt(watched: Watched): Check[] {
  const over = feedingsOf(watched).filter(isOver);
  const checks = over.map((f) =>
    check(
      `${shown(leftOf(f))} of ${f.material.shelf.name} is in excess of the ratio of the double salt: it may crystallise beside it`,
      leftOf(f),
    ),
  );
  if (checks.length === 0)
    checks.push(check("the salts are in the ratio of the double salt: nothing else should crystallise"));
  return [...checks, ...crystallisation(watched)];
}
