import { type DrawnCase, drawCase, type Wanted } from '../../scripts/synthetic/drawn-case.js';
import { syntheticCase } from '../../scripts/synthetic/synthetic-case.js';
import { LAST_DAY, UNITS } from '../../scripts/synthetic/units.table.js';
import type {
  CaseFields,
  EventFields,
  ExaminationFields,
  PathologyFields,
} from '../../src/contract/index.js';

export const WANTED: Wanted = { seed: 20_260_329, units: UNITS, untilOn: LAST_DAY };

/** The messages of one invented case, read as they were written. */
export interface ReadCase {
  readonly drawn: DrawnCase;
  readonly own: CaseFields;
  readonly reports: readonly PathologyFields[];
  readonly events: readonly EventFields[];
  readonly examinations: readonly ExaminationFields[];
}

export function readCase(index: number): ReadCase {
  const messages = syntheticCase(WANTED, index);
  const read = (kind: string) =>
    messages.filter((message) => message.kind === kind).map(({ text }) => JSON.parse(text));
  return {
    drawn: drawCase(WANTED, index),
    own: read('case')[0],
    reports: read('pathology'),
    events: read('event'),
    examinations: read('examination'),
  };
}
