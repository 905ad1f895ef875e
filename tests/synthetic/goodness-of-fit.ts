/*
 * Statistics of the tests alone, written without those of the service. The gamma function by
 * Lanczos and the incomplete gamma function by its series and its continued fraction: Abramowitz
 * and Stegun, Handbook of Mathematical Functions, 6.1 and 6.5 (from memory).
 */

/** Chance of a chi-square at least as large, for counts that were expected in these shares. */
export function chiSquareP(counts: readonly number[], shares: readonly number[]): number {
  const total = counts.reduce((sum, count) => sum + count, 0);
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const square = counts.reduce((sum, count, i) => {
    const expected = (total * (shares[i] ?? 0)) / whole;
    return sum + (count - expected) ** 2 / expected;
  }, 0);
  return chiSquareTail(square, counts.length - 1);
}

/** Upper tail of the chi-square distribution. */
export function chiSquareTail(square: number, degrees: number): number {
  const a = degrees / 2;
  const x = square / 2;
  if (x <= 0) return 1;
  const scale = Math.exp(-x + a * Math.log(x) - logGamma(a));
  return x < a + 1 ? 1 - scale * series(a, x) : scale * fraction(a, x);
}

/** Exact two-sided binomial test: the chance of all counts that are no likelier than this one. */
export function binomialP(events: number, of: number, share: number): number {
  const chanceOf = (k: number): number =>
    Math.exp(
      logGamma(of + 1) -
        logGamma(k + 1) -
        logGamma(of - k + 1) +
        k * Math.log(share) +
        (of - k) * Math.log(1 - share),
    );
  const seen = chanceOf(events) * (1 + 1e-7);
  let sum = 0;
  for (let k = 0; k <= of; k += 1) {
    const chance = chanceOf(k);
    if (chance <= seen) sum += chance;
  }
  return Math.min(1, sum);
}

function series(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < 1_000 && term > sum * 1e-15; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < 1_000; n += 1) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / (an * d + b);
    c = b + an / c;
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return h;
}

const LANCZOS = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];

function logGamma(z: number): number {
  const x = z - 1;
  const t = x + LANCZOS.length - 0.5;
  const sum = LANCZOS.reduce((all, c, i) => all + c / (x + i + 1), 0.9999999999998099);
  return 0.5 * Math.log(2 * Math.PI) + (x + 0.5) * Math.log(t) - t + Math.log(sum);
}
