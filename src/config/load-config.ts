import { join } from 'node:path';
import type { z } from 'zod';
import { type Checked, failed, type Problem, passed } from '../kernel/index.js';
import type { Config } from './config.js';
import { baseUrlOf, countKeys, secretOf, unitOf } from './parts.js';
import { type Purpose, unsafeCombinations } from './safety.js';
import { VARIABLES, type Variables } from './variables.table.js';

type Environment = Readonly<Record<string, string | undefined>>;

/** @returns the configuration, or every problem of it at once; pointers name the variables */
export async function loadConfig(
  env: Environment = process.env,
  purpose: Purpose = 'serve',
): Promise<Checked<Config>> {
  const set = Object.fromEntries(Object.entries(env).filter(([, value]) => value !== ''));
  const unknown = Object.keys(set).filter(isUnknown).map(unknownVariable);
  const bad = badNames(set);
  const usable = Object.entries(set).filter(([name]) => !bad.includes(name));
  const problems: Problem[] = [...unknown, ...bad.map(badVariable)];
  const config = await build(VARIABLES.parse(Object.fromEntries(usable)), problems);
  problems.push(...unsafeCombinations(config, purpose));
  return problems.length > 0 ? failed(problems) : passed(frozen(config));
}

/** The file of API keys, for commands that need nothing else. */
export function keysFileOf(env: Environment = process.env): string {
  const { DISSECTION_KEYS_FILE: named, DISSECTION_DATA_DIR: folder } = env;
  return named || join(folder || 'data', 'keys.json');
}

/** The configuration for people: every secret is only said to be set or not. */
export function showConfig(config: Config): object {
  return {
    ...config,
    databaseUrl: said(config.databaseUrl, 'our own PostgreSQL in dataDir'),
    siteSecret: said(config.siteSecret, 'made at the first start, in dataDir'),
    fhir: { ...config.fhir, token: said(config.fhir.token, 'not set') },
  };
}

const said = (secret: string | undefined, otherwise: string): string =>
  secret === undefined ? otherwise : '(set, not shown)';

/** Puts the configuration together; what files hold wrong is added to the problems. */
async function build(read: Variables, problems: Problem[]): Promise<Config> {
  const keysFile = read.DISSECTION_KEYS_FILE ?? join(read.DISSECTION_DATA_DIR, 'keys.json');
  const allowed = {
    allowHttp: read.DISSECTION_FHIR_ALLOW_HTTP,
    allowedHosts: read.DISSECTION_FHIR_ALLOWED_HOSTS,
  };
  return {
    host: read.HOST,
    port: read.PORT,
    production: read.DISSECTION_PRODUCTION,
    dataDir: read.DISSECTION_DATA_DIR,
    databaseUrl: read.DATABASE_URL,
    fhir: {
      baseUrl: baseUrlOf(read.DISSECTION_FHIR_BASE_URL, allowed, problems),
      token: secretOf(read, 'DISSECTION_FHIR_TOKEN', problems),
      mode: read.DISSECTION_FHIR_MODE,
      allowed,
      entryLimit: read.DISSECTION_FHIR_ENTRY_LIMIT,
    },
    sandbox: read.DISSECTION_SANDBOX,
    siteSecret: secretOf(read, 'DISSECTION_SITE_SECRET', problems),
    unit: unitOf(read.DISSECTION_SETTINGS_FILE, problems),
    keysFile,
    keyCount: await countKeys(keysFile, problems),
    logLevel: read.DISSECTION_LOG_LEVEL,
    limits: {
      bodyBytes: read.DISSECTION_BODY_LIMIT_BYTES,
      headersMs: read.DISSECTION_HEADERS_SECONDS * 1_000,
      requestMs: read.DISSECTION_REQUEST_SECONDS * 1_000,
      graceMs: read.DISSECTION_GRACE_SECONDS * 1_000,
      connections: read.DISSECTION_CONNECTIONS,
    },
  };
}

const isUnknown = (name: string): boolean =>
  name.startsWith('DISSECTION_') && !Object.hasOwn(VARIABLES.shape, name);

const unknownVariable = (name: string): Problem => ({
  rule: 'unknown-setting',
  pointer: `/${name}`,
  message: 'There is no such setting.',
  expected: `one of: ${Object.keys(VARIABLES.shape).join(', ')}`,
});

function badNames(set: Environment): readonly string[] {
  const read = VARIABLES.safeParse(set);
  return [...new Set(read.error?.issues.map(({ path }) => String(path[0])) ?? [])];
}

function badVariable(name: string): Problem {
  const known: Readonly<Record<string, z.ZodType>> = VARIABLES.shape;
  return {
    rule: 'bad-setting',
    pointer: `/${name}`,
    message: 'This setting cannot be used as it is.',
    expected: known[name]?.meta()?.title ?? 'a setting',
  };
}

function frozen<T extends object>(value: T): T {
  for (const inner of Object.values(value)) {
    if (typeof inner === 'object' && inner !== null) frozen(inner);
  }
  return Object.freeze(value);
}
