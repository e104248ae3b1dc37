// One material into a vessel: dissolved, diluted, stirred in or poured.

import { molarMass, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { massOf } from "../contents/entry";
import { massOfWater } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { EATS_METAL } from "../data/vessels";
import { add } from "../operation/add";
import { dilute } from "../operation/dilute";
import { dissolve } from "../operation/dissolve";
import { filterLiquor } from "../operation/filter";
import { done, justWater } from "../operation/operation";
import { suspend } from "../operation/suspend";
import { exact, planned } from "../planning/exact";
import { isLedIn, staysInWater } from "../reaction/fluids";
import { massPutOn } from "../reaction/neutralising";
import { waterOfReaction } from "../reaction/water-of-reaction";
import type { Material } from "../shelf/material";
import { acidAtHand } from "./acid-at-hand";
import { dissolvesAsItReacts } from "./as-it-reacts";
import { type Bench, type Look, POT } from "./bench";
import { cooledFirst, isShort, isTooLittle } from "./feed-dissolved";
import { asWarmsIt, dilutionHeat, hotWater } from "./felt-warmth";
import { keepsItsWater } from "./first-hydrate";
import { isMixedClear } from "./mixed-clear";
import { notWarmOf } from "./not-warm";
import {
  acidPutOn,
  careOfDiluting,
  careWhereStrong,
  isClearedByAcid,
  keptSour,
  protectionBeforeAcid,
  protectionOf,
} from "./protection";
import { isByLye, isHarshOxidiser } from "./roles";
import { gasInRoom } from "./trap";
import { asRead } from "./weighing";
import { celsius, litres, percent, vesselSize } from "./words";

/** The size of the vessel to take; nothing where it is not known. */
const sizeIn = ({ vessel }: Look): string =>
  vessel === undefined
    ? ""
    : vessel.smallest === undefined
      ? `at least ${litres(vessel.needed)}`
      : `${vesselSize(vessel.smallest)} or larger`;

/** The vessel in brackets. */
export function vesselIn(look: Look): string {
  const size = sizeIn(look);
  return size === "" ? "" : ` (vessel: ${size})`;
}

/** What the vessel of a hot liquor is not made of, in words. */
function ofWhat({ frame: { setting, isolation } }: Bench): string {
  const { cations, groups } = constitutionOf(setting.product.formula);
  const isEating =
    isolation.how === "crystallise" &&
    cations.some(({ formula }) => formula === EATS_METAL.cation) &&
    EATS_METAL.groups.some((one) => groups.includes(one));
  return isEating ? `, ${EATS_METAL.vessel}` : "";
}

/** What a pack has beside its salt and water does not dissolve would end up in a precipitate: it is filtered off first. */
function clearOf(bench: Bench, vessel: string, name: string): void {
  const { solids } = bench.in(vessel).books;
  if (solids.length === 0 || bench.frame.isolation.how !== "precipitate") return;
  const mass = sum(solids.map(massOf));
  if (mass.compare(bench.frame.setting.steps.mass) < 0) return;
  const names = list(solids.map(({ matter }) => matter.name));
  bench.did(vessel, filterLiquor(bench.in(vessel)), {
    say: () =>
      `Filter the solution of the ${name}: ${bench.hand.grams(mass)} of ${names} that the pack has beside it does not dissolve, and would stay with the product.`,
  });
}

/** What a hot solution takes that is nearly saturated, in words. */
const MORE_WATER = ", with a little more hot water if it needs that";

/** What is done where hot water does not dissolve what was planned for it, in words. */
function moreWater({ frame: { feeds } }: Bench): string {
  const [salt] = feeds.flatMap((feed) =>
    feed.how === "dissolve" && feed.alike?.solubility ? [feed.alike.solubility] : [],
  );
  return salt === undefined
    ? MORE_WATER
    : `, with more hot water if it needs that (the water is what ${parseFormula(salt.formula).toUnicode()} takes, which is built alike)`;
}

/** What a pack has beside its salt and water does not dissolve is not chased with more of it, in words; undefined where all dissolves. */
function undissolved({ books }: Pot): string | undefined {
  const names = list([...new Set(books.solids.map(({ matter }) => matter.name))]);
  return books.solids.length === 0
    ? undefined
    : `only ${names} is left, a trace that more water does not dissolve: it is filtered off`;
}

/** Dissolve, dilute or pour one material into a vessel. */
export function putInto(bench: Bench, i: number, vessel: string): void {
  const { setting } = bench.frame;
  const feed = bench.frame.feeds[i]!;
  const name = bench.name(i);
  const own = bench.in(bench.pack(name));
  const onto = putAcid(bench, i, vessel);
  const before = bench.in(vessel);
  const into = onto
    ? " in it and"
    : vessel !== POT
      ? before.isEmpty
        ? " in a jug of its own"
        : ` in the ${vessel}`
      : before.isEmpty
        ? ""
        : " in the same vessel";
  const common = { materials: [name], from: bench.pack(name), care: "dissolving" } as const;
  // The step that fills the vessel tells its size; what takes no part in the equation does not fill it.
  const fills = vessel === POT && !bench.hasFeed && !onto;
  const room = (look: Look): string => (fills ? vesselIn(look).replace(/\)$/, `${ofWhat(bench)})`) : "");
  if (feed.how === "dissolve") {
    const { water: of } = feed.dissolving;
    const isHot = feed.at.compare(setting.temperature) > 0;
    const warmed = (look: Look): string => (isHot ? hotWater(look, name, feed.at) : "");
    const needsNone = !of.isPositive();
    const first = feed.shares === true && fills;
    const joins = feed.shares === true && !fills && needsNone;
    const care = joins
      ? ""
      : careOfWater(bench, i)
          .map((one) => `; ${one}`)
          .join("");
    const short = isTooLittle(feed, bench.material(i), bench.frame.account.supplied[i]!.amount);
    const unclear = short
      ? [`${name}: the water that is given is too little to dissolve it at ${celsius(feed.at)}`]
      : [];
    const isAlone = before.isEmpty || onto;
    const at = bench.drafts.length;
    const falling = (): string[] =>
      bench.drafts[at]!.after.books.solids.filter((one) => one.origin === "precipitated").map((one) => one.matter.name);
    const made = dissolve(before, own, of, feed.cooledTo ?? feed.at, unclear);
    const isCloudy = isAlone && made.after.books.solids.length > 0;
    // of what a pack has besides nobody knows what dissolves: what does not would end up in a precipitate; through an oxidiser as
    // dark as ink nobody sees, and paper it eats
    const isMuddy =
      isAlone &&
      own.books.other.isPositive() &&
      (bench.frame.isolation.how === "precipitate" || notWarmOf(setting.product.formula)?.asItForms === true) &&
      !short &&
      !isCloudy &&
      !isHarshOxidiser(bench.material(i).form);
    const mud = isMuddy
      ? "; if it stays cloudy, let it settle and filter it: what the pack has besides would end up in the product"
      : isAlone && !short && !isCloudy && isMixedClear(bench)
        ? `; if it is not clear, filter it${feed.at.compare(planned("feelsHot")) > 0 ? " hot" : ""} now: mixed, it may give crystals at once`
        : "";
    const isTight = isHot && feed.by?.includes("hotWaterFactor") === true && !isCloudy;
    const least = keepsItsWater(bench, made.after);
    bench.did(vessel, made, {
      ...common,
      amounts: joins ? [bench.frame.portions[i]!] : [of],
      target: feed.at,
      say: (look) => {
        const warm = warmed(look);
        return joins
          ? falling().length > 0
            ? `Add the ${name} to it and stir${warm}: ${list(falling())} precipitates, and all else dissolves${care}.`
            : `Add the ${name} to it and stir${warm} until ${undissolved(made.after) ?? `it is clear${isHot ? moreWater(bench) : ""}`}${care}.`
          : first
            ? `Stir the ${name} into ${bench.hand.water(of)}${warm}${isShort(feed, bench.material(i), bench.frame.account.supplied[i]!.amount) ? "; the last of it dissolves only when the next is in" : ""}${care}${room(look)}.`
            : needsNone
              ? `Warm the ${name}${into} to ${celsius(feed.at)} until it melts in its own crystal water.`
              : short
                ? `Stir the ${name}${into} with ${bench.hand.water(of)}${warm}: it is too little to dissolve all of it.`
                : vessel === POT && !isAlone && falling().length > 0
                  ? `Add the ${name} to it with ${bench.hand.water(of)}${warm} and stir: ${list(falling())} precipitates, and all else dissolves${isHot ? "" : asWarmsIt(look, name)}${care}.`
                  : `Dissolve the ${name}${into}${onto ? "" : " in"} ${bench.hand.water(of)}${warm}, stirring until ${isCloudy ? "no more dissolves" : "it is clear"}${isTight ? MORE_WATER : ""}${isHot ? "" : asWarmsIt(look, name)}${care}${mud}${cooledFirst(feed)}${least}${room(look)}.`;
      },
    });
    if (isAlone && !short) clearOf(bench, vessel, name);
  } else if (feed.how === "unknown") {
    const { form } = bench.material(i);
    const kept = careOf(bench, bench.material(i));
    const careUnknown = kept === undefined ? "" : `; ${kept}`;
    const cloudy = isClearedByAcid(form)
      ? "if it does not get clear, a little more of the acid clears it, water does not"
      : "add more water, and write down how much, if it does not get clear";
    bench.did(vessel, dissolve(before, own, feed.water, setting.temperature, [feed.missing]), {
      ...common,
      amounts: [feed.water],
      say: (look) =>
        `Dissolve the ${name}${into}${onto ? "" : " in"} ${bench.hand.water(feed.water)}${room(look)}, stirring${careUnknown}; no solubility is known: ${cloudy}.`,
    });
  } else if (feed.how === "solution" && feed.dilution !== undefined) {
    const { water: of, to } = feed.dilution;
    const care = careOfDiluting(bench.material(i));
    bench.did(vessel, dilute(before, own, of), {
      ...common,
      amounts: [of],
      target: to,
      say: (look) =>
        `Pour the ${name} slowly into ${bench.hand.water(of)}${vessel === POT || !before.isEmpty ? "" : into}, stirring${care}: it is then ${percent(to)}${dilutionHeat(look, name, bench)}${room(look)}${vessel === POT || before.isEmpty ? "" : `; then pour it into the ${vessel}`}.`,
    });
  } else pour(bench, i, vessel);
}

/** The acid that a salt is dissolved in, which no pack brings, comes first; is there one? */
function putAcid(bench: Bench, i: number, vessel: string): boolean {
  const material = bench.material(i);
  const mass = massPutOn(material, bench.frame.portions[i]!);
  if (mass === undefined || !["dissolve", "unknown"].includes(bench.frame.feeds[i]!.how)) return false;
  const { acid, called } = material.putOn!;
  const strength = planned("putOnAcid");
  const amount = mass.times(strength).dividedBy(molarMass(acid)).to("mol");
  const before = bench.in(vessel);
  const fills = vessel === POT && !bench.hasFeed;
  const where = vessel === POT ? "the vessel" : before.isEmpty ? "a jug of its own" : `the ${vessel}`;
  bench.did(vessel, add(before, acidAtHand(before, acid, amount, strength), []), {
    amounts: [mass],
    say: (look) =>
      `Put ${bench.hand.grams(mass)} of ${called} (${percent(strength)}) into ${where}${fills ? vesselIn(look) : ""}.`,
  });
  return true;
}

/** What is done against plain water as a material dissolves; nothing where it is to make something else of it. */
function careOf({ frame: { setting, roles, feeds, portions } }: Bench, material: Material): string | undefined {
  const { materials, asides, product } = setting;
  const { form, putOn } = material;
  const acid = putOn ?? acidPutOn(form, product.formula);
  const isThere = [...materials, ...asides].some((one) => acid !== undefined && isOneOf(one.form, String(acid.acid)));
  if (acid !== undefined && putOn === undefined && !isThere) return undefined;
  const beforeAcid = isByLye(setting, roles) ? protectionBeforeAcid(form) : undefined;
  const own = keptSour(form, product.formula)?.text ?? beforeAcid;
  if (own !== undefined) return own;
  const i = materials.indexOf(material);
  const [feed, mass] = [feeds[i], material.massOf(portions[i]!)];
  const strong =
    feed?.how === "dissolve" && mass !== undefined
      ? careWhereStrong(form, mass.dividedBy(mass.plus(feed.dissolving.water)))
      : undefined;
  const plain = protectionOf(form, "dissolving");
  return strong === undefined ? plain : [plain, strong].filter((one) => one !== undefined).join("; ");
}

/** What the water of a feed is to be, for that and for all that dissolve in the same water after it. */
function careOfWater(bench: Bench, i: number): string[] {
  const { feeds, setting } = bench.frame;
  const shares = (j: number): boolean => {
    const feed = feeds[j]!;
    return feed.how === "dissolve" && feed.shares === true;
  };
  const own = setting.materials.filter((_, j) => j === i || (shares(i) && shares(j)));
  return [...new Set(own.map((one) => careOf(bench, one)).filter((one) => one !== undefined))];
}

/** Water that the equation takes, crystal water of the products with it. */
function waterUsed({ frame: { setting, account } }: Bench): Quantity {
  const used = waterOfReaction(setting.materials, account, setting.reactants, setting.products).negated();
  const bound = setting.products.map((species) => account.extent.times(species.coefficient).times(species.waters));
  const all = bound.reduce((sum, amount) => sum.plus(massOfWater(amount)), used);
  return all.isPositive() ? all.to("g") : exact("0 g");
}

/** Water alone, for what reacts with it. */
export function putWater(bench: Bench, water: Quantity): void {
  const before = bench.in(POT);
  const put = justWater(before, water);
  bench.did(POT, done("dilute", before, before.plusAll(put), [put]), {
    amounts: [water],
    say: (look) => `Put ${bench.hand.water(water)} into the vessel${vesselIn(look).replace("vessel: ", "")}.`,
  });
}

/** A solution or a solid put in as it is. */
function pour(bench: Bench, i: number, vessel: string): void {
  const name = bench.name(i);
  const own = bench.in(bench.pack(name));
  const before = bench.in(vessel);
  const common = { materials: [name], from: bench.pack(name), amounts: [bench.frame.portions[i]!] } as const;
  const fills = vessel === POT && before.isEmpty;
  const feed = bench.frame.feeds[i]!;
  const { water } = feed.how === "solid" ? feed : { water: undefined };
  if (water !== undefined && isLedIn(bench.material(i)) && staysInWater(bench.material(i).form)) {
    const volume = gasInRoom(bench, bench.frame.account.supplied[i]!.amount);
    bench.did(vessel, dissolve(before, own, water, bench.frame.setting.temperature), {
      ...common,
      amounts: [water],
      care: "dissolving",
      say: (look) =>
        `Lead the ${asRead(bench.frame.setting, bench.frame.portions[i]!)} of ${name} (${litres(volume)}) into ${bench.hand.water(water)}${fills ? vesselIn(look) : ""}, slowly, through an upturned funnel that just touches the water, for a tube that dips in sucks it back; cool from outside.`,
    });
  } else if (water !== undefined)
    bench.did(vessel, suspend(before, own, water), {
      ...common,
      amounts: [water],
      care: "dissolving",
      say: (look) =>
        `Stir the ${name} into ${bench.hand.water(water)}${dissolvesAsItReacts(feed) ? "; what does not dissolve goes into solution as the complex forms" : ""}${fills ? vesselIn(look) : ""}.`,
    });
  else if (feed.how === "solid" && isLedIn(bench.material(i)))
    bench.did(vessel, suspend(before, own, waterUsed(bench), "how much water the gas is led into"), {
      ...common,
      care: "dissolving",
      say: () =>
        `Lead the ${name} (${litres(gasInRoom(bench, bench.frame.account.supplied[i]!.amount))}) into water, slowly, through an upturned funnel that just touches the water, for a tube that dips in sucks it back; write down how much water, and weigh it before and after.`,
    });
  else if (feed.how === "solid")
    bench.did(vessel, suspend(before, own, waterUsed(bench), "how much water the solids are stirred into"), {
      ...common,
      care: "dissolving",
      say: (look) =>
        `Stir the ${name} into enough water to keep it moving, and write down how much${fills ? vesselIn(look) : ""}.`,
    });
  else
    bench.did(vessel, add(before, own, []), {
      ...common,
      care: "dissolving",
      say: (look) =>
        `Pour the ${name} into the ${vessel === POT ? "vessel" : vessel}${fills ? vesselIn(look).replace("vessel: ", "") : ""}.`,
    });
}
