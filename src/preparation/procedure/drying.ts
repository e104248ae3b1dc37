// How warm the product may be dried: by the table, and never up to where heat begins to take it apart.

import { type Formula, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { remembering } from "../../foundation/memo";
import { list } from "../../foundation/wording";
import { crystalWater } from "../../hydrate";
import { type Quantity, quantity } from "../../quantity";
import { trySolubilityOf } from "../../solubility";
import { cite as citeSolubility } from "../../solubility/internal";
import { madeOf, thermalStepsOf } from "../../substance/internal";
import { BEARS_OVEN, DELIQUESCENT, DRYING, type DryingRow, EFFLORESCENT } from "../data/drying";
import { cite } from "../data/sources";
import { isHeatSensitive } from "../identity/by-ignition";
import { planned } from "../planning/exact";
import { changeAbove } from "../reaction/change-of-solid";
import { fateInRoom } from "../reaction/fate";
import { sameCore } from "../reaction/species";
import { losesAmmonia } from "./protection";

/** How to dry a product. */
export interface Drying {
  /** Highest temperature; undefined where nothing is known. */
  readonly upTo: Quantity<"temperature"> | undefined;
  /** Reason of the limit, in words. */
  readonly why: string;
  /** Does more heat soon change the product? False where the limit is only the warmth of a drying oven, or nothing is known. */
  readonly changesAbove: boolean;
  /** It is deliquescent: desiccator, and bottle it warm. */
  readonly deliquescent: boolean;
  /** What the limit rests on, in words; undefined where nothing is known. */
  readonly source: string | undefined;
  /** What is not known, in words; undefined where the limit is known. */
  readonly missing: string | undefined;
}

interface Rows {
  readonly limits: readonly { readonly formula: Formula; readonly row: DryingRow }[];
  readonly deliquescent: readonly Formula[];
  readonly efflorescent: readonly Formula[];
}

let parsed: Rows | undefined;

function rows(): Rows {
  parsed ??= {
    limits: DRYING().map((row) => ({ formula: parseFormula(row.formula), row })),
    deliquescent: DELIQUESCENT.map((row) => parseFormula(row.formula)),
    efflorescent: EFFLORESCENT.map((row) => parseFormula(row.formula)),
  };
  return parsed;
}

/** A limit, before it is known what it is for. */
interface Limit extends Omit<Drying, "changesAbove"> {
  /** It is usual, and far below what changes the product. */
  readonly isOnlyGentle?: true;
}

const remembered = /* @__PURE__ */ remembering<Drying>(256);

export const dryingOf = (product: Formula): Drying =>
  remembered(product.toString(), () => {
    const { isOnlyGentle = false, ...found } = belowTurning(product, lookedUp(product));
    const isOwn = found.upTo !== undefined && !isHeatSensitive(product) && isOfProduct(found.upTo, product);
    return { ...found, changesAbove: isOwn && !isOnlyGentle };
  });

/** Is a limit there for the product's sake: below the boiling point of water, or as near as an oven may be off to where heat changes it? */
function isOfProduct(upTo: Quantity<"temperature">, product: Formula): boolean {
  if (upTo.compare(planned("waterBoils")) < 0) return true;
  const changes = thermalStepsOf(product)[0]?.from;
  return changes !== undefined && changes.minus(upTo).compare(planned("ovenIsOff")) <= 0;
}

/** The same in a room: what may not be as warm as the room is dried in its air all the same, and no oven is cooler. */
export function dryingIn(product: Formula, room: Quantity<"temperature">): Drying {
  const drying = dryingOf(product);
  return drying.upTo === undefined || drying.upTo.compare(room) >= 0 ? drying : { ...drying, upTo: room };
}

/** What a product loses to open air for as long as it lies there, in words; undefined for one that comes to a constant mass. */
export function lostToAir(product: Formula): string | undefined {
  if (losesAmmonia(product)) return "in open air it loses ammonia, and never comes to a constant mass";
  return rows().efflorescent.some((one) => one.hasSameComposition(product))
    ? "in open air it loses water and turns to powder, and comes to a constant mass only as a salt with less of it"
    : undefined;
}

/** Where heat begins to take crystal water; undefined for what has none, or where nothing is tabulated. */
export function losesWaterAt(product: Formula): Quantity<"temperature"> | undefined {
  if (isWater(product) || crystalWater(product).waters.n === 0n) return undefined;
  return thermalStepsOf(product)[0]?.from;
}

/** Has it one water? No hydrate is below that, so that the first loss of the table is the first that happens. */
const isMonohydrate = (product: Formula): boolean =>
  !isWater(product) && crystalWater(product).waters.compare(1n) === 0;

/** Where a hydrate that is damp with its own solution turns into a solid with less water; undefined where no curve says. */
function turning(product: Formula): { readonly celsius: number; readonly into: string } | undefined {
  if (isWater(product) || crystalWater(product).waters.n === 0n) return undefined;
  const found = changeAbove(product);
  if (found?.above === undefined) return undefined;
  const into = parseFormula(found.above);
  const isDrier = crystalWater(into).waters.compare(crystalWater(product).waters) < 0;
  return isDrier ? { celsius: found.celsius, into: into.toUnicode() } : undefined;
}

/** Damp crystals are no warmer than that, whatever a table says of dry ones. */
function belowTurning(product: Formula, drying: Limit): Limit {
  const turns = turning(product);
  if (turns === undefined) return drying;
  const celsius = Math.floor(turns.celsius - planned("belowTurning").toNumber("Δ°C"));
  const most = quantity({ value: String(celsius), unit: "°C" });
  if (drying.upTo !== undefined && drying.upTo.compare(most) <= 0) return drying;
  const { isOnlyGentle: _, ...own } = drying;
  return {
    ...own,
    upTo: most,
    why: `damp it turns into ${turns.into} at ${turns.celsius} °C`,
    source: sourceOfCurve(product, most),
    missing: undefined,
  };
}

function sourceOfCurve(product: Formula, at: Quantity<"temperature">): string {
  const found = trySolubilityOf(product, at);
  return found.ok ? citeSolubility(found.value.source) : cite("memory");
}

/** Is it one of the classes that are stable far above the warmth of a drying oven? */
function bearsOven(product: Formula): boolean {
  const { symbols } = product;
  const [first] = symbols;
  if (symbols.length === 1) return BEARS_OVEN.metals.some((one) => one === first);
  const { groups, ammonia, ammonium, complex, organic } = madeOf(product);
  if (symbols.includes("H") || ammonia || ammonium || complex || organic) return false;
  return BEARS_OVEN.salts.some(
    ({ groups: of, metals }) =>
      [...groups].every((one) => of.includes(one)) &&
      groups.size > 0 &&
      (metals === undefined || symbols.some((one) => metals.includes(one))),
  );
}

function lookedUp(product: Formula): Limit {
  const { limits, deliquescent } = rows();
  const runs = deliquescent.some((f) => sameCore(f, product));
  if (isHeatSensitive(product))
    return {
      deliquescent: runs,
      missing: undefined,
      upTo: planned("inAir") as Quantity<"temperature">,
      why: "heat may set it off: dry in the air of a room",
      source: cite("commonPractice"),
    };
  const own = limits.find(({ formula }) => formula.hasSameComposition(product))?.row;
  const [first] = thermalStepsOf(product);
  const begins = first?.from.in("°C").minus(planned("belowChange").in("Δ°C"));
  const byHeat = begins === undefined ? undefined : quantity({ value: begins.toString(), unit: "°C" });
  const byTable = own === undefined ? undefined : quantity({ value: own.upTo, unit: "°C" });
  const base = { deliquescent: runs, missing: undefined };
  if (byTable !== undefined && (byHeat === undefined || byTable.compare(byHeat) <= 0))
    return { ...base, upTo: byTable, why: own!.why ?? "usual limit of the bench", source: cite(own!.source) };
  // A limit of the bench that heat undercuts is that of the heat.
  if (byTable !== undefined && byHeat!.compare(planned("inAir")) > 0) {
    const why = `heat changes it from ${first!.from.format({ uncertainty: "none" })} on`;
    return { ...base, upTo: byHeat, why, source: cite("memory") };
  }
  // The first step of the table need not be the first that happens: crystal water and ammonia go, or melt, below it.
  // a cake of what hardly dissolves holds more water, and holds its own better
  const gentle = planned(fateInRoom(product).precipitated === true ? "gentle" : "inAir");
  const losesInAir = crystalWater(product).waters.n !== 0n || losesAmmonia(product);
  if (isMonohydrate(product) && !losesAmmonia(product) && byHeat !== undefined && byHeat.compare(planned("gentle")) > 0)
    return {
      ...base,
      upTo: planned("gentle") as Quantity<"temperature">,
      why: `its water goes only from ${first!.from.format({ uncertainty: "none" })} on`,
      source: cite("commonPractice"),
      isOnlyGentle: true,
    };
  if (losesInAir && (byHeat === undefined || byHeat.compare(gentle) > 0))
    return {
      ...base,
      upTo: gentle as Quantity<"temperature">,
      why: `it contains ${list([...(crystalWater(product).waters.n === 0n ? [] : ["water"]), ...(losesAmmonia(product) ? ["ammonia"] : [])])} that warm air may remove: dry in air`,
      source: cite("commonPractice"),
    };
  const oven = planned("oven");
  if (byHeat !== undefined && byHeat.compare(oven) > 0) {
    const why = `as warm as a drying oven; heat changes it only from ${first!.from.format({ uncertainty: "none" })} on`;
    return { ...base, upTo: oven as Quantity<"temperature">, why, source: cite("commonPractice") };
  }
  if (byHeat !== undefined && byHeat.compare(planned("temperature")) >= 0) {
    const why = `heat changes it from ${first!.from.format({ uncertainty: "none" })} on`;
    return { ...base, upTo: byHeat, why, source: cite("memory") };
  }
  if (byHeat !== undefined)
    return {
      ...base,
      upTo: planned("inAir") as Quantity<"temperature">,
      why: "it changes near room temperature: dry in air",
      source: cite("memory"),
    };
  if (!runs && bearsOven(product))
    return {
      ...base,
      upTo: oven as Quantity<"temperature">,
      why: "as warm as a drying oven, which it bears",
      source: cite(BEARS_OVEN.source),
    };
  return {
    ...base,
    upTo: undefined,
    why: "dry at room temperature",
    source: undefined,
    missing: `drying limit of ${product.toUnicode()}`,
  };
}
