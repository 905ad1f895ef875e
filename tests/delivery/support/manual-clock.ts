import type { Clock } from '../../../src/delivery/clock.js';

/** A clock that stands still until it is told to go on. */
export interface ManualClock extends Clock {
  /** Runs every timer that falls due in the next `ms`, in order, and what they set going. */
  advance(ms: number): Promise<void>;
  /** Delay of the timers that are waiting, ascending. */
  waiting(): readonly number[];
}

interface Timer {
  readonly at: number;
  readonly run: () => void;
}

export function manualClock(startMs = Date.UTC(2026, 2, 2, 9, 0, 0)): ManualClock {
  let now = startMs;
  let timers: readonly Timer[] = [];
  const next = (until: number) =>
    timers.filter(({ at }) => at <= until).sort((a, b) => a.at - b.at)[0];
  return {
    now: () => now,
    after: (ms, run) => {
      const timer = { at: now + Math.max(0, ms), run };
      timers = [...timers, timer];
      return () => {
        timers = timers.filter((other) => other !== timer);
      };
    },
    advance: async (ms) => {
      const until = now + ms;
      await settled();
      for (let timer = next(until); timer !== undefined; timer = next(until)) {
        const due = timer;
        timers = timers.filter((other) => other !== due);
        now = due.at;
        due.run();
        await settled();
      }
      now = until;
    },
    waiting: () => timers.map(({ at }) => at - now).sort((a, b) => a - b),
  };
}

/** Lets everything run that waits for no timer. */
export async function settled(): Promise<void> {
  for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));
}
