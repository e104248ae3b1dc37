// Student's t: the coverage factor for a level of confidence and degrees of freedom (JCGM 100:2008, annex G). Plain
// doubles: a coverage factor is quoted to three figures.
import { bisected } from "../../foundation/bisect";

/** ln of the gamma function for x > 0, by Stirling's series after shifting the argument up. */
function logGamma(x: number): number {
  let shift = 0;
  let y = x;
  for (; y < 15; y++) shift += Math.log(y);
  const z = 1 / (y * y);
  const series = (1 / 12 - z * (1 / 360 - z * (1 / 1260 - z * (1 / 1680 - z / 1188)))) / y;
  return (y - 0.5) * Math.log(y) - y + 0.5 * Math.log(2 * Math.PI) + series - shift;
}

/** Continued fraction of the incomplete beta function (modified Lentz). */
function betaFraction(a: number, b: number, x: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / Math.max(1 - ((a + b) * x) / (a + 1), tiny);
  let h = d;
  for (let m = 1; m <= 300; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d || tiny);
    c = 1 + even / c || tiny;
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d || tiny);
    c = 1 + odd / c || tiny;
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return h;
}

/** Regularised incomplete beta function I_x(a, b). */
function incompleteBeta(a: number, b: number, x: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(a, b, x)) / a : 1 - (front * betaFraction(b, a, 1 - x)) / b;
}

/** Probability that |t| is beyond `t` for `dof` degrees of freedom. */
const outside = (t: number, dof: number): number => incompleteBeta(dof / 2, 0.5, dof / (dof + t * t));

/** Beyond this many degrees of freedom Student's t is the normal distribution to seven digits. */
const MANY = 1e7;

/** The t with P(|t| <= it) = level. */
export function studentFactor(level: number, degreesOfFreedom: number): number {
  const dof = Math.min(degreesOfFreedom, MANY);
  const isBelow = (t: number): boolean => outside(t, dof) > 1 - level;
  let most = 1;
  while (isBelow(most)) most *= 2;
  const [low, high] = bisected(isBelow, [0, most], 200, 1e-12);
  return (low + high) / 2;
}
