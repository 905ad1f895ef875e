import { StoreUnavailable } from '../kernel/index.js';

/** Lets so many at once do something; others wait for a while. */
export interface Slots {
  /** @throws StoreUnavailable when no slot became free in time */
  take(): Promise<() => void>;
}

/** @param waitMs how long somebody waits for a slot */
export function createSlots(count: number, waitMs: number): Slots {
  let free = count;
  const waiting: (() => void)[] = [];
  const give = (): void => {
    const next = waiting.shift();
    if (next === undefined) free += 1;
    else next();
  };
  /** Each slot is given back once, however often its holder says so. */
  const release = (): (() => void) => {
    let isHeld = true;
    return () => {
      if (isHeld) give();
      isHeld = false;
    };
  };
  return {
    take: () => {
      if (free > 0) {
        free -= 1;
        return Promise.resolve(release());
      }
      return new Promise((taken, failed) => {
        const turn = (): void => {
          clearTimeout(timer);
          taken(release());
        };
        const timer = setTimeout(() => {
          waiting.splice(waiting.indexOf(turn), 1);
          failed(new StoreUnavailable('Too many ask for outcomes at once.'));
        }, waitMs);
        waiting.push(turn);
      });
    },
  };
}
