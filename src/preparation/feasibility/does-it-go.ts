// Does it go? Asked of a reaction before any procedure, answered with numbers and their sources. Judges speak in order: what
// cannot exist, what potentials forbid, what solids do not do, then the equilibrium of the whole mixture.
import { type AqueousComposition, aqueousComposition } from "../../aqueous";
import { redoxPartners, uncovered } from "../../aqueous/mixture/coverage";
import { network } from "../../aqueous/mixture/network";
import { keyOf } from "../../aqueous/mixture/notation";
import { type BalancedEquation, balance } from "../../equation";
import { parseFormula } from "../../formula";
import { isWater } from "../../formula/crystal-water";
import { type Fields, isRecord } from "../../foundation/argument";
import { lazily } from "../../foundation/lazy";
import { remembering } from "../../foundation/memo";
import { type Quantity, quantity, sum } from "../../quantity";
import { massFor } from "../account";
import { guard } from "../argument";
import { type Batch, batchOf } from "../batch";
import { cite } from "../data/sources";
import { STEP, taken, takenRequest } from "../door";
import { PlanError } from "../error";
import { fateOf } from "../fate";
import type { PlanRequest, Scale, ShelfMaterial } from "../request";
import { mixOf, passGate } from "../safety/combinations";
import { type Setting, settingOf, weigh } from "../setting";
import { componentsOf } from "./beaker";
import { type Case, caseOf, keyOfCase } from "./case";
import {
  DOES_NOT_GO,
  type Feasibility,
  type FeasibilityReason,
  type Figure,
  type FormedSolid,
  type Reason,
  type Ruling,
} from "./feasibility";
import { hydrolysisOf, judgeCompound } from "./judge-compound";
import { judgeDissolved } from "./judge-dissolved";
import { judgeHeat } from "./judge-heat";
import { judgeMetal } from "./judge-metal";
import { conditions, GOES, judgePrecipitate, NOTHING, solidsIn } from "./judge-precipitate";
import { judgeFiredOxide } from "./judge-solid";
import { beakersOf, percent, potOf } from "./pot";

/** What a request may leave out when only this is asked. */
export interface FeasibilityRequest extends Omit<PlanRequest, "materials" | "scale"> {
  /** As in a plan; default each reactant by itself, in the amount the equation asks for. */
  readonly materials?: readonly ShelfMaterial[] | undefined;
  /** Default 0.1 mol of product. */
  readonly scale?: Scale | undefined;
}

const rulings = /* @__PURE__ */ remembering<Ruling>(300);

const unknown = (text: string): Ruling => ({
  verdict: "unknown",
  solids: [],
  reasons: [{ code: "missing", text, source: "commonPractice" }],
});

/** A gas that should leave: what of it neither solution nor solid keeps. */
function judgeGas(c: Case): Ruling | undefined {
  const of = componentsOf(c.product.species.formula);
  const pot = potOf(c);
  const beaker = of === undefined || pot === undefined ? undefined : beakersOf(c, pot)?.gone;
  const key = of === undefined ? undefined : [...of.keys()].find((one) => one !== "H+");
  if (beaker === undefined || of === undefined || key === undefined) return undefined;
  const kept =
    beaker.dissolved(key) + beaker.solids.reduce((n, { phase, moles }) => n + moles * (phase.of.get(key) ?? 0), 0);
  const share = Math.max(0, Math.min(1, (beaker.total(key) - kept) / of.get(key)!));
  return {
    verdict: share >= GOES ? "goes" : share < NOTHING ? "does not go" : "goes in part",
    share,
    solids: solidsIn(beaker),
    reasons: [
      {
        code: "equilibrium",
        text: `${percent(share)} of the ${c.product.species.name} leaves at pH ${beaker.pH.toFixed(1)}`,
        figures: [{ value: share, unit: "", label: "share that leaves" }, ...conditions(beaker)],
        source: "constants",
      },
    ],
  };
}

/** A complex that the tables do not form, or that comes together and apart too slowly for an equilibrium to speak of. */
function inertComplex({ product: { made, species } }: Case): Ruling | undefined {
  const { complex } = made;
  if (complex === undefined || network().isFormed(keyOf(complex.formula))) return undefined;
  if (species.formula.count("C").equals(species.formula.count("N")) && species.formula.count("C").n > 5n)
    return undefined;
  return unknown(
    `missing: the stability constant of ${complex.formula}, or it exchanges its ligands too slowly for one`,
  );
}

/** What the equilibrium says of the product. */
function judgeEquilibrium(c: Case): Ruling | undefined {
  const { formula } = c.product.species;
  if (c.product.made.kind === "element") return undefined;
  const inert = inertComplex(c);
  if (inert !== undefined) return inert;
  if (c.product.gas) return judgeGas(c);
  return fateOf(formula, c.setting.temperature).fallsOut === true ? judgePrecipitate(c) : judgeDissolved(c);
}

/** Pairs that would exchange electrons first, though the equation has them leave each other alone. */
function partners(c: Case): Reason[] {
  if (c.redox !== undefined || !c.setting.wet) return [];
  const keys = c.put.flatMap(({ species, moles }) =>
    moles > 0 ? [...(componentsOf(species.formula)?.keys() ?? [])] : [],
  );
  return redoxPartners(network(), [...new Set(keys)]).map((text) => ({
    code: "redox-partners",
    text: text.replace(/: computed.*$/, ": the equation leaves that out"),
    source: "memory",
  }));
}

/** Ions of the mixture that should form a solid the tables have no constant for, the product's metal among them. */
function gaps(c: Case): Reason[] {
  if (!c.setting.wet) return [];
  const keys = [...new Set(c.put.flatMap(({ species }) => [...(componentsOf(species.formula)?.keys() ?? [])]))];
  const metals = c.product.made.cations.map(({ formula }) => formula);
  return uncovered(network(), keys)
    .filter((text) => metals.some((metal) => text.startsWith(metal)))
    .map((text) => ({ code: "missing", text: `missing: ${text}`, source: "commonPractice" }));
}

function rule(c: Case): Ruling {
  const stopped = judgeCompound(c);
  if (stopped !== undefined) return stopped;
  if (!c.setting.wet) return judgeHeat(c);
  const fired = judgeFiredOxide(c);
  if (fired?.verdict === "does not go") return fired;
  const electrons = judgeMetal(c);
  if (electrons !== undefined && electrons.verdict !== "goes") return electrons;
  const before = [...(electrons?.reasons ?? []), ...(fired?.reasons ?? [])];
  const judged = judgeEquilibrium(c);
  const apart = hydrolysisOf(c);
  const found =
    judged === undefined || apart === undefined
      ? judged
      : {
          ...judged,
          verdict: judged.verdict === "goes" ? ("goes in part" as const) : judged.verdict,
          reasons: [...judged.reasons, apart],
        };
  if (found === undefined) {
    if (electrons !== undefined) return electrons;
    return unknown(
      c.redox === undefined
        ? `missing: what ${c.put.map(({ species }) => species.name).join(", ")} become in water`
        : "missing: the potentials of this reaction",
    );
  }
  const [met, missing] = [partners(c), gaps(c)];
  const reasons = [...before, ...found.reasons, ...met, ...missing];
  const shaken = (met.length > 0 && found.verdict === "goes") || (missing.length > 0 && found.verdict !== "goes");
  return { ...found, verdict: shaken ? "unknown" : found.verdict, share: shaken ? undefined : found.share, reasons };
}

const CONSTANTS = "constants of the aqueous tables, each with its source";

function reasonOf({ code, text, figures = [], source }: Reason): FeasibilityReason {
  const cited = source === "constants" ? CONSTANTS : cite(source);
  return lazily<FeasibilityReason>({
    code: () => code,
    text: () => text,
    numbers: () => figures.map((one) => numberOf(one, cited)),
    source: () => cited,
  });
}

const numberOf = ({ value, unit, label }: Figure, source: string) =>
  quantity({ value: value === 0 ? "0" : value.toPrecision(6), unit }, { label, source });

/** A solid of a ruling, for the batch: exact multiples of its theory. */
function formedSolid({ formula, moles, share }: Ruling["solids"][number], theory: Quantity): FormedSolid {
  const amount = theory.times(rounded(moles)).named({
    symbol: `n(${formula})`,
    label: `${formula} that stands`,
    rule: "theory × amount for one mole of product",
  });
  return {
    formula,
    amount: amount as FormedSolid["amount"],
    mass: massFor(amount, parseFormula(formula), { symbol: `m(${formula})`, label: `${formula} that stands` }),
    share: quantity({ value: rounded(share), unit: "" }, { label: `part of its metal that is in ${formula}` }),
  };
}

/** Six figures of a double, as text. */
const rounded = (x: number): string => String(Number(x.toPrecision(6)));

/** The figures of a ruling, for a batch of so much product. */
function told(ruling: Ruling, setting: Setting, batch: Batch): Feasibility {
  const theory = batch.product.amount;
  let made: AqueousComposition | undefined;
  const composition = (basis: NonNullable<Ruling["basis"]>): AqueousComposition =>
    (made ??= aqueousComposition({
      water: quantity({ value: String(basis.water), unit: "kg" }) as never,
      dissolved: basis.pours.map(({ formula, moles }) => ({
        formula,
        amount: quantity({ value: String(moles), unit: "mol" }) as never,
      })),
      carbonDioxide: basis.carbonDioxide,
      solids: basis.solids,
      temperature: quantity({ value: String(basis.celsius), unit: "°C" }) as never,
    }));
  const mole = quantity("1 mol");
  return lazily<Feasibility>({
    verdict: () => ruling.verdict,
    share: () => {
      if (ruling.share === undefined) return undefined;
      const label = { label: "share of the theory that forms", rule: "amount that stands / theory" };
      const { basis } = ruling;
      if (basis === undefined || ruling.share === 0 || ruling.share === 1)
        return quantity({ value: rounded(ruling.share), unit: "" }, label);
      const standing = composition(basis).solids.flatMap(({ formula, amount }) => {
        const units = basis.units.get(formula);
        return units === undefined ? [] : [amount.times(String(units))];
      });
      return sum(standing).dividedBy(mole).named(label);
    },
    solids: () => ruling.solids.map((one) => formedSolid(one, theory)),
    reasons: () => [...ruling.reasons.map(reasonOf), ...waterReason(ruling, setting, batch)],
  });
}

/** Say so where the figures are for another amount of water than the plan's. */
function waterReason({ basis }: Ruling, setting: Setting, batch: Batch): FeasibilityReason[] {
  if (basis === undefined) return [];
  const perMole = waterOf(setting, batch) / batch.product.amount.in("mol").toNumber();
  if (Math.abs(basis.water / perMole - 1) < 0.02) return [];
  const text = `figures are for ${Math.round(basis.water * 1000)} g of water for one mole of product`;
  return [
    reasonOf({
      code: "water",
      text:
        perMole > 0
          ? `${text}: the planned liquor, ${Math.round(perMole * 1000)} g, is stronger than the activity model serves`
          : `${text}: how much water there is is not known`,
      figures: [{ value: basis.water * 1000, unit: "g", label: "water for one mole of product, of the figures" }],
      source: "commonPractice",
    }),
  ];
}

/** kg in a mole of water. */
const WATER = 0.01801528;

/** kg of water that the feeds are dissolved in and bring, crystal water of the equation's species left out. */
function waterOf(setting: Setting, batch: Batch): number {
  let kg = 0;
  for (const [i, feed] of batch.feeds.entries()) {
    const { waters, species } = setting.materials[i]!;
    kg += WATER * waters.minus(species.waters).times(batch.materialBalance.supplied[i]!.amount).in("mol").toNumber();
    const dilution = feed.how === "solution" ? feed.dilution?.water : undefined;
    const own = feed.how === "dissolve" ? feed.dissolving.water : feed.how === "solid" ? undefined : feed.water;
    for (const one of [own, dilution]) kg += one?.in("kg").toNumber() ?? 0;
  }
  return kg;
}

/** @internal Does a batch go? */
export function feasibilityOf(setting: Setting, batch: Batch): Feasibility {
  // how much a liquor is boiled down is no question of whether it goes, and asks the curves first
  const falls = setting.wet && fateOf(setting.product.formula, setting.temperature).fallsOut === true;
  const water = falls ? waterOf(setting, batch) : undefined;
  const c = caseOf(setting, batch.materialBalance, water);
  return told(
    rulings(keyOfCase(c), () => rule(c)),
    setting,
    batch,
  );
}

/** @internal What leads a plan that does not simply go; undefined for one that does. */
export function leadOf({ verdict, share, solids, reasons }: Feasibility, product: string): string | undefined {
  const first = reasons[0]?.text;
  if (verdict === "another solid forms") {
    const named = solids
      .slice(0, 2)
      .map(({ formula, mass }) => `${mass.format({ significant: 3, uncertainty: "none" })} of ${formula}`);
    return `another solid forms: ${named.join(" and ")}, for ${product} asked for: ${first}`;
  }
  if (verdict === "does not go") return `it does not go: ${first}`;
  if (verdict !== "goes in part") return undefined;
  const part =
    share === undefined ? "" : ` (${share.to("%").format({ significant: 2, uncertainty: "none" })} of the theory)`;
  return `it goes in part${part}: ${first}`;
}

/** @internal Refuse what does not go, unless it is known and meant. */
export function refuseWhatDoesNotGo(
  { verdict, reasons, solids }: Feasibility,
  { acknowledge = [] }: PlanRequest,
): void {
  if (verdict !== "does not go" || DOES_NOT_GO.some((code) => acknowledge.includes(code))) return;
  throw new PlanError("plan.does-not-go", reasons[0]?.text ?? "it does not go", {
    hint: `if this is known and meant, acknowledge it by code: acknowledge: ["${DOES_NOT_GO[0]}"]`,
    details: {
      verdict,
      solids: solids.map(({ formula, share }) => ({ formula, share: share.value.toNumber() })),
      reasons: reasons.map(({ code, text, source }) => ({ code, text, source })),
    },
  });
}

const FIELDS = { ...STEP, scale: true } as const satisfies Fields<FeasibilityRequest>;

const materialOf = ({ formula }: BalancedEquation["reactants"][number]): ShelfMaterial[] => {
  const text = formula.toString();
  return isWater(formula) ? [] : [{ name: text, form: text }];
};

/** A request with everything in it: each reactant by itself where no material is named. */
function whole({ materials, scale, ...rest }: FeasibilityRequest): PlanRequest {
  const isReadable = typeof rest.equation === "string" || isRecord(rest.equation);
  const named = materials ?? (isReadable ? balance(rest.equation).reactants : []).flatMap(materialOf);
  return { ...rest, materials: named, scale: scale ?? { product: "0.1 mol" } };
}

/**
 * Does a reaction go, how far, and what forms in its place?
 *
 * Judged are: compounds that do not exist in water; potentials, passive metals and metals that water takes; coats and fired
 * oxides; the equilibrium of the whole mixture with carbon dioxide kept and gone; which of all the salts of a liquor
 * crystallises first; for a dry solid, the table of thermal steps. Rates are not computed.
 *
 * @param request - as for `planPreparation`; materials may be left out (each reactant by itself, exactly enough), and the
 *   scale (0.1 mol of product)
 * @returns `verdict`; `share` of the theory, with uncertainty; `solids` that stand at the end; `reasons` with their figures and
 *   sources. What is `unknown` says what is missing
 * @throws {PlanError} as `planPreparation`, but not `plan.does-not-go`
 * @source equilibrium: constants of the tables, each with its own; potentials from memory; the rest common practice
 * @category Planning
 * @example
 * doesItGo({ equation: "Cu + HCl -> CuCl2 + H2", product: "CuCl2" }).verdict // => "does not go"
 * const basic = doesItGo({ equation: "CuSO4 + NaHCO3 -> CuCO3 + Na2SO4 + CO2 + H2O", product: "CuCO3" });
 * basic.verdict // => "another solid forms"
 * basic.solids[0]!.formula // => "Cu₂(OH)₂CO₃"
 */
export function doesItGo(request: FeasibilityRequest): Feasibility {
  const given = taken(request);
  guard.fields(given, FIELDS);
  const read = takenRequest(whole(given));
  const setting = settingOf(read);
  passGate(mixOf(setting), read);
  return feasibilityOf(setting, batchOf(setting, weigh(setting).portions));
}
