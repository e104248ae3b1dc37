// Activity coefficients of ions in a mixture, by the equation of Davies (Ion Association, 1962): one function of the ionic
// strength for all ions of one charge. Its linear term runs away in strong solutions (aluminium chloride at 1 mol/kg would
// be 80 times too active), so beyond 0.5 mol/kg the value reached there is kept.

/** Highest ionic strength at which the equation itself is used, mol/kg. */
const DAVIES_LIMIT = 0.5;

/** Coefficient of the linear term, Davies 1962. */
const LINEAR = 0.3;

/** Debye-Hückel slope of water for decimal logarithms, (kg/mol)^(1/2), from the permittivity and density of water. */
const SLOPES: readonly (readonly [celsius: number, slope: number])[] = [
  [0, 0.4913],
  [10, 0.4976],
  [20, 0.505],
  [25, 0.5092],
  [30, 0.5136],
  [40, 0.5231],
  [50, 0.5336],
  [60, 0.545],
];

/**
 * Slope for natural logarithms at a temperature between 0 and 60 °C.
 *
 * @source Robinson and Stokes, Electrolyte Solutions, 2nd ed. (1959), appendix 7.1 (from memory)
 */
export function debyeHueckelSlope(celsius: number): number {
  const above = SLOPES.findIndex(([at]) => at >= celsius);
  const [t1, s1] = SLOPES[Math.max(0, above - 1)]!;
  const [t2, s2] = SLOPES[above < 0 ? SLOPES.length - 1 : above]!;
  return Math.LN10 * (t2 === t1 ? s1 : s1 + ((s2 - s1) * (celsius - t1)) / (t2 - t1));
}

/** −ln γ of an ion of charge 1 divided by the slope; −ln γ of an ion of charge z is z² times that. */
export function daviesTerm(ionicStrength: number): number {
  const held = Math.min(ionicStrength, DAVIES_LIMIT);
  const root = Math.sqrt(held);
  return root / (1 + root) - LINEAR * held;
}

/** Its derivative with respect to the ionic strength; 0 where the value is held. */
export function daviesTermSlope(ionicStrength: number): number {
  if (ionicStrength >= DAVIES_LIMIT) return 0;
  const root = Math.sqrt(ionicStrength);
  return 1 / (2 * root * (1 + root) ** 2) - LINEAR;
}
