import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { findRunningServer } from '../../src/store/own-postgres/postmaster-file.js';

/** The process of the PostgreSQL that runs in the folder, if one does. */
export const serverIn = async (folder: string): Promise<number | undefined> =>
  (await findRunningServer(join(folder, 'postgresql', 'cluster', 'data')))?.pid;

/** Stops every PostgreSQL in the folder and one level below, and removes all of it. */
export async function removePostgresFolder(folder: string): Promise<void> {
  const below = readdirSync(folder).map((name) => join(folder, name));
  for (const one of [folder, ...below]) {
    const pid = await serverIn(one);
    if (pid !== undefined) process.kill(pid, 'SIGQUIT');
    while ((await serverIn(one)) !== undefined) await delay(20);
  }
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
