import { describe, expect, it } from 'vitest';
import { assessEvents } from '../../../src/assessment/index.js';
import { EVENT_KINDS, type EventFields } from '../../../src/contract/index.js';
import { bare, caseOf } from './sample-events.js';

const base = caseOf('rectum');
/** Day 30 is 1 July 2026. */
const RECTUM = { ...base, times: { ...base.times, scopeOutAt: '2026-06-01T10:00:00+02:00' } };
const UNTIL_DAY_30 = bare('status-at-30-days', '2026-07-20', { status: { untilOn: '2026-07-01' } });

const PARTS: Readonly<Record<string, object>> = {
  surgery: { surgery: { reason: 'oncological' } },
  'meeting-decision': { meeting: { decision: 'no-surgery' } },
  'status-at-30-days': { status: { untilOn: '2026-06-10' } },
};
const onDay = (kind: string, day: string): EventFields => bare(kind, day, PARTS[kind] ?? {});

function answer(...events: readonly EventFields[]): string {
  const { adverseEvent30d } = assessEvents(RECTUM, events, []);
  return adverseEvent30d.kind === 'determined' ? adverseEvent30d.value : 'open';
}

const isClosed = (asOf?: string, ...events: readonly EventFields[]): boolean =>
  assessEvents(RECTUM, events, [], asOf).windowIsClosed;

describe('an adverse event within 30 days (AGREE: whatever the likelihood of a link)', () => {
  it('is open as long as nobody has said that nothing happened', () => {
    expect(answer()).toBe('open');
    expect(answer(onDay('status-at-30-days', '2026-07-20'))).toBe('open');
    expect(answer(onDay('lost-to-follow-up', '2026-08-20'))).toBe('open');
  });

  it('is denied by a statement that covers day 30, and by none that does not', () => {
    const until = (untilOn: string) =>
      bare('status-at-30-days', '2026-07-20', { status: { untilOn } });
    expect(answer(until('2026-06-30'))).toBe('open');
    expect(answer(until('2026-07-01'))).toBe('no');
    expect(answer(UNTIL_DAY_30)).toBe('no');
  });

  it('is never denied by time alone', () => {
    const late = assessEvents(RECTUM, [], [], '2027-06-01T00:00:00Z');
    expect(late.adverseEvent30d).toEqual({ kind: 'indeterminate', missing: ['status.untilOn'] });
    expect(late.windowIsClosed).toBe(true);
  });

  it('counts what went wrong, and no decision or planned treatment', () => {
    const counted = EVENT_KINDS.filter((kind) => answer(onDay(kind, '2026-06-10')) === 'yes');
    const others = EVENT_KINDS.filter((kind) => !counted.includes(kind));
    expect(others).toEqual([
      'surgery',
      'meeting-decision',
      'follow-up-declined',
      'lost-to-follow-up',
      'status-at-30-days',
    ]);
    const emergency = bare('surgery', '2026-06-10', { surgery: { reason: 'adverse-event' } });
    expect(answer(emergency)).toBe('yes');
  });

  it.each([
    ['2026-07-01', 'yes'],
    ['2026-07-02', 'no'],
  ])('on %s beside a statement: %s', (day, expected) => {
    expect(answer(onDay('stricture', day), UNTIL_DAY_30)).toBe(expected);
  });
});

describe('the 30 days are over', () => {
  it.each([
    ['2026-07-01T23:59:59+02:00', false],
    ['2026-07-01T21:59:59Z', false],
    ['2026-07-01T22:00:00Z', true],
    ['2026-07-02T00:00:00+02:00', true],
  ])('as of %s: %s', (asOf, expected) => {
    expect(isClosed(asOf)).toBe(expected);
  });

  it('when something is told of a later day', () => {
    expect(isClosed()).toBe(false);
    expect(isClosed(undefined, onDay('meeting-decision', '2026-07-01'))).toBe(false);
    expect(isClosed(undefined, onDay('meeting-decision', '2026-07-02'))).toBe(true);
  });
});

// Source: consistency check CC-10, common practice, no source.
describe('CC-10: the haemoglobin fell and no bleeding was told', () => {
  const fell = (lowestGPerDl: number, on = '2026-06-10') =>
    bare('fever', on, { haemoglobin: { beforeGPerDl: 13, lowestGPerDl } });
  const said = (...events: readonly EventFields[]): readonly string[] =>
    assessEvents(RECTUM, events, []).review.map(({ check, says }) => `${check}: ${says}`);

  it('speaks from 2 g/dL on', () => {
    expect(said(fell(11.1))).toEqual([]);
    expect(said(fell(11))).toEqual([
      'CC-10: The haemoglobin fell by 2 g/dL within 30 days, and no bleeding was told. ' +
        'Please look whether there was one.',
    ]);
  });

  it('is silent beside a bleeding, after 30 days and without a value', () => {
    expect(said(fell(9), onDay('delayed-bleeding', '2026-06-10'))).toEqual([]);
    expect(said(fell(9, '2026-07-02'))).toEqual([]);
    expect(said(bare('fever', '2026-06-10'))).toEqual([]);
  });
});
