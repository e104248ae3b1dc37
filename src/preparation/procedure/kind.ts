// What kind of preparation it is, read from the equation: the words of the sheet, the foam and the wastes follow from it.

import { redoxAnalysis } from "../../equation";
import { isNonmetal } from "../../equation/internal";
import type { Formula } from "../../formula";
import { elementsIn, isWater } from "../../formula/internal";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { isHydrogenAnion, isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import { DIGESTED, NOT_BOILED_DOWN, NOT_WARM, type NotWarmRow } from "../data/products";
import { ANHYDRIDES } from "../data/unwilling-solids";
import { warmthOf } from "../feasibility/by-warmth";
import { oxideFromWater } from "../feasibility/oxide-or-hydroxide";
import { exact, planned } from "../planning/exact";
import { isAcid, isAmmonia, isAnionOfStrongAcid, isMetal } from "../reaction/acids";
import { fateInRoom } from "../reaction/fate";
import { firedOxide } from "../reaction/fired-oxide";
import { gasRow, isGas } from "../reaction/fluids";
import { gelRow } from "../reaction/gel";
import type { Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import { dryingOf, losesWaterAt } from "./drying";
import type { ProcedureKind } from "./kinds";

/** The kind, and how the work goes. */
export interface Procedure {
  /** How the product is made and isolated. */
  readonly kind: ProcedureKind;
  /** Given in the request, or read from the equation. */
  readonly basis: "as asked for" | "from the equation";
  /** What to do with the product before it is filtered, where there is something to say. */
  readonly digestion: string | undefined;
}

/** Oxides, hydroxides and carbonates: what an acid dissolves. */
export function isBase(formula: Formula): boolean {
  const { symbols } = formula;
  const metal = symbols.some((s) => !isNonmetal(s));
  if (isAmmonia(formula)) return true;
  const isLight = symbols.every((s) => !isNonmetal(s) || ["C", "H", "O"].includes(s));
  return metal && isLight && !madeOf(formula).organic && !isOfStrongAcid(formula);
}

/** A salt of a strong acid with the metal in the anion, as permanganate is: acid takes no base from it. */
const isOfStrongAcid = (formula: Formula): boolean =>
  constitutionOf(formula).anions.some((anion) => isAnionOfStrongAcid(anion.formula));

/** A salt that still has acid hydrogen: an excess of base makes another one of it. */
export const isAcidSalt = (formula: Formula): boolean =>
  constitutionOf(formula).anions.some(({ formula: anion }) => isHydrogenAnion(anion));

/** Cations that a salt has in its water; the metal of a dichromate is none. */
const cations = (formula: Formula): number =>
  new Set(constitutionOf(formula).cations.map(({ formula: cation }) => cation)).size;

/** Gases that a solid is heated in. */
const isOfFurnace = (formula: Formula): boolean => gasRow(formula)?.furnace === true;

/** A salt into itself: dissolved and crystallised again. */
const isRecrystallised = (reactants: readonly Species[], products: readonly Species[]): boolean =>
  reactants.length === 1 && products.length === 1 && products[0]!.formula.hasSameComposition(reactants[0]!.formula);

const isOxide = ({ symbols }: Formula): boolean =>
  symbols.length === 2 && symbols.includes("O") && (symbols.includes("Si") || symbols.some((s) => !isNonmetal(s)));

const isCarbonate = (formula: Formula): boolean =>
  [...madeOf(formula).groups].join() === "carbonate" && !formula.symbols.includes("H");

/** Hydroxides, basic carbonates, clays and other earths with water bound in them, which water leaves alone. */
function isEarth(formula: Formula): boolean {
  const { symbols } = formula;
  const { organic, groups } = madeOf(formula);
  return (
    symbols.includes("O") &&
    symbols.some((s) => s === "Si" || !isNonmetal(s)) &&
    symbols.every((s) => ["O", "H", "Si"].includes(s) || !isNonmetal(s) || (s === "C" && groups.has("carbonate"))) &&
    !organic &&
    !isAcid(formula) &&
    fateInRoom(formula).precipitated === true
  );
}

/** An oxide that is the anhydride of an acid, by the charge of its metal: a hydroxide and it neutralise each other in water too. */
const isAnhydride = (formula: Formula): boolean =>
  isOxide(formula) && constitutionOf(formula).cations.some(({ charge }) => charge >= ANHYDRIDES.from);

/**
 * Oxides, carbonates and earths that water leaves alone or only dissolves, into an oxide of several elements: fire does it, not water,
 * and drives out only gas and steam.
 */
function isFired(reactants: readonly Species[], products: readonly Species[]): boolean {
  const solids = reactants.map((s) => s.formula).filter((f) => !isOfFurnace(f));
  const stays = (f: Formula): boolean => fateInRoom(f).precipitated !== false;
  // sand and soda melt together to what water dissolves; in water they leave each other alone
  const isUnwilling = (): boolean => solids.some((f) => firedOxide(f)?.inLye !== undefined);
  const isPlain = (f: Formula): boolean => (isOxide(f) && stays(f)) || isCarbonate(f);
  const leaves = (f: Formula): boolean => isOneOf(f, "CO2") || isWater(f);
  return (
    solids.length > 1 &&
    (isReducedByCarbon(solids, products) ||
      (solids.every((f) => isPlain(f) || isEarth(f)) &&
        (solids.every(isPlain) || !solids.some(isAnhydride)) &&
        products.some(
          ({ formula: f }) =>
            f.symbols.length > 2 && f.symbols.includes("O") && !isCarbonate(f) && (stays(f) || isUnwilling()),
        ) &&
        products.every(({ formula: f }) => leaves(f) || (!f.symbols.includes("H") && !isCarbonate(f)))))
  );
}

/** Charcoal takes the oxygen of an oxide in fire, never in water. */
const isReducedByCarbon = (solids: readonly Formula[], products: readonly Species[]): boolean =>
  solids.some((f) => isOneOf(f, "C")) &&
  solids.every((f) => isOneOf(f, "C") || isOxide(f) || isCarbonate(f)) &&
  products.some(({ formula: f }) => isOneOf(f, "CO", "CO2"));

/** One substance by itself or in a gas of the furnace, or solids that only fire brings together: nothing is in water. */
export function isHeatedDry(reactants: readonly Species[], products: readonly Species[] = []): boolean {
  if (isRecrystallised(reactants, products)) return false;
  if (isFired(reactants, products)) return true;
  return reactants.filter((s) => !isOfFurnace(s.formula)).length === 1;
}

function kindFromEquation(
  reactants: readonly Species[],
  products: readonly Species[],
  product: Formula,
): ProcedureKind {
  const put = reactants.map((s) => s.formula).filter((f) => !isWater(f));
  const got = products.map((s) => s.formula);
  const acid = put.some(isAcid);
  const isComplex = (f: Formula): boolean => madeOf(f).complex;
  if (isComplex(product) && !put.some(isComplex)) return "complex formation";
  if (put.some(isMetal) && got.some(isMetal) && got.some((f) => !isMetal(f))) return "displacement";
  if (put.some(isMetal) && acid) return "metal and acid";
  if (isRecrystallised(reactants, products)) return "crystallisation";
  if (isHeatedDry(reactants, products) && !put.some((f) => isOneOf(f, "H2"))) return "thermal decomposition";
  const redox = attempt(() =>
    redoxAnalysis(
      `${reactants.map((s) => `${s.coefficient} ${s.formula}`).join(" + ")} -> ${products.map((s) => `${s.coefficient} ${s.formula}`).join(" + ")}`,
    ),
  );
  if (redox.ok && redox.value.isRedox) return "redox";
  const precipitated = fateInRoom(product).precipitated;
  // Where gas is given off an acid salt is neutralised: no two salts are in a ratio.
  if (precipitated !== true && cations(product) > 1 && !got.some((f) => isGas(f, true))) return "double salt";
  if (acid && put.some(isBase)) return "neutralisation";
  // An acid salt of a weak acid, such as cream of tartar, is the acid where nothing precipitates.
  const isSour = (f: Formula): boolean => isAcidSalt(f) && !isBase(f);
  if (precipitated !== true && put.some(isSour) && put.some(isBase)) return "neutralisation";
  if (precipitated === true) return "precipitation";
  return precipitated === false ? "crystallisation" : "other";
}

/** Why a product is not warmed in its liquor, and how warm that may be; undefined where it may be hot. */
export const notWarmOf = (product: Formula): NotWarmRow | undefined =>
  rememberedCold(product.toString(), () => notWarmRow(product));

const rememberedCold = /* @__PURE__ */ remembering<NotWarmRow | undefined>(200);

function notWarmRow(product: Formula): NotWarmRow | undefined {
  const { identity, anhydrousIdentity, ligands, groups: own } = constitutionOf(product);
  const elements = elementsIn(product.toString());
  const is = (text: string): boolean => {
    if (elementsIn(text) !== elements) return false;
    const row = constitutionOf(text);
    return row.waters === 0 ? row.anhydrousIdentity === anhydrousIdentity : row.identity === identity;
  };
  return NOT_WARM.find(
    ({ formulas, groups = [], ammine }) =>
      formulas.some(is) ||
      groups.some((name) => own.includes(name)) ||
      (ammine && ligands.some(({ formula }) => formula === "NH3")),
  );
}

/** Why a liquor with a product is not boiled down; undefined where heat does it no harm. */
export const spoiltByBoiling = (product: Formula): string | undefined =>
  notWarmOf(product)?.why ??
  NOT_BOILED_DOWN.find(({ groups }) => groups.some((name) => constitutionOf(product).groups.includes(name)))?.why;

/** Does its liquor keep enough of a precipitate that it must not be warmed? By the table alone: what has no figure is as good as insoluble. */
const isKeptWarm = (product: Formula): boolean => {
  const { perHundredGramsWater } = fateInRoom(product);
  return perHundredGramsWater !== undefined && perHundredGramsWater.compare(planned("keptWarm")) > 0;
};

/** How warm a precipitate is made or kept so that it is what was asked for, and until when; undefined where the room does it. */
export function keptAt(
  kind: ProcedureKind,
  product: Formula,
  room: Quantity<"temperature"> = planned("temperature") as Quantity<"temperature">,
): { readonly at: Quantity<"temperature">; readonly mixed: boolean; readonly text: string } | undefined {
  if (kind !== "precipitation" || notWarmOf(product) !== undefined) return undefined;
  const turns = oxideFromWater(product)?.turns;
  if (turns !== undefined)
    return {
      at: exact(`${turns.at} °C`) as Quantity<"temperature">,
      mixed: false,
      text: `warm it to ${turns.at} °C and keep it there, stirring, until ${turns.until}: in the cold the hydroxide stays what it is, and is weighed as such (common practice)`,
    };
  const { from } = warmthOf(product);
  if (from === undefined || from <= room.toNumber("°C")) return undefined;
  const at = planned("madeHot") as Quantity<"temperature">;
  return {
    at,
    mixed: true,
    text: `keep it at ${at.format({ decimals: 0, uncertainty: "none" })}, stirring, for 30 minutes to an hour, and filter it hot: it forms from ${from} °C on, and in the cold another solid settles (common practice)`,
  };
}

/** How warm a batch is mixed, where its precipitate forms only in the heat. */
export function mixedHotAt(
  { product, temperature }: Setting,
  kind: ProcedureKind,
): Quantity<"temperature"> | undefined {
  const kept = keptAt(kind, product.formula, temperature);
  return kept?.mixed ? kept.at : undefined;
}

export function digestionOf(kind: ProcedureKind, product: Formula, room?: Quantity<"temperature">): string | undefined {
  const cold = notWarmOf(product);
  if (cold !== undefined)
    return `${cold.stands === undefined ? "" : `${cold.stands.text}; `}do not warm it in its liquor: ${cold.why}${cold.stands === undefined ? " (common practice)" : ""}`;
  const kept = keptAt(kind, product, room);
  if (kept !== undefined) return kept.text;
  const { below } = warmthOf(product);
  if (below !== undefined)
    return `keep it below ${below} °C until it is filtered: warmer another form of it comes (common practice)`;
  if (isKeptWarm(product))
    return "let it stand in its liquor 30 minutes to overnight, no warmer than the room: warm liquor would keep more of it (common practice)";
  if (kind !== "precipitation") return undefined;
  if (gelRow(product)?.sets)
    return "leave it until it sets to a jelly that does not run (minutes to a day; at pH 5 to 7 soonest: if paper shows it sour after an hour and it still runs, stir in baking soda by pinches until it is no more), then break that up small: a whole jelly cannot be washed (common practice)";
  const row = DIGESTED.find(({ formulas }) => isOneOf(product, ...formulas));
  if (row !== undefined)
    return `let it stand in its liquor 30 minutes to overnight, at ${row.at} if it can be warmed: the grains grow and give up salt; ${row.why} (common practice)`;
  // what heat takes water from below the usual warmth is digested as cool as it is dried
  const { upTo } = dryingOf(product);
  const loses = losesWaterAt(product);
  const isWet = matterOf(product).waters.compare(planned("meltsInWaters")) >= 0;
  if (upTo !== undefined && (loses === undefined ? isWet : loses.compare(exact("90 °C")) < 0))
    return `let it stand in its liquor 30 minutes to overnight, no warmer than ${upTo.format({ decimals: 0, uncertainty: "none" })}: above that it ${loses === undefined ? "may lose" : "loses"} water (common practice)`;
  return "let it stand in its liquor 30 minutes to overnight, at 60 to 90 °C if it can be warmed: the grains grow and give up salt (common practice)";
}

const remembered = /* @__PURE__ */ remembering<ProcedureKind>(128);

/** The kind that was asked for, or that the equation shows. */
export const kindOf = ({ request, equation, reactants, products, product }: Setting): ProcedureKind =>
  request.procedure ??
  remembered(`${equation} | ${product.formula}`, () => kindFromEquation(reactants, products, product.formula));

export function procedureOf(setting: Setting): Procedure {
  const kind = kindOf(setting);
  return {
    kind,
    basis: setting.request.procedure === undefined ? "from the equation" : "as asked for",
    digestion: setting.wet ? digestionOf(kind, setting.product.formula, setting.temperature) : undefined,
  };
}
