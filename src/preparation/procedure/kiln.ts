// Heating a solid dry: where the table has the temperature, the plateau; the end mass as a range, since what is not the form is
// inert or goes as well.

import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { capital, list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { DRIED_FIRST, KILN_OPENED, RUNS_BY_ITSELF, SPREAD_IN_AIR } from "../data/firing";
import { FIRED_PHOSPHATE, MELT } from "../data/kiln";
import { add, reacted } from "../operation/add";
import { cool } from "../operation/cool";
import { fire } from "../operation/fire";
import { hold } from "../operation/hold";
import { exact, planned } from "../planning/exact";
import { fateOf } from "../reaction/fate";
import { firedInAir, givesBackFrom } from "../reaction/fired-in-air";
import { firingRow } from "../reaction/firing-row";
import { isGas } from "../reaction/fluids";
import { heatingOf } from "../reaction/heating";
import { looseDensityOf } from "../reaction/loose";
import { isMeltAt, keptMelted } from "../reaction/melting";
import type { Setting } from "../request/setting";
import { putTheRest } from "./asides";
import type { AtHand } from "./at-hand";
import { type Bench, POT } from "./bench";
import { bottlingFired } from "./bottling";
import { leavesChromate, washChromateOut } from "./chromate-wash";
import { dryingOf } from "./drying";
import { weighProduct } from "./finish";
import { firedBeside } from "./fired-beside";
import { fluxOut } from "./flux-out";
import { shownByPinch } from "./free-base";
import { chargeGrinding, chargeOf, type Grinding } from "./grinding";
import { crucibleFor, fillingOf, groundWords, lookFor, paceOf } from "./kiln-charge";
import { fumesFired } from "./kiln-fume";
import { leaving, notKnown, standsStill, untold } from "./kiln-masses";
import { mainReaction } from "./reactions";
import { weighAll } from "./weighing";
import { celsius } from "./words";

/** Where the product is reached, and where heat goes on to the next solid. */
interface Plateau {
  readonly at: Quantity<"temperature"> | undefined;
  readonly below: Quantity<"temperature"> | undefined;
  /** What is known of the firing besides. */
  readonly note?: string | undefined;
  /** How long it is kept there, where that is longer than usual. */
  readonly kept?: string | undefined;
}

const remembered = /* @__PURE__ */ remembering<Plateau>(128);

function plateauOf({ frame: { setting } }: Bench): Plateau {
  const [material] = setting.materials;
  const wanted = setting.product.formula;
  if (material === undefined) return { at: undefined, below: undefined };
  return remembered(`${setting.materials.length} ${material.form} ${wanted}`, () => {
    const fired = firingRow(wanted);
    const degrees = (text: string | undefined) =>
      text === undefined ? undefined : (exact(`${text} °C`) as Quantity<"temperature">);
    if (setting.materials.length > 1)
      return { at: degrees(fired?.at), below: degrees(fired?.below), note: fired?.note, kept: fired?.kept };
    const steps = heatingOf(material.form);
    const found = steps.findIndex(({ remains, leaves }) =>
      [...remains, ...leaves].some(({ formula }) => parseFormula(formula).hasSameComposition(wanted)),
    );
    const step = found >= 0 ? steps[found] : undefined;
    if (step === undefined) return { at: firedInAir(material.form, wanted)?.at, below: givesBackFrom(wanted) };
    const below = steps[found + 1]?.from;
    const at = step.to ?? step.from;
    const kept = step.remains.length === 1 ? keptMelted(material.form, wanted, at, below) : at;
    return { at: kept, below, ...(kept === at ? {} : { note: MELT.kept }) };
  });
}

/** A solid that uses oxygen is fired open, and stirred up in between. */
const inAir = ({ frame: { setting } }: Bench, isHot: boolean): string =>
  !setting.reactants.some(({ formula }) => isOneOf(formula, "O2"))
    ? ""
    : isHot
      ? `, open to the air, ${SPREAD_IN_AIR.layer},`
      : ", open to the air and stirred up now and then,";

/** What a charge is ground in, and dried in after. */
const GROUND_WITH = {
  dry: ["mortar"],
  wet: ["mortar", "drying oven"],
  closed: ["jar or mill that closes"],
} as const satisfies Record<Grinding, readonly AtHand[]>;

/** A salt with much crystal water melts in it before it is hot, and spits: that water goes first. */
function dryFirst(bench: Bench): void {
  const { materials, temperature } = bench.frame.setting;
  const wet = materials.filter(({ form }) => {
    const { waters } = matterOf(form);
    return waters.compare(planned("meltsInWaters")) >= 0 && fateOf(form, temperature).precipitated === false;
  });
  if (wet.length === 0) return;
  bench.did(POT, hold(bench.pot), {
    say: () =>
      `Dry it first at ${DRIED_FIRST.at}, stirring, until it no longer steams, and crush what has caked: the ${list(wet.map(({ shelf }) => shelf.name))} would melt in its own water and spit.`,
  });
}

/** Does heat take water from orthophosphate to a condensed one that dissolves? */
function isCondensed({ materials, product: { formula }, temperature }: Setting): boolean {
  const groups = (one: Formula): readonly string[] => constitutionOf(one).groups;
  return (
    FIRED_PHOSPHATE.wanted.some((name) => groups(formula).includes(name)) &&
    fateOf(formula, temperature).precipitated !== true &&
    materials.some(({ form }) => FIRED_PHOSPHATE.feed.some((name) => groups(form).includes(name)))
  );
}

export function kiln(bench: Bench): void {
  const { setting, theory, account, portions } = bench.frame;
  weighAll(bench);
  const runs = setting.materials.some(({ form }) => isOneOf(form, ...RUNS_BY_ITSELF.formulas));
  const { at, below, note, kept } = plateauOf(bench);
  const forms = setting.materials.map(({ form }) => form);
  const solids = chargeOf(setting);
  const ground = chargeGrinding(setting);
  const full = fillingOf(solids, at);
  const isMelted = solids.some(({ form }) => isMeltAt(form, at));
  let filled: Quantity = exact("0 mL");
  solids.forEach((material, i) => {
    const { form, shelf } = material;
    const { name } = shelf;
    bench.takesAside(material);
    const portion = portions[setting.materials.indexOf(material)] ?? material.asideTaken()?.portion;
    const done = add(bench.pot, bench.in(bench.pack(name)), []);
    filled = filled.plus(done.after.mass.minus(done.before.mass).dividedBy(looseDensityOf(form)));
    const powder = filled;
    const crucible = (): string => {
      const room = powder.dividedBy(exact(runs ? RUNS_BY_ITSELF.filled : full.share)).to("mL");
      const loose = done.after.mass.dividedBy(powder).format({ unit: "g/mL", decimals: 2, uncertainty: "none" });
      return `at least ${bench.hand.litres(room)}, taken to lie as loose as ${loose.replace(/0(?= g)/, "")}`;
    };
    bench.did(POT, done, {
      materials: [name],
      amounts: portion === undefined ? [] : [portion],
      from: bench.pack(name),
      ...(i > 0 && i + 1 === solids.length ? { atHand: GROUND_WITH[ground] } : {}),
      say: () =>
        solids.length > 1
          ? i + 1 < solids.length
            ? `${i === 0 ? `Put the ${name} into ${ground === "closed" ? "a jar or mill that closes" : "a mortar"}` : `Put the ${name} to it`}.`
            : groundWords(solids, ground, crucibleFor(at, forms), full.words, crucible())
          : runs
            ? `Weigh a deep dish that all of the ${name} would fill no more than a tenth (${crucible()}), and keep the ${name} away from the heat.`
            : `${isMelted ? `Put the ${name} into a crucible or deep dish, no tray,` : `Spread the ${name} in a crucible or tray,`} ${full.words} (${crucible()}); weigh the empty vessel first.`,
    });
  });
  putTheRest(bench);
  if (runs)
    bench.did(POT, hold(bench.pot), {
      say: () =>
        "Start it with a few grams in the deep dish, under a hood, warmed at one place: once started it goes on by itself, glows and throws its dust. Nobody leans over it; the next few grams follow when the dish is cold.",
    });
  dryFirst(bench);
  bench.liquor = bench.pot;
  const charge = bench.pot;
  const main = mainReaction(bench);
  const beside = firedBeside(reacted(bench.pot, [main]).pot, matterOf(setting.product.formula), at);
  const done = fire(bench.pot, [main, ...beside.reactions], at);
  const air = inAir(bench, at !== undefined && at.compare(planned("glows")) > 0);
  const bound = below === undefined ? "" : `not to ${celsius(below)}, where it changes again`;
  const warm =
    at === undefined
      ? `(how hot is not known: no firing temperature of ${setting.product.name} is tabulated${bound === "" ? "" : `; ${bound}`})`
      : `to ${celsius(at)}${bound === "" ? "" : `, and ${bound}${air === "" ? "," : ""}`}`;
  // solids that react with each other glow, as far as anybody knows
  const glows = at === undefined ? solids.length > 1 : at.compare(planned("glows")) > 0;
  const pace = paceOf(bench, at);
  const missing = at === undefined ? [`firing temperature of ${setting.product.name}`] : [];
  const after = done.after.with({ unknown: [...done.after.books.unknown, ...missing] });
  bench.did(
    POT,
    { ...done, after },
    {
      ...(at === undefined ? {} : { target: at }),
      ...(fumesFired(setting) ? { apparatus: "fume hood" as const } : {}),
      limit: () => theory,
      care: "heating",
      blank: "ignition",
      say: (look) =>
        `${runs ? "Heat what is left at the end" : "Heat"} slowly ${pace === "" ? `${warm}${air}` : `${`${warm}${air}`.replace(/,$/, "")}${pace}`} ${glows ? `and keep it there ${kept ?? "for one to three hours"}` : "and keep it there"}${standsStill(bench, done, glows)}${leaving(bench, look, done)}.${notKnown(bench, beside.unknown)}${untold(bench, done, at)}${note === undefined ? "" : ` ${capital(note)}.`}${isMelted ? ` ${MELT.care}.` : ""}`,
    },
  );
  const isPoured = isMeltAt(setting.product.formula, at);
  const isHeld = isMelted && !isPoured ? ` ${MELT.held}.` : "";
  bench.did(POT, cool(bench.pot, setting.temperature), {
    target: setting.temperature,
    say: () =>
      glows
        ? `Let it cool in the closed kiln until that shows less than ${KILN_OPENED.below}, and to ${celsius(setting.temperature)} in a closed vessel or a desiccator.${isHeld}`
        : `Let it cool ${at === undefined || at.compare(exact(KILN_OPENED.closedBelow)) > 0 ? `where it was heated, without a tight lid, to less than ${KILN_OPENED.closedBelow}, and from there ` : ""}to ${celsius(setting.temperature)} in a closed vessel or a desiccator.${isHeld}`,
  });
  // gas that is wanted is judged, and never planned
  if (isGas(setting.product.formula, false)) return;
  if (account.supplied.length > 1)
    bench.did(POT, hold(bench.pot), {
      atHand: shownByPinch(setting, at)?.atHand ?? [],
      say: () => lookFor(bench, charge, at, leavesChromate(setting) ? "washed" : ground),
    });
  if (isCondensed(setting)) bench.did(POT, hold(bench.pot), { say: () => `${FIRED_PHOSPHATE.text}.` });
  washChromateOut(bench);
  const { formula } = setting.product;
  const bottle = isPoured ? MELT.poured : bottlingFired(formula, forms, dryingOf(formula).deliquescent);
  weighProduct(bench, isPoured ? bottle : `${fluxOut(bench)}${bottle}`);
}
