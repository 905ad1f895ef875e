import type { EventFields, ExaminationFields, WithdrawalFields } from '../../contract/index.js';
import { type CodeRef, setRefs } from '../code-ref.js';

type Words<Part, Field extends keyof NonNullable<Part>> = Record<
  Extract<NonNullable<NonNullable<Part>[Field]>, string>,
  CodeRef
>;
type WordsOfList<Part, Field extends keyof NonNullable<Part>> =
  NonNullable<NonNullable<Part>[Field]> extends readonly (infer Word extends string)[]
    ? Record<Word, CodeRef>
    : never;
type Course = EventFields['course'];
type Surgery = EventFields['surgery'];
type Scar = ExaminationFields['scar'];
type Grade = NonNullable<NonNullable<EventFields['grades']>['agree']>;

const GRADES = setRefs('ae-severity');

/** Words of events, of follow-up examinations and of withdrawals. */
export const AFTER_WORDS = {
  intervention: setRefs('intervention') satisfies Words<Course, 'intervention'>,
  criticalCare: setRefs('critical-care') satisfies Words<Course, 'criticalCare'>,
  bleedingSign: setRefs('bleeding-sign', {
    haematemesis: { open: ['dx-k92-0'] },
    melaena: { open: ['dx-k92-1'] },
  }) satisfies WordsOfList<EventFields['bleeding'], 'signs'>,
  perforationFinder: setRefs('perforation-finder') satisfies Words<
    EventFields['perforation'],
    'foundBy'
  >,
  surgeryReason: setRefs('surgery-reason') satisfies Words<Surgery, 'reason'>,
  operation: setRefs('operation') satisfies Words<Surgery, 'operation'>,
  residualTumour: setRefs('residual-tumour') satisfies Words<Surgery, 'residualTumour'>,
  primaryTumourAtSurgery: setRefs('primary-tumour') satisfies Words<Surgery, 'pT'>,
  nodeCategory: setRefs('node-category') satisfies Words<Surgery, 'pN'>,
  meetingDecision: setRefs('meeting-decision') satisfies Words<EventFields['meeting'], 'decision'>,
  noSurgeryReason: setRefs('no-surgery-reason') satisfies Words<EventFields['meeting'], 'reason'>,
  dilator: setRefs('dilator') satisfies Words<EventFields['dilatation'], 'means'>,
  declineReason: setRefs('decline-reason') satisfies Words<EventFields['decline'], 'reason'>,
  statusSource: setRefs('status-source') satisfies Words<EventFields['status'], 'learntFrom'>,
  /** Whether the dissection caused an event. */
  relation: setRefs('answer') satisfies Words<EventFields, 'related'>,
  mucosaView: setRefs('mucosa-view') satisfies Words<ExaminationFields['quality'], 'mucosaView'>,
  scarFinding: setRefs('scar-finding') satisfies Words<Scar, 'finding'>,
  tissueResult: setRefs('tissue-result') satisfies Words<Scar, 'biopsy'>,
  scarTreatment: setRefs('scar-treatment') satisfies WordsOfList<Scar, 'treatments'>,
  nextStep: setRefs('next-step') satisfies Words<ExaminationFields['next'], 'step'>,
  stopReason: setRefs('stop-reason') satisfies Words<ExaminationFields['next'], 'reason'>,
  withdrawalReason: setRefs('withdrawal-reason') satisfies Words<WithdrawalFields, 'reason'>,
  agreeGrade: {
    none: GRADES['agree-none'],
    I: GRADES['agree-i'],
    II: GRADES['agree-ii'],
    IIIa: GRADES['agree-iiia'],
    IIIb: GRADES['agree-iiib'],
    IVa: GRADES['agree-iva'],
    IVb: GRADES['agree-ivb'],
    V: GRADES['agree-v'],
  } satisfies Record<Grade, CodeRef>,
  clavienDindoGrade: {
    none: GRADES['clavien-dindo-none'],
    I: GRADES['clavien-dindo-i'],
    II: GRADES['clavien-dindo-ii'],
    IIIa: GRADES['clavien-dindo-iiia'],
    IIIb: GRADES['clavien-dindo-iiib'],
    IVa: GRADES['clavien-dindo-iva'],
    IVb: GRADES['clavien-dindo-ivb'],
    V: GRADES['clavien-dindo-v'],
  } satisfies Record<Grade, CodeRef>,
} as const;
