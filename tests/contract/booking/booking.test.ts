import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  BOOKING_CASE_CHECKS,
  BOOKING_CHECKS,
  bookingSchema,
  caseSchema,
  checkBookingAgainstCase,
  parseBooking,
} from '../../../src/contract/index.js';
import { bytesOf, changed, type Fields } from '../changed.js';

const read = (path: string): object => JSON.parse(readFileSync(`examples/${path}.json`, 'utf8'));
const sound = read('bookings/first-look'); // 9:00 to 9:45 on 21 September 2026, UTC+2
const esd = read('cases/minimal'); // out at 10:26 on 2 June 2026, UTC+2
const [ONE, OTHER] = [
  '4a7d2f60-9c1e-8b35-a2d4-6e0f1b7c8d90',
  'd1c5e8b2-07fa-8e46-b913-2a5c4f6d7e81',
];

interface Edge {
  readonly rule: string;
  readonly says: string;
  readonly last: Fields;
  readonly beyond: Fields;
}

/** Project rules: the last value that is no contradiction, and the first that is one. */
const ALONE: readonly Edge[] = [
  ...['booked', 'moved'].map((status) => ({
    rule: 'booked-without-time',
    says: `${status} has an end`,
    last: { status },
    beyond: { status, endsAt: undefined },
  })),
  ...['cancelled', 'did-not-attend'].map((status) => ({
    rule: 'half-a-time',
    says: `${status} may have no time at all`,
    last: { status, startsAt: undefined, endsAt: undefined },
    beyond: { status, startsAt: undefined },
  })),
  {
    rule: 'ends-before-start',
    says: 'a second is enough, by instant',
    last: { endsAt: '2026-09-21T07:00:01Z' },
    beyond: { endsAt: '2026-09-21T07:00:00Z' },
  },
  {
    rule: 'longer-than-a-day',
    says: 'a day is the longest, by instant',
    last: { endsAt: '2026-09-22T07:00:00Z' },
    beyond: { endsAt: '2026-09-22T07:00:01Z' },
  },
  {
    rule: 'reason-of-another-status',
    says: 'who cancels may say why',
    last: { status: 'cancelled', reason: 'patient' },
    beyond: { status: 'moved', reason: 'patient' },
  },
  {
    rule: 'missed-before-start',
    says: 'told as it starts, by instant',
    last: { status: 'did-not-attend', sentAt: '2026-09-21T07:00:00Z' },
    beyond: { status: 'did-not-attend', sentAt: '2026-09-21T06:59:59Z' },
  },
  {
    rule: 'repeated-follow-up',
    says: 'two are two',
    last: { alsoFor: [ONE, OTHER] },
    beyond: { alsoFor: [ONE, OTHER, ONE] },
  },
];
const BESIDE: readonly Edge[] = [
  {
    rule: 'before-procedure',
    says: 'from the moment on in which the scope is out, by instant',
    last: { startsAt: '2026-06-02T08:26:00Z' },
    beyond: { startsAt: '2026-06-02T08:25:59Z' },
  },
];

describe('a booking', () => {
  it.each(ALONE)('$rule: $says', ({ rule, last, beyond }) => {
    expect(rulesAlone(last)).toEqual([]);
    expect(new Set(rulesAlone(beyond))).toEqual(new Set([rule]));
  });

  it.each(BESIDE)('beside the case, $rule: $says', ({ rule, last, beyond }) => {
    expect(rulesBeside(last)).toEqual([]);
    expect(rulesBeside(beyond)).toEqual([rule]);
  });

  it('is tried by every rule', () => {
    const rules = (checks: readonly { readonly rule: string }[]) =>
      new Set(checks.map(({ rule }) => rule));
    expect(rules(ALONE)).toEqual(rules(BOOKING_CHECKS));
    expect(rules(BESIDE)).toEqual(rules(BOOKING_CASE_CHECKS));
    expect(BOOKING_CHECKS.flatMap(({ broken }) => broken({}))).toEqual([]);
  });

  it('may be told after it took place', () => {
    expect(rulesAlone({ sentAt: '2026-09-22T10:00:00+02:00' })).toEqual([]);
  });

  it('names no patient and no case: the address of the call does', () => {
    expect(rulesAlone({ patient: { system: 'urn:oid:2.999.1.1', value: 'EX-P-0003' } })).toEqual([
      'unknown-field',
    ]);
    expect(rulesAlone({ remark: 'prefers mornings' })).toEqual(['unknown-field']);
  });

  it.each([
    ['appointment', 'https://elsewhere.example/fhir/Appointment/1'],
    ['appointment', 'Appointment/'],
    ['appointment', `Appointment/${'a'.repeat(65)}`], // FHIR R4 id: at most 64 characters
    ['alsoFor', ['EX-Q-1']],
  ])('refuses %s %s', (field, value) => {
    expect(rulesAlone({ [field]: value })).toEqual(['bad-format']);
  });
});

function rulesAlone(fields: Fields): readonly string[] {
  const checked = parseBooking(bytesOf(changed(sound, fields)));
  return checked.ok ? [] : checked.problems.map(({ rule }) => rule);
}

function rulesBeside(fields: Fields): readonly string[] {
  const sent = bookingSchema.parse(changed(sound, fields));
  return checkBookingAgainstCase(sent, caseSchema.parse(esd)).map(({ rule }) => rule);
}
