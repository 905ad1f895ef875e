import { readFileSync } from 'node:fs';
import { runCli, type Work, type World } from '../../src/cli/index.js';
import type { StoredKey } from '../../src/contract/index.js';
import { CAUTION } from '../../src/kernel/index.js';
import { allRules, assessRecord, checkMessage, kindOf } from '../../src/pipeline/index.js';
import { readUnitReport } from '../../src/read-unit-report.js';

const CASE = readFileSync('examples/cases/complete.json');
export const MINIMAL = readFileSync('examples/cases/minimal.json');
const FILES: Readonly<Record<string, Uint8Array>> = {
  'complete.json': CASE,
  'minimal.json': MINIMAL,
  'broken.json': Buffer.from('{'),
  'empty.json': Buffer.from('{}'),
  'unit.json': Buffer.from('{"schema":"unit-settings/1"}'),
};
/** The one key that there is. */
export const KEY: StoredKey = {
  id: '0a1b2c3d',
  role: 'operator',
  sha256: 'f'.repeat(64),
  createdAt: '2026-03-03T12:00:00.000Z',
};

interface Ran {
  readonly code: number;
  readonly out: string;
  /** What was written that is no text; absent: nothing. */
  readonly bytes?: Uint8Array;
  readonly err: string;
}

/** Runs a command in this process, over the files named here. */
export async function run(
  args: readonly string[],
  more: Partial<World> = {},
  other: Partial<Work> = {},
): Promise<Ran> {
  const said: { out: string; bytes?: Uint8Array; err: string } = { out: '', err: '' };
  const world: World = {
    out: (text) => {
      said.out += text;
    },
    outBytes: (bytes) => {
      said.bytes = Buffer.concat([said.bytes ?? new Uint8Array(), bytes]);
    },
    err: (text) => {
      said.err += text;
    },
    taken: () => Promise.resolve(),
    readFile: async (path) => {
      const bytes = FILES[path];
      if (bytes === undefined) throw Object.assign(new Error(path), { code: 'ENOENT' });
      return bytes;
    },
    readStdin: () => Promise.resolve(CASE),
    terminal: false,
    colour: false,
    ...more,
  };
  const work: Work = {
    version: '1.2.3',
    check: async (bytes, unit) => {
      const settings = { unit, secret: 'x'.repeat(40), softwareVersion: '1.2.3' };
      const nothing = () => Promise.resolve([]);
      return checkMessage(kindOf(bytes), bytes, { settings, caller: {}, entriesOf: nothing });
    },
    assessRecord: (...record) => Promise.resolve(assessRecord(...record)),
    rules: () => Promise.resolve({ rules: allRules(), caution: CAUTION }),
    readUnitReport: (bytes) => Promise.resolve(readUnitReport(bytes)),
    reassess: () => Promise.resolve(0),
    followUps: () => Promise.resolve(3),
    outcomes: () => Promise.resolve(3),
    publishOutcomes: () => Promise.resolve(3),
    verifyFacts: () => Promise.resolve(0),
    serve: () => Promise.resolve(130),
    printConfig: () => Promise.resolve(0),
    keys: {
      file: () => Promise.resolve('keys.json'),
      list: () => Promise.resolve([KEY]),
      add: () => Promise.resolve({ id: KEY.id, key: 'drk_new' }),
      revoke: (id) => Promise.resolve(id === KEY.id),
    },
    ...other,
  };
  const code = await runCli(args, world, work);
  return { code, ...said };
}
