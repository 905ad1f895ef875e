import {
  ANSWERS,
  type CodeRef,
  codeableConcept,
  UNITS,
  WORD_CODES,
} from '../../src/terminology/index.js';
import type { Draft } from '../support/consistent-case.js';
import type { FieldSource, JournalOnly, Scope, Tables, Told } from './explain.js';

type Says = FieldSource['says'];
type Words = keyof typeof WORD_CODES;

/** FHIR R4 extension "Precision"; its value counts the decimals that were sent. */
const PRECISION = 'http://hl7.org/fhir/StructureDefinition/quantity-precision';

const concept = (ref: CodeRef, { settings }: Told) => codeableConcept(ref, settings.licences);
const word =
  (list: Words): Says =>
  ({ value }, told) => {
    const refs: Readonly<Record<string, CodeRef>> = WORD_CODES[list];
    const ref = refs[value];
    return ref === undefined ? undefined : concept(ref, told);
  };
const answer: Says = ({ value }, told) => concept(ANSWERS[value ? 'yes' : 'no'], told);
const none: Says = ({ value }, told) =>
  Array.isArray(value) ? concept(ANSWERS.no, told) : undefined;
const same: Says = ({ value }) => value;
const reference =
  (type?: string): Says =>
  ({ value }) => ({ ...(type === undefined ? {} : { type }), identifier: value });
const as =
  (unit: keyof typeof UNITS): Says =>
  ({ value, pointer }, { version }) => {
    const [message] = [...version.now.events, ...version.now.examinations];
    const decimals = message?.decimals[pointer];
    return {
      value,
      ...(decimals === undefined
        ? {}
        : { _value: { extension: [{ url: PRECISION, valueInteger: decimals }] } }),
      ...UNITS[unit],
    };
  };

type Row = readonly [at: string, place: string, path: string, says: Says];

/** Parts of a panel: pointer, code of the component, element, oracle. */
const parts = (
  item: string,
  base: string,
  ...rows: readonly (readonly [field: string, code: string, says: Says])[]
): readonly Row[] =>
  rows.map(([field, code, says]) => [
    `${base}/${field}`,
    `Observation ${item}.*`,
    `component[${code}].${elementOf(says)}`,
    says,
  ]);

const QUANTITIES = new WeakSet<Says>();
const q = (unit: keyof typeof UNITS): Says => {
  const says = as(unit);
  QUANTITIES.add(says);
  return says;
};
const elementOf = (says: Says): string =>
  QUANTITIES.has(says) ? 'valueQuantity' : says === same ? 'valueDateTime' : 'valueCodeableConcept';

const EVENT_ROWS: readonly Row[] = [
  ['/event', '* *', 'identifier[]', same],
  ['/causedBy', '* *', 'extension[].valueReference', reference()],
  ['/causedBy', '* *', 'reasonReference[]', reference()],
  ['/causedBy', '* *', 'focus[]', reference()],
  ['/occurredOn', '* *', 'onsetDateTime', same],
  ['/occurredOn', '* *', 'performedDateTime', same],
  ['/occurredOn', '* *', 'effectiveDateTime', same],
  ['/occurredAt', '* *', 'onsetDateTime', same],
  ['/occurredAt', '* *', 'performedDateTime', same],
  ['/occurredAt', '* *', 'effectiveDateTime', same],
  [
    '/kind',
    '* {kind}.*',
    'resourceType',
    (_leaf, told) => (told.resources.length > 0 ? undefined : ''),
  ],
  ...parts('event-course', '', ['related', 'caused-by-dissection', word('relation')]),
  ...parts(
    'event-course',
    '/course',
    ['intervention', 'intervention', word('intervention')],
    ['intervenedAt', 'intervention-time', same],
    ['underGeneralAnaesthesia', 'under-general-anaesthesia', answer],
    ['transfusionUnits', 'transfused-units', q('one')],
    ['drugsBeyondGradeI', 'drugs-beyond-grade-i', answer],
    ['emergencyVisit', 'emergency-visit', answer],
    ['readmitted', 'readmission', answer],
    ['admissionHours', 'admission-duration', q('h')],
    ['observationHours', 'longer-observation', q('h')],
    ['criticalCare', 'critical-care', word('criticalCare')],
    ['died', 'died-of-event', answer],
    ['resolvedOn', 'resolved-on', same],
  ),
  [
    '/grades/agree',
    'Observation ae-severity.agree.*',
    'component[stated-grade].valueCodeableConcept',
    word('agreeGrade'),
  ],
  [
    '/grades/clavienDindo',
    'Observation ae-severity.clavien-dindo.*',
    'component[stated-grade].valueCodeableConcept',
    word('clavienDindoGrade'),
  ],
  ...parts(
    'haemoglobin-course',
    '/haemoglobin',
    ['beforeGPerDl', 'haemoglobin-before', q('gPerDl')],
    ['lowestGPerDl', 'haemoglobin-lowest', q('gPerDl')],
  ),
  ...parts(
    'late-bleeding-findings',
    '/bleeding',
    ['signs/*', 'bleeding-sign', word('bleedingSign')],
    ['signs', 'bleeding-sign', none],
    ['confirmedAtEndoscopy', 'bleeding-confirmed', answer],
    ['haemostasis/*', 'late-haemostasis', word('haemostasisMeans')],
    ['haemostasis', 'late-haemostasis', none],
  ),
  ...parts(
    'late-perforation-findings',
    '/perforation',
    ['foundBy', 'perforation-found-by', word('perforationFinder')],
    ['sizeMm', 'perforation-size', q('mm')],
    ['peritonitis', 'peritonitis', answer],
  ),
  ...parts(
    'inflammation-findings',
    '/inflammation',
    ['highestTemperatureC', 'highest-temperature', q('degreeCelsius')],
    ['peritonealPain', 'peritoneal-pain', answer],
    ['crpMgPerL', 'c-reactive-protein', q('mgPerL')],
    ['extraluminalAir', 'extraluminal-air', answer],
  ),
  ...parts(
    'stricture-findings',
    '/stricture',
    ['gastroscopePasses', 'gastroscope-passes', answer],
    ['narrowestMm', 'narrowest-diameter', q('mm')],
    ['dysphagiaGrade', 'dysphagia-grade', q('score')],
  ),
  ...parts(
    'surgery-findings',
    '/surgery',
    ['reason', 'surgery-reason', word('surgeryReason')],
    ['residualTumour', 'residual-tumour', word('residualTumour')],
    ['nodesExamined', 'nodes-examined', q('one')],
    ['nodesPositive', 'nodes-positive', q('one')],
    ['distantMetastasis', 'distant-metastasis', answer],
    ['pT', 'pathological-t', word('primaryTumourAtSurgery')],
    ['pN', 'pathological-n', word('nodeCategory')],
    ['tnmEdition', 'tnm-edition', word('tnmEdition')],
  ),
  ['/surgery/operation', 'Procedure surgery.*', 'code', word('operation')],
  [
    '/meeting/decision',
    'Observation meeting-decision.*',
    'valueCodeableConcept',
    word('meetingDecision'),
  ],
  ...parts('meeting-decision', '/meeting', [
    'reason',
    'no-surgery-reason',
    word('noSurgeryReason'),
  ]),
  ...parts(
    'dilatation-details',
    '/dilatation',
    ['number', 'dilatation-number', q('one')],
    ['means', 'dilator', word('dilator')],
    ['diameterMm', 'dilatation-diameter', q('mm')],
    ['steroidInjected', 'steroid-injected', answer],
  ),
  ['/decline/request', 'Observation follow-up-declined.*', 'focus[]', reference('ServiceRequest')],
  ...parts('follow-up-declined', '/decline', ['reason', 'decline-reason', word('declineReason')]),
  ['/status/untilOn', 'Observation status-at-30-days.*', 'valueDateTime', same],
  ...parts('status-at-30-days', '/status', ['learntFrom', 'status-source', word('statusSource')]),
];

const EXAMINATION_ROWS: readonly Row[] = [
  ['/examination', 'Procedure follow-up.*', 'identifier[]', same],
  ['/examinedOn', '* *', 'performedDateTime', same],
  ['/examinedAt', 'Procedure follow-up.*', 'performedDateTime', same],
  ['/answers', 'Procedure follow-up.*', 'basedOn[]', reference('ServiceRequest')],
  ['/endoscopist', 'Procedure follow-up.*', 'performer[].actor', reference('Practitioner')],
  ...parts(
    'examination-quality',
    '/quality',
    ['complete', 'examination-complete', answer],
    ['mucosaView', 'mucosa-view', word('mucosaView')],
    ['chromoendoscopy/*', 'chromoendoscopy', word('chromoendoscopy')],
    ['chromoendoscopy', 'chromoendoscopy', none],
    ['inspectionMin', 'inspection-duration', q('min')],
  ),
  ...parts(
    'bowel-preparation',
    '/quality/bowelPreparation',
    ['right', 'bbps-right', q('score')],
    ['transverse', 'bbps-transverse', q('score')],
    ['left', 'bbps-left', q('score')],
  ),
  ['/scar/seen', 'Observation scar-seen.*', 'valueCodeableConcept', answer],
  ['/scar/finding', 'Observation scar-finding.*', 'valueCodeableConcept', word('scarFinding')],
  ...parts('scar-finding', '/scar', ['sizeMm', 'scar-lesion-length', q('mm')]),
  ['/scar/biopsy', 'Observation scar-biopsy.*', 'valueCodeableConcept', word('tissueResult')],
  ['/scar/treatments', 'Observation scar-treatment.*', 'valueCodeableConcept', none],
  ['/scar/treatments/*', 'Observation scar-treatment.*', 'component[].code', word('scarTreatment')],
  ['/newLesions', 'Observation metachronous-lesions.*', 'valueCodeableConcept', none],
  ...parts(
    'metachronous-lesion',
    '/newLesions/*',
    ['organ', 'metachronous-organ', word('organ')],
    ['site', 'metachronous-site', word('site')],
    ['sizeMm', 'metachronous-length', q('mm')],
    ['histology', 'metachronous-histology', word('tissueResult')],
    ['polypType', 'polyp-type', word('polypType')],
    ['removed', 'lesion-removed', answer],
  ),
  ...parts(
    'passage-at-scar',
    '/passage',
    ['endoscopePasses', 'endoscope-passes', answer],
    ['dilated', 'scar-dilated', answer],
    ['diameterMm', 'dilatation-diameter', q('mm')],
  ),
  ['/barrettLeft/present', 'Observation barrett-left.*', 'valueCodeableConcept', answer],
  ...parts(
    'barrett-left',
    '/barrettLeft',
    ['maximumCm', 'm', q('cm')],
    ['ablated', 'barrett-ablated', answer],
  ),
  ['/next/step', 'Observation next-step.*', 'valueCodeableConcept', word('nextStep')],
  ...parts(
    'next-step',
    '/next',
    ['on', 'next-examination-on', same],
    ['reason', 'stop-reason', word('stopReason')],
  ),
];

/** The envelope says to whom a message belongs; the whole record says so. */
const ENVELOPE: readonly JournalOnly[] = [
  '/schema',
  '/source',
  '/case',
  '/patient/system',
  '/patient/value',
  '/revision',
  '/sentAt',
].map((at) => ({ at, reason: 'as for the case itself' }));

const tables = (rows: readonly Row[], kept: readonly JournalOnly[]): Tables => ({
  fields: rows.map(([at, place, path, says]) => ({ at, in: place, path, says, shared: true })),
  fixed: [],
  journalOnly: [...ENVELOPE, ...kept],
});

export const EVENT_TABLES: Tables = tables(EVENT_ROWS, [
  { at: '/kind', reason: 'the resource is one of this kind' },
  {
    at: '/occurredOn',
    when: ({ holder }) => holder.occurredAt !== undefined,
    reason: 'the instant stands in its place',
  },
]);

export const EXAMINATION_TABLES: Tables = tables(EXAMINATION_ROWS, [
  { at: '/route', reason: 'the code of the Procedure is that of the route' },
  {
    at: '/examinedOn',
    when: ({ holder }) => holder.examinedAt !== undefined,
    reason: 'the instant stands in its place',
  },
]);

const PROFILE = /dr-(later|follow-up)-finding$/;

/** The findings of a message that is told after the dissection. */
export const scopeOf = (fields: Draft): Scope => ({
  fields,
  owns: ({ meta }) => PROFILE.test(meta.profile[0]),
});
