// Is anything warmed, and may a flame do it?
import { parseFormula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import type { Plan } from "../../preparation";
import { burns, IRRITATES_HOT, isAntisolvent, LIT_BY_FLAME } from "../../preparation/internal";
import { classesOfFormula, protectionFor } from "../../substance/internal";

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

/** Does what is warmed give off gas that irritates? */
export const irritatesHot = (plan: Plan): boolean =>
  isWarm(plan) &&
  plan.weighings.some(({ form }) => {
    const classes = classesOfFormula(parseFormula(form));
    return IRRITATES_HOT.classes.some((one) => classes.has(one));
  });

/** Is it fired dry? */
export const isFired = ({ steps }: Plan): boolean => steps.some(({ operation }) => operation === "fire");

/** Alcohol or acetone that a step takes from elsewhere than the packs: a rinse. */
const takesSolvent = ({ steps }: Plan): boolean =>
  steps.some(({ put }) =>
    put.some(({ dissolved }) => dissolved.some(({ formula }) => isAntisolvent(parseFormula(formula)))),
  );

/** Gas of a step that burns, whatever the equation gives off. */
export const givesFuel = ({ steps }: Plan): boolean =>
  steps.some(({ left }) =>
    left.some(
      ({ what, contents }) => what === "gas" && contents.gas.some(({ formula }) => burns(parseFormula(formula))),
    ),
  );

/** A solid that burns, in a liquor that is warmed. */
const warmsFuel = (plan: Plan): boolean =>
  !isFired(plan) && plan.weighings.some(({ form }) => isOneOf(parseFormula(form), ...LIT_BY_FLAME.formulas));

/** Something in the work burns, or feeds a fire: no flame comes near, and none warms it. */
export const keepsFlamesOff = (plan: Plan): boolean =>
  plan.alcohol !== undefined ||
  takesSolvent(plan) ||
  givesFuel(plan) ||
  warmsFuel(plan) ||
  protectionFor(plan.cautions.substances.flatMap(({ statements }) => statements.map(({ code }) => code))).some(
    ({ kind }) => kind === "flame",
  );
