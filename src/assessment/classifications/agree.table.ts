import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type TableOf } from '../../rules/index.js';
import {
  ADVERSE_EVENT_FIELDS,
  type AdverseEvent,
  type Grade,
} from './adverse-event-fields.table.js';

const READ = [cite('agree2022', 'table, as reproduced', 'published')];
const FOURTH = [cite('agree2022', 'table, grades IV and V; from memory', 'recalled')];
const COMPLEMENT = [cite('agree2022', 'limit between two grades, by complement', 'derived')];

const FIELDS = {
  ...ADVERSE_EVENT_FIELDS,
  generalAnaesthesia: { ...ADVERSE_EVENT_FIELDS.generalAnaesthesia, askedWhen: [] },
} as const satisfies FieldsOf<AdverseEvent>;

const TABLE: TableOf<AdverseEvent, Grade> = [
  [
    {
      row: 'death',
      when: { death: { is: [true] } },
      class: 'V',
      says: 'death',
      cites: FOURTH,
    },
  ],
  [
    {
      row: 'several-organs',
      when: { criticalCare: { is: ['multi-organ'] } },
      class: 'IVb',
      says: 'critical care with failure of several organs',
      cites: FOURTH,
    },
  ],
  [
    {
      row: 'one-organ',
      when: { criticalCare: { is: ['single-organ'] } },
      class: 'IVa',
      says: 'critical care with failure of one organ',
      cites: FOURTH,
    },
  ],
  [
    {
      row: 'surgery',
      when: { intervention: { is: ['surgical'] } },
      class: 'IIIb',
      says: 'surgical intervention',
      cites: [cite('agree2022', 'III without IIIa; second source', 'recalled')],
    },
  ],
  [
    {
      row: 'endoscopy-or-radiology',
      when: { intervention: { is: ['endoscopic', 'radiological'] } },
      class: 'IIIa',
      says: 'endoscopic or radiological intervention',
      cites: READ,
    },
  ],
  [
    {
      row: 'transfusion',
      when: { transfusion: { is: [true] } },
      class: 'II',
      says: 'blood products',
      cites: READ,
    },
    {
      row: 'drugs',
      when: { drugsBeyondGradeI: { is: [true] } },
      class: 'II',
      says: 'drugs beyond those of grade I',
      cites: READ,
    },
    {
      row: 'admission-above-24-h',
      when: { admissionHours: { above: 24 } },
      class: 'II',
      says: 'admission for more than 24 hours',
      cites: READ,
    },
  ],
  [
    {
      row: 'emergency-visit',
      when: { emergencyVisit: { is: [true] } },
      class: 'I',
      says: 'visit to an emergency ward without intervention',
      cites: READ,
    },
    {
      row: 'admission-below-24-h',
      when: { admissionHours: [{ above: 0 }, { below: 24 }] },
      class: 'I',
      says: 'admission for less than 24 hours',
      cites: READ,
    },
    {
      row: 'admission-24-h',
      when: { admissionHours: [{ atLeast: 24 }, { atMost: 24 }] },
      class: 'I',
      says: 'admission for 24 hours, which is not more than 24 hours',
      cites: COMPLEMENT,
    },
    {
      row: 'observation-3-h',
      when: { observationHours: { atLeast: 3 } },
      class: 'I',
      says: 'observation prolonged by 3 hours or more',
      cites: COMPLEMENT,
    },
  ],
  [
    {
      row: 'nothing',
      when: {},
      class: 'none',
      says: 'contact without intervention, observation prolonged by less than 3 hours, or nothing',
      cites: READ,
    },
  ],
];

/** Source: agree2022. Indeterminate: where something is said to be not known and decides. */
export const AGREE = classRule({
  kind: 'classification',
  id: 'agree',
  version: 1,
  title: 'AGREE: severity of an adverse event of an endoscopic procedure',
  population:
    'Adverse events within 30 days of an endoscopic procedure, however likely a link is. Grade III ' +
    'is divided by the kind of intervention, not by the anaesthesia.',
  cites: [...READ, ...FOURTH],
  fields: FIELDS,
  contradictions: [],
  table: TABLE,
  reasonsShown: [],
  remarks: [],
});
