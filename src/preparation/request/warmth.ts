// Temperatures that room, solutions and gas can have.
import type { Quantity } from "../../quantity";
import { PlanError } from "../error";

/** Water is liquid here, and its density known. */
const FREEZES = "0 °C";

const BOILS = "100 °C";

/** A temperature of room, solutions and gas that there can be. */
export function checkWarmth(T: Quantity<"temperature">, wet: boolean): void {
  if (wet ? T.compare(FREEZES) >= 0 && T.compare(BOILS) <= 0 : T.isPositive()) return;
  throw new PlanError(
    "plan.request",
    wet
      ? `temperature of ${T} is outside ${FREEZES} to ${BOILS}, where there is liquid water to work in`
      : `temperature of ${T} is not above absolute zero`,
  );
}
