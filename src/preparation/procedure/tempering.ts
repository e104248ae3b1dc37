// The vessel brought to the temperature at which the next material is to come in.

import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { MIXED_HOT, POURED_COLD, WARM_FOR_AMMINE, WARM_IN_ACID } from "../data/firing";
import { SPARING_ACID } from "../data/late-start";
import { warmthOf } from "../feasibility/by-warmth";
import { cool } from "../operation/cool";
import { heat } from "../operation/heat";
import { exact, planned } from "../planning/exact";
import { isAcid, isAmmonia } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isVolatile } from "../reaction/fluids";
import { formulaFrom } from "../reaction/species";
import type { Material } from "../shelf/material";
import { type Bench, POT } from "./bench";
import { mixedHotAt } from "./digestion";
import { isSourSalt } from "./kind";
import { inTheWay } from "./mixed-hot";
import { notWarmOf, spoiltByBoiling } from "./not-warm";
import { losesAmmonia } from "./protection";
import { celsius } from "./words";

type Temperature = Quantity<"temperature">;

/** A ligand that meets its metal hot. */
export function warmedLigand(bench: Bench): void {
  const salt = inTheWay(bench.frame.setting, bench.frame.roles);
  if (salt === undefined) return;
  const at = exact(MIXED_HOT.at) as Quantity<"temperature">;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () =>
      `Warm the contents to ${celsius(at)} and keep them there, stirring: cold, ${formulaFrom(salt).toUnicode()} precipitates and hardly dissolves again.`,
  });
}

/** A precipitate that forms only in the heat comes into a hot vessel. */
export function warmedForProduct(bench: Bench): void {
  const { setting, kind, isolation } = bench.frame;
  const at = isolation.how === "precipitate" ? mixedHotAt(setting, kind) : undefined;
  if (at === undefined || bench.pot.books.temperature.compare(at) >= 0) return;
  const isOtherSolid = warmthOf(setting.product.formula).from !== undefined;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () =>
      `Warm the contents to ${celsius(at)}: in the cold ${isOtherSolid ? "another solid settles" : "it comes out too fine to be filtered"}.`,
  });
}

/** An acid that stays undissolved in the cold meets its carbonate warm: else the gas lags, and comes at once at the end. */
export function warmedForSparingAcid(bench: Bench): void {
  const { setting, roles, feeds } = bench.frame;
  const isSparing = ({ form }: Material, i: number): boolean =>
    feeds[i]!.how === "solid" &&
    (isAcid(form) || isSourSalt(form)) &&
    fateOf(form, setting.temperature).precipitated === true;
  const sparing = setting.materials.find(isSparing);
  if (sparing === undefined || !roles.includes("gas-giving base")) return;
  const at = exact(SPARING_ACID.at) as Temperature;
  if (spoiltByBoiling(setting.product.formula) !== undefined || isStillAt(bench, at)) return;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () =>
      `Warm the contents to ${celsius(at)} and keep them there: cold, the ${sparing.shelf.name} hardly dissolves, and ${SPARING_ACID.why}.`,
  });
}

/** Something was put to it since it was hot: what it is now nobody knows. */
export function hasCooled({ drafts }: Bench): boolean {
  const inPot = drafts.filter(({ vessel }) => vessel === POT);
  const isHeated = ({ operation }: (typeof inPot)[number]): boolean => operation === "heat" || operation === "dissolve";
  const last = inPot.map(isHeated).lastIndexOf(true);
  return inPot.slice(last + 1).some(({ operation, put }) => operation === "add" && put.some((pot) => !pot.isEmpty));
}

/** Is it as warm as that, with nothing put to it since? */
export const isStillAt = (bench: Bench, at: Temperature): boolean =>
  bench.pot.books.temperature.compare(at) >= 0 && !hasCooled(bench);

/** Is a volatile acid in it that is more than dilute? */
export const fumesWarm = ({ books, mass }: Bench["pot"]): boolean =>
  books.dissolved.some(
    (one) =>
      isAcid(one.matter.formula) &&
      isVolatile(one.matter.formula) &&
      massOf(one).dividedBy(mass).compare(planned("dilute")) > 0,
  );

/** Acid that hardly takes an oxide in the cold is warmed before that comes. */
export function warmed(bench: Bench, i: number): void {
  const { form } = bench.material(i);
  const row = WARM_IN_ACID.find(({ formulas }) => isOneOf(form, ...formulas));
  const at = row && (exact(row.at) as Quantity<"temperature">);
  if (at === undefined || isStillAt(bench, at)) return;
  const name = bench.name(i);
  const fumes = fumesWarm(bench.pot);
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    ...(fumes ? { apparatus: "fume hood" as const } : {}),
    say: () =>
      `Warm the contents to ${celsius(at)}${fumes ? ", loosely covered and under a hood: it fumes," : ""} and keep them there: cold acid hardly dissolves the ${name}.`,
  });
}

const isPouredCold = ({ form }: Material): boolean => isOneOf(form, ...POURED_COLD.formulas);

/** Is free alkali in the vessel? */
const isAlkaline = ({ pot }: Bench): boolean =>
  pot.books.dissolved.some(
    ({ matter: { formula } }) =>
      isAmmonia(formula) ||
      constitutionOf(formula).anions.some((anion) => POURED_COLD.alkaline.some((one) => one === anion.formula)),
  );

/** What warm liquor or alkali takes apart comes into a cooled vessel. */
export function cooledFor(bench: Bench, i: number): void {
  if (!isPouredCold(bench.material(i))) return;
  const at = exact(POURED_COLD.from) as Temperature;
  const { temperature } = bench.pot.books;
  const isWarm = temperature.compare(at) > 0;
  if (!isWarm && !isAlkaline(bench)) return;
  bench.did(POT, cool(bench.pot, isWarm ? at : temperature), {
    target: at,
    say: () =>
      `Cool it below ${celsius(at)}, in a bath of cold water, before the ${bench.name(i)} comes: ${POURED_COLD.why}.`,
  });
}

/** How warm the vessel may get as a material comes in; undefined where nothing bounds it. */
export function warmestAsAdded(bench: Bench, i: number): Temperature | undefined {
  const product = notWarmOf(bench.frame.setting.product.formula)?.upTo;
  const own = isPouredCold(bench.material(i))
    ? isAlkaline(bench)
      ? POURED_COLD.inAlkali
      : POURED_COLD.elsewhere
    : isAmmonia(bench.material(i).form) && losesAmmonia(bench.frame.setting.product.formula)
      ? WARM_FOR_AMMINE.neverAbove
      : undefined;
  const bounds = [product, own].flatMap((text) => (text === undefined ? [] : [exact(text) as Temperature]));
  return bounds.sort((one, other) => one.compare(other))[0];
}
