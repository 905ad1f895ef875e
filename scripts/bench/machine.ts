import { cpus, loadavg, totalmem } from 'node:os';
import { setTimeout } from 'node:timers/promises';

/** Waits so long for other work to end, then measures anyway and says so. */
const PATIENCE_MS = 60_000;
const STEP_MS = 5_000;
/** Load of others, in processes, under which the machine counts as quiet. */
const QUIET_LOAD = 0.7;

let wasNoisy = false;

/** Waits for a quiet machine, at most a minute. */
export async function quiet(): Promise<void> {
  const until = performance.now() + PATIENCE_MS;
  while ((loadavg()[0] ?? 0) > QUIET_LOAD && performance.now() < until) {
    console.error(`load ${loadavg()[0]?.toFixed(2)}, waiting for a quiet machine`);
    await setTimeout(STEP_MS);
  }
  wasNoisy = (loadavg()[0] ?? 0) > QUIET_LOAD;
}

/** Whether the machine had other work when measuring began. */
export const isNoisy = (): boolean => wasNoisy;

/** What the numbers were measured on. */
export function machine(): string {
  const [first] = cpus();
  return [
    `Node ${process.version}, ${cpus().length} x ${first?.model ?? 'unknown processor'}`,
    `${(totalmem() / 2 ** 30).toFixed(1)} GiB, load ${loadavg()
      .map((l) => l.toFixed(2))
      .join(' ')}`,
  ].join(', ');
}
