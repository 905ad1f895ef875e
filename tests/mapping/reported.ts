import { readdirSync, readFileSync } from 'node:fs';
import type { Bundle } from 'fhir/r4.js';
import { type MappingSettings, toBundle } from '../../src/mapping/index.js';
import type { Draft } from '../support/consistent-case.js';
import { EXAMPLES, SETTINGS, versionOf } from './records.js';

const FOLDER = 'examples/pathology';

/** A report of the examples with its case and the lower revisions of its line. */
export interface Reported {
  readonly name: string;
  /** The case first, then the report with its revisions, rising. */
  readonly texts: readonly string[];
}

const REPORTS = readdirSync(FOLDER)
  .sort()
  .map((name) => ({ name, text: readFileSync(`${FOLDER}/${name}`, 'utf8') }));

const textOf = ({ system, value }: Draft): string => `${system}|${value}`;
const lineOf = (text: string): string => textOf(JSON.parse(text).accession);
const revisionOf = (text: string): number => JSON.parse(text).revision;

/** Every example of a report. */
export const REPORTED: readonly Reported[] = REPORTS.map(({ name, text }) => {
  const about = textOf(JSON.parse(text).case);
  const esdCase = EXAMPLES.find((example) => textOf(JSON.parse(example.text).case) === about);
  if (esdCase === undefined) throw new Error(`the report ${name} has no case`);
  const line = REPORTS.map((report) => report.text)
    .filter((other) => lineOf(other) === lineOf(text) && revisionOf(other) <= revisionOf(text))
    .sort((a, b) => revisionOf(a) - revisionOf(b));
  return { name, texts: [esdCase.text, ...line] };
});

/** The documents of an example, to be changed at will: the case, then the report's revisions. */
export function reported(name: string): Draft[] {
  const found = REPORTED.find((one) => one.name === `${name}.json`);
  if (found === undefined) throw new Error(`no report ${name}`);
  return found.texts.map((text) => JSON.parse(text));
}

export const bundleOfTexts = (
  texts: readonly string[],
  settings: Partial<MappingSettings> = {},
): Bundle => toBundle(versionOf(...texts), { ...SETTINGS, ...settings });

export const bundleOfDocuments = (
  documents: readonly Draft[],
  settings: Partial<MappingSettings> = {},
): Bundle =>
  bundleOfTexts(
    documents.map((document) => JSON.stringify(document)),
    settings,
  );

/** A further revision of a document, sent a day later, with a change. */
export function next(document: Draft, change: (revised: Draft) => void): Draft {
  const revised = structuredClone(document);
  revised.revision = document.revision + 1;
  const at = new Date(Date.parse(document.sentAt) + 86_400_000);
  revised.sentAt = at.toISOString();
  change(revised);
  return revised;
}
