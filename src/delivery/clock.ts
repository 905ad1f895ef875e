/** Time and timers, given from outside so that tests own them. */
export interface Clock {
  /** Milliseconds since 1970, UTC. */
  now(): number;
  /** @returns cancels the timer */
  after(ms: number, run: () => void): () => void;
}

/** Longest delay of a Node timer; beyond it the timer would fire at once. */
const LONGEST_MS = 2 ** 31 - 1;

export const systemClock: Clock = {
  now: () => Date.now(),
  after: (ms, run) => {
    const timer = setTimeout(run, Math.min(Math.max(ms, 0), LONGEST_MS));
    return () => clearTimeout(timer);
  },
};
