// Getting a precipitate out: let it stand, test, part it from the liquor, wash, test the last wash.

import type { Formula } from "../../formula";
import { capital, list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { type Quantity, sum } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { filterCake } from "../operation/filter";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { exact, planned } from "../planning/exact";
import { massFor } from "../reaction/account";
import { isAcid, isAmmonia } from "../reaction/acids";
import { isAntisolvent } from "../reaction/fluids";
import { bringsOnlyProduct, isWetWithAlcohol } from "./alcohol";
import { putAsides } from "./asides";
import { type Bench, POT } from "./bench";
import type { Completeness } from "./completeness";
import { digestionOf } from "./digestion";
import { dropTestFor } from "./drop-test";
import { coolInIce } from "./iced-precipitate";
import { liquorHeldBy, settles, washingOf } from "./isolation";
import { baseOnPaper } from "./paper-end";
import { isAirless, protectionOf } from "./protection";
import { useOf } from "./use";
import { washCake } from "./wash-cake";
import { about, nearly } from "./words";

/** Salts that the liquor contains beside what it keeps of the solids, which no washing removes, and alcohol, which leaves by itself. */
const saltsIn = (bench: Bench, pot: Pot) => {
  const { key } = matterOf(bench.frame.setting.product.formula).core;
  const solid = new Set([key, ...pot.books.solids.map(({ matter }) => matter.core.key)]);
  return pot.books.dissolved.filter(({ matter }) => !solid.has(matter.key) && !isAntisolvent(matter.formula));
};

/** Alcohol on the table goes into a liquor that keeps a good deal of the product, where it brings nothing else out: how much more is not known. */
function putAlcohol(bench: Bench): void {
  const { kept, frame } = bench;
  const { product, asides } = frame.setting;
  const isOnTable = asides.some((one) => useOf(one, frame.setting) === "alcohol");
  if (kept === undefined || !isOnTable || !bringsOnlyProduct(bench)) return;
  if (massFor(kept.amount, product.formula).compare(frame.theory.times(planned("worthAntisolvent"))) < 0) return;
  putAsides(bench, "alcohol");
  bench.kept = {
    ...kept,
    range: () => {
      const between = kept.range();
      return between && [exact("0 mol"), between[1]];
    },
  };
}

/** What stands at the equilibrium where it is not the product alone. */
const standingIn = ({ liquor, others, hand, frame }: Bench): string => {
  const { key } = matterOf(frame.setting.product.formula);
  const own = (liquor?.books.solids ?? []).filter(({ matter }) => matter.key === key || others.has(matter.key));
  return `At equilibrium ${list(own.map((one) => `${hand.grams(massOf(one))} of ${one.matter.name}`))} ${own.length === 1 ? "stands" : "stand"}.`;
};

export function isolatePrecipitate(bench: Bench): void {
  const { setting, kind, roles } = bench.frame;
  const { product, temperature } = setting;
  const { cake } = bench;
  const digestion = digestionOf(kind, product.formula, temperature);
  const tested = roles.some((role) => role === "precipitant" || role === "gas-giving base");
  const isWarmed = digestion?.at !== undefined || digestion?.warm === true;
  if (!isWarmed) putAlcohol(bench);
  if (digestion !== undefined) {
    const { at, text, warm, cools, atHand = [] } = digestion;
    const cooling = cools
      ? `; let it cool before it is ${tested ? "tested and " : ""}${settles(setting) ? "decanted" : "filtered"}`
      : "";
    if (at !== undefined) {
      const warmed = heat(bench.pot, at);
      const after = cools ? warmed.after.at(temperature) : warmed.after;
      bench.did(POT, { ...warmed, after }, { target: at, say: () => `${capital(text)}${cooling}.` });
    } else {
      const isCovered = warm && isAirless(product.formula);
      const kept = protectionOf(product.formula, "standing") ?? (isCovered ? "keep it covered" : undefined);
      const care = kept === undefined ? "" : `; ${kept}`;
      bench.did(POT, hold(bench.pot), { atHand, say: () => `${capital(text)}${care}${cooling}.` });
    }
  }
  if (isWarmed) putAlcohol(bench);
  // what dissolves less hot is filtered hot
  const isIced = digestion?.at === undefined && coolInIce(bench);
  if (tested) {
    const inVessel = bench.pot;
    const { tells, pinchOf, of } = dropTestFor(setting, roles, bench.frame.account, bench.kept?.amount, bench.liquor);
    const paper = tells ? baseOnPaper(bench, of) : undefined;
    bench.did(POT, hold(bench.pot), {
      say: ({ completeness }) => {
        if (completeness === undefined) return "Test a little of the clear liquor.";
        const kept =
          "dissolved" in completeness
            ? ` ${bench.others.size > 0 ? standingIn(bench) : keptIn(bench, completeness, inVessel)}`
            : bench.others.size > 0
              ? ` ${standingIn(bench)}`
              : ` How much the liquor keeps is not known: ${completeness.missing} is missing.`;
        return tells
          ? `Test: ${completeness.test}.${paper?.text ?? ""}${kept}`
          : `${capital(completeness.test)}.${kept}`;
      },
      ...(tells ? { blank: "tests.filtrate" } : {}),
      ...(paper === undefined ? {} : { target: paper.pH, atHand: ["indicator paper" as const] }),
      ...(pinchOf === undefined ? {} : { more: { material: pinchOf, portion: undefined } }),
    });
  }
  const salts = saltsIn(bench, bench.pot);
  const { volume } = bench.pot.liquor;
  const { solids } = bench.pot.books;
  if (solids.length === 0) {
    filterNothing(bench);
    return;
  }
  // Whatever solid is in the pot is in the cake, and each keeps liquor after its kind.
  const mass = sum(solids.map(massOf));
  // What is not washed is not settled either: it goes on the filter.
  const decants = settles(setting) && salts.length > 0;
  const way = decants ? "settled" : "suction";
  const heldBy = (on: "suction" | "settled" = way): Quantity =>
    sum(solids.map((one) => massOf(one).times(liquorHeldBy(setting, on, one.matter.formula)))).to("mL");
  const retained = heldBy();
  const perGram =
    solids.length === 1
      ? liquorHeldBy(setting, way, solids[0]!.matter.formula)
      : retained.dividedBy(mass).named({ symbol: "v(ret)", rule: "mean of the solids" });
  const drained = decants ? heldBy("suction").dividedBy(retained.compare(volume) > 0 ? volume : retained) : undefined;
  const washedAt = isIced ? { ...setting, temperature: bench.pot.books.temperature } : setting;
  bench.washing = washingOf(washedAt as typeof setting, salts, volume, mass, perGram, drained);
  const fills = retained.compare(volume.times(planned("fills"))) >= 0;
  // where its liquor was poured off before, this is what the cake was rinsed with
  const { filtrate: before } = bench;
  const parted = filterCake(
    bench.pot,
    fills && decants ? volume : retained,
    before === undefined ? "filtrate" : "wash water",
  );
  const done = bench.did(POT, parted, {
    care: "isolating",
    ...(before === undefined ? { blank: "filtrateVolume" as const } : {}),
    target: retained,
    say: () =>
      fills && decants
        ? `Let the ${cake} settle; it fills the space of nearly all the liquor, and hardly any can be poured off: go on with the first wash.`
        : decants
          ? `Let the ${cake} settle and pour the clear liquor off into the waste jar; ${nearly(bench.hand.litres(retained))} stay with the sludge.`
          : `Filter the ${cake} off on suction${isIced ? ", before the liquor warms," : ""} and press it${isAirless(product.formula) ? ", only until the liquor is gone: no air is sucked through it" : ""}; the cake keeps ${nearly(bench.hand.litres(retained.compare(volume) > 0 ? volume : retained))} of liquor.`,
  });
  bench.filtrate = before ?? parted.left[0]?.pot;
  if (bench.filtrate !== undefined) bench.caught("filtrate", bench.filtrate);
  washCake(bench, done, decants, isIced);
  if (decants) {
    const isWashed = bench.drafts.some(({ operation }) => operation === "wash");
    bench.did(POT, filterCake(bench.pot, heldBy("suction"), isWashed ? "wash water" : "filtrate"), {
      blank: "wetCake",
      say: () => `Filter the ${cake} off and let it drain.`,
    });
  }
  bench.caught(POT, bench.pot.at(temperature));
}

/** A liquor in which no solid stands, as with too little of a base: what comes all the same is filtered off. */
function filterNothing(bench: Bench): void {
  const parted = filterCake(bench.pot, exact("0 mL"));
  bench.did(POT, parted, {
    care: "isolating",
    blank: "filtrateVolume",
    say: () => "Filter off what there is: by the equilibrium of this liquor all of it stays dissolved.",
  });
  bench.filtrate = parted.left[0]?.pot;
  if (bench.filtrate !== undefined) bench.caught("filtrate", bench.filtrate);
}

const holdsAmmonium = (formula: Formula): boolean =>
  isAmmonia(formula) || constitutionOf(formula).cations.some((one) => one.formula === "NH4+");
const holdsCarbonate = (formula: Formula): boolean =>
  constitutionOf(formula).anions.some((one) => one.formula === "CO3^2-" || one.formula === "HCO3-");

/** What is in a liquor that pure water has not. */
function besideIn({ books }: Pot): string {
  const formulas = books.dissolved.map(({ matter }) => matter.formula);
  const [acids, rest] = [formulas.filter(isAcid), formulas.filter((one) => !isAcid(one))];
  const isSalt = (one: Formula): boolean => !isAmmonia(one);
  return list([
    ...(acids.length > 0 ? ["the acid"] : []),
    ...(rest.some(holdsAmmonium) ? ["the ammonia or ammonium"] : []),
    ...(rest.some(holdsCarbonate) ? ["the carbonate"] : []),
    ...(acids.length === 0 || rest.some(isSalt) ? ["the salts"] : []),
  ]);
}

/** What the liquor keeps, and by what. */
function keptIn(
  { hand, frame }: Bench,
  { dissolved, range, precipitated, limits }: Extract<Completeness, { readonly dissolved: Quantity }>,
  pot: Pot,
): string {
  const mass = hand.grams(dissolved);
  // What no balance shows has no doubt worth a word.
  const { least, most } = (dissolved.compare(frame.setting.steps.mass) < 0 ? undefined : range) ?? {};
  const [low, high] = [least, most].map((one) => one && hand.grams(one));
  const doubt = low === undefined || low === high ? "" : ` (${low} to ${high} by the uncertainty of the constants)`;
  if (isWetWithAlcohol(pot))
    return `Without the alcohol this liquor would keep ${mass} of the product${limits.includes("pure water") ? "" : " at equilibrium"}; with it less, how much less is not known here.`;
  return limits.includes("pure water")
    ? `As much pure water keeps ${mass} of the product; ${besideIn(pot)} of this liquor may keep more or less in solution.`
    : `At equilibrium this liquor keeps ${mass} of the product${doubt}; ${about(precipitated, "%")} precipitates.`;
}
