import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { addKey } from '../../src/http/index.js';
import { type Program, startProgram } from '../cli/program.js';

/** The real service in a process of its own. */
export interface ServiceProgram {
  readonly url: string;
  readonly pid: number;
  /** Kills it as nothing can prevent. Resolves when it is gone. */
  kill(): Promise<void>;
}

/** What several services of one unit have in common. */
export interface Unit {
  readonly notesKey: string;
  readonly recordsKey: string;
  /** Resolves when it listens; killed after the tests of the file, if not before. */
  start(fhirBase: string): Promise<ServiceProgram>;
}

/** Call it at the top of the file, after whatever the services need: they end first. */
export async function unitOver(databaseUrl: string, fhirMode: string): Promise<Unit> {
  const folder = mkdtempSync(join(tmpdir(), 'unit-'));
  const started: Program[] = [];
  afterAll(async () => {
    await Promise.all(started.map(killed));
    rmSync(folder, { recursive: true });
  });
  const keysFile = join(folder, 'keys.json');
  const createdAt = '2026-01-01T00:00:00Z';
  const notes = await addKey(keysFile, { role: 'note-system', source: 'example-notes', createdAt });
  const records = await addKey(keysFile, { role: 'records-team', createdAt });
  const environment = {
    DATABASE_URL: databaseUrl,
    DISSECTION_DATA_DIR: folder,
    DISSECTION_FHIR_MODE: fhirMode,
    DISSECTION_SITE_SECRET: 'k9Xw2mQ7vT4pLz8sRb3nYd6hGf1jCaUe',
    PORT: '0',
    ...zone(),
  };
  return {
    notesKey: notes.key,
    recordsKey: records.key,
    start: async (fhirBase) => {
      const env = { ...environment, DISSECTION_FHIR_BASE_URL: fhirBase };
      const program = startProgram(['serve'], env);
      started.push(program);
      const url = await addressOf(program);
      return { url, pid: program.child.pid ?? 0, kill: () => killed(program) };
    },
  };
}

/** Where it listens, once it says so. @throws Error when it ends before */
function addressOf({ child, err, ended }: Program): Promise<string> {
  return new Promise((resolve, reject) => {
    child.stderr.on('data', () => {
      const [, url] = /Listening on (http:\/\/[\d.]+:\d+)/.exec(err()) ?? [];
      if (url !== undefined) resolve(url);
    });
    ended.then((end) => reject(new Error(`The service does not start: ${end.err}`)));
  });
}

async function killed({ child, ended }: Program): Promise<void> {
  child.kill('SIGKILL');
  await ended;
}

/** The time zone of this run of the tests, for the program too. */
function zone(): Readonly<Record<string, string>> {
  const { TZ } = process.env;
  return TZ === undefined ? {} : { TZ };
}
