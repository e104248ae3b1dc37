// A ruling as it is reported: its figures as quantities, made when somebody looks; those of an equilibrium with their uncertainty.

import { type AqueousComposition, aqueousComposition } from "../../aqueous";
import { parseFormula } from "../../formula";
import { lazily } from "../../foundation/lazy";
import { type Quantity, quantity, sum } from "../../quantity";
import { waterOf } from "../contents/equilibrium";
import { matterOf } from "../contents/matter";
import { cite } from "../data/sources";
import { type Batch, reactedPot } from "../planning/batch";
import { exact, planned } from "../planning/exact";
import { saturatedAt } from "../procedure/settling";
import { handOf } from "../procedure/words";
import { massFor } from "../reaction/account";
import { keyed } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { Feasibility, FeasibilityReason, Figure, FormedSolid, Reason, Ruling } from "./feasibility";
import { whereItCrystallises } from "./form-in-water";
import { percent } from "./pot";
import { restsOn } from "./room";

const CONSTANTS = "constants of the aqueous tables, each with its source";

function reasonOf({ code, text, figures = [], source }: Reason, base?: BaseToTake): FeasibilityReason {
  const cited = source === "constants" ? CONSTANTS : cite(source);
  return lazily<FeasibilityReason>({
    code: () => code,
    text: () => (base === undefined ? text : `${text}: ${base.words}`),
    numbers: () => [...figures.map((one) => numberOf(one, cited)), ...(base === undefined ? [] : [base.mass])],
    source: () => cited,
  });
}

/** A base for the batch, in words and as a mass. */
interface BaseToTake {
  readonly words: string;
  readonly mass: Quantity<"mass">;
}

/** The base that takes the acid of a batch; undefined where a reason names none. */
function baseToTake({ base }: Reason, { steps }: Setting, theory: Quantity): BaseToTake | undefined {
  if (base === undefined) return undefined;
  const formula = parseFormula(base.formula);
  const mass = massFor(theory.times(rounded(base.moles)), formula, {
    symbol: `m(${base.formula})`,
    label: `${base.called} that brings the rest of the product out`,
  });
  return {
    mass,
    words: `${handOf(steps).grams(mass)} of ${base.called} (${formula.toUnicode()}), stirred in by and by, for it foams, until paper shows pH ${base.pH.toFixed(0)}, lets ${percent(base.share)} of it precipitate`,
  };
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
  return keyed("formula", {
    formula,
    amount: amount as FormedSolid["amount"],
    mass: massFor(amount, parseFormula(formula), { symbol: `m(${formula})`, label: `${formula} that stands` }),
    share: quantity({ value: rounded(share), unit: "" }, { label: `part of its metal that is in ${formula}` }),
  });
}

/** Six figures of a double, as text. */
const rounded = (x: number): string => String(Number(x.toPrecision(6)));

/** Judges that only one solid crystallises, or which comes first: the work of the batch says how much of each. */
const isOnPairs = ({ verdict, reasons }: Ruling): boolean =>
  (verdict === "goes" || verdict === "goes in part") && reasons[0]?.code === "salt-pair";

/** How a liquor with other salts parts: most of the product clean, little of it clean, or a mixture. */
type Outcome = "clean" | "little" | "mixed";

/** What the work of the batch brings where other salts are in its liquor; undefined where it tells nothing of its own. */
function byTheWork(ruling: Ruling, { crystallising }: Batch): Outcome | undefined {
  const parted = crystallising?.parted;
  if (parted === undefined || (ruling.verdict !== "goes" && ruling.verdict !== "goes in part")) return undefined;
  if (parted.purity.compare(planned("cleanCrop")) < 0) return "mixed";
  return isOnPairs(ruling) ? (parted.share.compare(planned("mostly")) < 0 ? "little" : "clean") : undefined;
}

/** The crop in the figures of the steps. */
function cropReason({ checks, product }: Batch, outcome: Outcome): FeasibilityReason | undefined {
  const found = checks.find(({ about }) => about === "crop");
  return found === undefined
    ? undefined
    : lazily<FeasibilityReason>({
        code: () => "salt-pair",
        text: () =>
          outcome !== "mixed"
            ? found.text
            : `what crystallises is a mixture and not clean ${product.name}, for the water left by its crystals does not keep all the rest dissolved: ${found.text}`,
        numbers: () => (found.figure === undefined ? [] : [found.figure]),
        source: () => cite("commonPractice"),
      });
}

/** Another hydrate than the one that was asked for, which is what crystallises where the liquor is filtered. */
function otherHydrate(setting: Setting, { crystallising, product }: Batch): Reason | undefined {
  if (crystallising?.water === undefined) return undefined;
  const own = matterOf(setting.product.formula);
  const solid = saturatedAt(own, crystallising.cold)?.solid;
  if (solid === undefined || solid.core.key !== own.core.key || solid.key === own.key) return undefined;
  // only where the table knows the wanted one as well: trade and table may count the water of one solid differently
  const where = whereItCrystallises(own.formula);
  if (where === undefined) return undefined;
  const at = crystallising.cold.toNumber("°C");
  return {
    code: "another-solid",
    text: `at ${at} °C ${solid.name} crystallises, not ${product.name}, which crystallises ${where}`,
    figures: [{ value: at, unit: "°C", label: "temperature at which it is filtered" }],
    source: "commonPractice",
  };
}

/** A ruling as the crystals of the batch leave it. */
function byTheCrystals(ruling: Ruling, setting: Setting, batch: Batch): Ruling {
  const goes = ruling.verdict === "goes" || ruling.verdict === "goes in part";
  const other = goes ? otherHydrate(setting, batch) : undefined;
  return other === undefined
    ? ruling
    : { ...ruling, verdict: "another solid forms", share: 0, reasons: [other, ...ruling.reasons] };
}

/** The figures of a ruling, for a batch of so much product. */
export function stated(judged: Ruling, setting: Setting, batch: Batch): Feasibility {
  const ruling = byTheCrystals(judged, setting, batch);
  const outcome = byTheWork(ruling, batch);
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
  const mole = exact("1 mol");
  const feasibility = lazily<Feasibility>({
    verdict: () => (outcome === "clean" ? "goes" : outcome === "mixed" ? "goes in part" : ruling.verdict),
    share: () => {
      if (ruling.share === undefined || outcome === "mixed") return undefined;
      const label = { label: "share of the theory that forms", rule: "amount of solid / theory" };
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
    reasons: () => {
      const crop = outcome === undefined ? undefined : cropReason(batch, outcome);
      const others = crop === undefined ? ruling.reasons : ruling.reasons.filter(({ isCrop }) => isCrop !== true);
      return [
        ...(crop === undefined ? [] : [crop]),
        ...others.map((one) => reasonOf(one, baseToTake(one, setting, theory))),
        ...waterReason(ruling, batch),
      ];
    },
  });
  return restsOn(feasibility, ruling.basis);
}

/** Say so where the figures are for another amount of water than the plan's. */
function waterReason({ basis }: Ruling, batch: Batch): FeasibilityReason[] {
  if (basis === undefined) return [];
  const pot = reactedPot(batch);
  const kg = pot === undefined ? undefined : waterOf(pot);
  const perMole = kg === undefined ? undefined : kg / batch.product.amount.toNumber("mol");
  if (perMole !== undefined && Math.abs(basis.water / perMole - 1) < 0.02) return [];
  const text = `figures are for ${Math.round(basis.water * 1000)} g of water for one mole of product`;
  return [
    reasonOf({
      code: "water",
      text:
        perMole !== undefined
          ? `${text}: the planned liquor, ${Math.round(perMole * 1000)} g, is stronger than the activity model serves`
          : `${text}: how much water there is is not known`,
      figures: [{ value: basis.water * 1000, unit: "g", label: "water for one mole of product, of the figures" }],
      source: "commonPractice",
    }),
  ];
}
