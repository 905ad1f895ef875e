import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assessEvents } from '../../../src/assessment/index.js';
import { type EventFields, parseExamination } from '../../../src/contract/index.js';
import { bare, caseOf, eventOf } from './sample-events.js';

const base = caseOf('rectum');
/** Day 30 is 1 July 2026, by the calendar. */
const RECTUM = { ...base, times: { ...base.times, scopeOutAt: '2026-06-01T10:00:00+02:00' } };

const gradesOf = (...events: readonly EventFields[]) => assessEvents(RECTUM, events, []).grades;
const outcomeOf = (rule: string, ...events: readonly EventFields[]) =>
  gradesOf(...events)[0]?.findings.find((finding) => finding.rule === rule)?.outcome;

/** The same event under another name, caused by a first one. */
const causedBy = (cause: EventFields['event'], kind: string, more: object = {}): EventFields =>
  eventOf({
    ...bare(kind, '2026-06-12', more),
    event: { ...cause, value: 'EX-V-later' },
    causedBy: cause,
  });

// Source: AGREE 2022, window: within 30 days, however likely a link is.
describe('an event that the dissection did not cause', () => {
  it.each([
    ['2026-07-01', 'decided'],
    ['2026-07-02', 'refused'],
  ])('on %s is %s by AGREE', (day, kind) => {
    expect(outcomeOf('agree', bare('death', day, { related: 'no' }))?.kind).toBe(kind);
  });

  it('is refused in words that say which grading refuses and why', () => {
    const late = bare('death', '2026-07-02', { related: 'no' });
    expect(outcomeOf('agree', late)).toMatchObject({
      because: expect.stringMatching(/AGREE.*after 30 days.*did not cause/),
    });
    expect(outcomeOf('clavien-dindo', late)).toMatchObject({
      because: expect.stringMatching(/Clavien-Dindo.*complications/),
    });
  });
});

describe('a grade', () => {
  it('has the row that gave it, with its source', () => {
    expect(outcomeOf('agree', bare('death', '2026-06-10'))).toMatchObject({
      kind: 'decided',
      grade: 'V',
      reasons: [{ row: 'death', says: 'death', cites: [{ work: 'agree2022' }] }],
    });
  });

  it('of a visit to an emergency ward is I by both, where nothing else happened', () => {
    const course = {
      intervention: 'none',
      transfusionUnits: 0,
      drugsBeyondGradeI: false,
      admissionHours: 0,
      observationHours: 0,
      criticalCare: 'none',
      died: false,
    };
    const visit = bare('emergency-visit', '2026-06-10', { course });
    expect(gradesOf(visit)[0]?.findings.map(({ outcome }) => outcome)).toMatchObject([
      { grade: 'I' },
      { grade: 'I' },
    ]);
  });

  it('is V for whoever died of an event, and at least I for whoever was admitted again', () => {
    const died = bare('delayed-perforation', '2026-06-10', { course: { died: true } });
    expect(outcomeOf('agree', died)).toMatchObject({ grade: 'V' });
    const over = { died: true, resolvedOn: '2026-06-20' };
    const both = bare('delayed-perforation', '2026-06-10', { course: over });
    expect(outcomeOf('agree', both)).toMatchObject({ grade: 'V' });
    const admitted = bare('fever', '2026-06-10', { course: { readmitted: true } });
    expect(outcomeOf('agree', admitted)).toMatchObject({ atLeast: 'I' });
    expect(outcomeOf('agree', bare('fever', '2026-06-10'))).toMatchObject({ atLeast: 'none' });
  });

  it('states only the grades that the unit stated', () => {
    const grades = { agree: 'II' };
    const findings = gradesOf(bare('fever', '2026-06-10', { grades }))[0]?.findings;
    expect(findings?.[0]).toMatchObject({ stated: 'II' });
    expect(findings?.[1]).not.toHaveProperty('stated');
  });
});

describe('grades that the unit stated', () => {
  it('contradict each other where one alone is death', () => {
    const fever = bare('fever', '2026-06-10');
    const conflictsOf = (grades: NonNullable<EventFields['grades']>) =>
      gradesOf({ ...fever, grades })[0]?.conflicts.map(({ remark }) => remark);
    expect(conflictsOf({ agree: 'V', clavienDindo: 'IVb' })).toEqual(['death-in-agree-only']);
    expect(conflictsOf({ agree: 'IVb', clavienDindo: 'V' })).toEqual([
      'death-in-clavien-dindo-only',
    ]);
    expect(conflictsOf({ agree: 'V', clavienDindo: 'V' })).toEqual([]);
  });
});

describe('an examination', () => {
  const read = parseExamination(readFileSync('examples/examinations/stomach-first.json'));
  if (!read.ok) throw new Error('the sample is sound');
  const { fields } = read.value;
  const on = (examinedOn: string) => ({ ...fields, examinedOn });

  it.each([
    ['2026-07-01', false],
    ['2026-07-02', true],
  ])('on %s shows that 30 days are over: %s', (day, isClosed) => {
    expect(assessEvents(RECTUM, [], [on(day)]).windowIsClosed).toBe(isClosed);
  });
});

describe('what follows from an event', () => {
  const fever = bare('fever', '2026-06-10');
  const operation = { surgery: { reason: 'adverse-event' } };

  it('counts for the event that caused it', () => {
    const surgery = causedBy(fever.event, 'surgery', operation);
    expect(outcomeOf('agree', fever, surgery)).toMatchObject({ atLeast: 'IIIb' });
  });

  it.each([
    { ...fever.event, value: 'EX-V-another' },
    { ...fever.event, system: 'urn:oid:2.999.77' },
  ])('counts for no other: %j', (other) => {
    const surgery = { ...causedBy(fever.event, 'surgery', operation), causedBy: other };
    expect(outcomeOf('agree', fever, surgery)).toMatchObject({ atLeast: 'none' });
    const { causedBy: _, ...alone } = surgery;
    expect(outcomeOf('agree', fever, alone)).toMatchObject({ atLeast: 'none' });
  });
});

describe('a bleeding by the published definitions', () => {
  const STATUS = bare('status-at-30-days', '2026-07-20', { status: { untilOn: '2026-07-01' } });
  const answersOf = (...events: readonly EventFields[]) =>
    assessEvents(RECTUM, [...events, STATUS], []).delayedBleeding.map(({ answer }) =>
      answer.kind === 'determined' ? answer.value : answer.missing,
    );
  const spot = {
    bleeding: { signs: ['haematochezia'], confirmedAtEndoscopy: true },
    course: { transfusionUnits: 0 },
  };

  it('is asked of bleedings alone', () => {
    const course = { course: { transfusionUnits: 2, readmitted: true } };
    expect(answersOf(bare('delayed-perforation', '2026-06-10', course))).toEqual([
      'no',
      'no',
      'no',
    ]);
  });

  it('has no sign where none was seen', () => {
    const silent = { bleeding: { signs: [], confirmedAtEndoscopy: true } };
    expect(answersOf(bare('delayed-bleeding', '2026-06-10', silent)).slice(0, 2)).toEqual([
      'no',
      'no',
    ]);
  });

  // World J Gastroenterol 2014;20:1839: from 6 hours on. Where only the day is known, midnight is
  // its last moment: 6 hours after an end at 18:00, which are taken as possible.
  it.each([
    ['2026-06-01T10:00:00+02:00', ['occurredAt']],
    ['2026-06-01T17:59:00+02:00', ['occurredAt']],
    ['2026-06-01T18:00:00+02:00', ['occurredAt']],
    ['2026-06-01T18:01:00+02:00', 'no'],
  ])('after an end at %s, on the same day at an unknown time', (scopeOutAt, expected) => {
    const sent = { ...RECTUM, times: { ...RECTUM.times, scopeOutAt } };
    const event = bare('delayed-bleeding', '2026-06-01', spot);
    const [, sixHours] = assessEvents(sent, [event, STATUS], []).delayedBleeding;
    expect(sixHours?.rule).toBe('bleed-6h-30d');
    const { answer } = sixHours ?? {};
    expect(answer?.kind === 'determined' ? answer.value : answer?.missing).toEqual(expected);
  });

  it('counts on the next day, which begins six hours after an end at 18:00', () => {
    const sent = { ...RECTUM, times: { ...RECTUM.times, scopeOutAt: '2026-06-01T18:00:00+02:00' } };
    const event = bare('delayed-bleeding', '2026-06-02', spot);
    const [, sixHours] = assessEvents(sent, [event, STATUS], []).delayedBleeding;
    expect(sixHours?.answer).toMatchObject({ kind: 'determined', value: 'yes' });
  });

  it('has no fall of haemoglobin while one of both values is not known', () => {
    for (const haemoglobin of [{ beforeGPerDl: 13 }, { lowestGPerDl: 8 }]) {
      const course = {
        emergencyVisit: false,
        readmitted: false,
        transfusionUnits: 0,
        intervention: 'none',
      };
      const event = bare('delayed-bleeding', '2026-06-10', { course, haemoglobin });
      expect(answersOf(event)[2]).toContain('haemoglobin.beforeGPerDl');
    }
  });

  it('names the last day that is known where nobody said what happened later', () => {
    const [first] = assessEvents(RECTUM, [], []).delayedBleeding;
    expect(first?.answer).toEqual({ kind: 'indeterminate', missing: ['status.untilOn'] });
  });
});
