import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { assessEvents } from '../../../src/assessment/index.js';
import { GRADES } from '../../../src/contract/event/words.table.js';
import type { EventFields } from '../../../src/contract/index.js';
import type { Draft } from '../../support/consistent-case.js';
import { bare, caseOf, documentOf, eventOf, exampleEvent } from './sample-events.js';

const DAY = '2026-05-20';

/** Everything that a grading asks, and that none of it happened. */
const NOTHING = {
  intervention: 'none',
  transfusionUnits: 0,
  drugsBeyondGradeI: false,
  emergencyVisit: false,
  admissionHours: 0,
  observationHours: 0,
  criticalCare: 'none',
  died: false,
};

const adverse = (course: object, more: object = {}): EventFields =>
  bare('other-adverse-event', DAY, { course: { ...NOTHING, ...course }, ...more });

const assessed = (...events: readonly EventFields[]) =>
  assessEvents(caseOf('stomach-dual-antiplatelet'), events, []).grades;

/** The grade by a rule, `open from` the least possible one, or that it was refused. */
function grade(rule: string, ...events: readonly EventFields[]): string {
  const outcome = assessed(...events)[0]?.findings.find((f) => f.rule === rule)?.outcome;
  switch (outcome?.kind) {
    case 'decided':
      return outcome.grade;
    case 'indeterminate':
      return `open from ${outcome.atLeast}`;
    default:
      return String(outcome?.kind);
  }
}

/** The words of the worked examples, in the event message. */
function asCourse(inputs: Draft): object {
  const { generalAnaesthesia, transfusion, death, ...same } = inputs;
  return {
    ...same,
    ...(generalAnaesthesia === undefined ? {} : { underGeneralAnaesthesia: generalAnaesthesia }),
    ...(transfusion === undefined ? {} : { transfusionUnits: transfusion ? 2 : 0 }),
    ...(death === undefined ? {} : { died: death }),
  };
}

const rows: readonly Draft[] = parse(readFileSync('tests/published/worked-examples.csv', 'utf8'), {
  columns: true,
});
const WORKED = rows.filter(({ rule_or_score }) =>
  ['agree', 'clavien-dindo'].includes(rule_or_score),
);

describe('grades by the facts of an event, against the worked examples', () => {
  it.each(WORKED)('$id: $rule_or_score $expected', ({ inputs_json, rule_or_score, expected }) => {
    const event = adverse(asCourse(JSON.parse(inputs_json)));
    expect(grade(rule_or_score, event)).toBe(expected);
  });

  it('has examples of both', () => {
    expect(new Set(WORKED.map(({ rule_or_score }) => rule_or_score)).size).toBe(2);
  });

  // Source: the trap between both gradings, scores of AGREE 2022 and Clavien-Dindo 2004.
  it('haemostasis through the endoscope under general anaesthesia is IIIa and IIIb', () => {
    const event = adverse({ intervention: 'endoscopic', underGeneralAnaesthesia: true });
    expect([grade('agree', event), grade('clavien-dindo', event)]).toEqual(['IIIa', 'IIIb']);
  });

  it.each([
    [{}, 'none', 'none'],
    [{ emergencyVisit: true }, 'I', 'I'],
    [{ admissionHours: 24 }, 'I', 'I'],
    [{ admissionHours: 25 }, 'II', 'I'],
    [{ drugsBeyondGradeI: true }, 'II', 'II'],
    [{ intervention: 'radiological', underGeneralAnaesthesia: false }, 'IIIa', 'IIIa'],
    [{ intervention: 'surgical', underGeneralAnaesthesia: false }, 'IIIb', 'IIIa'],
    [{ criticalCare: 'single-organ' }, 'IVa', 'IVa'],
    [{ criticalCare: 'multi-organ' }, 'IVb', 'IVb'],
    [{ died: true }, 'V', 'V'],
  ])('%j', (course, agree, clavienDindo) => {
    const event = adverse(course);
    expect([grade('agree', event), grade('clavien-dindo', event)]).toEqual([agree, clavienDindo]);
  });
});

describe('a fact that was not told is not a "no"', () => {
  it.each([
    ['intervention', 'course.intervention'],
    ['transfusionUnits', 'course.transfusionUnits'],
    ['drugsBeyondGradeI', 'course.drugsBeyondGradeI'],
    ['emergencyVisit', 'course.emergencyVisit'],
    ['admissionHours', 'course.admissionHours'],
    ['observationHours', 'course.observationHours'],
    ['criticalCare', 'course.criticalCare'],
    ['died', 'course.died'],
  ])('%s', (fact, place) => {
    const event = adverse({ [fact]: undefined });
    const [found] = assessed(event);
    expect(found?.findings[0]?.outcome).toEqual({
      kind: 'indeterminate',
      missing: [place],
      atLeast: 'none',
    });
  });

  it('and an intervention of unknown anaesthesia is at least IIIa for Clavien-Dindo', () => {
    const event = adverse({ intervention: 'endoscopic' });
    expect([grade('agree', event), grade('clavien-dindo', event)]).toEqual([
      'IIIa',
      'open from IIIa',
    ]);
  });

  it('but whoever is over it has not died of it', () => {
    const over = adverse({ died: undefined, resolvedOn: '2026-05-28' });
    expect(grade('agree', over)).toBe('none');
  });

  it('an admission of unknown length is at least I', () => {
    expect(grade('agree', bare('readmission', DAY))).toBe('open from I');
  });
});

describe('what other events tell of one', () => {
  const causedBy = adverse({}).event;
  const other = { ...causedBy, value: 'EX-V-other' };
  const later = (kind: string, more: object = {}): EventFields => {
    const sent = bare(kind, '2026-05-22', more);
    return eventOf({ ...sent, event: other, causedBy });
  };

  it.each([
    ['a death', later('death'), 'V', 'V'],
    [
      'an operation for it',
      later('surgery', { surgery: { reason: 'adverse-event' } }),
      'IIIb',
      'open from IIIa',
    ],
    [
      'an oncological operation',
      later('surgery', { surgery: { reason: 'oncological' } }),
      'none',
      'none',
    ],
    ['a dilatation', later('dilatation'), 'IIIa', 'open from IIIa'],
  ])('%s', (_name, event, agree, clavienDindo) => {
    const both = [adverse({}), event] as const;
    expect([grade('agree', ...both), grade('clavien-dindo', ...both)]).toEqual([
      agree,
      clavienDindo,
    ]);
  });
});

describe('events of which a grading does not speak', () => {
  it.each([
    ['2026-05-20', 'V', 'refused'],
    ['2026-06-20', 'refused', 'refused'],
  ])('a death on %s that the dissection did not cause', (day, agree, clavienDindo) => {
    const event = bare('death', day, { related: 'no' });
    expect([grade('agree', event), grade('clavien-dindo', event)]).toEqual([agree, clavienDindo]);
  });

  it('decisions and treatments have no grade', () => {
    expect(assessed(exampleEvent('stomach-meeting'), exampleEvent('stomach-surgery'))).toEqual([]);
  });
});

describe('grades as the unit states them', () => {
  it('stand beside those of the facts', () => {
    const [found] = assessed(adverse({}, { grades: { agree: 'II', clavienDindo: 'I' } }));
    expect(found?.findings.map(({ stated }) => stated)).toEqual(['II', 'I']);
    expect(grade('agree', adverse({}, { grades: { agree: 'II' } }))).toBe('none');
  });

  it('that contradict what another event tells are said to', () => {
    const stated = adverse({ intervention: undefined }, { grades: { agree: 'II' } });
    const dilated = eventOf({
      ...bare('dilatation', '2026-05-22'),
      event: { ...stated.event, value: 'EX-V-other' },
      causedBy: stated.event,
    });
    expect(assessed(stated)[0]?.conflicts).toEqual([]);
    expect(assessed(stated, dilated)[0]?.conflicts.map(({ remark }) => remark)).toEqual([
      'endoscopic-intervention-below-iiia',
    ]);
  });

  it.each([
    'stomach-bleeding',
    'duodenum-delayed-perforation',
    'colon-coagulation-syndrome',
    'oesophagus-stricture',
  ])('%s: the facts do not fall below the stated grades', (name) => {
    const { grades } = documentOf(name);
    const event = exampleEvent(name);
    for (const [rule, stated] of [
      ['agree', grades.agree],
      ['clavien-dindo', grades.clavienDindo],
    ]) {
      expect(GRADES).toContain(stated);
      expect([stated, `open from ${stated}`]).toContain(grade(rule, event));
    }
  });
});
