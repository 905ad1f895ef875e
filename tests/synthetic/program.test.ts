import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readArguments } from '../../scripts/synthetic/arguments.js';
import { leaveOut } from '../../scripts/synthetic/leave-out.js';
import { progressLine } from '../../scripts/synthetic/progress.js';
import { testDatabase } from '../support/database.js';

const folder = mkdtempSync(join(tmpdir(), 'invented-'));
afterAll(() => rmSync(folder, { recursive: true }));
const database = await testDatabase();

async function generate(args: readonly string[], env: Readonly<Record<string, string>> = {}) {
  const said = { out: '', err: '' };
  const child = spawn(process.execPath, ['--import', 'tsx', 'scripts/synthetic/run.ts', ...args], {
    env: { PATH: process.env['PATH'] ?? '', ...env },
  });
  child.stdout.on('data', (chunk) => {
    said.out += chunk;
  });
  child.stderr.on('data', (chunk) => {
    said.err += chunk;
  });
  await once(child, 'close');
  return { code: child.exitCode, ...said };
}

/** Two threads read the whole service, each for itself. */
const LOAD_WITHIN_MS = 180_000;

const LOAD = {
  DATABASE_URL: database.url,
  DISSECTION_SANDBOX: 'true',
  DISSECTION_DATA_DIR: folder,
  DISSECTION_SITE_SECRET: 'a-secret-of-the-tests-that-is-long-enough',
};

describe('the program that makes invented cases', () => {
  it('writes one message a line, to a file or to stdout, the same each time', async () => {
    const path = join(folder, 'cases.ndjson');
    const [file, out] = await Promise.all([
      generate(['3', '--seed', '5', '--out', path]),
      generate(['3', '--seed', '5']),
    ]);
    expect([file.code, out.code]).toEqual([0, 0]);
    expect(readFileSync(path, 'utf8')).toBe(out.out);
    const kinds = out.out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line).schema);
    expect(kinds.filter((kind) => kind === 'case/1')).toHaveLength(3);
    expect(file.err).toContain('3 of 3 cases');
  });

  it(
    'loads in threads, and goes on where it ended',
    async () => {
      const first = await generate(['101', '--load', '--workers', '2'], LOAD);
      expect(first).toMatchObject({ code: 0, err: expect.stringContaining('101 cases loaded') });
      const second = await generate(['102', '--load', '--workers', '1'], LOAD);
      expect(second).toMatchObject({ code: 0, err: expect.stringContaining('1 cases loaded') });
      const { pool } = await database.open();
      const { rows } = await pool.query(
        "select count(*)::int as cases, bool_and(status = 'queued') as queued from outbox",
      );
      expect(rows).toEqual([{ cases: 102, queued: true }]);
      expect((await pool.query('select invented from site')).rows).toEqual([{ invented: 'held' }]);
    },
    LOAD_WITHIN_MS,
  );

  it('loads nothing where cases of real patients are served', async () => {
    const refused = await generate(['1', '--load'], { ...LOAD, DISSECTION_PRODUCTION: 'true' });
    expect(refused.code).toBe(3);
    expect(refused.err).not.toContain(LOAD.DATABASE_URL);
  });
});

describe('what can be asked of it', () => {
  it.each([
    [[], 'Say how many cases'],
    [['0'], 'Say how many cases'],
    [['5', '--seed', 'x'], '--seed is a whole number'],
    [['5', '--unit', 'elsewhere'], '--unit is one of'],
    [['5', '--until', '2026-02-30'], '--until is a day'],
    [['5', '--out', 'a', '--load'], 'Either --out or --load'],
    [['5', '--queue'], 'go with --load'],
    [['5', '--load', '--workers', '0'], '--workers is 1 to 64'],
    [['5', '--other'], "Unknown option '--other'"],
  ])('%j is refused: %s', (args, sentence) => {
    expect(readArguments(args)).toContain(sentence);
  });

  it('reads what it is told', () => {
    const args = ['7', '--seed', '9', '--unit', 'shore', '--load', '--queue', '--workers', '3'];
    expect(readArguments(args)).toMatchObject({
      count: 7,
      wanted: { seed: 9, units: [{ name: 'shore' }] },
      to: { kind: 'load', queue: true, workers: 3 },
    });
  });
});

describe('parts of it', () => {
  it('say how far, how fast and how long', () => {
    expect(progressLine(50, 200, 10)).toBe('50 of 200 cases, 5 a second, 30 s left');
    expect(progressLine(200, 200, 100)).toBe('200 of 200 cases, 2 a second, 1 min 40 s in all');
    expect(progressLine(0, 200, 1)).toBe('0 of 200 cases, 0 a second');
  });

  it('leave a part out of a message, and nothing beside it', () => {
    const always = { happens: (percent: number) => percent === 100 };
    const message = { a: { b: 1, c: 2 }, d: [3] };
    const parts = [
      { at: '/a/b', percent: 100, from: '' },
      { at: '/d', percent: 0, from: '' },
      { at: '/e/f', percent: 100, from: '' },
    ];
    expect(leaveOut(message, parts, always)).toEqual({ a: { c: 2 }, d: [3] });
  });
});
