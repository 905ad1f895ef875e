import { describe, expect, it } from 'vitest';
import { AGREE } from '../../../src/assessment/classifications/agree.table.js';
import { CLAVIEN_DINDO } from '../../../src/assessment/classifications/clavien-dindo.table.js';
import { disagreements, everyQuestion, shortAnswer } from '../scores/ask.js';

interface Event {
  readonly intervention: string;
  readonly generalAnaesthesia: boolean;
  readonly transfusion: boolean;
  readonly drugsBeyondGradeI: boolean;
  readonly emergencyVisit: boolean;
  readonly death: boolean;
  readonly admissionHours: number;
  readonly observationHours: number;
  readonly criticalCare: string;
}

// Source: Nass KJ et al. Gastrointest Endosc 2022;95:1078-1085, table as reproduced (none to IIIa),
// IIIb by complement (second source), IVa to V from memory, in plain words.
function agree(e: Event): string {
  if (e.death) return 'V';
  if (e.criticalCare === 'multi-organ') return 'IVb';
  if (e.criticalCare === 'single-organ') return 'IVa';
  if (e.intervention === 'surgical') return 'IIIb';
  if (e.intervention !== 'none') return 'IIIa';
  if (e.transfusion || e.drugsBeyondGradeI || e.admissionHours > 24) return 'II';
  if (e.emergencyVisit || e.admissionHours > 0 || e.observationHours >= 3) return 'I';
  return 'none';
}

// Source: Dindo D et al. Ann Surg 2004;240:205-213, table as reproduced: grade III is divided by
// the anaesthesia; any deviation from the normal course is grade I.
function clavienDindo(e: Event): string {
  if (e.death) return 'V';
  if (e.criticalCare === 'multi-organ') return 'IVb';
  if (e.criticalCare === 'single-organ') return 'IVa';
  if (e.intervention !== 'none') return e.generalAnaesthesia ? 'IIIb' : 'IIIa';
  if (e.transfusion || e.drugsBeyondGradeI) return 'II';
  if (e.emergencyVisit || e.admissionHours > 0 || e.observationHours > 0) return 'I';
  return 'none';
}

const FLAGS = [false, true];
const EVERY = everyQuestion<Event>({
  intervention: ['none', 'endoscopic', 'radiological', 'surgical'],
  generalAnaesthesia: FLAGS,
  transfusion: FLAGS,
  drugsBeyondGradeI: FLAGS,
  emergencyVisit: FLAGS,
  death: FLAGS,
  admissionHours: [0, 0.5, 1, 23, 24, 24.5, 25],
  observationHours: [0, 1, 2.5, 3, 4],
  criticalCare: ['none', 'single-organ', 'multi-organ'],
});

describe.each([
  ['AGREE', AGREE, agree, clavienDindo],
  ['Clavien-Dindo', CLAVIEN_DINDO, clavienDindo, agree],
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
