// What is said of a waste together with what it is treated with, so that both the waste and the list of what stands ready are
// read off one place.

import { molarMass } from "../../formula";
import { type Quantity, sum } from "../../quantity";
import { WORTH_TREATING } from "../data/waste";
import { exact } from "../planning/exact";
import type { Treatment } from "./waste-treatment";

/** Something that the waste is treated with. */
export interface WasteReagent {
  /** Formula, anhydrous; vinegar is acetic acid in water. */
  readonly reagent: string;
  /** As it is taken. */
  readonly as: "dry" | "dilute" | "vinegar of 5 %";
  /** How much of it; undefined where it goes in until something is seen, little of it. */
  readonly portion: Quantity<"mass"> | Quantity<"volume"> | undefined;
  /** That is the most that can be needed, and less may do. */
  readonly upTo: boolean;
}

/** A note on a waste. */
export interface WasteNote {
  readonly text: string;
  readonly takes: readonly WasteReagent[];
}

/** A note that asks for nothing to be put to it. */
export const said = (text: string): WasteNote => ({ text, takes: [] });

/** So much of a dry reagent. */
export const dry = (reagent: string, amount: Quantity, upTo = false): WasteReagent => ({
  reagent,
  as: "dry",
  portion: amount.times(molarMass(reagent)).to("g") as Quantity<"mass">,
  upTo,
});

/** By pinches, until something is seen. */
export const pinches = (reagent: string): WasteReagent => ({ reagent, as: "dry", portion: undefined, upTo: false });

/** A little dilute acid, until paper shows enough. */
export const someAcid = (reagent: string): WasteReagent => ({ reagent, as: "dilute", portion: undefined, upTo: false });

/** Is there so much to be treated that it is treated? */
export const isWorthTreating = ({ amount, most }: Pick<Treatment, "amount" | "most">): boolean =>
  most !== undefined || amount.compare(exact(WORTH_TREATING.amount)) > 0;

const asReagent = ({ reagent, mass, most, vinegar }: Treatment): WasteReagent =>
  vinegar === undefined
    ? { reagent, as: "dry", portion: most ?? mass, upTo: most !== undefined }
    : { reagent: "CH3COOH", as: "vinegar of 5 %", portion: vinegar, upTo: true };

/** What all vessels and notes take together, each reagent once. */
export function reagentsOf(treatments: readonly Treatment[], notes: readonly WasteNote[]): WasteReagent[] {
  const all = [...treatments.filter(isWorthTreating).map(asReagent), ...notes.flatMap(({ takes }) => takes)];
  const keyOf = ({ reagent, as }: WasteReagent): string => `${reagent} ${as}`;
  return [...new Set(all.map(keyOf))].map((key) => {
    const own = all.filter((one) => keyOf(one) === key);
    const portions = own.flatMap(({ portion }) => (portion === undefined ? [] : [portion as Quantity]));
    return {
      ...own[0]!,
      portion: portions.length === 0 ? undefined : (sum(portions) as Quantity<"mass"> | Quantity<"volume">),
      upTo: own.some(({ upTo }) => upTo),
    };
  });
}
