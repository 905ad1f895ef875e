import { readdirSync, readFileSync } from 'node:fs';
import type { Bundle } from 'fhir/r4.js';
import { asOfSchema, DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { sha256 } from '../../src/kernel/index.js';
import { type MappingSettings, toBundle } from '../../src/mapping/index.js';
import { foldRecord, viewRecord } from '../../src/record/index.js';
import type { Draft } from '../support/consistent-case.js';
import { CASE_ID, EXAMPLES, SETTINGS, versionOf } from './records.js';
import { bundleOfTexts } from './reported.js';

/** An event, an examination or a withdrawal of the examples, with all that its case has. */
export interface Later {
  readonly name: string;
  /** The example itself. */
  readonly text: string;
  /** Its case alone. */
  readonly esdCase: string;
  /** Every message of its case, reports too; the example and what else came among them. */
  readonly all: readonly string[];
}

const FOLDERS = ['pathology', 'events', 'examinations', 'withdrawals'] as const;
const read = (folder: string) =>
  readdirSync(`examples/${folder}`)
    .sort()
    .map((name) => ({
      name: `${folder}/${name}`,
      text: readFileSync(`examples/${folder}/${name}`, 'utf8'),
    }));

const MESSAGES = FOLDERS.flatMap(read);
const caseOf = (text: string): string => {
  const { system, value } = JSON.parse(text).case;
  return `${system}|${value}`;
};

/** Every example of a message that is told after the dissection, but for reports. */
export const LATER: readonly Later[] = MESSAGES.filter(
  ({ name }) => !name.startsWith('pathology/'),
).map(({ name, text }) => {
  const esdCase = EXAMPLES.find((example) => caseOf(example.text) === caseOf(text))?.text;
  if (esdCase === undefined) throw new Error(`${name} has no case`);
  const others = MESSAGES.filter((other) => caseOf(other.text) === caseOf(text));
  const withdrawn = others.filter((other) => !other.name.startsWith('withdrawals/'));
  const own = name.startsWith('withdrawals/') ? others : withdrawn;
  return { name, text, esdCase, all: [esdCase, ...own.map((other) => other.text)] };
});

export function later(name: string): Later {
  const found = LATER.find((one) => one.name === `${name}.json`);
  if (found === undefined) throw new Error(`no example ${name}`);
  return found;
}

/** The record of an example with its case, or with all that its case has. */
export const bundleOfLater = (
  name: string,
  which: 'alone' | 'all' = 'all',
  settings: Partial<MappingSettings> = {},
): Bundle => {
  const { text, esdCase, all } = later(name);
  return bundleOfTexts(which === 'all' ? all : [esdCase, text], settings);
};

/** A document of an example, to be changed at will. */
export const laterDocument = (name: string): Draft => JSON.parse(later(name).text);

/** The case and its events, as late as the service says. */
export function bundleAsOf(documents: readonly Draft[], asOf: string): Bundle {
  const [esdCase] = documents;
  const fields = asOfSchema.parse({
    ...{ schema: 'as-of/1', source: esdCase?.source, case: esdCase?.case, revision: 1 },
    ...{ sentAt: asOf, asOf, reason: 'thirty-days-over' },
  });
  const texts = documents.map((document) => JSON.stringify(document));
  const { messages } = versionOf(...texts).version;
  const late = { kind: 'as-of' as const, fields, decimals: {}, sha256: sha256(bytesOf(fields)) };
  const version = foldRecord(CASE_ID, [...messages, late], DEFAULT_UNIT_SETTINGS);
  if (version === undefined) throw new Error('the messages of a test hold their case');
  return toBundle(viewRecord(version, DEFAULT_UNIT_SETTINGS), SETTINGS);
}

const bytesOf = (document: object): Uint8Array =>
  new TextEncoder().encode(JSON.stringify(document));
