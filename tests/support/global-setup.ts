import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { startOwnPostgres } from '../../src/store/index.js';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the PostgreSQL of this run lies; the first test that needs it starts it. */
    readonly postgresFolder: string;
  }
}

const PREFIX = 'records-tests-';

/**
 * One PostgreSQL for the whole run: begun by the first test that asks for a database, ended and
 * removed here. What a killed run left behind is ended and removed first.
 */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  await Promise.all(leftBehind().map(remove));
  const folder = mkdtempSync(join(tmpdir(), `${PREFIX}${process.pid}-`));
  chmodSync(folder, 0o711); // as root, PostgreSQL runs as another user
  project.provide('postgresFolder', folder);
  return () => remove(folder);
}

async function remove(folder: string): Promise<void> {
  if (existsSync(join(folder, 'postgresql', 'cluster'))) {
    const postgres = await startOwnPostgres({ folder, durable: false });
    await postgres.stop();
  }
  rmSync(folder, { recursive: true, force: true });
}

/** Folders of runs whose process is gone. */
function leftBehind(): readonly string[] {
  return readdirSync(tmpdir())
    .filter((name) => name.startsWith(PREFIX) && !isAlive(Number(name.split('-')[2])))
    .map((name) => join(tmpdir(), name));
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
