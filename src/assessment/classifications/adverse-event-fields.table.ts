import type { FieldsOf } from '../../rules/index.js';

/** What happened after a procedure, as both grades of adverse events read it. */
export type AdverseEvent = {
  readonly intervention: 'none' | 'endoscopic' | 'radiological' | 'surgical';
  readonly generalAnaesthesia: boolean;
  readonly transfusion: boolean;
  readonly drugsBeyondGradeI: boolean;
  readonly emergencyVisit: boolean;
  readonly death: boolean;
  readonly admissionHours: number;
  readonly observationHours: number;
  readonly criticalCare: 'none' | 'single-organ' | 'multi-organ';
};

const GRADES = ['none', 'I', 'II', 'IIIa', 'IIIb', 'IVa', 'IVb', 'V'] as const;
export type Grade = (typeof GRADES)[number];

const NOT_SO = [{ when: {}, value: false }] as const;
const NO_HOURS = [{ when: {}, value: 0 }] as const;

/** A field that is absent says that it did not happen; null says that it is not known. */
export const ADVERSE_EVENT_FIELDS = {
  intervention: {
    type: 'word',
    words: ['none', 'endoscopic', 'radiological', 'surgical'],
    says: 'the gravest intervention for the event',
    assumed: [{ when: {}, value: 'none' }],
  },
  generalAnaesthesia: { type: 'flag', says: 'the intervention was under general anaesthesia' },
  transfusion: { type: 'flag', says: 'blood products were given', assumed: NOT_SO },
  drugsBeyondGradeI: {
    type: 'flag',
    says: 'drugs beyond antiemetics, antipyretics, analgesics and electrolytes',
    assumed: NOT_SO,
  },
  emergencyVisit: {
    type: 'flag',
    says: 'visit to an emergency ward without intervention',
    assumed: NOT_SO,
  },
  death: { type: 'flag', says: 'died of it', assumed: NOT_SO },
  admissionHours: {
    type: 'number',
    unit: 'h',
    from: 0,
    to: 100_000,
    says: 'length of an admission, or of its prolongation',
    assumed: NO_HOURS,
  },
  observationHours: {
    type: 'number',
    unit: 'h',
    from: 0,
    to: 100_000,
    says: 'how much longer the patient was observed',
    assumed: NO_HOURS,
  },
  criticalCare: {
    type: 'word',
    words: ['none', 'single-organ', 'multi-organ'],
    says: 'critical care, by the organs that failed',
    assumed: [{ when: {}, value: 'none' }],
  },
} as const satisfies FieldsOf<AdverseEvent>;
