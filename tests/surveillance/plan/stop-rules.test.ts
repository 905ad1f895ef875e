import { describe, expect, it } from 'vitest';
import { type PlanFacts, planFollowUp } from '../../../src/surveillance/index.js';
import { stopRuleOf } from '../../../src/surveillance/plan/stop.js';
import { ALWAYS_OPEN, itemOf, looked, REPORT, resected } from './plan-samples.js';

// Source: stop rules of each guideline as listed beside the rows: ESGE/ESDO and ESGE polypectomy
// 80 years, BSG 75 years, others ask the clinician at 80; never before the first check after a
// piecemeal or local-risk resection. Birthdays by hand.

const stateOf = (facts: PlanFacts, key: string, unit = ALWAYS_OPEN) =>
  itemOf(planFollowUp(facts, unit), key)?.state;

const pT1 = { pathology: { ...REPORT, histology: 'carcinoma', depth: 'sm' } };
const lower = (...days: readonly string[]) => ({
  examinations: days.map((on) => looked(on, { route: 'lower' })),
});

describe('stop rules', () => {
  // COL-1 is due on 15 March 2027.
  it.each([
    ['1947-03-15', 'to-confirm'],
    ['1947-03-16', 'open'],
  ])('ask from the 80th birthday on, born on %s', (bornOn, state) => {
    expect(stateOf(resected('colon', 'very-low-risk', { bornOn }), 'COL-1.1')).toBe(state);
  });

  it.each([
    [77, 'to-confirm'],
    [76, 'open'],
  ])('count on from an age at the dissection of %i', (ageYears, state) => {
    expect(stateOf(resected('colon', 'very-low-risk', { ageYears }), 'COL-1.1')).toBe(state);
  });

  it('say nothing where no age is known', () => {
    expect(stateOf(resected('colon', 'very-low-risk'), 'COL-1.1')).toBe('open');
  });

  it('keep the first examination after a pT1, not the next one', () => {
    const old = { ageYears: 85, ...pT1 };
    expect(stateOf(resected('colon', 'low-risk', old), 'COL-4.1')).toBe('open');
    const seen = { ...old, ...lower('2025-03-15') };
    expect(stateOf(resected('colon', 'low-risk', seen), 'COL-4.2')).toBe('to-confirm');
  });

  it.each([
    ['piecemeal', { outcome: 'piecemeal' as const }, 'COL-2'],
    ['a local risk', {}, 'COL-3'],
  ])('keep the first check after %s, and ask for the next one', (_, more, row) => {
    const old = { ageYears: 90, ...more };
    expect(stateOf(resected('colon', 'local-risk', old), `${row}.1`)).toBe('open');
    const seen = { ...old, ...lower('2024-09-15') };
    expect(stateOf(resected('colon', 'local-risk', seen), `${row}.2`)).toBe('to-confirm');
  });

  // COL-6 is due three years after the dissection.
  it.each([
    [72, 'to-confirm'],
    [71, 'open'],
  ])('of the British set ask at 75: %i at the dissection', (ageYears, state) => {
    const unit = {
      ...ALWAYS_OPEN,
      followUpRules: { ...ALWAYS_OPEN.followUpRules, colon: 'bsg-2019' as const },
    };
    expect(stateOf(resected('colon', 'very-low-risk', { ageYears }), 'COL-6.1', unit)).toBe(state);
  });

  it.each([
    [80, 'to-confirm'],
    [79, 'open'],
  ])('ask the clinician where nothing was published: %i years, stomach', (ageYears, state) => {
    // Due half a year after the dissection.
    expect(stateOf(resected('stomach', 'low-risk', { ageYears }), 'GAS-1.1')).toBe(state);
  });

  it('never cancel, and say who says so', () => {
    const item = itemOf(
      planFollowUp(resected('colon', 'very-low-risk', { ageYears: 99 }), ALWAYS_OPEN),
      'COL-1.1',
    );
    expect(item).toMatchObject({ state: 'to-confirm', reasons: [{ code: 'age-limit' }] });
    expect(
      item?.cites.some(({ work, place }) => work === 'esgePolypectomy2020' && /80/.test(place)),
    ).toBe(true);
  });

  it.each([
    ['COL-4', 'esge-esdo-2019', 80, true],
    ['COL-1', 'esge-pps-2020', 80, false],
    ['COL-7', 'bsg-2019', 75, false],
    ['BAR-5-long', 'esge-barrett-2023', 75, false],
    ['BAR-2', 'esge-barrett-2023', 80, false],
    ['OES-3', 'jges-jes-2020', 80, false],
  ])('%s of %s: from %i years', (row, ruleSet, fromYears, keepsFirst) => {
    expect(stopRuleOf({ row, ruleSet })).toMatchObject({ fromYears, keepsFirst });
  });
});
