// Of a charge that is fired: how it is ground and filled in, how fast it is heated where gas leaves it, and what it looks like where
// it has not reacted.
import { type Formula, parseFormula } from "../../formula";
import { capital, list } from "../../foundation/wording";
import { type Quantity, sum } from "../../quantity";
import { looksOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { CRUCIBLES, FIRED_IN_AIR, GAS_FROM_LIGHT_POWDER, PUFFS_UP, WET_GRINDING } from "../data/firing";
import { CHROMATE_FROM_FIRE, GROUND_ALIKE, MELT } from "../data/kiln";
import { reacted } from "../operation/add";
import { exact, planned } from "../planning/exact";
import { keyElement } from "../reaction/candidates";
import { heatingOf } from "../reaction/heating";
import { looseDensityOf } from "../reaction/loose";
import { eatsCrucible, isMeltAt, meltsAt } from "../reaction/melting";
import { puffsUp } from "../reaction/puffing";
import type { Material } from "../shelf/material";
import type { Bench } from "./bench";
import { firedBeside } from "./fired-beside";
import { isAlkaliFlux, shownByPinch } from "./free-base";
import type { Grinding } from "./grinding";
import { restOf } from "./kiln-masses";
import { celsius } from "./words";

/** Part of a crucible that a powder fills. */
const HALF = "50 %";

type Heat = Quantity<"temperature"> | undefined;

/** A weighed crucible, and what it must be made of for so much heat. */
export function crucibleFor(at: Heat, forms: readonly Formula[]): string {
  if (forms.some((form) => isMeltAt(form, at) && eatsCrucible(form))) return `a weighed crucible ${MELT.crucible},`;
  // how hot is not known: as for the most heat
  const row = CRUCIBLES.find(({ upTo }) => upTo === undefined || (at !== undefined && at.compare(exact(upTo)) <= 0));
  return row === undefined || row.of === "" ? "a weighed crucible" : `a weighed crucible of ${row.of}`;
}

/** How full a crucible is filled at most, as a share and in words. */
export function fillingOf(
  materials: readonly Material[],
  at: Heat,
): { readonly share: string; readonly words: string } {
  const melting = materials.filter(({ form }) => isMeltAt(form, at));
  if (melting.length > 0) {
    const each = melting.map(({ form, shelf }) => `${shelf.name} (from ${meltsAt(matterOf(form).core.formula)} °C on)`);
    return {
      share: MELT.filled,
      words: `no more than a third full, for the ${list(each)} ${each.length === 1 ? "melts and foams" : "melt and foam"}`,
    };
  }
  const names = materials.filter(({ form }) => puffsUp(form)).map(({ shelf }) => shelf.name);
  if (names.length === 0) return { share: HALF, words: "no more than half full" };
  const verb = names.length === 1 ? "puffs" : "puff";
  return { share: PUFFS_UP.filled, words: `no more than a third full, for the ${list(names)} ${verb} up` };
}

/** Its colour in the cold, without what the registry says besides. */
const colourOf = (formula: Formula): string | undefined => looksOf(formula)?.appearance?.split(",")[0];

/** Are some of the powders of another colour than the others, so that specks show what is not mixed? */
const showsSpecks = (charge: readonly Material[]): boolean =>
  new Set(charge.flatMap(({ form }) => colourOf(form) ?? [])).size > 1;

/** The last of the powders goes to the others, and all into the crucible. */
export function groundWords(
  charge: readonly Material[],
  how: Grinding,
  crucible: string,
  full: string,
  room: string,
): string {
  const { name } = charge.at(-1)!.shelf;
  const until = showsSpecks(charge) ? "until no specks show" : GROUND_ALIKE.until;
  if (how === "wet")
    return `Grind the ${name} in with it under just as much water as makes a slip, so that nothing dusts, ${until}; dry it on a plate, stirring until it is stiff (left alone it settles in layers), crumble it damp through a sieve loosely into ${crucible}, ${full} (${room}), and dry it there at ${WET_GRINDING.driedAt} until two weighings show the same: damp it would spit.`;
  if (how === "closed")
    return `Grind the ${name} in with it, closed and under a hood (water would change the charge), ${until}; let the dust settle before it is opened, then fill ${crucible} ${full} (${room}).`;
  return `Grind the ${name} in with it ${until}, then fill ${crucible} ${full} (${room}).`;
}

/** How fast a light powder is heated while gas leaves it, in words; nothing for others. */
export function paceOf({ frame: { setting } }: Bench, at: Heat): string {
  const forms = setting.materials.map(({ form }) => form);
  if (at === undefined || !forms.some((form) => looseDensityOf(form).compare(planned("looseDensity")) < 0)) return "";
  const steps = forms.flatMap(heatingOf).filter(({ from, leaves }) => leaves.length > 0 && from.compare(at) < 0);
  const by = (one: Quantity, other: Quantity): number => one.compare(other);
  const from = steps.map((step) => step.from).sort(by)[0];
  const to = steps
    .map((step) => step.to ?? step.from)
    .sort(by)
    .at(-1);
  if (from === undefined || to === undefined || from.compare(to) >= 0) return "";
  const end = to.compare(at) < 0 ? to : at;
  const range = `${celsius(from).replace(" °C", "")} to ${celsius(end)}`;
  return `, by no more than ${GAS_FROM_LIGHT_POWDER.pace} from ${range}, where what leaves it would blow the light powder out,`;
}

/** What each feed leaves by itself so hot: as it comes out of the fire, which takes up oxygen as it cools where the table has that. */
function byThemselves(before: Pot, product: Formula, at: Heat): Pot {
  const { reactions } = firedBeside(before, matterOf(product), at);
  return reacted(before, reactions).pot;
}

/** The oxide that air makes of it. */
const inAirOf = (formula: Formula): Formula | undefined => {
  const row = FIRED_IN_AIR.find(({ feed }) => parseFormula(feed).hasSameComposition(formula));
  return row === undefined ? undefined : parseFormula(row.product);
};

/** A solid with its look in brackets, as far as the registry has it. */
const withLook = (formula: Formula): string => {
  const look = looksOf(formula)?.appearance;
  return look === undefined ? formula.toUnicode() : `${formula.toUnicode()} (${look})`;
};

/** What the charge is if nothing of it has reacted: solids, and their mass. */
function unchanged(before: Pot, product: Formula, at: Heat) {
  const solids = byThemselves(before, product, at).books.solids.map(({ matter, amount }) => {
    const air = inAirOf(matter.formula);
    const key = air && keyElement(air);
    if (air === undefined || key === undefined) return { formula: matter.formula, amount };
    return {
      formula: air,
      amount: amount.times(matter.formula.count(key)).dividedBy(exact("1").times(air.count(key))),
    };
  });
  const mass = sum(solids.map(({ formula, amount }) => amount.times(matterOf(formula).molarMass).to("g")));
  return { formulas: solids.map(({ formula }) => formula), mass };
}

/** What to look for in a charge of several solids, and what is done about it. */
export function lookFor(bench: Bench, before: Pot, at: Heat, how: Grinding | "washed"): string {
  const { setting } = bench.frame;
  const product = setting.product.formula;
  const fired = bench.drafts.find(({ operation }) => operation === "fire");
  const look = looksOf(product)?.appearance;
  const { formulas, mass } = unchanged(before, product, at);
  const same = formulas.filter((one) => colourOf(one) === colourOf(product));
  // a flux is no sign: it does not react
  const named = formulas.filter((one) => looksOf(one) !== undefined && !same.includes(one) && !isAlkaliFlux(one));
  const pinch = shownByPinch(setting, at)?.text;
  const looks =
    look === undefined || named.length === 0
      ? []
      : [`it is ${look} through and through where it has; specks and streaks of ${list(named.map(withLook))} have not`];
  const signs = [...looks, ...(pinch === undefined ? [] : [pinch])];
  const shows = signs.length === 0 ? "" : ` (${signs.join("; ")})`;
  const rest = fired && restOf(bench.drafts, fired, bench.frame.theory);
  const least = fired && rest && fired.after.mass.minus(rest.water);
  const isInBand =
    fired !== undefined &&
    least !== undefined &&
    mass.compare(least) > 0 &&
    mass.compare(fired.after.mass) <= 0 &&
    bench.hand.grams(mass) !== bench.hand.grams(least);
  const weighs = isInBand
    ? ` A charge that has not reacted may weigh ${bench.hand.grams(mass)}, as ${list(formulas.map((one) => one.toUnicode()))}.`
    : "";
  const crush = {
    dry: "Crush it",
    wet: "Crush it wet, under a little water,",
    closed: "Crush it closed, in a bag or jar,",
    washed: `${capital(CHROMATE_FROM_FIRE.raw)},`,
  };
  const again = {
    dry: "grind it and fire it again",
    wet: `grind it wet, dry it at ${WET_GRINDING.driedAt} and fire it again`,
    closed: "grind it closed and fire it again",
    washed: `grind it wet, dry it at ${WET_GRINDING.driedAt} and fire it again`,
  };
  const end = how === "wet" ? ` Dry it at ${WET_GRINDING.driedAt} at the end.` : "";
  if (look !== undefined && formulas.length > 0 && same.length === formulas.length) {
    const isMute = fired !== undefined && fired.left.length === 0;
    const mute = isMute ? ", and nothing leaves it, so the mass does not either" : "";
    const names = `${list(formulas.map((one) => one.toUnicode()))} ${formulas.length === 1 ? "is" : "are"}`;
    return `${crush[how].replace(/,$/, "")}: the look does not tell what has not reacted, for ${names} ${colourOf(product)} as well${mute}${pinch === undefined ? "" : `; but ${pinch}`}. ${capital(again[how])} ${isMute ? "once" : "until the mass no longer changes"}.${weighs}${end}`;
  }
  return `${crush[how]} and look for what has not reacted${shows}: ${again[how]} until mass and colour no longer change.${weighs}${end}`;
}
