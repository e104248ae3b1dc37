// Which gases a wash bottle keeps from the room.
import type { Formula } from "../../formula";
import { ABSORBENTS, type AbsorbentRow } from "../data/absorbents";
import { isAmmonia } from "./acids";
import { bySubstance } from "./by-substance";
import { gasRow } from "./fluids";

const rowOf = /* @__PURE__ */ bySubstance(ABSORBENTS);

/** Gases that must not go into the room: those for the hood, and ammonia. */
export const isForTheHood = (gas: Formula): boolean => gasRow(gas)?.hood === true || isAmmonia(gas);

/** What a wash bottle for a gas is filled with; undefined where it may go into the room, or nothing here absorbs it. */
export const absorbentOf = (gas: Formula): AbsorbentRow | undefined => (isForTheHood(gas) ? rowOf(gas) : undefined);
