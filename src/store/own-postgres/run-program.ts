import { spawn } from 'node:child_process';
import { StoreRefused } from '../store-refused.js';
import type { Account } from './account.js';

/** How a program of PostgreSQL is started. */
export interface Started {
  /** A folder that the account may enter. */
  readonly cwd: string;
  readonly account: Account | undefined;
}

/**
 * No setting of the surroundings (PGDATA, PGPORT, LANG, TZ ...) may change what our own
 * PostgreSQL does; `PATH` and the Windows folders are what a program needs to start at all.
 */
export function plainEnvironment(): NodeJS.ProcessEnv {
  const kept = ['PATH', 'SystemRoot', 'TEMP', 'TMP', 'TMPDIR'];
  return {
    ...Object.fromEntries(kept.map((name) => [name, process.env[name]])),
    LC_ALL: 'C',
    TZ: 'UTC',
  };
}

/**
 * Runs a program to its end.
 *
 * @throws StoreRefused with the last lines that it said when it fails
 */
export async function runProgram(
  program: string,
  args: readonly string[],
  { cwd, account }: Started,
): Promise<void> {
  const child = spawn(program, args, {
    cwd,
    env: plainEnvironment(),
    stdio: ['ignore', 'ignore', 'pipe'],
    ...account,
  });
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => {
    said = (said + chunk.toString()).slice(-2000);
  });
  await new Promise<void>((done, failed) => {
    child.on('error', (error) => failed(notStarted(program, error)));
    child.on('close', (code) => {
      if (code === 0) done();
      else failed(new StoreRefused(`${program} failed (exit ${code}): ${lastLines(said)}`));
    });
  });
}

export function notStarted(program: string, error: Error): StoreRefused {
  return new StoreRefused(
    `${program} could not be started: ${error.message}. ` +
      'Check that it may be executed, or name a database in DATABASE_URL.',
  );
}

export function lastLines(text: string): string {
  return text.trim().split('\n').slice(-4).join(' | ');
}
