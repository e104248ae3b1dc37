// Limits of the formula reader. Each has its own error code, so that hostile input is refused and never hangs.

/** Longest formula text in characters (`formula.too-long`). */
export const MAX_LENGTH = 200_000;
/** Deepest nesting of brackets (`formula.too-deep`). */
export const MAX_DEPTH = 1_000;
/** Most digits in one number (`formula.count-too-large`). */
export const MAX_DIGITS = 12;
/** Largest total count and denominator, 2^53 - 1: beyond it counts would stop being exact (`formula.count-too-large`). */
export const MAX_COUNT = Number.MAX_SAFE_INTEGER;
/** Largest charge number written on one ion (`formula.count-too-large`). */
export const MAX_CHARGE = 9_999;
/** Longest text for which a "did you mean" is searched. */
export const MAX_HINT_LENGTH = 200;
