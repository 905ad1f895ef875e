import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type TableOf } from '../../rules/index.js';
import {
  ADVERSE_EVENT_FIELDS,
  type AdverseEvent,
  type Grade,
} from './adverse-event-fields.table.js';

const READ = [cite('clavienDindo2004', 'table, as reproduced', 'published')];
const DEVIATION = [
  cite('clavienDindo2004', 'any deviation from the normal course is grade I', 'derived'),
];
const INTERVENTIONS = ['endoscopic', 'radiological', 'surgical'] as const;

const FIELDS = {
  ...ADVERSE_EVENT_FIELDS,
  generalAnaesthesia: {
    ...ADVERSE_EVENT_FIELDS.generalAnaesthesia,
    askedWhen: [{ intervention: { is: INTERVENTIONS } }],
  },
} as const satisfies FieldsOf<AdverseEvent>;

const TABLE: TableOf<AdverseEvent, Grade> = [
  [
    {
      row: 'death',
      when: { death: { is: [true] } },
      class: 'V',
      says: 'death',
      cites: READ,
    },
  ],
  [
    {
      row: 'several-organs',
      when: { criticalCare: { is: ['multi-organ'] } },
      class: 'IVb',
      says: 'intermediate or intensive care with failure of several organs',
      cites: READ,
    },
  ],
  [
    {
      row: 'one-organ',
      when: { criticalCare: { is: ['single-organ'] } },
      class: 'IVa',
      says: 'intermediate or intensive care with failure of one organ',
      cites: READ,
    },
  ],
  [
    {
      row: 'under-general-anaesthesia',
      when: { intervention: { is: INTERVENTIONS }, generalAnaesthesia: { is: [true] } },
      class: 'IIIb',
      says: 'intervention under general anaesthesia',
      cites: READ,
    },
  ],
  [
    {
      row: 'without-general-anaesthesia',
      when: { intervention: { is: INTERVENTIONS } },
      class: 'IIIa',
      says: 'intervention without general anaesthesia',
      cites: READ,
    },
  ],
  [
    {
      row: 'transfusion',
      when: { transfusion: { is: [true] } },
      class: 'II',
      says: 'transfusion',
      cites: READ,
    },
    {
      row: 'drugs',
      when: { drugsBeyondGradeI: { is: [true] } },
      class: 'II',
      says: 'drugs beyond those of grade I',
      cites: READ,
    },
  ],
  [
    {
      row: 'emergency-visit',
      when: { emergencyVisit: { is: [true] } },
      class: 'I',
      says: 'visit to an emergency ward without treatment',
      cites: DEVIATION,
    },
    {
      row: 'admission',
      when: { admissionHours: { above: 0 } },
      class: 'I',
      says: 'admission without treatment',
      cites: DEVIATION,
    },
    {
      row: 'observation',
      when: { observationHours: { above: 0 } },
      class: 'I',
      says: 'longer observation without treatment',
      cites: DEVIATION,
    },
  ],
  [
    {
      row: 'nothing',
      when: {},
      class: 'none',
      says: 'nothing beyond the normal course',
      cites: [cite('clavienDindo2004', 'table, by complement', 'derived')],
    },
  ],
];

/** Source: clavienDindo2004. Indeterminate: an intervention whose anaesthesia is not known. */
export const CLAVIEN_DINDO = classRule({
  kind: 'classification',
  id: 'clavien-dindo',
  version: 1,
  title: 'Clavien-Dindo: severity of a surgical complication',
  population:
    'Complications of an operation. Grade III is divided by the anaesthesia, not by the kind of ' +
    'intervention: haemostasis through the endoscope under general anaesthesia is IIIb here.',
  cites: READ,
  fields: FIELDS,
  contradictions: [],
  table: TABLE,
  reasonsShown: [],
  remarks: [],
});
