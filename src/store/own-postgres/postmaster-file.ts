import { readFile, unlink } from 'node:fs/promises';
import { join } from 'node:path';

/** A PostgreSQL server that runs on a data folder. */
export interface RunningServer {
  readonly pid: number;
  readonly port: number;
}

/**
 * Finds the server that runs on the data folder, whoever started it, by its lock file: line 1 is
 * the process, line 4 the port (https://www.postgresql.org/docs/18/storage-file-layout.html,
 * postmaster.pid). A number that meanwhile belongs to another program is told apart by that
 * program's command line, and the file that names it is removed: PostgreSQL itself would refuse
 * to start beside it.
 *
 * @param data absolute path, written as the server was given it
 */
export async function findRunningServer(data: string): Promise<RunningServer | undefined> {
  const path = join(data, 'postmaster.pid');
  const text = await readFile(path, 'utf8').catch(() => '');
  const lines = text.split('\n');
  const pid = Number(lines[0]);
  if (!Number.isInteger(pid) || pid <= 0 || !isAlive(pid)) return undefined;
  if (await isServerOf(pid, data)) {
    const port = Number(lines[3]);
    return Number.isInteger(port) && port > 0 ? { pid, port } : { pid, port: 0 };
  }
  if ((await readFile(path, 'utf8').catch(() => '')) === text) await unlink(path).catch(() => {});
  return undefined;
}

/** Whether a process of this number exists, whoever owns it. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/** Where the system tells no command line (it has no /proc) the lock file is believed. */
async function isServerOf(pid: number, data: string): Promise<boolean> {
  try {
    await readFile('/proc/self/cmdline');
  } catch {
    return true;
  }
  const commandLine = await readFile(`/proc/${pid}/cmdline`, 'utf8').catch(() => '');
  return commandLine.split('\0').includes(data);
}
