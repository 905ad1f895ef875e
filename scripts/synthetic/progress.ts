/** What a run has done so far. */
export interface Progress {
  /** @param cases further ones that are done */
  add(cases: number): void;
  /** Says where it stands, whatever it said last. */
  end(): void;
}

const EVERY_MS = 1_000;

/**
 * Says on `say` about once a second how many cases are done, how fast, and how long it still takes.
 *
 * @param nowMs a clock that never goes back, ms
 */
export function createProgress(
  total: number,
  say: (line: string) => void,
  nowMs: () => number = () => performance.now(),
): Progress {
  const beganMs = nowMs();
  let saidMs = beganMs;
  let done = 0;
  const tell = (): void => {
    saidMs = nowMs();
    say(progressLine(done, total, (saidMs - beganMs) / 1_000));
  };
  return {
    add: (cases) => {
      done += cases;
      if (nowMs() - saidMs >= EVERY_MS) tell();
    },
    end: tell,
  };
}

/** @param seconds since the beginning */
export function progressLine(done: number, total: number, seconds: number): string {
  const rate = seconds > 0 ? done / seconds : 0;
  const left = rate > 0 ? `, ${duration((total - done) / rate)} left` : '';
  const ended = done >= total ? `, ${duration(seconds)} in all` : left;
  return `${done} of ${total} cases, ${Math.round(rate)} a second${ended}`;
}

function duration(seconds: number): string {
  const whole = Math.round(seconds);
  const minutes = Math.floor(whole / 60);
  return minutes > 0 ? `${minutes} min ${whole % 60} s` : `${whole} s`;
}
