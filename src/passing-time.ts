import type { Clock } from './delivery/index.js';
import type { Log } from './http/index.js';
import {
  fillFollowUps,
  type PipelineSettings,
  type RecordStore,
  tellTime,
} from './pipeline/index.js';

/** What looking at the clock for the records needs. */
export interface PassingTimeDeps {
  readonly store: RecordStore;
  readonly settings: PipelineSettings;
  readonly clock: Clock;
  /** From 0 up to, not including, 1: programs that start together do not look together. */
  readonly chance: () => number;
  readonly log: Log;
  /** What else is done at each look, and can be broken off; it says itself what it could not. */
  readonly besides?: { look(): Promise<void>; stop(): void };
}

export interface PassingTime {
  /** Looks now and then from here on. */
  start(): void;
  /** Looks once. Resolves when that is done, whatever became of it. */
  look(): Promise<void>;
  /** Looks no more; waits for the look that is under way. */
  stop(): Promise<void>;
}

const FIRST_AFTER_MS = 60_000;
const EVERY_MS = 60 * 60_000;
const DAY_MS = 24 * 60 * 60_000;

/**
 * Tells the records how late it is, hourly: of several programs on one database one does it, and a
 * case whose deadline has not come is not touched. Once a day it says in the log how many cases
 * have not come though messages about them have waited longer than the unit allows. After an upgrade
 * the first look fills the list of follow-ups with the cases of before.
 */
export function createPassingTime(deps: PassingTimeDeps): PassingTime {
  const { clock, chance, store, log } = deps;
  let cancel = (): void => {};
  let underWay: Promise<void> = Promise.resolve();
  let isOver = false;

  const look = async (): Promise<void> => {
    try {
      await store.alone(async () => {
        await fillList(deps, () => !isOver);
        await lookAlone(deps);
        await deps.besides?.look();
      });
    } catch (error) {
      log.warn({ event: 'time-not-told', err: error });
    }
  };
  const lookAfter = (ms: number): void => {
    if (isOver) return;
    cancel = clock.after(ms * (1 + chance() / 10), () => {
      underWay = look().then(() => lookAfter(EVERY_MS));
    });
  };
  return {
    start: () => lookAfter(FIRST_AFTER_MS * chance()),
    look,
    stop: async () => {
      isOver = true;
      cancel();
      deps.besides?.stop();
      await underWay;
    },
  };
}

async function lookAlone({ store, settings, clock, log }: PassingTimeDeps): Promise<void> {
  const now = clock.now();
  const at = instant(now);
  const { told, failed } = await tellTime({ store, settings, now: () => at });
  if (told > 0) log.info({ event: 'time-told', count: told });
  for (const { caseId, error } of failed) log.error({ event: 'time-not-told', caseId, err: error });
  const count = await store.countWaiting(instant(now - settings.unit.waitingCaseDays * DAY_MS));
  if (count > 0 && (await store.dailyTurn('waiting-case-overdue', at))) {
    log.warn({ event: 'waiting-case-overdue', count });
  }
}

async function fillList(
  { store, settings, log }: PassingTimeDeps,
  mayGoOn: () => boolean,
): Promise<void> {
  const { filled, failed } = await fillFollowUps({ store, settings }, mayGoOn);
  if (filled > 0) log.info({ event: 'follow-ups-filled', count: filled });
  for (const { caseId, error } of failed) {
    log.error({ event: 'follow-ups-not-filled', caseId, err: error });
  }
}

const instant = (ms: number): string => new Date(ms).toISOString();
