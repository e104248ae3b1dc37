import type { Fields } from "../../foundation/argument";
import { isQuantity, type Quantity } from "../../quantity";
import { guard, listed, notNegative, positive, type VolumeLike } from "../argument";
import { AmountError } from "../error";
import { type Replicates, replicateStatistics } from "./replicates";

/** The burette as it was read, before and after. */
export interface BuretteReadings {
  /** Reading before the titration. */
  readonly initial: VolumeLike;
  /** Reading at the end point. */
  readonly final: VolumeLike;
}

/** A titre as a volume, or as the two readings of the burette. */
export type Titre = VolumeLike | BuretteReadings;

/** A titre that is not to count, and why. */
export interface LeftOut {
  /** Its place in the list, 1 for the first. */
  readonly titre: number;
  /** What went wrong with it: "overshot". Said in the warnings. */
  readonly because: string;
}

/** The volume used: the titre itself, or the difference of the readings. */
export function volumeOfTitre(titre: Titre, symbol: string): Quantity {
  if (!isReadings(titre)) return positive(titre, "volume", "titre", { symbol, label: "titre" });
  guard.fields(titre, READINGS, "titre");
  const initial = notNegative(titre.initial, "volume", "initial", { label: "burette before" });
  const final = notNegative(titre.final, "volume", "final", { label: "burette after" });
  const used = final.minus(initial);
  if (!used.isPositive()) {
    throw new AmountError("amount.not-positive", `the burette read ${initial} before and ${final} after`, {
      hint: "a burette is read from the top: the later reading is the larger one",
    });
  }
  return used.named({ symbol, label: "titre", rule: "titre = reading after - reading before" });
}

const READINGS = { initial: true, final: true } as const satisfies Fields<BuretteReadings>;

/** An object that is no quantity: a quantity in parts has a `value`. */
const isReadings = (titre: Titre): titre is BuretteReadings =>
  typeof titre === "object" && titre !== null && !isQuantity(titre) && !("value" in titre);

export interface Titres extends Replicates<"volume"> {
  /** What was left out, in words. */
  readonly notes: readonly string[];
}

export function titresOf(titre: Titre | readonly Titre[], leftOut: readonly LeftOut[] = []): Titres {
  const list = Array.isArray(titre) ? listed(titre as readonly Titre[], "titre") : [titre as Titre];
  const all = list.map((one, i) => volumeOfTitre(one, list.length === 1 ? "V(titre)" : `V${i + 1}`));
  const out = new Map(listed(leftOut, "leftOut").map((one) => [one.titre, one.because]));
  for (const [place, because] of out) {
    guard.text(because, "because");
    if (all[place - 1] === undefined) {
      throw new AmountError("amount.readings", `there is no titre ${place} to leave out; there are ${all.length}`);
    }
  }
  const kept = all.filter((_, i) => !out.has(i + 1));
  const notes = [...out].map(([place, because]) => `titre ${place}, ${all[place - 1]}, does not count: ${because}`);
  return { ...replicateStatistics(kept, { label: "titres" }), notes };
}

export function lessBlank(mean: Quantity, blank: VolumeLike | undefined, backwards: boolean): Quantity {
  if (blank === undefined) return mean.symbol === undefined ? mean.named({ symbol: "V(titre)" }) : mean;
  const b = notNegative(blank, "volume", "blank", { symbol: "V(blank)", label: "titre of the blank" });
  const net = backwards ? b.minus(mean) : mean.minus(b);
  if (!net.isPositive()) {
    throw new AmountError(
      "amount.not-possible",
      `a titre of ${mean} against a blank of ${b} leaves nothing for the sample`,
      {
        hint: backwards
          ? "in a back titration the blank uses more titrant than the sample"
          : "the sample uses more titrant than the blank",
      },
    );
  }
  return net.named({
    symbol: "V(net)",
    rule: backwards ? "titre used = blank - titre" : "titre used = titre - blank",
  });
}

export function warningsOf({ notes, ...titres }: Titres): string[] {
  const warnings = [...notes];
  if (!titres.concordant) warnings.push(`the titres are ${titres.range} apart, not concordant within 0.1 mL`);
  if (titres.suspect?.outlier === true) {
    const { value, statistic, critical } = titres.suspect;
    warnings.push(`${value} is an outlier by Grubbs' test: G = ${statistic.toFixed(3)} > ${critical.toFixed(3)}`);
  }
  return warnings;
}
