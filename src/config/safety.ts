import { isIPv4 } from 'node:net';
import type { Problem } from '../kernel/index.js';
import type { Config } from './config.js';
import { weaknessOf } from './site-secret.js';

/** To serve and to deliver, to read and write the records alone, or to publish what they come to. */
export type Purpose = 'serve' | 'records' | 'publish';

/** What must not be started, each with the variable to change. */
export function unsafeCombinations(config: Config, purpose: Purpose): readonly Problem[] {
  return RULES.filter(
    ({ asked, breaks }) => (asked ?? [purpose]).includes(purpose) && breaks(config),
  ).map(({ rule, pointer, message, expected }) => ({
    ...{ rule, message, expected },
    pointer: `/${pointer}`,
  }));
}

function isLoopback(host: string): boolean {
  return host === 'localhost' || host === '::1' || (isIPv4(host) && host.startsWith('127.'));
}

interface Rule extends Problem {
  /** For these purposes alone. */
  readonly asked?: readonly Purpose[];
  readonly breaks: (config: Config) => boolean;
}

const hasExampleBase = ({ unit }: Config): boolean =>
  /(^|[./])example([./]|$)/.test(unit.identifierBase);

/** Source: project definition. */
const RULES: readonly Rule[] = [
  {
    rule: 'open-without-keys',
    asked: ['serve'],
    pointer: 'HOST',
    message: 'The service would be open to the network and no API key is set up.',
    expected: 'keys (dissection-records keys add), or HOST=127.0.0.1',
    breaks: ({ host, keyCount }) => !isLoopback(host) && keyCount === 0,
  },
  {
    rule: 'production-without-keys',
    asked: ['serve'],
    pointer: 'DISSECTION_KEYS_FILE',
    message: 'Production needs API keys that are set up.',
    expected: 'at least one key (dissection-records keys add)',
    breaks: ({ production, keyCount }) => production && keyCount === 0,
  },
  {
    rule: 'production-with-sandbox',
    pointer: 'DISSECTION_SANDBOX',
    message: 'The sandbox is for demonstrations and does not run in production.',
    expected: 'DISSECTION_SANDBOX unset, and a FHIR server in DISSECTION_FHIR_BASE_URL',
    breaks: ({ production, sandbox }) => production && sandbox,
  },
  {
    rule: 'production-with-example-settings',
    pointer: 'DISSECTION_SETTINGS_FILE',
    message: 'The identifier base is the one of the example.',
    expected: 'settings of the unit with an identifierBase of its own',
    breaks: (config) => config.production && hasExampleBase(config),
  },
  {
    rule: 'no-destination',
    asked: ['serve', 'publish'],
    pointer: 'DISSECTION_FHIR_BASE_URL',
    message: 'No FHIR server is named, so nothing could be delivered.',
    expected: 'the base URL of a FHIR R4 server, or DISSECTION_SANDBOX=true to try the service',
    breaks: ({ fhir, sandbox }) => fhir.baseUrl === undefined && !sandbox,
  },
  {
    rule: 'two-destinations',
    asked: ['serve', 'publish'],
    pointer: 'DISSECTION_SANDBOX',
    message: 'A FHIR server is named and the sandbox is switched on.',
    expected: 'one of the two',
    breaks: ({ fhir, sandbox }) => fhir.baseUrl !== undefined && sandbox,
  },
  {
    rule: 'no-site-secret',
    pointer: 'DISSECTION_SITE_SECRET',
    message: 'With a database of your own the site secret must be set: several instances share it.',
    expected: 'a random text of 32 characters or more, kept as long as the records',
    breaks: ({ databaseUrl, siteSecret }) => databaseUrl !== undefined && siteSecret === undefined,
  },
  {
    rule: 'weak-site-secret',
    pointer: 'DISSECTION_SITE_SECRET',
    message: 'The site secret is too short, or one that was meant to be replaced.',
    expected: 'a random text of 32 characters or more, such as: openssl rand -hex 32',
    breaks: ({ siteSecret }) => siteSecret !== undefined && weaknessOf(siteSecret) !== undefined,
  },
];
