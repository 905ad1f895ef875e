import { readdirSync, readFileSync } from 'node:fs';
import type { Bundle } from 'fhir/r4.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { type MappingSettings, toBundle } from '../../src/mapping/index.js';
import { parseRecordMessage } from '../../src/pipeline/parse-record-message.js';
import {
  foldRecord,
  type RecordView,
  SENT_KINDS,
  type SentKind,
  viewRecord,
} from '../../src/record/index.js';
import type { Draft } from '../support/consistent-case.js';
import { sampleCases } from '../support/generate-case.js';

export const CASE_ID = '6f1c2c58-2f0e-8a3b-9d53-0c1f5ad6e2b7';

export const SETTINGS: MappingSettings = {
  secret: 'a secret of the tests, 32 characters',
  identifierBase: 'https://dissection-records.example/unit',
  licences: { snomedCt: false },
  endoscopyReport: 'wait',
  proposedAppointments: false,
  softwareVersion: '0.0.0-test',
};

export interface Named {
  readonly name: string;
  /** The message as it is sent. */
  readonly text: string;
}

const FOLDER = 'examples/cases';
export const EXAMPLES: readonly Named[] = readdirSync(FOLDER)
  .sort()
  .map((name) => ({ name, text: readFileSync(`${FOLDER}/${name}`, 'utf8') }));

/** Valid messages of every shape, the same in every run. */
export const generated = (howMany: number): readonly Named[] =>
  sampleCases(howMany).map((message, i) => ({
    name: `generated case ${i + 1}`,
    text: JSON.stringify(message),
  }));

/** An example as a document that a test may change. */
export function example(name: string): Draft {
  return JSON.parse(readFileSync(`${FOLDER}/${name}.json`, 'utf8'));
}

/** The kind that a message says it is. */
function kindOf(text: string): SentKind {
  const named = String(JSON.parse(text).schema).split('/')[0];
  const kind = SENT_KINDS.find((known) => known === named);
  if (kind === undefined) throw new Error('a message of a test names its schema');
  return kind;
}

/** @param texts the messages of one case, in the order in which they came */
export function versionOf(...texts: readonly string[]): RecordView {
  const messages = texts.map((text) => {
    const parsed = parseRecordMessage(kindOf(text), new TextEncoder().encode(text));
    if (!parsed.ok) throw new Error(`the sample is refused: ${JSON.stringify(parsed.problems)}`);
    return parsed.value;
  });
  const version = foldRecord(CASE_ID, messages, DEFAULT_UNIT_SETTINGS);
  if (version === undefined) throw new Error('the messages of a test hold their case');
  return viewRecord(version, DEFAULT_UNIT_SETTINGS);
}

export const bundleOf = (text: string, settings: Partial<MappingSettings> = {}): Bundle =>
  toBundle(versionOf(text), { ...SETTINGS, ...settings });

/** The record of several revisions of one document, each as a document of its own. */
export const bundleOfRevisions = (...documents: readonly Draft[]): Bundle =>
  toBundle(versionOf(...documents.map((document) => JSON.stringify(document))), SETTINGS);

/** The resources as documents, to be looked into at will. */
export const resourcesOf = (bundle: Bundle): readonly Draft[] =>
  (bundle.entry ?? []).flatMap(({ resource }): readonly Draft[] =>
    resource === undefined ? [] : [resource],
  );

/** Our key of a resource within its case and type; empty for the dissection itself. */
export const keyOf = ({ identifier }: Draft): string =>
  String(identifier?.[0]?.value ?? '').slice(CASE_ID.length + 1);

export function find(bundle: Bundle, type: string, key: string): Draft {
  const found = resourcesOf(bundle).filter((r) => r.resourceType === type && keyOf(r) === key);
  if (found.length !== 1) throw new Error(`${found.length} resources ${type}/${key}`);
  return found[0];
}
