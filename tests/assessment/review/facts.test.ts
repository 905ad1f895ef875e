import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Drug, drugFacts } from '../../../src/assessment/review/drug-facts.js';
import { type ReviewContext, reviewFacts } from '../../../src/assessment/review/facts.js';
import { type CaseFields, DEFAULT_UNIT_SETTINGS, parseCase } from '../../../src/contract/index.js';

function example(): CaseFields {
  const read = parseCase(readFileSync('examples/cases/complete.json'));
  if (!read.ok) throw new Error('the examples are sound');
  return read.value.fields;
}

const CASE = example();
const factsOf = (changed: Partial<CaseFields>, context: ReviewContext = {}) =>
  reviewFacts({ ...CASE, ...changed }, context, DEFAULT_UNIT_SETTINGS);
const ofReport = (findings: NonNullable<ReviewContext['pathology']>['findings']) =>
  factsOf({}, { pathology: { findings } });

// Oracle: what was told, and nothing else; common practice, no source.
describe('what the review looks at', () => {
  it.each([
    [undefined, undefined, undefined],
    ['none', 'none', undefined],
    [0, 'planned', 0],
    [6, 'planned', 6],
  ] as const)('a first look told as %s is %s, after %s weeks', (told, firstLook, weeks) => {
    const facts = factsOf({}, { firstLookWeeks: told });
    expect([facts.firstLook, facts.firstLookWeeks]).toEqual([firstLook, weeks]);
  });

  it.each([
    [undefined, undefined],
    ['sm', true],
    ['m', false],
    ['mp', false],
  ])('a depth %s invades the submucosa alone: %s', (depth, invades) => {
    expect(ofReport({ depth }).invadesSubmucosa).toBe(invades);
  });

  it('a margin is not known until a report tells it', () => {
    expect(factsOf({}).verticalMargin).toBe('not known');
    expect(ofReport({}).verticalMargin).toBe('not known');
    expect(ofReport({ vm: { state: 'X' } }).verticalMargin).toBe('X');
  });

  it('an age is off only where both age and birth are told', () => {
    const { bornOn = '1950-01-01' } = CASE.patient;
    const years = Number(CASE.times.scopeInAt.slice(0, 4)) - Number(bornOn.slice(0, 4));
    const offOf = (patient: object) =>
      factsOf({ patient: { ...CASE.patient, ...patient } }).ageOffYears;
    expect(offOf({ bornOn, ageYears: undefined })).toBeUndefined();
    expect(offOf({ bornOn: undefined, ageYears: 70 })).toBeUndefined();
    expect(offOf({ bornOn, ageYears: years + 9 })).toBeGreaterThanOrEqual(9);
  });

  it('a preparation of which nothing is told is not told', () => {
    const toldOf = (bowelPreparation: object) =>
      factsOf({ before: { ...CASE.before, bowelPreparation } }).bowelPreparationTold;
    expect(toldOf({})).toBe(false);
    expect(toldOf({ agent: undefined })).toBe(false);
    expect(toldOf({ agent: 'macrogol' })).toBe(true);
  });

  it('no pause, no lead of a side', () => {
    expect(factsOf({ dissection: { pauses: [] } }).unevenPoints).toBeUndefined();
  });
});

describe('what the review looks at in a drug', () => {
  const factsOfDrug = (drug: Partial<Drug>, before: CaseFields['before']) =>
    drugFacts(
      { class: 'aspirin', decision: 'continued', ...drug },
      { ...CASE, before },
      DEFAULT_UNIT_SETTINGS,
    );

  it('no last dose, no hours and no days without it', () => {
    const { hoursStopped, daysStopped } = factsOfDrug({ lastDoseAt: undefined }, {});
    expect([hoursStopped, daysStopped]).toEqual([undefined, undefined]);
    const before = new Date(Date.parse(CASE.times.scopeInAt) - 36 * 3_600_000).toISOString();
    expect(factsOfDrug({ lastDoseAt: before }, {}).hoursStopped).toBe(36);
  });

  it('a second drug stands beside it only where one is told', () => {
    expect(factsOfDrug({}, undefined).besideP2Y12).toBe(false);
    expect(factsOfDrug({}, {}).besideP2Y12).toBe(false);
    const both = [{ class: 'p2y12-inhibitor', decision: 'continued' }] as const;
    expect(factsOfDrug({}, { antithrombotics: [...both] }).besideP2Y12).toBe(true);
  });
});
