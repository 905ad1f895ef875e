import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  BOOKING_CASE_CHECKS,
  BOOKING_CHECKS,
  type CaseFields,
  checkBookingAgainstCase,
  checkEventAgainstCase,
  checkExaminationAgainstCase,
  checkWithdrawalAgainstCase,
  EVENT_CASE_CHECKS,
  EVENT_CHECKS,
  EXAMINATION_CASE_CHECKS,
  EXAMINATION_CHECKS,
  parseBooking,
  parseCase,
  parseEvent,
  parseExamination,
  parseWithdrawal,
  WITHDRAWAL_CASE_CHECKS,
  WITHDRAWAL_CHECKS,
} from '../../src/contract/index.js';
import type { Checked, Problem } from '../../src/kernel/index.js';

interface Faulty {
  readonly file: string;
  readonly mistake: string;
  /** The example case that the message contradicts; without it the message contradicts itself. */
  readonly case?: string;
  readonly problems: readonly { readonly rule: string; readonly pointer: string }[];
}
type Hold = (bytes: Uint8Array, esd: CaseFields | undefined) => readonly Problem[];

/** Problems of a message by itself or, if it has none, beside its case. */
const held =
  <Fields>(
    parse: (bytes: Uint8Array) => Checked<{ readonly fields: Fields }>,
    check: (sent: Fields, esd: CaseFields) => readonly Problem[],
  ): Hold =>
  (bytes, esd) => {
    const checked = parse(bytes);
    if (!checked.ok) return checked.problems;
    return esd === undefined ? [] : check(checked.value.fields, esd);
  };

const KINDS = [
  {
    kind: 'events',
    hold: held(parseEvent, checkEventAgainstCase),
    checks: EVENT_CHECKS,
    caseChecks: EVENT_CASE_CHECKS,
  },
  {
    kind: 'examinations',
    hold: held(parseExamination, checkExaminationAgainstCase),
    checks: EXAMINATION_CHECKS,
    caseChecks: EXAMINATION_CASE_CHECKS,
  },
  {
    kind: 'withdrawals',
    hold: held(parseWithdrawal, checkWithdrawalAgainstCase),
    checks: WITHDRAWAL_CHECKS,
    caseChecks: WITHDRAWAL_CASE_CHECKS,
  },
  {
    kind: 'bookings',
    hold: held(parseBooking, checkBookingAgainstCase),
    checks: BOOKING_CHECKS,
    caseChecks: BOOKING_CASE_CHECKS,
  },
];

function readCase(file: string): CaseFields {
  const checked = parseCase(readFileSync(`examples/cases/${file}`));
  if (!checked.ok) throw new Error(`${file}: ${JSON.stringify(checked.problems)}`);
  return checked.value.fields;
}

const said = ({ rule, pointer }: { readonly rule: string; readonly pointer: string }): string =>
  `${rule} at "${pointer}"`;

describe.each(KINDS)('the faulty $kind', ({ kind, hold, checks, caseChecks }) => {
  const folder = `examples/faulty-${kind}`;
  // Oracle: the mistake that was made on purpose, written down beside it.
  const expected: readonly Faulty[] = JSON.parse(readFileSync(`${folder}/expected.json`, 'utf8'));
  const problemsOf = ({ file, case: caseFile }: Faulty): readonly Problem[] =>
    hold(
      readFileSync(`${folder}/${file}`),
      caseFile === undefined ? undefined : readCase(caseFile),
    );

  it.each(expected)('$file: $mistake', (one) => {
    expect(problemsOf(one).map(said).sort()).toEqual(one.problems.map(said).sort());
    expect(one.problems.length).toBeGreaterThan(0);
  });

  it('are all expected, and every expectation has its message', () => {
    const files = readdirSync(folder).filter((file) => file !== 'expected.json');
    expect(expected.map(({ file }) => file).sort()).toEqual(files.sort());
  });

  it.each(expected.filter((one) => one.case !== undefined))('$file is sound by itself', (one) => {
    expect(hold(readFileSync(`${folder}/${one.file}`), undefined)).toEqual([]);
  });

  it.each([
    ...checks.map(({ rule, message }) => ({ rule, message, besideCase: false })),
    ...caseChecks.map(({ rule, message }) => ({ rule, message, besideCase: true })),
  ])('show $rule alone: $message', ({ rule, message, besideCase }) => {
    const shown = expected
      .filter((one) => (one.case !== undefined) === besideCase)
      .filter(({ problems }) => problems.every((problem) => problem.rule === rule))
      .filter((one) => problemsOf(one).some((problem) => problem.message === message));
    expect(shown.length).toBeGreaterThan(0);
  });
});
