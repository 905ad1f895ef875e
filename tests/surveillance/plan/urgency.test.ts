import { describe, expect, it } from 'vitest';
import { type PlanFacts, planFollowUp } from '../../../src/surveillance/index.js';
import { URGENT_ROWS, URGENT_TASKS } from '../../../src/surveillance/plan/urgency.table.js';
import {
  ALWAYS_OPEN,
  happened,
  idOf,
  itemOf,
  looked,
  NO_EVENTS,
  resected,
} from './plan-samples.js';

// Source of each row: common practice, no source.

const COLON = resected('colon', 'local-risk', { outcome: 'piecemeal' });
const recurrence = (more: object) => ({
  ...COLON,
  examinations: [looked('2024-09-20', { route: 'lower', recurrence: 'found', ...more })],
});
const OESOPHAGUS = resected('oesophagus', 'low-risk', { defectPercent: 90 });
const meeting = (decision: PlanFacts['events']['meetings'][number]['decision']) => ({
  ...resected('stomach', 'high-risk'),
  events: { ...NO_EVENTS, meetings: [{ id: idOf('V'), on: '2024-04-10', decision }] },
});

const URGENCIES: readonly (readonly [string, string, string, PlanFacts])[] = [
  ['a meeting on a high-risk resection', 'meeting.1', 'urgent', resected('stomach', 'high-risk')],
  ['the operation decided on', 'surgery-referral.1', 'urgent', meeting('surgery')],
  ['other treatment decided on', 'additional-treatment.1', 'urgent', meeting('chemoradiotherapy')],
  ['neoplasia at the scar', 'recurrence.1', 'urgent', recurrence({})],
  [
    'a look while the scar is dilated',
    'dilatation.1',
    'urgent',
    { ...OESOPHAGUS, events: { ...NO_EVENTS, dilatations: [happened('2024-04-10')] } },
  ],
  ['a first look of low risk', 'GAS-1.1', 'routine', resected('stomach', 'low-risk')],
  ['a first look after pieces', 'COL-2.1', 'routine', COLON],
  ['a look at a wide wound', 'stricture-check.1', 'routine', OESOPHAGUS],
  ['a call after a wide wound', 'stricture-call.1', 'routine', OESOPHAGUS],
  ['a reminder of pathology', 'pathology.1', 'routine', resected('stomach', 'low-risk')],
];

describe('how soon an item is wanted beside its window', () => {
  it.each(URGENCIES)('%s (%s): %s', (_, key, urgency, facts) => {
    const item = itemOf(planFollowUp(facts, ALWAYS_OPEN), key);
    expect(item).toBeDefined();
    expect(item?.urgency).toBe(urgency);
  });

  it('is urgent for the look after a recurrence was treated, and for no later one', () => {
    const facts = recurrence({ treated: true });
    const { items } = planFollowUp(facts, ALWAYS_OPEN);
    const next = items.find(({ state, kind }) => state === 'open' && kind === 'endoscopy');
    expect(next).toMatchObject({ first: true, urgency: 'urgent' });
    const clean = looked('2025-03-01', { route: 'lower' });
    const later = planFollowUp(
      { ...facts, examinations: [...facts.examinations, clean] },
      ALWAYS_OPEN,
    ).items.find(({ state, kind }) => state === 'open' && kind === 'endoscopy');
    expect(later).toMatchObject({ first: false, urgency: 'routine' });
  });

  it('is tried for every row of the table', () => {
    const tried = URGENCIES.filter(([, , urgency]) => urgency === 'urgent').map(
      ([, key, , facts]) => itemOf(planFollowUp(facts, ALWAYS_OPEN), key),
    );
    expect(new Set(tried.map((item) => item?.task).filter((task) => task !== undefined))).toEqual(
      new Set(URGENT_TASKS),
    );
    expect(tried.filter((item) => item?.kind === 'endoscopy').map((item) => item?.row)).toEqual(
      URGENT_ROWS,
    );
  });
});

describe('the day that a series counts from', () => {
  it('stays that of the resection while windows count from the examination before', () => {
    const facts = { ...COLON, examinations: [looked('2024-09-20', { route: 'lower' })] };
    const next = planFollowUp(facts, ALWAYS_OPEN).items.find(({ state }) => state === 'open');
    expect(next).toMatchObject({ anchorOn: '2024-03-15', countsFrom: '2024-09-20' });
  });

  it('is that of the examination which opened it anew', () => {
    const next = planFollowUp(recurrence({ treated: true }), ALWAYS_OPEN).items.find(
      ({ state, kind }) => state === 'open' && kind === 'endoscopy',
    );
    expect(next?.anchorOn).toBe('2024-09-20');
  });
});
