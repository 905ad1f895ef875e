import { describe, expect, it } from 'vitest';
import { AGREE } from '../../../src/assessment/classifications/agree.table.js';
import { CLAVIEN_DINDO } from '../../../src/assessment/classifications/clavien-dindo.table.js';
import { everyQuestion } from '../../support/every-question.js';
import { disagreements, shortAnswer } from '../scores/ask.js';
import { AGREE_SECOND, CLAVIEN_DINDO_SECOND } from './second-grades.js';

const EVERY = everyQuestion(AGREE_SECOND.choices);

describe.each([
  ['AGREE', AGREE, AGREE_SECOND.says, CLAVIEN_DINDO_SECOND.says],
  ['Clavien-Dindo', CLAVIEN_DINDO, CLAVIEN_DINDO_SECOND.says, AGREE_SECOND.says],
] as const)('%s', (_name, rule, own, other) => {
  it('agrees with a second writing of its definitions on every event', () => {
    expect(EVERY).toHaveLength(4 * 2 ** 5 * 7 * 5 * 3);
    expect(disagreements(rule, EVERY, own)).toEqual([]);
  });

  it('would be caught with the definitions of the other', () => {
    expect(disagreements(rule, EVERY, other).length).toBeGreaterThan(0);
  });

  it('reads what is left out as what did not happen', () => {
    expect(shortAnswer(rule, {})).toBe('none');
  });

  it.each([
    [{ death: null }, 'indeterminate;missing=death'],
    [{ death: true, transfusion: null }, 'V'],
    [{ admissionHours: null, transfusion: true }, 'II'],
    [
      { admissionHours: null, criticalCare: null },
      'indeterminate;missing=admissionHours,criticalCare',
    ],
    [{ observationHours: null, emergencyVisit: true }, 'I'],
    [{ observationHours: null }, 'indeterminate;missing=observationHours'],
    [{ admissionHours: -1 }, '(out-of-range /admissionHours)'],
    [{ intervention: 'angiography' }, '(not-in-list /intervention)'],
    [{ grade: 'II' }, '(unknown-field /grade)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(rule, document)).toBe(expected);
  });
});

describe('anaesthesia of an intervention', () => {
  it.each([
    [{ intervention: 'endoscopic' }, 'IIIa', 'indeterminate;missing=generalAnaesthesia'],
    [{ intervention: 'surgical' }, 'IIIb', 'indeterminate;missing=generalAnaesthesia'],
    [{ intervention: 'endoscopic', generalAnaesthesia: true }, 'IIIa', 'IIIb'],
    [{ intervention: 'surgical', generalAnaesthesia: false }, 'IIIb', 'IIIa'],
    [{ intervention: 'radiological', generalAnaesthesia: null, death: true }, 'V', 'V'],
    [
      { intervention: null },
      'indeterminate;missing=intervention',
      'indeterminate;missing=intervention,generalAnaesthesia',
    ],
  ])('%j: AGREE %s, Clavien-Dindo %s', (document, inAgree, inClavienDindo) => {
    expect(shortAnswer(AGREE, document)).toBe(inAgree);
    expect(shortAnswer(CLAVIEN_DINDO, document)).toBe(inClavienDindo);
  });
});
