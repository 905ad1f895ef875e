/** A value and how often it is drawn, relative to the others of its list. */
export interface Share<T> {
  readonly value: T;
  readonly weight: number;
}

/** Chance that is the same for the same seed, case and purpose, on every machine. */
export interface Chance {
  /** From 0 up to, not including, 1. */
  unit(): number;
  happens(percent: number): boolean;
  pick<T>(shares: readonly Share<T>[]): T;
  /** A whole number, both ends included. */
  whole(from: number, to: number): number;
  normal(mean: number, deviation: number): number;
  /** @param spread standard deviation of the natural logarithm */
  logNormal(median: number, spread: number): number;
}

/**
 * A stream of chance of its own: what is drawn for one purpose moves nothing that is drawn for
 * another, so that a case depends on its seed and number alone.
 */
export function chanceOf(seed: number, index: number, purpose: string): Chance {
  const unit = stream([seed, index, hashOf(purpose)]);
  const normal = (mean: number, deviation: number): number => {
    // Box and Muller: two independent numbers make a normal one; the logarithm needs one above 0.
    const radius = Math.sqrt(-2 * Math.log(1 - unit()));
    return mean + deviation * radius * Math.cos(2 * Math.PI * unit());
  };
  return {
    unit,
    happens: (percent) => unit() * 100 < percent,
    pick: (shares) => pick(shares, unit()),
    whole: (from, to) => from + Math.floor(unit() * (to - from + 1)),
    normal,
    logNormal: (median, spread) => median * Math.exp(normal(0, spread)),
  };
}

function pick<T>(shares: readonly Share<T>[], at: number): T {
  const total = shares.reduce((sum, { weight }) => sum + weight, 0);
  let left = at * total;
  for (const { value, weight } of shares) {
    left -= weight;
    if (left < 0) return value;
  }
  const last = shares.findLast(({ weight }) => weight > 0);
  if (last === undefined) throw new RangeError('a list of shares has a weight above 0');
  return last.value;
}

/** The generator sfc32 of Chris Doty-Humphrey's PractRand, seeded by three words (from memory). */
function stream(words: readonly [number, number, number]): () => number {
  let [a, b, c] = words.map((word) => word | 0) as [number, number, number];
  let counter = 1;
  const next = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 4_294_967_296;
  };
  // The first numbers of neighbouring seeds resemble one another.
  for (let i = 0; i < 15; i += 1) next();
  return next;
}

/** FNV-1a, 32 bits (from memory). */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193);
  return hash;
}
