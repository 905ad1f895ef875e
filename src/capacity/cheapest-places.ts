/** Seekers and openings as numbers; an opening is named by its index in `places` and `day`. */
export interface PlacesProblem {
  /** How many seekers each opening takes: 1 or more. */
  readonly places: Int32Array;
  readonly day: Int32Array;
  readonly seekers: readonly Seeker[];
}

export interface Seeker {
  /** The openings that the seeker may have. */
  readonly open: Int32Array;
  /** On the scale of `day`. */
  readonly target: number;
  /** What a day away from the target costs; whole and above 0, as is `leftOut`. */
  readonly weight: number;
  /** What it costs to have no place. */
  readonly leftOut: number;
}

/** Instead of an opening: the seeker has none. */
export const NO_PLACE = -1;

/**
 * Gives places so that the sum of all costs is least: exact, by successive shortest paths.
 *
 * Seekers come one after the other. Each opening has a price, 0 while it has room, and everybody
 * who came before has what is cheapest at these prices. The newcomer looks for the cheapest chain
 * "takes the place of one, who takes the place of another ..." that ends at an opening with room
 * or with somebody who goes without. Prices of what was searched rise to what the chain costs
 * more, and all is cheapest again. Costs are whole numbers, so sums and comparisons are exact.
 *
 * Source: Ahuja, Magnanti, Orlin, Network Flows (1993), 9.7, and Jonker, Volgenant, Computing
 * 1987;38:325 (both from memory).
 *
 * @returns the opening of each seeker, or NO_PLACE
 */
export function cheapestPlaces(problem: PlacesProblem): Int32Array {
  const seats = new Seats(problem);
  for (const newcomer of problem.seekers.keys()) seats.add(newcomer);
  return seats.openingOf;
}

/** The end of a chain: who moves into an opening with room, or goes without. */
interface ChainEnd {
  readonly cost: number;
  readonly seeker: number;
  readonly opening: number;
}

const NO_END: ChainEnd = { cost: Infinity, seeker: NO_PLACE, opening: NO_PLACE };

class Seats {
  readonly openingOf: Int32Array;
  readonly #problem: PlacesProblem;
  readonly #sitting: readonly number[][];
  readonly #price: Float64Array;
  // Of the search at hand: what the cheapest chain to an opening costs, and who would move there.
  readonly #chain: Float64Array;
  readonly #mover: Int32Array;
  #reached: number[] = [];
  #end = NO_END;

  constructor(problem: PlacesProblem) {
    const { length } = problem.places;
    this.#problem = problem;
    this.openingOf = new Int32Array(problem.seekers.length).fill(NO_PLACE);
    this.#sitting = Array.from({ length }, () => []);
    this.#price = new Float64Array(length);
    this.#chain = new Float64Array(length).fill(Infinity);
    this.#mover = new Int32Array(length).fill(NO_PLACE);
  }

  add(newcomer: number): void {
    const searched: number[] = [];
    this.#extend(newcomer, 0);
    for (let at = this.#takeNearest(); at !== NO_PLACE; at = this.#takeNearest()) {
      searched.push(at);
      const reached = this.#chain[at] ?? 0;
      for (const seeker of this.#sitting[at] ?? []) {
        this.#extend(seeker, reached - this.#pays(seeker, at));
      }
    }
    for (const at of searched) {
      this.#price[at] = (this.#price[at] ?? 0) + this.#end.cost - (this.#chain[at] ?? 0);
    }
    this.#moveAlong(newcomer);
    for (const at of [...searched, ...this.#reached]) this.#chain[at] = Infinity;
    this.#reached = [];
    this.#end = NO_END;
  }

  /** What a seeker pays for an opening, its price included. */
  #pays(seeker: number, opening: number): number {
    const { day, seekers } = this.#problem;
    const { weight, target } = seekers[seeker] ?? NOBODY;
    return weight * Math.abs((day[opening] ?? 0) - target) + (this.#price[opening] ?? 0);
  }

  /** Lets a seeker move on from a chain: to each opening that it may have, or away. */
  #extend(seeker: number, before: number): void {
    const [price, chain, mover] = [this.#price, this.#chain, this.#mover];
    const { places, day, seekers } = this.#problem;
    const { open, target, weight, leftOut } = seekers[seeker] ?? NOBODY;
    if (before + leftOut < this.#end.cost) {
      this.#end = { cost: before + leftOut, seeker, opening: NO_PLACE };
    }
    for (const at of open) {
      const cost = before + weight * Math.abs((day[at] ?? 0) - target) + (price[at] ?? 0);
      if (cost >= this.#end.cost || cost >= (chain[at] ?? 0)) continue;
      if ((this.#sitting[at]?.length ?? 0) < (places[at] ?? 0)) {
        this.#end = { cost, seeker, opening: at };
        continue;
      }
      if (chain[at] === Infinity) this.#reached.push(at);
      chain[at] = cost;
      mover[at] = seeker;
    }
  }

  /** Takes the nearest of the full openings reached; NO_PLACE when the end is as near. */
  #takeNearest(): number {
    let nearest = NO_PLACE;
    let cost = this.#end.cost;
    for (let i = 0; i < this.#reached.length; i += 1) {
      const reached = this.#chain[this.#reached[i] ?? 0] ?? Infinity;
      if (reached >= cost) continue;
      nearest = i;
      cost = reached;
    }
    const at = this.#reached[nearest];
    if (at === undefined) return NO_PLACE;
    this.#reached[nearest] = this.#reached.at(-1) ?? at;
    this.#reached.pop();
    return at;
  }

  /** Everybody on the cheapest chain moves one on, from its end back to the newcomer. */
  #moveAlong(newcomer: number): void {
    let { seeker, opening } = this.#end;
    for (;;) {
      const left = this.openingOf[seeker] ?? NO_PLACE;
      this.#seat(seeker, opening);
      if (seeker === newcomer) return;
      [opening, seeker] = [left, this.#mover[left] ?? newcomer];
    }
  }

  #seat(seeker: number, opening: number): void {
    const before = this.#sitting[this.openingOf[seeker] ?? NO_PLACE];
    before?.splice(before.indexOf(seeker), 1);
    this.#sitting[opening]?.push(seeker);
    this.openingOf[seeker] = opening;
  }
}

const NOBODY: Seeker = { open: new Int32Array(), target: 0, weight: 0, leftOut: 0 };
