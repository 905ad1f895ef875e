import { describe, expect, it } from 'vitest';
import { ADVERSE_EVENTS, EVENT_CHECKS, EVENT_KINDS } from '../../../src/contract/index.js';
import type { Fields } from '../changed.js';
import { example, rulesOf } from './sound-event.js';

interface Edge {
  readonly rule: string;
  readonly says: string;
  readonly of: string;
  readonly last: Fields;
  readonly beyond: Fields;
}

const BARE: Fields = { course: undefined, grades: undefined, bleeding: undefined };

/** The last value that is no contradiction, and the first that is one. */
const EDGES: readonly Edge[] = [
  // CC-11: common practice, no source.
  {
    rule: 'CC-11',
    says: 'haemostasis through the endoscope is AGREE IIIa, and not II',
    of: 'stomach-bleeding',
    last: { 'grades.agree': 'IIIa' },
    beyond: { 'grades.agree': 'II' },
  },
  {
    rule: 'CC-11',
    says: 'radiology is another matter, here',
    of: 'stomach-bleeding',
    last: { 'course.intervention': 'radiological', 'grades.agree': 'II' },
    beyond: { 'grades.agree': 'none' },
  },
  {
    rule: 'CC-11',
    says: 'V stands in both or in neither',
    of: 'stomach-bleeding',
    last: { 'course.died': true, 'grades.agree': 'V', 'grades.clavienDindo': 'V' },
    beyond: { 'course.died': undefined, 'grades.agree': 'V', 'grades.clavienDindo': 'IVb' },
  },
  {
    rule: 'CC-11',
    says: 'from the other side, too',
    of: 'stomach-bleeding',
    last: { 'course.died': true, 'grades.agree': undefined, 'grades.clavienDindo': 'V' },
    beyond: { 'course.died': undefined, 'grades.agree': 'IVb', 'grades.clavienDindo': 'V' },
  },
  // Grade V is death: AGREE (from memory), Clavien-Dindo (read).
  {
    rule: 'grade-of-death',
    says: 'who died has grade V',
    of: 'stomach-bleeding',
    last: { 'course.died': true, grades: { clavienDindo: 'V' } },
    beyond: { 'course.died': true, grades: { clavienDindo: 'IVb' } },
  },
  {
    rule: 'grade-of-death',
    says: 'who did not die has not, and who may have died may have it',
    of: 'stomach-bleeding',
    last: { 'course.died': undefined, grades: { agree: 'V' } },
    beyond: { 'course.died': false, grades: { agree: 'V' } },
  },
  {
    rule: 'grade-of-death',
    says: 'a death of any cause',
    of: 'stomach-death',
    last: { grades: { agree: 'V', clavienDindo: 'V' } },
    beyond: { grades: { agree: 'none' } },
  },
  // UICC TNM, from memory: pN0 has no positive nodes, pN1c is deposits without them.
  {
    rule: 'node-category',
    says: 'pN1 has a node',
    of: 'stomach-surgery',
    last: { 'surgery.nodesPositive': 1 },
    beyond: { 'surgery.nodesPositive': 0 },
  },
  {
    rule: 'node-category',
    says: 'pN1c has none, pN0 neither',
    of: 'stomach-surgery',
    last: { 'surgery.pN': 'pN1c', 'surgery.nodesPositive': 0 },
    beyond: { 'surgery.pN': 'pN0', 'surgery.nodesPositive': 1 },
  },
  {
    rule: 'nodes-positive',
    says: 'all nodes may be positive',
    of: 'stomach-surgery',
    last: { 'surgery.nodesPositive': 34 },
    beyond: { 'surgery.nodesPositive': 35 },
  },
  {
    rule: 'residue-category',
    says: 'dysplasia is no T',
    of: 'stomach-surgery',
    last: { 'surgery.residualTumour': 'dysplasia', 'surgery.pT': 'pT0' },
    beyond: { 'surgery.residualTumour': 'carcinoma', 'surgery.pT': 'pT0' },
  },
  // Project rules.
  {
    rule: 'decision-reason',
    says: 'a reason goes with the decision against surgery',
    of: 'rectum-meeting',
    last: {},
    beyond: { 'meeting.decision': 'further-staging' },
  },
  {
    rule: 'part-of-another-kind',
    says: 'fever has no signs of bleeding, bleeding may have fever',
    of: 'stomach-bleeding',
    last: { inflammation: { highestTemperatureC: 38 } },
    beyond: { kind: 'fever' },
  },
  {
    rule: 'part-of-another-kind',
    says: 'a death is graded and has no course',
    of: 'stomach-death',
    last: { grades: { agree: 'V' } },
    beyond: { course: { died: true } },
  },
  {
    rule: 'part-missing',
    says: 'a dilatation may be undescribed, an operation not',
    of: 'oesophagus-dilatation',
    last: { dilatation: undefined },
    beyond: { kind: 'surgery', dilatation: undefined },
  },
  {
    rule: 'kind-denied',
    says: 'a bleeding without readmission is one, a readmission without is none',
    of: 'stomach-bleeding',
    last: { 'course.readmitted': false },
    beyond: { kind: 'readmission', bleeding: undefined, 'course.readmitted': false },
  },
  {
    rule: 'kind-denied',
    says: 'and so is the visit',
    of: 'stomach-emergency-visit',
    last: { 'course.emergencyVisit': undefined },
    beyond: { 'course.emergencyVisit': false },
  },
  {
    rule: 'own-cause',
    says: 'the number alone is not the event',
    of: 'oesophagus-dilatation',
    last: { causedBy: { system: 'urn:oid:2.999.1.99', value: 'EX-V-2026-005' } },
    beyond: { causedBy: { system: 'urn:oid:2.999.1.12', value: 'EX-V-2026-005' } },
  },
  {
    rule: 'day-of-time',
    says: 'a sender in universal time may be on the day before',
    of: 'stomach-bleeding',
    last: { occurredAt: '2026-05-09T22:30:00Z' },
    beyond: { occurredAt: '2026-05-09T09:59:59Z', 'course.intervenedAt': undefined },
  },
  {
    rule: 'day-of-time',
    says: 'and at the other end of the world on the day after',
    of: 'stomach-bleeding',
    last: { occurredAt: '2026-05-11T11:59:59Z', 'course.intervenedAt': undefined },
    beyond: { occurredAt: '2026-05-11T12:00:00Z', 'course.intervenedAt': undefined },
  },
  {
    rule: 'sent-before-it-happened',
    says: 'a message may be sent as it happens',
    of: 'stomach-bleeding',
    last: { sentAt: '2026-05-10T00:40:00Z', ...BARE },
    beyond: { sentAt: '2026-05-10T00:39:59Z', ...BARE },
  },
  {
    rule: 'sent-before-it-happened',
    says: 'on the day where the day comes first, UTC+14',
    of: 'rectum-meeting',
    last: { sentAt: '2026-04-08T10:00:00Z' },
    beyond: { sentAt: '2026-04-08T09:59:59Z' },
  },
  {
    rule: 'sent-before-it-happened',
    says: 'nor before the intervention',
    of: 'oesophagus-stricture',
    last: { sentAt: '2026-07-03T08:20:00Z' },
    beyond: { sentAt: '2026-07-03T08:19:59Z' },
  },
  {
    rule: 'sent-before-it-happened',
    says: 'nor before it is over',
    of: 'stomach-bleeding',
    last: { 'course.resolvedOn': '2026-05-14', sentAt: '2026-05-13T10:00:00Z' },
    beyond: { 'course.resolvedOn': '2026-05-14', sentAt: '2026-05-13T09:59:59Z' },
  },
  {
    rule: 'course-before-onset',
    says: 'an intervention may fall together with the onset',
    of: 'stomach-bleeding',
    last: { 'course.intervenedAt': '2026-05-10T00:40:00Z' },
    beyond: { 'course.intervenedAt': '2026-05-10T00:39:59Z' },
  },
  {
    rule: 'course-before-onset',
    says: 'of an onset whose day alone is known',
    of: 'stomach-bleeding',
    last: { occurredAt: undefined, 'course.intervenedAt': '2026-05-09T10:00:00Z' },
    beyond: { occurredAt: undefined, 'course.intervenedAt': '2026-05-09T09:59:59Z' },
  },
  {
    rule: 'course-before-onset',
    says: 'and it may be over on its day',
    of: 'stomach-bleeding',
    last: { 'course.resolvedOn': '2026-05-10' },
    beyond: { 'course.resolvedOn': '2026-05-09' },
  },
  {
    rule: 'status-of-the-future',
    says: 'a status covers the day on which it was learnt',
    of: 'stomach-status',
    last: { 'status.untilOn': '2026-03-06' },
    beyond: { 'status.untilOn': '2026-03-07' },
  },
  {
    rule: 'intervention-denied',
    says: 'nothing done is nothing told',
    of: 'stomach-bleeding',
    last: {
      'course.intervention': 'none',
      'course.intervenedAt': undefined,
      'bleeding.haemostasis': [],
    },
    beyond: { 'course.intervention': 'none', 'bleeding.haemostasis': [] },
  },
  {
    rule: 'intervention-denied',
    says: 'and no anaesthesia was given',
    of: 'colon-coagulation-syndrome',
    last: { 'course.underGeneralAnaesthesia': false },
    beyond: { 'course.underGeneralAnaesthesia': true },
  },
];

describe('the edges of the rules across fields of an event', () => {
  it.each(EDGES)('$rule: $says', ({ rule, of, last, beyond }) => {
    expect(rulesOf(of, last)).toEqual([]);
    expect(new Set(rulesOf(of, beyond))).toEqual(new Set([rule]));
  });

  it('are known for every rule', () => {
    expect(new Set(EDGES.map(({ rule }) => rule))).toEqual(
      new Set(EVENT_CHECKS.map(({ rule }) => rule)),
    );
  });
});

/** A field that is absent was not told: no rule may read it as a "no". */
describe('the rules across fields of an event, where fields are missing', () => {
  it('say nothing of required fields alone, whatever the kind', () => {
    const needs = {
      surgery: 'surgery',
      'meeting-decision': 'meeting',
      'status-at-30-days': 'status',
    };
    for (const kind of EVENT_KINDS) {
      const problems = rulesOf('rectum-lost', { kind });
      expect(problems, kind).toEqual(kind in needs ? ['part-missing'] : []);
    }
    expect(EVENT_CHECKS.flatMap(({ broken }) => broken({}))).toEqual([]);
  });
});

// Worked example of the gradings: haemostasis through the endoscope under general anaesthesia is
// AGREE IIIa (Nass 2022, by the kind of intervention) and Clavien-Dindo IIIb (Dindo 2004, by the
// anaesthesia).
describe('two gradings of one event', () => {
  it('may differ: IIIa and IIIb of an endoscopy under general anaesthesia', () => {
    const told = { 'course.underGeneralAnaesthesia': true, 'grades.clavienDindo': 'IIIb' };
    expect(rulesOf('stomach-bleeding', told)).toEqual([]);
    expect(rulesOf('stomach-bleeding', { ...told, 'grades.agree': 'I' })).toEqual(['CC-11']);
  });
});

// Facts to store of a delayed bleeding, so that each published definition can be derived: onset,
// signs, haemoglobin before and lowest, intervention, transfusion, readmission (BEST-J validation
// 2024; WJG 2014;20:1839).
describe('the facts of a delayed bleeding', () => {
  it('have a place each', () => {
    const { occurredAt, bleeding, haemoglobin, course } = Object.assign(
      { occurredAt: '', bleeding: {}, haemoglobin: {}, course: {} },
      example('stomach-bleeding'),
    );
    expect(occurredAt).toMatch(/T\d\d:/);
    expect(Object.keys(bleeding)).toEqual(['signs', 'confirmedAtEndoscopy', 'haemostasis']);
    expect(Object.keys(haemoglobin)).toEqual(['beforeGPerDl', 'lowestGPerDl']);
    expect(Object.keys(course)).toEqual(
      expect.arrayContaining(['intervention', 'transfusionUnits', 'readmitted', 'emergencyVisit']),
    );
    expect(rulesOf('stomach-bleeding', {})).toEqual([]);
  });

  it.each([89, 0.9])('are in g/dL: %s is none', (lowest) => {
    expect(rulesOf('stomach-bleeding', { 'haemoglobin.lowestGPerDl': lowest })).toEqual([
      'out-of-range',
    ]);
  });

  it('can be told of each adverse event but the signs, which are those of bleeding', () => {
    for (const kind of ADVERSE_EVENTS) {
      expect(rulesOf('stomach-bleeding', { kind, bleeding: undefined })).toEqual([]);
    }
  });
});
