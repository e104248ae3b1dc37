// fraction.js behind one name: its CommonJS declarations export a value and no type, so the type is taken from the value.
import Base from "fraction.js";

/** An exact fraction, from fraction.js: `n`, `d` and `s` are bigints, `toFraction()` prints it. */
export type Fraction = InstanceType<typeof Base>;

/** The constructor; feed it text or bigints, never a computed double. */
export const Fraction: typeof Base = Base;
