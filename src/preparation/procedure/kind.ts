// What kind of preparation it is, read from the equation: the words of the sheet, the foam and the wastes follow from it.

import { redoxAnalysis } from "../../equation";
import { isNonmetal } from "../../equation/internal";
import type { Formula } from "../../formula";
import { isWater } from "../../formula/internal";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { isHydrogenAnion, isOneOf } from "../../ion/internal";
import { madeOf } from "../../substance/internal";
import { ANHYDRIDES } from "../data/unwilling-solids";
import { isAcid, isAmmonia, isAnionOfStrongAcid, isMetal } from "../reaction/acids";
import { fateInRoom } from "../reaction/fate";
import { firedOxide } from "../reaction/fired-oxide";
import { gasRow, isGas } from "../reaction/fluids";
import type { Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import { digestionOf } from "./digestion";
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

/** Is it an acid salt that works as an acid, and not as a base, as hydrogencarbonate does? */
export const isSourSalt = (formula: Formula): boolean => isAcidSalt(formula) && !isBase(formula);

/** Cations that a salt has in its water; the metal of a dichromate is none. */
const cations = (formula: Formula): number =>
  new Set(constitutionOf(formula).cations.map(({ formula: cation }) => cation)).size;

/** Gases that a solid is heated in. */
const isOfFurnace = (formula: Formula): boolean => gasRow(formula)?.furnace === true;

/** A salt into itself: dissolved and crystallised again. */
export const isRecrystallised = (reactants: readonly Species[], products: readonly Species[]): boolean =>
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
  if (precipitated !== true && put.some(isSourSalt) && put.some(isBase)) return "neutralisation";
  if (precipitated === true) return "precipitation";
  return precipitated === false ? "crystallisation" : "other";
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
    digestion: setting.wet ? digestionOf(kind, setting.product.formula, setting.temperature)?.text : undefined,
  };
}
