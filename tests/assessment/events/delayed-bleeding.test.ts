import { describe, expect, it } from 'vitest';
import { assessEvents } from '../../../src/assessment/index.js';
import type { EventFields } from '../../../src/contract/index.js';
import published from '../../published/delayed-bleeding.json' with { type: 'json' };
import { bare, caseOf, exampleEvent } from './sample-events.js';

const base = caseOf('rectum');
const RECTUM = { ...base, times: { ...base.times, scopeOutAt: published.scopeOutAt } };
const STATUS = bare('status-at-30-days', '2026-07-20', { status: { untilOn: '2026-07-01' } });

/** Answers by definition; open where a fact is missing. */
function answersOf(...events: readonly EventFields[]): Readonly<Record<string, string>> {
  const { delayedBleeding } = assessEvents(RECTUM, events, []);
  return Object.fromEntries(
    delayedBleeding.map(({ rule, answer }) => [
      rule,
      answer.kind === 'determined' ? answer.value : 'open',
    ]),
  );
}

describe('delayed bleeding by three published definitions', () => {
  it.each(published.cases)('$name', ({ occurredOn, occurredAt, told, answers }) => {
    const time = occurredAt === undefined ? {} : { occurredAt };
    const event = bare('delayed-bleeding', occurredOn, { ...told, ...time });
    expect(answersOf(event, STATUS)).toEqual(answers);
  });

  it('names the definition that was fulfilled, with the row and its source', () => {
    const event = bare('delayed-bleeding', '2026-06-05', { course: { transfusionUnits: 1 } });
    const found = assessEvents(RECTUM, [event], []).delayedBleeding.find(
      ({ rule }) => rule === 'bleed-30d-csdb',
    );
    expect(found?.reasons.map(({ row }) => row)).toEqual(['transfusion']);
    expect(found?.reasons[0]?.cites.map(({ work }) => work)).toContain('albouys2024');
  });

  it('names the facts that are missing as the event does', () => {
    const event = bare('delayed-bleeding', '2026-06-05', { course: { emergencyVisit: false } });
    const { delayedBleeding } = assessEvents(RECTUM, [event, STATUS], []);
    expect(delayedBleeding.map(({ answer }) => answer)).toEqual([
      {
        kind: 'indeterminate',
        missing: ['bleeding.signs', 'bleeding.confirmedAtEndoscopy'],
      },
      {
        kind: 'indeterminate',
        missing: ['bleeding.signs', 'bleeding.confirmedAtEndoscopy', 'course.transfusionUnits'],
      },
      {
        kind: 'indeterminate',
        missing: [
          'course.readmitted',
          'course.transfusionUnits',
          'course.intervention',
          'bleeding.haemostasis',
          'haemoglobin.beforeGPerDl',
          'haemoglobin.lowestGPerDl',
        ],
      },
    ]);
  });
});

describe('no bleeding', () => {
  const denied = { 'bleed-28d': 'no', 'bleed-6h-30d': 'no', 'bleed-30d-csdb': 'no' };
  const open = { 'bleed-28d': 'open', 'bleed-6h-30d': 'open', 'bleed-30d-csdb': 'open' };

  it('is an answer only where somebody says that nothing happened in the time', () => {
    expect(answersOf()).toEqual(open);
    expect(answersOf(STATUS)).toEqual(denied);
  });

  it.each([
    ['2026-06-28', open],
    ['2026-06-29', { ...open, 'bleed-28d': 'no' }],
    ['2026-06-30', { ...open, 'bleed-28d': 'no' }],
    ['2026-07-01', denied],
  ])('with a statement until %s', (untilOn, answers) => {
    expect(answersOf(bare('status-at-30-days', '2026-07-20', { status: { untilOn } }))).toEqual(
      answers,
    );
  });

  it('is not concluded from a bleeding that a definition does not count', () => {
    const late = bare('delayed-bleeding', '2026-08-01');
    expect(answersOf(late)).toEqual(open);
    expect(answersOf(late, STATUS)).toEqual(denied);
  });
});

describe('the definition of haematochezia', () => {
  it('does not speak of the stomach', () => {
    const { delayedBleeding } = assessEvents(
      caseOf('stomach-dual-antiplatelet'),
      [exampleEvent('stomach-bleeding')],
      [],
    );
    expect(delayedBleeding.map(({ rule, answer }) => [rule, answer])).toMatchObject([
      ['bleed-28d', { kind: 'determined', value: 'yes' }],
      ['bleed-30d-csdb', { kind: 'determined', value: 'yes' }],
    ]);
  });
});
