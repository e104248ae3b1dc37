// Limits of the equation layer. Each has its own error code, so that hostile input is refused and never hangs.

/** Longest equation text in characters (`equation.too-long`). */
export const MAX_LENGTH = 200_000;
/** Most species on both sides together (`equation.too-many-species`). */
export const MAX_SPECIES = 400;
/** Most digits in one coefficient (`equation.bad-coefficient`). */
export const MAX_COEFFICIENT_DIGITS = 15;
/** Elementary reactions listed unless the caller allows more (`equation.too-many-reactions`). */
export const DEFAULT_REACTION_LIMIT = 2_000;
/** Species up to which an impossible equation is searched for what would mend it. */
export const MAX_SPECIES_EXPLAINED = 40;
