import { readFileSync } from 'node:fs';
import { parsePathology } from '../../../src/contract/index.js';
import { withValue } from '../places.js';

export type Fields = Readonly<Record<string, unknown>>;

/** A colorectal carcinoma of the submucosa, all told and nothing contradictory. */
const soundReport: object = JSON.parse(
  readFileSync('examples/pathology/colon-caecum.json', 'utf8'),
);

/** @param fields to set by dotted path; `undefined` takes one away */
export function changed(fields: Fields, report: object = soundReport): unknown {
  return Object.entries(fields).reduce<unknown>(
    (document, [path, value]) =>
      withValue(
        document,
        path.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key)),
        value,
      ),
    report,
  );
}

export function problemsOf(document: unknown) {
  const text = typeof document === 'string' ? document : JSON.stringify(document);
  const checked = parsePathology(new TextEncoder().encode(text));
  return checked.ok ? [] : checked.problems;
}

export const rulesOf = (document: unknown): readonly string[] =>
  problemsOf(document).map(({ rule }) => rule);
