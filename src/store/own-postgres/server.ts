import { readFile } from 'node:fs/promises';
import { setTimeout as delay } from 'node:timers/promises';
import { StoreRefused } from '../store-refused.js';
import type { Account } from './account.js';
import type { Binaries } from './binaries.js';
import { type Guard, reach } from './guard.js';
import { freePort, type Launched, launch } from './launch.js';
import type { Layout } from './layout.js';
import { findRunningServer } from './postmaster-file.js';
import { runProgram } from './run-program.js';

/** A cluster that is there, with all that is needed to run it. */
export interface Cluster {
  readonly layout: Layout;
  readonly binaries: Binaries;
  readonly account: Account | undefined;
  readonly durable: boolean;
}

/** The server, running and guarded by us. */
export interface Reachable {
  readonly port: number;
  readonly password: string;
  readonly guard: Guard;
}

const LOOK_EVERY_MS = 25;
const SILENT_TOO_LONG_MS = 30_000;
const STARTS_AT_MOST = 3;

/**
 * Adopts the server that runs on the cluster, or starts one. Several programs may do so at once:
 * PostgreSQL's own lock file lets one server start, and the others are adopted.
 *
 * @param wantedPort the only port that will do, when others know it already
 * @throws StoreRefused when it does not start, with what it said
 */
export async function adoptOrStart(cluster: Cluster, wantedPort?: number): Promise<Reachable> {
  const { layout } = cluster;
  const password = await readFile(layout.password, 'utf8');
  let starts = 0;
  let last: Launched | undefined;
  let heardAt = Date.now();
  for (;;) {
    const running = await findRunningServer(layout.data);
    if (running === undefined) {
      const said = last === undefined ? '' : await endedOrUndefined(last);
      if (said !== undefined) {
        if (starts === STARTS_AT_MOST) throw notRunning(layout, said);
        last = await launchOn(cluster, wantedPort ?? (await freePort()));
        starts += 1;
        heardAt = Date.now();
      }
    } else {
      const reached = await reach(running.port, password, layout.data);
      if (reached.kind === 'guarded') return { port: running.port, password, guard: reached.guard };
      if (reached.kind === 'busy') heardAt = Date.now();
    }
    if (Date.now() - heardAt > SILENT_TOO_LONG_MS) {
      await stopServer(cluster, 'immediate');
      heardAt = Date.now();
    }
    await delay(LOOK_EVERY_MS);
  }
}

const launchOn = ({ layout, binaries, account, durable }: Cluster, port: number) =>
  launch(layout, binaries, account, port, durable);

/** @returns its last words, or undefined while it lives */
async function endedOrUndefined(launched: Launched): Promise<string | undefined> {
  return Promise.race([launched.ended, delay(0, undefined)]);
}

const notRunning = (layout: Layout, said: string): StoreRefused =>
  new StoreRefused(`The PostgreSQL in ${layout.root} does not start: ${said || 'it said nothing'}`);

/**
 * Stops the server that runs on the cluster, if one does, and waits until it is gone.
 *
 * @param mode fast: ends sessions and writes everything out; immediate: as a crash, recovered at
 *   the next start (https://www.postgresql.org/docs/18/app-pg-ctl.html)
 * @throws StoreRefused when it does not stop within a minute
 */
export async function stopServer(cluster: Cluster, mode: 'fast' | 'immediate'): Promise<void> {
  const { layout, binaries, account } = cluster;
  if ((await findRunningServer(layout.data)) === undefined) return;
  const args = ['stop', '--pgdata', layout.data, '--mode', mode, '--wait', '--timeout=60'];
  try {
    await runProgram(binaries.pgCtl, args, { cwd: layout.root, account });
  } catch (error) {
    if ((await findRunningServer(layout.data)) !== undefined) throw error;
  }
}
