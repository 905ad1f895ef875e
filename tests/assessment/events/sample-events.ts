import { readFileSync } from 'node:fs';
import {
  type CaseFields,
  type EventFields,
  parseCase,
  parseEvent,
} from '../../../src/contract/index.js';
import type { Draft } from '../../support/consistent-case.js';

const bytesOf = (document: unknown) => new TextEncoder().encode(JSON.stringify(document));

/** An example case, as the contract reads it. */
export function caseOf(name: string): CaseFields {
  const read = parseCase(readFileSync(`examples/cases/${name}.json`));
  if (!read.ok) throw new Error('the example is sound');
  return read.value.fields;
}

export const documentOf = (name: string): Draft =>
  JSON.parse(readFileSync(`examples/events/${name}.json`, 'utf8'));

export function eventOf(document: Draft): EventFields {
  const read = parseEvent(bytesOf(document));
  if (!read.ok) throw new Error(`a sample is sound: ${JSON.stringify(read.problems)}`);
  return read.value.fields;
}

export const exampleEvent = (name: string): EventFields => eventOf(documentOf(name));

/** An event of a kind and nothing else, on a day after the end of a procedure. */
export const bare = (kind: string, occurredOn: string, more: object = {}): EventFields => {
  const { schema, source, case: of, patient, event } = documentOf('stomach-bleeding');
  const sentAt = '2027-01-10T10:00:00+01:00';
  return eventOf({
    ...{ schema, source, case: of, patient, event, revision: 1, sentAt },
    ...{ kind, occurredOn, ...more },
  });
};
