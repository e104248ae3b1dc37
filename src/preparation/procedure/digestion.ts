// How a precipitate stands in its liquor before it is filtered: warm, hot or in the cold, and cold again before it is tested.

import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { HOT_WASH } from "../../solubility/internal";
import { matterOf } from "../contents/matter";
import { DIGESTED } from "../data/products";
import { warmthOf } from "../feasibility/by-warmth";
import { oxideFromWater } from "../feasibility/oxide-or-hydroxide";
import { exact, planned } from "../planning/exact";
import { isLye } from "../reaction/acids";
import { slowlyRow } from "../reaction/comes-slowly";
import { dissolvesLess, fateInRoom } from "../reaction/fate";
import { gelRow } from "../reaction/gel";
import type { Setting } from "../request/setting";
import type { AtHand } from "./at-hand";
import { dryingOf, losesWaterAt } from "./drying";
import type { ProcedureKind } from "./kinds";
import { notWarmOf } from "./not-warm";
import { isAirless } from "./protection";

/** Does its liquor keep enough of a precipitate that it must not be warmed? By the table alone: what has no figure is as good as insoluble. */
const isKeptWarm = (product: Formula): boolean => {
  const { perHundredGramsWater } = fateInRoom(product);
  return perHundredGramsWater !== undefined && perHundredGramsWater.compare(planned("keptWarm")) > 0;
};

/** Warmth from which grains grow soon. */
const DIGESTED_FROM = "60 °C";

/** How warm a precipitate is made or kept so that it is what was asked for, and until when; undefined where the room does it. */
function keptAt(
  kind: ProcedureKind,
  product: Formula,
  room: Quantity<"temperature"> = planned("temperature") as Quantity<"temperature">,
):
  | {
      readonly at: Quantity<"temperature">;
      readonly mixed?: "or another solid" | "or much of it stays";
      readonly text: string;
    }
  | undefined {
  if (kind !== "precipitation" || notWarmOf(product) !== undefined) return undefined;
  const turns = oxideFromWater(product)?.turns;
  if (turns !== undefined)
    return {
      at: exact(`${turns.at} °C`) as Quantity<"temperature">,
      text: `warm it to ${turns.at} °C and keep it there, stirring, until ${turns.until}: in the cold the hydroxide stays what it is, and is weighed as such (common practice)`,
    };
  const { from } = warmthOf(product);
  const forms = from !== undefined && from > room.toNumber("°C");
  if (
    !forms &&
    !(
      isKeptWarm(product) &&
      dissolvesLess(product, planned("hot") as Quantity<"temperature">, room, exact(`${HOT_WASH.share}`))
    )
  )
    return undefined;
  const at = planned("madeHot") as Quantity<"temperature">;
  const why = forms
    ? `it forms from ${from} °C on, and in the cold another solid settles`
    : "cold its liquor keeps more of it";
  return {
    at,
    mixed: forms ? "or another solid" : "or much of it stays",
    text: `${forms ? "keep it at" : "warm it to"} ${at.format({ decimals: 0, uncertainty: "none" })}${forms ? "," : " and keep it there,"} stirring, for 30 minutes to an hour, and filter it hot: ${why} (common practice)`,
  };
}

/** Does it lose gas as it is warmed in water: hydrogencarbonates, carbonate of ammonium? */
function givesOffGas(form: Formula): boolean {
  const { cations, anions } = constitutionOf(form);
  const has = (ions: typeof anions, ion: string): boolean => ions.some(({ formula }) => formula === ion);
  return has(anions, "HCO3-") || (has(anions, "CO3^2-") && has(cations, "NH4+"));
}

/** How warm a batch is mixed, where its precipitate forms only in the heat, or of salts alone where cold liquor keeps more of it. */
export function mixedHotAt(
  { product, temperature, materials }: Setting,
  kind: ProcedureKind,
): Quantity<"temperature"> | undefined {
  const kept = keptAt(kind, product.formula, temperature);
  const areSalts = () =>
    materials.every(({ form }) => !isLye(form) && !givesOffGas(form) && fateInRoom(form).precipitated === false);
  const { mixedAt } = DIGESTED.find(({ formulas }) => isOneOf(product.formula, ...formulas)) ?? {};
  if (mixedAt !== undefined && kind === "precipitation" && areSalts()) return exact(mixedAt) as Quantity<"temperature">;
  return kept?.mixed === "or another solid" || (kept?.mixed !== undefined && areSalts()) ? kept.at : undefined;
}

/** How a precipitate stands in its liquor until it is filtered. */
interface Digestion {
  readonly text: string;
  /** Where the vessel is warmed to, and kept; undefined where it is left to whoever works. */
  readonly at: Quantity<"temperature"> | undefined;
  /** May it stand warmer than the room? */
  readonly warm: boolean;
  /** Is it to cool before its liquor is tested and drawn off? Not what forms only hot, or dissolves less hot. */
  readonly cools: boolean;
  readonly atHand?: readonly AtHand[];
}

export function digestionOf(
  kind: ProcedureKind,
  product: Formula,
  room = planned("temperature") as Quantity<"temperature">,
): Digestion | undefined {
  const lessHot = dissolvesLess(product, exact(DIGESTED_FROM) as Quantity<"temperature">, room);
  const unwarmed = (text: string): Digestion => ({ text, at: undefined, warm: false, cools: false });
  const warmed = (text: string): Digestion => ({ text, at: undefined, warm: true, cools: !lessHot });
  const cold = notWarmOf(product);
  if (cold !== undefined)
    return unwarmed(
      `${cold.stands === undefined ? "" : `${cold.stands.text}; `}do not warm it in its liquor: ${cold.why}${cold.stands === undefined ? " (common practice)" : ""}`,
    );
  const kept = keptAt(kind, product, room);
  if (kept !== undefined)
    return { text: kept.text, at: kept.at, warm: true, cools: kept.mixed === undefined && !lessHot };
  const { below } = warmthOf(product);
  if (below !== undefined)
    return unwarmed(
      `keep it below ${below} °C until it is filtered: warmer another form of it comes (common practice)`,
    );
  const slow = slowlyRow(product);
  if (slow !== undefined)
    return unwarmed(`${slow.cold}: it comes slowly, and is all there when ${slow.test} (common practice)`);
  const row = DIGESTED.find(({ formulas }) => isOneOf(product, ...formulas));
  if (row !== undefined)
    return {
      ...warmed(
        row.heatedFor !== undefined
          ? `heat it in its liquor to ${row.at}, stirring, for it bumps, and keep it there ${row.heatedFor}: ${row.why} (common practice)`
          : `let it stand in its liquor 30 minutes to overnight, at ${row.at}${row.needed ? "" : " if it can be warmed"}: the grains grow and give up salt; ${row.why} (common practice)`,
      ),
      ...(row.filteredHot && { cools: false }),
    };
  if (isKeptWarm(product) && !lessHot)
    return unwarmed(
      "let it stand in its liquor 30 minutes to overnight, no warmer than the room: warm liquor would keep more of it (common practice)",
    );
  if (kind !== "precipitation") return undefined;
  if (gelRow(product)?.sets)
    return {
      ...unwarmed(
        "leave it until it sets to a jelly that does not run (minutes to a day; at pH 5 to 7 soonest: if paper shows it sour after an hour and it still runs, stir in baking soda by pinches until it is no more), then break that up small: a whole jelly cannot be washed (common practice)",
      ),
      atHand: ["indicator paper", "baking soda"],
    };
  // what heat takes water from below the usual warmth is digested as cool as it is dried
  const { upTo } = dryingOf(product);
  const loses = losesWaterAt(product);
  const isWet = matterOf(product).waters.compare(planned("meltsInWaters")) >= 0;
  if (upTo !== undefined && (loses === undefined ? isWet : loses.compare(exact("90 °C")) < 0))
    return {
      text: `let it stand in its liquor 30 minutes to overnight, no warmer than ${upTo.format({ decimals: 0, uncertainty: "none" })}: above that it ${loses === undefined ? "may lose" : "loses"} water (common practice)`,
      at: undefined,
      warm: upTo.compare(room) > 0,
      cools: upTo.compare(room) > 0,
    };
  if (isAirless(product))
    return warmed(
      "let it stand in its liquor 30 minutes at 50 to 60 °C or overnight in the cold: the grains grow and give up salt, and warm for longer air oxidises it (common practice)",
    );
  return warmed(
    "let it stand in its liquor 30 minutes to overnight, at 60 to 90 °C if it can be warmed: the grains grow and give up salt (common practice)",
  );
}
