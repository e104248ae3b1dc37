// Unknowns with normal uncertainties that observations are linear in: exact, and the same in any order of the observations.

/** What is believed of several unknowns. */
export interface Belief {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** A figure found: a sum of unknowns with factors, and its variance. */
export interface Evidence {
  readonly factors: readonly number[];
  readonly value: number;
  readonly variance: number;
}

/** The belief after one more figure (normal prior, normal likelihood). */
export function updated({ mean, covariance }: Belief, { factors, value, variance }: Evidence): Belief {
  const projected = covariance.map((row) => row.reduce((sum, c, j) => sum + c * factors[j]!, 0));
  const whole = variance + projected.reduce((sum, c, i) => sum + c * factors[i]!, 0);
  const off = value - mean.reduce((sum, m, i) => sum + m * factors[i]!, 0);
  return {
    mean: mean.map((m, i) => m + (projected[i]! / whole) * off),
    covariance: covariance.map((row, i) => row.map((c, j) => c - (projected[i]! * projected[j]!) / whole)),
  };
}
