// What a powder does in each test: by its solubility, by the equilibrium of what is in the glass, by its formula.

import { type AqueousComposition, aqueousComposition } from "../../aqueous";
import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import type { Quantity } from "../../quantity";
import { trySubstance } from "../../substance";
import { madeOf } from "../../substance/internal";
import { FLAMES, SEEN_IN_GLASSES } from "../data/powder-tests";
import { exact } from "../planning/exact";
import { bySubstance } from "../reaction/by-substance";
import { fateInRoom } from "../reaction/fate";
import { firedOxide } from "../reaction/fired-oxide";
import { residueOf } from "./ignition";
import { expectedLossOf } from "./tests";

/** What a powder shows: words, or a figure; undefined where that is not known. */
export type Behaviour = string | Quantity | undefined;

/** A gram in 10 mL that dissolves, and what is no more than a trace of it. */
const [DISSOLVES, TRACE] = ["10 g", "1 g"] as const;

export function inWater(formula: Formula): Behaviour {
  const { precipitated, perHundredGramsWater: known } = fateInRoom(formula);
  if (known === undefined) return precipitated === undefined ? undefined : precipitated ? "stays" : "dissolves";
  return known.compare(exact(DISSOLVES)) >= 0
    ? "dissolves"
    : known.compare(exact(TRACE)) >= 0
      ? "dissolves in part"
      : "stays";
}

const isUnwilling = (formula: Formula): boolean => firedOxide(formula) !== undefined;

type Poured = { readonly formula: string; readonly amount: "1 mol" };
const poured = (formula: string, moles: string): Poured => ({ formula, amount: `${moles} mol` as "1 mol" });

/** What is in a glass of 100 mL, beside the powder. */
interface Glass {
  /** Of the powder; hydrates of a salt are compared by amount. */
  readonly powder: { readonly mass: "1 g" } | { readonly amount: "1 mol" };
  readonly others?: readonly Poured[];
  readonly carbonDioxide?: "kept" | "leaves";
  readonly solids?: "fresh" | "aged";
}

/** The equilibrium in a glass; undefined where it does not know it all. */
function glass(formula: Formula, { powder, others = [], ...rest }: Glass): AqueousComposition | undefined {
  if (isUnwilling(formula)) return undefined;
  const solved = attempt(() =>
    aqueousComposition({ water: "100 mL", dissolved: [{ formula, ...powder }, ...others], ...rest }),
  );
  return solved.ok && solved.value.unknown.length === 0 ? solved.value : undefined;
}

const HALF_GRAM = { mass: "0.5 g" as "1 g" };
const SAMPLE = { amount: "0.002 mol" as "1 mol" };

export function slurryPH(formula: Formula): Behaviour {
  if (isUnwilling(formula)) return exact("7");
  // What the equilibrium would dissolve although it stays is no slurry that it knows.
  const solved = glass(formula, { powder: { mass: "1 g" } });
  const stays = inWater(formula);
  return solved === undefined || (stays === "stays" && solved.solids.length === 0) ? undefined : solved.pH;
}

/** Less than this of a solid is not seen in a glass. */
const SEEN = "0.00002 mol";
const isCloudy = ({ solids }: AqueousComposition): boolean =>
  solids.some(({ amount }) => amount.compare(exact(SEEN)) > 0);

const groupsOf = (formula: Formula): ReadonlySet<string> => madeOf(formula).groups;

const seenInGlasses = /* @__PURE__ */ bySubstance(SEEN_IN_GLASSES);

/** Does it stay in water, although the equilibrium knows no solid of it? Then it says nothing of acid and lye either. */
const isUnknownSolid = (formula: Formula): boolean =>
  inWater(formula) === "stays" && glass(formula, { powder: { mass: "1 g" } })?.solids.length === 0;

/** What escapes a glass of acid, for the nose; nothing of a solid that stays. */
function smellOf(formula: Formula, stays: boolean): string {
  if (stays) return "";
  const groups = groupsOf(formula);
  return groups.has("sulfide") ? ", smells of rotten eggs" : groups.has("sulfite") ? ", smells of burnt sulfur" : "";
}

export function inAcid(formula: Formula): Behaviour {
  const seen = seenInGlasses(formula);
  if (seen !== undefined) return seen.acid;
  if (isUnwilling(formula)) return "stays";
  if (isUnknownSolid(formula)) return undefined;
  const solved = glass(formula, { powder: HALF_GRAM, others: [poured("HCl", "0.05")], carbonDioxide: "leaves" });
  if (solved === undefined) return undefined;
  const fizzes = solved.gas.some(
    ({ formula: gas, amount }) => gas === "CO2" && amount.compare(exact("0.0002 mol")) > 0,
  );
  const stays = isCloudy(solved);
  return `${fizzes ? "fizzes, " : ""}${stays ? "stays" : "dissolves"}${smellOf(formula, stays)}`;
}

export function inLye(formula: Formula): Behaviour {
  const seen = seenInGlasses(formula);
  if (seen !== undefined) return seen.lye;
  if (isUnwilling(formula)) return "stays";
  if (isUnknownSolid(formula)) return undefined;
  const solved = glass(formula, { powder: HALF_GRAM, others: [poured("NaOH", "0.05")] });
  if (solved === undefined) return undefined;
  const smell = madeOf(formula).ammonium ? ", smells of ammonia" : "";
  if (!isCloudy(solved)) return `dissolves${smell}`;
  return `${inWater(formula) === "dissolves" ? "clouds" : "stays"}${smell}`;
}

/** A solid that the constants leave open: nobody can say what a glass would show. */
const isOpen = ({ solids }: AqueousComposition): boolean => solids.some(({ either }) => either);

/** Does the precipitate stay in an excess, fresh or aged? Undefined where that decides. */
function staysInExcess(formula: Formula, others: readonly Poured[]): boolean | undefined {
  const [fresh, aged] = (["fresh", "aged"] as const).map((solids) => {
    const solved = glass(formula, { powder: SAMPLE, others, solids });
    return solved === undefined || isOpen(solved) ? undefined : isCloudy(solved);
  });
  return fresh === aged ? fresh : undefined;
}

/** Drops of a reagent into the clear solution of what dissolves, then an excess of it. */
export function withReagent(formula: Formula, reagent: string, excess: string): Behaviour {
  const solubility = inWater(formula);
  if (solubility === undefined) return undefined;
  if (solubility === "stays") return "clear";
  const before = glass(formula, { powder: SAMPLE });
  const drops = glass(formula, { powder: SAMPLE, others: [poured(reagent, "0.001")] });
  if (drops === undefined || before === undefined || isCloudy(before) || isOpen(drops)) return undefined;
  if (!isCloudy(drops)) return "clear";
  const stays = staysInExcess(formula, [poured(reagent, excess)]);
  return stays === undefined ? undefined : stays ? "a precipitate that stays" : "a precipitate that excess dissolves";
}

export function onHeating(formula: Formula): Behaviour {
  const left = residueOf(formula, undefined);
  if (left === undefined) return undefined;
  const loss = attempt(() => expectedLossOf(formula, left.residue));
  return loss.ok ? loss.value : undefined;
}

/** The one colour that is seen; undefined where no metal of it is listed, or two colours mix. */
export function inFlame(formula: Formula): Behaviour {
  const rows = FLAMES.filter(({ metal }) => formula.count(metal).n !== 0n);
  const seen = new Set(rows.map(({ colour }) => colour));
  for (const { masks } of rows) for (const colour of masks) seen.delete(colour);
  const [colour, another] = seen;
  return another === undefined ? colour : undefined;
}

export function density(formula: Formula): Behaviour {
  const known = trySubstance(formula.toString());
  return known.ok ? known.value.density : undefined;
}
