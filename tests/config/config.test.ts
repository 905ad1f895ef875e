import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  loadConfig,
  ownSiteSecret,
  SiteSecretRefused,
  showConfig,
} from '../../src/config/index.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { addKey } from '../../src/http/index.js';

// Names, defaults and refusals: project definition; that the environment comes first: 12-factor.

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'config-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** The secret of dry runs, as src/main.ts has it. */
const DRY_RUN_SECRET = 'dry-run-only-0123456789-abcdefghijklmnop';
const SECRET = 'k9Xw2mQ7vT4pLz8sRb3nYd6hGf1jCaUe';
const FHIR = 'https://fhir.hospital.invalid/r4';

const load = (more: Readonly<Record<string, string>> = {}) =>
  loadConfig({ DISSECTION_DATA_DIR: folder, DISSECTION_FHIR_BASE_URL: FHIR, ...more });

async function rulesOf(more: Readonly<Record<string, string>>): Promise<readonly string[]> {
  const config = await load(more);
  return config.ok ? [] : config.problems.map(({ rule, pointer }) => `${pointer.slice(1)} ${rule}`);
}

function file(name: string, content: string | object): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

const withKey = () =>
  addKey(join(folder, 'keys.json'), { role: 'operator', createdAt: '2026-03-03T12:00:00.000Z' });

describe('the configuration', () => {
  it('of a command that delivers nothing needs no FHIR server and no keys, and all else', async () => {
    const env = { DISSECTION_DATA_DIR: folder, DISSECTION_PRODUCTION: 'true' };
    const rulesFor = async (purpose: 'serve' | 'records' | 'publish') => {
      const config = await loadConfig(env, purpose);
      return config.ok ? [] : config.problems.map(({ rule }) => rule);
    };
    const both = ['production-with-example-settings'];
    const serving = ['production-without-keys', ...both, 'no-destination'];
    expect(await rulesFor('serve')).toEqual(expect.arrayContaining(serving));
    const asked = await rulesFor('records');
    expect(asked).toEqual(expect.arrayContaining(both));
    expect(asked).not.toEqual(expect.arrayContaining(['no-destination']));
    expect(asked).not.toEqual(expect.arrayContaining(['production-without-keys']));
    const publishing = await rulesFor('publish');
    expect(publishing).toEqual(expect.arrayContaining([...both, 'no-destination']));
    expect(publishing).not.toEqual(expect.arrayContaining(['production-without-keys']));
  });

  it('listens on the loopback address alone, with limits, when nothing is said', async () => {
    const config = await load();
    expect(config).toMatchObject({
      ok: true,
      value: {
        host: '127.0.0.1',
        port: 3000,
        production: false,
        databaseUrl: undefined,
        sandbox: false,
        fhir: { baseUrl: FHIR, mode: 'auto', allowed: { allowHttp: false, allowedHosts: [] } },
        unit: DEFAULT_UNIT_SETTINGS,
        limits: { bodyBytes: 1_000_000, headersMs: 10_000, requestMs: 30_000 },
      },
    });
  });

  it('takes an empty variable as one that is not set', async () => {
    expect(await load({ PORT: '', DISSECTION_FHIR_TOKEN: '' })).toEqual(await load());
  });

  it('cannot be changed afterwards, at any depth', async () => {
    const config = await load();
    if (!config.ok) throw new Error('refused');
    expect(Object.isFrozen(config.value)).toBe(true);
    expect(Object.isFrozen(config.value.fhir.allowed)).toBe(true);
    expect(Object.isFrozen(config.value.unit.licences)).toBe(true);
  });

  it('names every problem at once, with what is expected and never what came', async () => {
    const config = await load({
      PORT: '99999',
      HOST: 'a b',
      DISSECTION_LOG_LEVEL: 'noisy',
      DISSECTION_PRODUCTION: 'yes',
      DISSECTION_NOT_A_SETTING: 'CANARY',
      DISSECTION_FHIR_BASE_URL: 'ftp://CANARY',
      DISSECTION_SITE_SECRET: 'CANARY',
    });
    expect(config.ok).toBe(false);
    const problems = config.ok ? [] : config.problems;
    expect(new Set(problems.map(({ pointer }) => pointer.slice(1)))).toEqual(
      new Set([
        'PORT',
        'HOST',
        'DISSECTION_LOG_LEVEL',
        'DISSECTION_PRODUCTION',
        'DISSECTION_NOT_A_SETTING',
        'DISSECTION_FHIR_BASE_URL',
        'DISSECTION_SITE_SECRET',
      ]),
    );
    expect(problems.every(({ expected }) => expected.length > 5)).toBe(true);
    expect(JSON.stringify(problems)).not.toContain('CANARY');
  });

  it('takes settings of the unit from a file, and names what is wrong in it', async () => {
    const own = { ...DEFAULT_UNIT_SETTINGS, identifierBase: 'urn:oid:2.999.7', version: 4 };
    const good = await load({ DISSECTION_SETTINGS_FILE: file('unit.json', own) });
    expect(good).toMatchObject({ ok: true, value: { unit: own } });
    const bad = file('bad.json', { ...own, endoscopyReport: 'never', colour: 'red' });
    expect(await rulesOf({ DISSECTION_SETTINGS_FILE: bad })).toEqual([
      'DISSECTION_SETTINGS_FILE not-in-list',
      'DISSECTION_SETTINGS_FILE unknown-field',
    ]);
    expect(await rulesOf({ DISSECTION_SETTINGS_FILE: join(folder, 'none') })).toEqual([
      'DISSECTION_SETTINGS_FILE no-file',
    ]);
  });

  it('takes secrets from files, without the line break at their end', async () => {
    const config = await load({
      DISSECTION_SITE_SECRET_FILE: file('secret', `${SECRET}\n`),
      DISSECTION_FHIR_TOKEN_FILE: file('token', 'abc\n'),
    });
    expect(config).toMatchObject({
      ok: true,
      value: { siteSecret: SECRET, fhir: { token: 'abc' } },
    });
    expect(
      await rulesOf({ DISSECTION_FHIR_TOKEN: 'x', DISSECTION_FHIR_TOKEN_FILE: file('token', 'y') }),
    ).toEqual(['DISSECTION_FHIR_TOKEN set-twice']);
  });

  it('shows no secret', async () => {
    const config = await load({
      DATABASE_URL: 'postgresql://user:pw-CANARY@db/records',
      DISSECTION_SITE_SECRET: `${SECRET}CANARY`,
      DISSECTION_FHIR_TOKEN: 'token-CANARY',
    });
    if (!config.ok) throw new Error('refused');
    const shown = JSON.stringify(showConfig(config.value));
    expect(shown).not.toContain('CANARY');
    expect(shown.match(/\(set, not shown\)/g)).toHaveLength(3);
    expect(JSON.stringify(config.value).match(/CANARY/g)).toHaveLength(3);
  });
});

describe('a combination that is not safe', () => {
  it('is to listen to the network without keys', async () => {
    for (const HOST of ['0.0.0.0', '::', '192.0.2.1', 'records.hospital.invalid']) {
      expect(await rulesOf({ HOST })).toEqual(['HOST open-without-keys']);
    }
    for (const HOST of ['127.0.0.1', '127.9.9.9', '::1', 'localhost']) {
      expect(await rulesOf({ HOST })).toEqual([]);
    }
    await withKey();
    expect(await rulesOf({ HOST: '0.0.0.0' })).toEqual([]);
  });

  it('is production with the sandbox, without keys, or with example settings', async () => {
    const production = { DISSECTION_PRODUCTION: 'true' };
    expect(
      await rulesOf({
        ...production,
        DISSECTION_SANDBOX: 'true',
        DISSECTION_FHIR_BASE_URL: '',
      }),
    ).toEqual([
      'DISSECTION_KEYS_FILE production-without-keys',
      'DISSECTION_SANDBOX production-with-sandbox',
      'DISSECTION_SETTINGS_FILE production-with-example-settings',
    ]);
    await withKey();
    const own = { ...DEFAULT_UNIT_SETTINGS, identifierBase: 'urn:oid:2.16.1' };
    const settings = { DISSECTION_SETTINGS_FILE: file('unit.json', own) };
    expect(await rulesOf({ ...production, ...settings })).toEqual([]);
  });

  it('is to have no destination, or two', async () => {
    expect(await rulesOf({ DISSECTION_FHIR_BASE_URL: '' })).toEqual([
      'DISSECTION_FHIR_BASE_URL no-destination',
    ]);
    expect(await rulesOf({ DISSECTION_SANDBOX: 'true' })).toEqual([
      'DISSECTION_SANDBOX two-destinations',
    ]);
    expect(await rulesOf({ DISSECTION_SANDBOX: 'true', DISSECTION_FHIR_BASE_URL: '' })).toEqual([]);
  });

  it.each([
    ['http://fhir.hospital.invalid/r4', 'target-plain-http'],
    ['https://10.1.2.3/r4', 'target-address'],
    ['https://user:pw@fhir.hospital.invalid', 'target-credentials'],
  ])('is the FHIR server %s without a permit', async (url, rule) => {
    expect(await rulesOf({ DISSECTION_FHIR_BASE_URL: url })).toEqual([
      `DISSECTION_FHIR_BASE_URL ${rule}`,
    ]);
  });

  it.each(['short', 'a'.repeat(40), DRY_RUN_SECRET, `please-change-me-${SECRET}`])(
    'is the site secret number %#, short or made to be replaced',
    async (secret) => {
      expect(await rulesOf({ DISSECTION_SITE_SECRET: secret })).toEqual([
        'DISSECTION_SITE_SECRET weak-site-secret',
      ]);
    },
  );

  it('is a database of one’s own without a site secret', async () => {
    const DATABASE_URL = 'postgresql://u:p@db/records';
    expect(await rulesOf({ DATABASE_URL })).toEqual(['DISSECTION_SITE_SECRET no-site-secret']);
    expect(await rulesOf({ DATABASE_URL, DISSECTION_SITE_SECRET: SECRET })).toEqual([]);
  });

  it('is a key file that others can read or that is broken', async () => {
    const path = file('keys.json', '{');
    expect(await rulesOf({})).toEqual(['DISSECTION_KEYS_FILE bad-keys']);
    rmSync(path);
    expect(await rulesOf({})).toEqual([]);
  });
});

describe('a site secret of our own', () => {
  it('is made once, of 256 random bits, for its owner alone', () => {
    const secret = ownSiteSecret(folder);
    expect(secret).toMatch(/^[0-9a-f]{64}$/);
    expect(ownSiteSecret(folder)).toBe(secret);
    expect(statSync(join(folder, 'site-secret')).mode & 0o777).toBe(0o600);
    const other = mkdtempSync(join(folder, 'other-'));
    expect(ownSiteSecret(other)).not.toBe(secret);
  });

  it.each(['', 'short\n'])('is not replaced when its file holds %j', (text) => {
    file('site-secret', text);
    expect(() => ownSiteSecret(folder)).toThrow(SiteSecretRefused);
  });
});
