// One function for each kind of preparation: what is done, in order.

import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import { isStranger } from "../contents/solids-standing";
import { SLOW_IN_ACID, WARM_FOR_METAL } from "../data/firing";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { exact, isFromRounding, planned } from "../planning/exact";
import { massFor } from "../reaction/account";
import { isAcid, isAmmonia, isMetal } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { burns, isGas } from "../reaction/fluids";
import { putAsides, putBoundAcid } from "./asides";
import { Bench, type Frame, POT, type Telling, type Work } from "./bench";
import { isClosed } from "./closed-flask";
import { combine } from "./combine";
import { atEndOfDisplacement, endOfDisplacement } from "./displaced";
import { endOf, ironOxidised, keptForLigands, keptToItsEnd } from "./end-seen";
import { isSlowMetal } from "./feed-single";
import { finish } from "./finish";
import { isClearedHot } from "./haze";
import { takeOutIodine } from "./iodine";
import { isolate } from "./isolate";
import { kiln } from "./kiln";
import type { ProcedureKind } from "./kinds";
import { stirredHot } from "./mixed-hot";
import { overHydroxide } from "./over-hydroxide";
import { onPaper } from "./paper";
import { asMeant, givesCarbonDioxide, toCorrect, toExpect, withoutGas } from "./paper-end";
import { clearPermanganate } from "./permanganate";
import { isByLye } from "./roles";
import { slowSolid } from "./slow-solid";
import { leftInVessel, liftOut, takeOutMetal } from "./take-out-metal";
import { weighAll } from "./weighing";
import { celsius } from "./words";

/** What is done once everything is together in the pot; dry work and what is put together otherwise begins at the balance. */
type Procedure = (bench: Bench) => void;

/** Wait and look; nothing is put in and nothing leaves. */
const until = (
  bench: Bench,
  text: string | (() => string),
  rest: Pick<Telling, "blank" | "atHand" | "target"> = {},
): void => {
  const say = typeof text === "string" ? () => text : text;
  bench.did(POT, hold(bench.pot), { say, ...rest });
};

/** What can be watched as it reacts: gas that rises, a solid that goes. */
function seen({ drafts, frame }: Bench): { readonly gas: boolean; readonly solid: boolean } {
  return {
    gas: drafts.some(({ left }) => left.some(({ what }) => what === "gas")),
    solid: frame.feeds.some(({ how }) => how === "solid"),
  };
}

function precipitation(bench: Bench): void {
  isolate(bench);
  finish(bench);
}

function neutralisation(bench: Bench): void {
  const { gas, solid } = seen(bench);
  const { pot } = bench;
  const { setting, isolation } = bench.frame;
  const precipitates = isolation.how === "precipitate";
  const ends = [...(gas ? ["no more gas rises"] : []), ...(solid && !precipitates ? ["no more solid dissolves"] : [])];
  // paper is dipped into a drop that has cooled; of a solid that the equilibrium does not know it cannot tell what is left dissolved
  const isTold = !precipitates || !isStranger(pot, matterOf(setting.product.formula));
  const drop = isTold ? onPaper(asMeant(bench).at(setting.temperature)) : undefined;
  const correction = drop === undefined ? "" : toCorrect(bench);
  const isSlow = gas && setting.materials.some(({ form }) => fateOf(form, setting.temperature).precipitated === true);
  const isWarm = pot.books.temperature.compare(setting.temperature) > 0;
  const warming = isSlow ? `, ${isWarm ? "warmer" : "warming it"} at the end if it has become slow` : "";
  const stir = ends.length === 0 ? "Stir" : `Stir until ${list(ends)}${warming}`;
  const gone = drop === undefined ? "" : withoutGas(bench, drop);
  const cooled = gone === "" && isWarm ? " a drop of it that has cooled" : gone;
  until(
    bench,
    () =>
      `${stir}${precipitates ? ` (the solid in it is the ${setting.product.name})` : ""}, and test${cooled} with indicator paper: ${toExpect(drop, gone === "" && givesCarbonDioxide(bench))}${correction}.`,
    { blank: "pH", atHand: ["indicator paper"], ...(drop === undefined ? {} : { target: drop.pH }) },
  );
  isolate(bench);
  finish(bench);
}

function metalAndAcid(bench: Bench): void {
  const byLye = isByLye(bench.frame.setting, bench.frame.roles);
  // What went through a trap has been driven out already.
  if (byLye || !isClosed(bench)) untilDissolved(bench, byLye);
  isolate(bench);
  finish(bench);
}

/** A metal that runs out is gone at the end, in words. */
function allDissolves({ frame: { setting, account } }: Bench): string {
  const metal = setting.materials.findIndex(({ form }) => isMetal(form));
  return metal >= 0 && account.supplied[metal]!.limiting
    ? ` and all of the ${setting.materials[metal]!.shelf.name} has dissolved (what stays takes a little more of the acid; what gives no gas with that is not metal)`
    : "";
}

/** A metal that cold acid hardly takes, warmed with it: no hotter, for strong acid would leave before the metal has taken it. */
function keptWarm(bench: Bench): void {
  const at = exact(SLOW_IN_ACID.at) as Quantity<"temperature">;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    apparatus: "fume hood",
    atHand: ["hot-water bath"],
    say: () =>
      `Warm it slowly to ${SLOW_IN_ACID.range}, no hotter, in a bath of hot water with no flame under it, and keep it there, loosely covered, ${SLOW_IN_ACID.time}, until no more gas rises; what steams off is acid: under a hood, and what of it leaves makes no ${bench.frame.setting.product.name}. ${SLOW_IN_ACID.left}.`,
  });
}

function untilDissolved(bench: Bench, byLye: boolean): void {
  const { setting } = bench.frame;
  if (setting.materials.some((one) => isSlowMetal(one, setting))) {
    keptWarm(bench);
    return;
  }
  if (isClearedHot(bench)) return;
  const isFuel = !byLye && setting.products.some(({ formula }) => burns(formula));
  // kept warm as it dissolves the metal, its water leaves, and crystals would come on what has not reacted
  const isKept = !byLye && bench.keptDissolved !== undefined;
  const isTested = byLye && bench.frame.isolation.how === "precipitate";
  const { crystallising } = bench.frame;
  // hotter than its liquor keeps most another hydrate would come out
  const most =
    crystallising !== undefined && crystallising.hot.compare(planned("hot")) < 0
      ? `, to no more than ${celsius(crystallising.hot)},`
      : "";
  until(
    bench,
    byLye
      ? isTested
        ? "Stir until what precipitates is the same all through, and test the liquor with indicator paper: it must be neutral to weakly alkaline, or hydroxide stays dissolved."
        : "Stir until the white hydroxide that forms at first has dissolved again; a haze that stays goes with a few drops more of the acid."
      : bench.keptDissolved?.isSlow
        ? `Mark on the vessel where the liquor stands, and keep it at ${WARM_FOR_METAL.kept}, loosely covered, ${WARM_FOR_METAL.time}, until no more gas rises${allDissolves(bench)}; what steams off is made up with hot water, to the mark.`
        : `${isKept ? "Mark on the vessel where the liquor stands, and let" : "Let"} it stand until no more gas rises${allDissolves(bench)}, warming it at the end${most}${isFuel ? `${most === "" ? "," : ""} in a bath of hot water with no flame under it,` : ""} if it has become slow${isKept ? "; what steams off is made up with hot water, to the mark" : ""}.`,
    isTested ? { atHand: ["indicator paper"] } : isFuel ? { atHand: ["hot-water bath"] } : {},
  );
}

function displacement(bench: Bench): void {
  const { setting, account } = bench.frame;
  const over = setting.materials.findIndex(
    ({ form }, i) =>
      isMetal(form) && !isFromRounding(account.supplied[i]!.excess) && leftInVessel(bench, i) !== undefined,
  );
  until(bench, () => endOfDisplacement(bench, over), { atHand: atEndOfDisplacement(bench, over) });
  if (over >= 0) takeOutMetal(bench, over);
  putAsides(bench, "takes metal");
  isolate(bench);
  finish(bench);
}

function crystallisation(bench: Bench): void {
  isolate(bench);
  finish(bench);
}

const isAmmine = ({ frame: { setting } }: Bench): boolean =>
  madeOf(setting.product.formula).ammonia && setting.materials.some(({ form }) => isAmmonia(form));

function complexFormation(bench: Bench): void {
  const name = matterOf(bench.frame.setting.product.formula).name;
  const stays = bench.pot.books.solids
    .filter(({ matter }) => matter.name !== name)
    .map(({ matter }) => bench.called(matter));
  const isKept = keptForLigands(bench);
  if (isKept) putBoundAcid(bench);
  else if (!clearedHot(bench)) {
    const { stir, target } = stirredHot(bench);
    const iron = ironOxidised(bench);
    until(
      bench,
      stays.length === 0
        ? `${stir} until ${isAmmine(bench) ? "the cloud of hydroxide has dissolved (crystals may come already)" : "it is clear"}${iron.test}: the ${name} is formed then${isAmmine(bench) ? "; a cloud that stays goes with a little more ammonia" : ""}${iron.short}.`
        : `${stir} until nothing but the ${list(stays)} is left undissolved${iron.test}: the ${name} is formed then${iron.short}.`,
      { ...iron.takes, ...(target === undefined ? {} : { target }) },
    );
  }
  isolate(bench);
  finish(bench);
}

/** The hydroxide that a weak acid takes in the heat only. Was there one? */
function clearedHot(bench: Bench): boolean {
  const { setting, roles } = bench.frame;
  const row = overHydroxide(setting, roles);
  if (row === undefined) return false;
  const at = exact(row.from) as Quantity<"temperature">;
  const acid = setting.materials.find(({ form }) => isAcid(form))!.shelf.name;
  const until = isByLye(setting, roles) ? "the hydroxide that came first has dissolved" : "the hydroxide has dissolved";
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    atHand: ["indicator paper"],
    say: () =>
      `Heat it to ${at.toNumber("°C")} to ${celsius(exact(row.to) as Quantity<"temperature">)} and stir, loosely covered, ${row.time}, until ${until} and the liquor is clear (a cooled drop shows about pH ${row.pH}): the ${matterOf(setting.product.formula).name} is formed then; a haze that stays goes with a little more of the ${acid}, or on a filter.`,
  });
  return true;
}

/** What should be left of a slow solid that is in excess, which tells that all has reacted; nothing of what dissolves. */
function leftOfIt({ hand, frame: { setting, account } }: Bench, i: number): string {
  const { left, excess } = account.supplied[i]!;
  const { form } = setting.materials[i]!;
  if (form.symbols.length > 1 || !left.isPositive() || isFromRounding(excess)) return "";
  const mass = massFor(left, form);
  return mass.compare(setting.steps.mass.times(planned("hardlyShown"))) < 0
    ? ""
    : `; about ${hand.grams(mass)} of it should be left, weighed once it is filtered off, rinsed and dried: clearly more means that it is not finished (put it back and keep it hot longer), or that the ${account.limiting} is weaker than its pack says, which no heat mends`;
}

/** A solid element without acid to take it, and a sugar, react near the boil. */
function keptHot(bench: Bench): boolean {
  const { setting, roles } = bench.frame;
  const slow = slowSolid(setting, roles);
  if (slow === undefined) return false;
  const { row, i } = slow;
  const at = exact(row.at) as Quantity<"temperature">;
  const end = endOf(setting);
  const long = end === undefined ? row.time : `until ${end.until}`;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () =>
      `Keep it at ${celsius(at)} or a little above, covered and stirred, ${long}, topping the water up: the reaction of the ${bench.name(i)} is slow${leftOfIt(bench, i)}.`,
  });
  return true;
}

function redox(bench: Bench): void {
  const { setting, isolation } = bench.frame;
  const isHot = keptHot(bench);
  // What is filtered hot does not cool first.
  if (!isHot) keptToItsEnd(bench);
  const isCleared = isolation.how !== "precipitate" && clearPermanganate(bench);
  if ((!isHot && !isCleared) || isolation.how === "precipitate") {
    bench.did(POT, hold(bench.pot, setting.temperature), {
      say: () => `Let it stand until it has cooled${seen(bench).gas && !isClosed(bench) ? " and no gas rises" : ""}.`,
    });
  }
  if (isolation.how === "precipitate") {
    for (const [i, { form }] of setting.materials.entries()) if (isMetal(form)) liftOut(bench, i);
    takeOutIodine(bench);
  }
  isolate(bench);
  finish(bench);
}

const PROCEDURE: Readonly<Record<ProcedureKind, Procedure>> = {
  precipitation,
  neutralisation,
  "metal and acid": metalAndAcid,
  displacement,
  "double salt": crystallisation,
  crystallisation,
  "thermal decomposition": kiln,
  "complex formation": complexFormation,
  redox,
  other: precipitation,
};

/** Everything weighed and brought together; of dry work the empty bench. */
export function mixedOf(frame: Frame): Bench {
  const bench = new Bench(frame);
  if (!frame.setting.wet) return bench;
  weighAll(bench);
  combine(bench);
  return bench;
}

/** The procedure of a kind, worked on from what is together in the pot. */
export function workOf(bench: Bench): Work {
  const { setting, kind } = bench.frame;
  const { wet, product } = setting;
  // Gas that is wanted is judged, and never planned: nothing of it is filtered.
  if (!wet) kiln(bench);
  else if (!isGas(product.formula, wet)) PROCEDURE[kind](bench);
  const { drafts, reacted, liquor, mixed, onMetal, kept, elsewhere, filtrate, washing } = bench;
  return { drafts, reacted, liquor, mixed, onMetal, kept, elsewhere, filtrate, washing };
}
