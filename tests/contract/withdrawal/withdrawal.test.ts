import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  caseSchema,
  checkWithdrawalAgainstCase,
  parseWithdrawal,
  WITHDRAWAL_CASE_CHECKS,
  WITHDRAWAL_CHECKS,
  withdrawalSchema,
} from '../../../src/contract/index.js';
import { InvariantError } from '../../../src/kernel/index.js';
import { bytesOf, changed, type Fields } from '../changed.js';

const read = (path: string): object => JSON.parse(readFileSync(`examples/${path}.json`, 'utf8'));
const sound = read('withdrawals/minimal-wrong-patient');
const esd = read('cases/minimal'); // out at 10:26 on 2 June 2026, UTC+2

interface Edge {
  readonly rule: string;
  readonly says: string;
  readonly last: Fields;
  readonly beyond: Fields;
}

/** Project rules: the last value that is no contradiction, and the first that is one. */
const ALONE: readonly Edge[] = [
  {
    rule: 'replaced-by-itself',
    says: 'the same number in another system is another case',
    last: { replacedBy: { system: 'urn:oid:2.999.1.99', value: 'EX-C-2026-018' } },
    beyond: { replacedBy: { system: 'urn:oid:2.999.1.2', value: 'EX-C-2026-018' } },
  },
  {
    rule: 'replacement',
    says: 'a wrong patient may have a replacement, entered twice must',
    last: { replacedBy: undefined },
    beyond: { reason: 'entered-twice', replacedBy: undefined },
  },
  ...['patient-request', 'entered-in-error'].map((reason) => ({
    rule: 'replacement',
    says: `${reason} has none`,
    last: { reason, replacedBy: undefined },
    beyond: { reason },
  })),
];
const BESIDE: readonly Edge[] = [
  {
    rule: 'patient-differs',
    says: 'the patient is the one that the case was sent with, also the wrong one',
    last: {},
    beyond: { 'patient.value': 'EX-P-0016' },
  },
  {
    rule: 'before-procedure',
    says: 'a case may be taken back as the scope goes out, by instant',
    last: { sentAt: '2026-06-02T08:26:00Z' },
    beyond: { sentAt: '2026-06-02T08:25:59Z' },
  },
];

describe('a withdrawal', () => {
  it.each(ALONE)('$rule: $says', ({ rule, last, beyond }) => {
    expect(rulesAlone(last)).toEqual([]);
    expect(rulesAlone(beyond)).toEqual([rule]);
  });

  it.each(BESIDE)('beside its case, $rule: $says', ({ rule, last, beyond }) => {
    expect(rulesBeside(last, esd)).toEqual([]);
    expect(rulesBeside(beyond, esd)).toEqual([rule]);
  });

  it('is tried by every rule', () => {
    const rules = (checks: readonly { readonly rule: string }[]) =>
      new Set(checks.map(({ rule }) => rule));
    expect(rules(ALONE)).toEqual(rules(WITHDRAWAL_CHECKS));
    expect(rules(BESIDE)).toEqual(rules(WITHDRAWAL_CASE_CHECKS));
    expect(WITHDRAWAL_CHECKS.flatMap(({ broken }) => broken({}))).toEqual([]);
  });

  it('of another case is a bug of the caller', () => {
    const other = changed(esd, { 'case.value': 'EX-C-2026-999' });
    expect(() => rulesBeside({}, other)).toThrow(InvariantError);
  });

  it('has no room for prose, which could name a person', () => {
    expect(rulesAlone({ remark: 'the other patient of that name' })).toEqual(['unknown-field']);
  });
});

function rulesAlone(fields: Fields): readonly string[] {
  const checked = parseWithdrawal(bytesOf(changed(sound, fields)));
  return checked.ok ? [] : checked.problems.map(({ rule }) => rule);
}

function rulesBeside(fields: Fields, known: unknown): readonly string[] {
  const sent = withdrawalSchema.parse(changed(sound, fields));
  return checkWithdrawalAgainstCase(sent, caseSchema.parse(known)).map(({ rule }) => rule);
}
