import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { testDatabase } from '../support/database.js';
import { type Program, runProgram, startProgram } from './program.js';

const database = await testDatabase('none');
const folder = mkdtempSync(join(tmpdir(), 'serve-'));
const started: Program[] = [];
afterAll(async () => {
  for (const { child } of started) child.kill('SIGKILL');
  await Promise.all(started.map(({ ended }) => ended));
  rmSync(folder, { recursive: true });
});

const CASE = readFileSync('examples/cases/minimal.json', 'utf8');

const ENVIRONMENT = {
  DATABASE_URL: database.url,
  DISSECTION_DATA_DIR: folder,
  DISSECTION_SANDBOX: 'true',
  DISSECTION_SITE_SECRET: 'k9Xw2mQ7vT4pLz8sRb3nYd6hGf1jCaUe',
  PORT: '0',
};

/** Starts the service and waits until it says where it listens. */
async function serve(): Promise<{ readonly program: Program; readonly url: string }> {
  const program = startProgram(['serve'], ENVIRONMENT);
  started.push(program);
  await expect.poll(() => program.err(), { timeout: 25_000 }).toContain('Listening on');
  const url = /http:\/\/127\.0\.0\.1:\d+/.exec(program.err())?.[0] ?? '';
  return { program, url };
}

const keyOf = (program: Program, role: string): string =>
  new RegExp(`${role} +(drk_[\\w-]+)`).exec(program.err())?.[1] ?? '';

const push = (url: string, key: string): Promise<Response> =>
  fetch(`${url}/cases`, {
    method: 'POST',
    headers: { authorization: `Bearer ${key}`, 'content-type': 'application/json' },
    body: CASE,
  });

describe('the service as a process', () => {
  it('takes a case with a key of this run, and stops at SIGTERM with 0', async () => {
    const { program, url } = await serve();
    await expect.poll(() => program.err()).toContain('operator');
    const key = keyOf(program, 'note-system');
    expect((await push(url, key)).status).toBe(202);
    expect((await push(url, key)).status).toBe(200);
    program.child.kill('SIGTERM');
    const { code, out, err } = await program.ended;
    expect(code).toBe(0);
    // Standard output is the log and nothing else; no key is in it, and nothing of the case.
    const lines = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(lines.filter(({ event }) => event === 'request')).toHaveLength(2);
    const { patient, case: own } = JSON.parse(CASE);
    for (const secret of [
      key,
      'drk_',
      patient.value,
      own.value,
      ENVIRONMENT.DISSECTION_SITE_SECRET,
    ]) {
      expect(out).not.toContain(secret);
    }
    expect(err).not.toContain(patient.value);
  });

  it('knows the case after a restart, takes keys that come and go, and stops at SIGINT', async () => {
    const { program, url } = await serve();
    await expect.poll(() => program.err()).toContain('operator');
    expect((await push(url, keyOf(program, 'note-system'))).status).toBe(200);
    const env = { DISSECTION_DATA_DIR: folder };
    const added = await runProgram(['keys', 'add', '--role', 'operator', '--json'], env);
    const { id, key } = JSON.parse(added.out);
    const ready = () => fetch(`${url}/readyz`, { headers: { authorization: `Bearer ${key}` } });
    expect((await ready()).status).toBe(200);
    expect(readFileSync(join(folder, 'keys.json'), 'utf8')).not.toContain(key);
    await runProgram(['keys', 'revoke', id], env);
    expect((await ready()).status).toBe(401);
    program.child.kill('SIGINT');
    expect((await program.ended).code).toBe(130);
  });

  it('does not start with another site secret, under which every case would be sent twice', async () => {
    const other = 'Zq4Lw8Rt2Yp6Mn0Kd5Hs9Gb3Vx7Jc1Fe';
    const env = { ...ENVIRONMENT, DISSECTION_SITE_SECRET: other };
    const { code, err, out } = await runProgram(['serve'], env);
    expect(code).toBe(3);
    expect(err).toContain('made with another site secret');
    expect(err + out).not.toContain(other);
  });
});
