// Is anything warmed, and may a flame do it?
import { parseFormula } from "../../formula";
import type { Plan } from "../../preparation";
import { burns, isAntisolvent } from "../../preparation/internal";
import { protectionFor } from "../../substance/internal";

/** Operations that end in a liquid as hot as is written down. */
const WARM = ["heat", "cool", "concentrate", "dissolve"] as const;

/** Is a liquid warmed? */
export const isWarm = ({ steps, temperature }: Plan): boolean =>
  steps.some(
    ({ operation, target, text }) =>
      (WARM.some((one) => one === operation) &&
        target?.dimension === "temperature" &&
        target.compare(temperature) > 0) ||
      (operation === "hold" && text.includes("°C")),
  );

/** Is it fired dry? */
export const isFired = ({ steps }: Plan): boolean => steps.some(({ operation }) => operation === "fire");

/** Alcohol or acetone that a step takes from elsewhere than the packs: a rinse. */
const takesSolvent = ({ steps }: Plan): boolean =>
  steps.some(({ put }) =>
    put.some(({ dissolved }) => dissolved.some(({ formula }) => isAntisolvent(parseFormula(formula)))),
  );

/** Gas of a step that burns, whatever the equation gives off. */
const givesFuel = ({ steps }: Plan): boolean =>
  steps.some(({ left }) =>
    left.some(
      ({ what, contents }) => what === "gas" && contents.gas.some(({ formula }) => burns(parseFormula(formula))),
    ),
  );

/** Something in the work burns, or feeds a fire: no flame comes near, and none warms it. */
export const keepsFlamesOff = (plan: Plan): boolean =>
  plan.alcohol !== undefined ||
  takesSolvent(plan) ||
  givesFuel(plan) ||
  protectionFor(plan.cautions.substances.flatMap(({ statements }) => statements.map(({ code }) => code))).some(
    ({ kind }) => kind === "flame",
  );
