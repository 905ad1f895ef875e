import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  caseSchema,
  checkEventAgainstCase,
  EVENT_CASE_CHECKS,
  eventSchema,
} from '../../../src/contract/index.js';
import { InvariantError } from '../../../src/kernel/index.js';
import { changed, type Fields } from '../changed.js';
import { example } from './sound-event.js';

// Out at 11:37 on 3 February 2026, UTC+1.
const sentCase: object = JSON.parse(
  readFileSync('examples/cases/stomach-differentiated.json', 'utf8'),
);
const DAY = { occurredOn: '2026-02-03' };

/** Project rules: the last value that is no contradiction, and the first that is one. */
const EDGES: readonly {
  readonly rule: string;
  readonly says: string;
  readonly of?: string;
  readonly last: Fields;
  readonly beyond: Fields;
}[] = [
  {
    rule: 'patient-differs',
    says: 'the number alone is not the patient',
    last: {},
    beyond: { 'patient.system': 'urn:oid:2.999.1.99' },
  },
  {
    rule: 'before-procedure',
    says: 'an event may begin as the scope is out, by instant',
    last: { ...DAY, occurredAt: '2026-02-03T10:37:00Z' },
    beyond: { ...DAY, occurredAt: '2026-02-03T10:36:59Z' },
  },
  {
    rule: 'before-procedure',
    says: 'on the day of the procedure, and not the day before',
    last: { ...DAY, occurredAt: undefined },
    beyond: { occurredOn: '2026-02-02', occurredAt: undefined },
  },
  {
    rule: 'before-procedure',
    says: 'a death alone may come while the scope is in',
    last: { kind: 'death', ...DAY, occurredAt: '2026-02-03T10:22:00+01:00' },
    beyond: { kind: 'death', ...DAY, occurredAt: '2026-02-03T10:21:59+01:00' },
  },
  {
    rule: 'before-procedure',
    says: 'a status covers the day of the procedure or more',
    of: 'stomach-status',
    last: { 'status.untilOn': '2026-02-03' },
    beyond: { 'status.untilOn': '2026-02-02' },
  },
];

describe('an event beside its case', () => {
  it.each(EDGES)('$rule: $says', ({ rule, of = 'stomach-emergency-visit', last, beyond }) => {
    expect(rulesBeside(changed(example(of), last), sentCase)).toEqual([]);
    expect(new Set(rulesBeside(changed(example(of), beyond), sentCase))).toEqual(new Set([rule]));
  });

  it('is tried by every rule', () => {
    expect(new Set(EDGES.map(({ rule }) => rule))).toEqual(
      new Set(EVENT_CASE_CHECKS.map(({ rule }) => rule)),
    );
  });

  it('that is the case of another event is a bug of the caller', () => {
    const other = changed(sentCase, { 'case.value': 'EX-C-2026-999' });
    expect(() => rulesBeside(example('stomach-status'), other)).toThrow(InvariantError);
  });
});

function rulesBeside(event: unknown, esd: unknown): readonly string[] {
  const problems = checkEventAgainstCase(eventSchema.parse(event), caseSchema.parse(esd));
  return problems.map(({ rule }) => rule);
}
