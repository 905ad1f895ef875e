import { readdirSync, readFileSync } from 'node:fs';
import type { SentKind } from '../../src/pipeline/index.js';
import { parseRecordMessage } from '../../src/pipeline/parse-record-message.js';
import type { Draft } from './consistent-case.js';

/** A message as it is sent. */
export interface Sent {
  readonly kind: SentKind;
  readonly document: Draft;
  readonly bytes: Uint8Array;
}

const FOLDERS: Readonly<Record<SentKind, string>> = {
  case: 'cases',
  pathology: 'pathology',
  event: 'events',
  examination: 'examinations',
  withdrawal: 'withdrawals',
};

const KINDS = Object.keys(FOLDERS) as readonly SentKind[];

export function sent(kind: SentKind, document: Draft): Sent {
  return { kind, document, bytes: new TextEncoder().encode(JSON.stringify(document)) };
}

export const example = (kind: SentKind, name: string): Sent =>
  sent(kind, JSON.parse(readFileSync(`examples/${FOLDERS[kind]}/${name}.json`, 'utf8')));

/** The same message with other content. */
export const altered = ({ kind, document }: Sent, change: Draft): Sent =>
  sent(kind, { ...document, ...change });

/** Every example, in the order of kinds and files. */
export const EXAMPLES: readonly Sent[] = KINDS.flatMap((kind) =>
  readdirSync(`examples/${FOLDERS[kind]}`)
    .sort()
    .map((file) => example(kind, file.replace('.json', ''))),
);

/** The examples about one case, the case itself first. */
export const aboutCase = (value: string): readonly Sent[] =>
  EXAMPLES.filter(({ document }) => document.case.value === value);

export const CASE_NUMBERS: readonly string[] = EXAMPLES.filter(({ kind }) => kind === 'case').map(
  ({ document }) => document.case.value,
);

/** Whether the contract takes it. */
export const isSound = ({ kind, bytes }: Sent): boolean => parseRecordMessage(kind, bytes).ok;
