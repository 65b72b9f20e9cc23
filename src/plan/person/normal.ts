/**
 * The normal distribution, by our own arithmetic so that every engine gives the same digits to rounding.
 * Distribution function by the series and continued fraction of Abramowitz and Stegun 26.2.11 and 26.2.14; the inverse by
 * Acklam's rational start and one Halley step.
 */
const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

export const density = (x: number): number => Math.exp(-0.5 * x * x) / ROOT_TWO_PI;

/** Share of a standard normal below x. */
export function cumulative(x: number): number {
  if (x < -38) return 0;
  if (x > 38) return 1;
  const a = Math.abs(x);
  if (a < 3) {
    let term = a;
    let sum = a;
    for (let k = 1; k < 60; k++) {
      term *= (a * a) / (2 * k + 1);
      sum += term;
      if (term < sum * 1e-17) break;
    }
    const half = sum * density(a);
    return x > 0 ? 0.5 + half : 0.5 - half;
  }
  let fraction = 0;
  for (let k = 60; k > 0; k--) fraction = k / (a + fraction);
  const tail = density(a) / (a + fraction);
  return x > 0 ? 1 - tail : tail;
}

/** The point below which the share p of a standard normal lies; p strictly between 0 and 1. */
export function quantile(p: number): number {
  const low = 0.02425;
  let x: number;
  if (p < low || p > 1 - low) {
    const q = Math.sqrt(-2 * Math.log(p < low ? p : 1 - p));
    x =
      (((((-7.784894002430293e-3 * q - 0.3223964580411365) * q - 2.400758277161838) * q - 2.549732539343734) * q +
        4.374664141464968) *
        q +
        2.938163982698783) /
      ((((7.784695709041462e-3 * q + 0.3224671290700398) * q + 2.445134137142996) * q + 3.754408661907416) * q + 1);
    if (p > 1 - low) x = -x;
  } else {
    const q = p - 0.5;
    const r = q * q;
    x =
      ((((((-39.69683028665376 * r + 220.9460984245205) * r - 275.9285104469687) * r + 138.357751867269) * r -
        30.66479806614716) *
        r +
        2.506628277459239) *
        q) /
      (((((-54.47609879822406 * r + 161.5858368580409) * r - 155.6989798598866) * r + 66.80131188771972) * r -
        13.28068155288572) *
        r +
        1);
  }
  const error = cumulative(x) - p;
  const u = error * ROOT_TWO_PI * Math.exp(0.5 * x * x);
  return x - u / (1 + (x * u) / 2);
}

/**
 * Share below x of a normal (mean 0, given spread) plus a delay that is exponential with the given mean.
 * With no delay it is the normal itself.
 */
export function cumulativeDelayed(x: number, spread: number, delay: number): number {
  if (delay < 1e-6) return cumulative(x / spread);
  const ratio = spread / delay;
  const late = Math.exp(Math.min(700, -x / delay + 0.5 * ratio * ratio)) * cumulative(x / spread - ratio);
  return Math.min(1, Math.max(0, cumulative(x / spread) - late));
}
