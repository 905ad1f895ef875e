import { chmodSync, mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { isAlive } from '../../src/store/own-postgres/postmaster-file.js';
import { removePostgresFolder } from './postgres-folder.js';

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
  await Promise.all(leftBehind().map(removePostgresFolder));
  const folder = mkdtempSync(join(tmpdir(), `${PREFIX}${process.pid}-`));
  chmodSync(folder, 0o711); // as root, PostgreSQL runs as another user
  project.provide('postgresFolder', folder);
  return () => removePostgresFolder(folder);
}

/** Folders of runs whose process is gone. */
function leftBehind(): readonly string[] {
  return readdirSync(tmpdir())
    .filter((name) => name.startsWith(PREFIX) && !isAlive(Number(name.split('-')[2])))
    .map((name) => join(tmpdir(), name));
}
