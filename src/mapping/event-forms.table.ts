import type { AdverseEventKind, EventKind } from '../contract/index.js';
import {
  answer,
  coded,
  type FindingRow,
  type ItemKey,
  measured,
  type PartRow,
  part,
  time,
} from './finding-row.js';

/** Adverse events are Conditions, treatments Procedures, all other events Observations. */
type EventForm =
  | { readonly as: 'Condition'; readonly complication: AdverseEventKind }
  | { readonly as: 'Procedure' }
  | { readonly as: 'Observation'; readonly item: ItemKey };

const condition = (complication: AdverseEventKind): EventForm => ({
  as: 'Condition',
  complication,
});
const observation = (item: ItemKey): EventForm => ({ as: 'Observation', item });
const PROCEDURE: EventForm = { as: 'Procedure' };

export const EVENT_FORMS: Readonly<Record<EventKind, EventForm>> = {
  'delayed-bleeding': condition('delayed-bleeding'),
  'delayed-perforation': condition('delayed-perforation'),
  stricture: condition('stricture'),
  'coagulation-syndrome': condition('coagulation-syndrome'),
  fever: condition('fever'),
  infection: condition('infection'),
  'aspiration-pneumonia': condition('aspiration-pneumonia'),
  thromboembolism: condition('thromboembolism'),
  cardiopulmonary: condition('cardiopulmonary'),
  pancreatitis: condition('pancreatitis'),
  'other-adverse-event': condition('other-adverse-event'),
  surgery: PROCEDURE,
  dilatation: PROCEDURE,
  readmission: observation('readmission'),
  'emergency-visit': observation('emergency-visit'),
  'meeting-decision': observation('meeting-decision'),
  death: observation('death'),
  'follow-up-declined': observation('follow-up-declined'),
  'lost-to-follow-up': observation('lost-to-follow-up'),
  'status-at-30-days': observation('event-free-until'),
};

type Rows = readonly FindingRow[];

const panel = (
  item: ItemKey,
  category: FindingRow['category'],
  parts: readonly PartRow[],
): FindingRow => ({ item, category, about: 'session', parts });

/** What an event that is an Observation says; without a row that it happened is all. */
export const EVENT_VALUES: Rows = [
  {
    item: 'meeting-decision',
    category: 'procedure',
    about: 'session',
    value: coded('/meeting/decision', 'meetingDecision'),
    parts: [part('no-surgery-reason', coded('/meeting/reason', 'noSurgeryReason'))],
  },
  {
    item: 'follow-up-declined',
    category: 'survey',
    about: 'session',
    parts: [part('decline-reason', coded('/decline/reason', 'declineReason'))],
  },
  {
    item: 'event-free-until',
    category: 'survey',
    about: 'session',
    value: time('/status/untilOn'),
    parts: [part('status-source', coded('/status/learntFrom', 'statusSource'))],
  },
];

/** What is told of an event, as panels; one that nothing is told of is left out. */
export const EVENT_PANELS: Rows = [
  panel('event-course', 'procedure', [
    part('caused-by-dissection', coded('/related', 'relation')),
    part('intervention', coded('/course/intervention', 'intervention')),
    part('intervention-time', time('/course/intervenedAt')),
    part('under-general-anaesthesia', answer('/course/underGeneralAnaesthesia')),
    part('transfused-units', measured('/course/transfusionUnits', 'one')),
    part('drugs-beyond-grade-i', answer('/course/drugsBeyondGradeI')),
    part('emergency-visit', answer('/course/emergencyVisit')),
    part('readmission', answer('/course/readmitted')),
    part('admission-duration', measured('/course/admissionHours', 'h')),
    part('longer-observation', measured('/course/observationHours', 'h')),
    part('critical-care', coded('/course/criticalCare', 'criticalCare')),
    part('died-of-event', answer('/course/died')),
    part('resolved-on', time('/course/resolvedOn')),
  ]),
  panel('haemoglobin-course', 'laboratory', [
    part('haemoglobin-before', measured('/haemoglobin/beforeGPerDl', 'gPerDl')),
    part('haemoglobin-lowest', measured('/haemoglobin/lowestGPerDl', 'gPerDl')),
  ]),
  panel('late-bleeding-findings', 'exam', [
    {
      code: 'bleeding-sign',
      at: '/bleeding/signs',
      kind: 'each',
      words: 'bleedingSign',
      noneIsNo: true,
    },
    part('bleeding-confirmed', answer('/bleeding/confirmedAtEndoscopy')),
    {
      code: 'late-haemostasis',
      at: '/bleeding/haemostasis',
      kind: 'each',
      words: 'haemostasisMeans',
      noneIsNo: true,
    },
  ]),
  panel('late-perforation-findings', 'exam', [
    part('perforation-found-by', coded('/perforation/foundBy', 'perforationFinder')),
    part('perforation-size', measured('/perforation/sizeMm', 'mm')),
    part('peritonitis', answer('/perforation/peritonitis')),
  ]),
  panel('inflammation-findings', 'exam', [
    part('highest-temperature', measured('/inflammation/highestTemperatureC', 'degreeCelsius')),
    part('peritoneal-pain', answer('/inflammation/peritonealPain')),
    part('c-reactive-protein', measured('/inflammation/crpMgPerL', 'mgPerL')),
    part('extraluminal-air', answer('/inflammation/extraluminalAir')),
  ]),
  panel('stricture-findings', 'exam', [
    part('gastroscope-passes', answer('/stricture/gastroscopePasses')),
    part('narrowest-diameter', measured('/stricture/narrowestMm', 'mm')),
    part('dysphagia-grade', measured('/stricture/dysphagiaGrade', 'score')),
  ]),
  panel('surgery-findings', 'procedure', [
    part('surgery-reason', coded('/surgery/reason', 'surgeryReason')),
    part('residual-tumour', coded('/surgery/residualTumour', 'residualTumour')),
    part('nodes-examined', measured('/surgery/nodesExamined', 'one')),
    part('nodes-positive', measured('/surgery/nodesPositive', 'one')),
    part('distant-metastasis', answer('/surgery/distantMetastasis')),
    part('pathological-t', coded('/surgery/pT', 'primaryTumourAtSurgery')),
    part('pathological-n', coded('/surgery/pN', 'nodeCategory')),
    part('tnm-edition', coded('/surgery/tnmEdition', 'tnmEdition')),
  ]),
  panel('dilatation-details', 'procedure', [
    part('dilatation-number', measured('/dilatation/number', 'one')),
    part('dilator', coded('/dilatation/means', 'dilator')),
    part('dilatation-diameter', measured('/dilatation/diameterMm', 'mm')),
    part('steroid-injected', answer('/dilatation/steroidInjected')),
  ]),
];
