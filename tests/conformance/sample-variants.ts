import type {
  Appointment,
  Bundle,
  BundleEntry,
  CodeableConcept,
  Identifier,
  Meta,
  Observation,
} from 'fhir/r4.js';
import { type Edit, edited } from '../faults/edit.js';
import { imageLink, planned, sampleBundle } from './sample-bundle.js';
import {
  BASE,
  coded,
  ENDED,
  EVENT_PART_OF,
  entry,
  identifierOf,
  local,
  metaOf,
  observation,
  PATIENT,
  quantity,
  STARTED,
  STATED,
  to,
  UNIT,
} from './sample-parts.js';

const VERIFICATION = 'http://terminology.hl7.org/CodeSystem/condition-ver-status';
const OPERATIONS = 'http://terminology.hl7.org/CodeSystem/v3-DataOperation';
const V2_SECTION = 'http://terminology.hl7.org/CodeSystem/v2-0074';

/** The sample with a pathology report: everything is final and nothing waits. */
function reportedBundle(): Bundle {
  const bundle = edited(sampleBundle(), [
    { at: 'Specimen.A/status', set: 'unavailable' },
    { at: 'ServiceRequest.pathology/status', set: 'completed' },
    { at: 'DiagnosticReport.endoscopy/status', set: 'final' },
    ...verdict('esge-very-low-risk', 'curative'),
    {
      at: 'DiagnosticReport.endoscopy/conclusionCode',
      set: [classOf('esge-very-low-risk', 'curative')],
    },
    { at: 'Procedure.esd/report/-', set: to('DiagnosticReport', 'pathology') },
    { at: 'Procedure.esd/outcome', set: local('resection-status', 'r0') },
    {
      at: 'Condition.lesion/verificationStatus',
      set: coded(VERIFICATION, 'confirmed', 'Confirmed'),
    },
  ]);
  return withEntries(bundle, [
    inSpecimen('lateral-margin', {
      valueCodeableConcept: local('margin-status', 'hm0'),
      component: [distance(4, 'mm')],
    }),
    inSpecimen('vertical-margin', {
      valueCodeableConcept: local('margin-status', 'vm0'),
      component: [distance(300, 'um')],
    }),
    inSpecimen('invasion-depth', {
      valueCodeableConcept: local('invasion-depth', 'sm'),
      component: [
        {
          code: local('esd-observation', 'submucosal-invasion-depth'),
          valueQuantity: quantity(120, 'um'),
        },
      ],
    }),
    inSpecimen('lymphovascular-invasion', {
      valueCodeableConcept: local('finding-state', 'absent'),
    }),
    inSpecimen('resection-status', { valueCodeableConcept: local('resection-status', 'r0') }),
    entry('pathology', {
      resourceType: 'DiagnosticReport',
      meta: transcribed(),
      identifier: [identifierOf('DiagnosticReport', 'pathology'), ACCESSION],
      extension: [{ url: EVENT_PART_OF, valueReference: to('Procedure', 'esd') }],
      basedOn: [to('ServiceRequest', 'pathology')],
      specimen: [to('Specimen', 'A')],
      status: 'final',
      category: [coded(V2_SECTION, 'SP', 'Surgical Pathology')],
      code: local('report-kind', 'pathology-report'),
      subject: PATIENT,
      effectivePeriod: { start: STARTED, end: ENDED },
      issued: STATED,
      performer: [UNIT],
      result: FOUND.map((item) => to('Observation', item)),
    }),
  ]);
}

/** What the pathologist of the sample found. */
const FOUND = [
  'lateral-margin',
  'vertical-margin',
  'invasion-depth',
  'lymphovascular-invasion',
  'resection-status',
];

const ACCESSION: Identifier = {
  type: coded('http://terminology.hl7.org/CodeSystem/v2-0203', 'ACSN', 'Accession ID'),
  system: 'https://laboratory.example/ids/accession',
  value: 'H26-88',
};

function transcribed(): Meta {
  const meta = metaOf('dr-pathology-report');
  const origin = { system: `${BASE}/CodeSystem/report-origin`, code: 'transcribed' };
  return { ...meta, tag: [...(meta.tag ?? []), origin] };
}

const inSpecimen = (item: string, rest: Partial<Observation>) =>
  observation('dr-pathology-finding', item, { specimen: to('Specimen', 'A'), ...rest });

const distance = (value: number, unit: string) => ({
  code: local('esd-observation', 'margin-distance'),
  valueQuantity: quantity(value, unit),
});

/** The sample with a pathology report after which further treatment is considered. */
const nonCurativeBundle = (): Bundle =>
  edited(withEntries(reportedBundle(), [meeting()]), [
    {
      at: 'Observation.curability/valueCodeableConcept',
      set: classOf('esge-high-risk', 'non-curative'),
    },
    {
      at: 'Observation.curability/component',
      set: [
        {
          code: local('esd-observation', 'curability-reason'),
          valueCodeableConcept: local('curability-reason', 'lvi'),
        },
      ],
    },
    {
      at: 'DiagnosticReport.endoscopy/conclusionCode/0',
      set: classOf('esge-high-risk', 'non-curative'),
    },
    { at: 'ServiceRequest.first-check/status', set: 'revoked' },
    { at: 'ServiceRequest.meeting/replaces', set: [to('ServiceRequest', 'first-check')] },
  ]);

/** The meeting comes first: it stands instead of the first check. */
const meeting = (): BundleEntry =>
  planned('meeting', 'multidisciplinary-meeting', { start: '2026-03-24', end: '2026-04-07' });

/** The sample with tumour at its deep surface. */
const involvedBundle = (): Bundle =>
  edited(nonCurativeBundle(), [
    { at: 'Observation.vertical-margin/valueCodeableConcept', set: local('margin-status', 'vm1') },
    { at: 'Observation.vertical-margin/component/0/valueQuantity', set: quantity(0, 'um') },
    {
      at: 'Observation.resection-status/valueCodeableConcept',
      set: local('resection-status', 'r1'),
    },
    { at: 'Procedure.esd/outcome', set: local('resection-status', 'r1') },
  ]);

/** The sample with a verdict that no pathologist could change. */
const incompleteBundle = (): Bundle => edited(sampleBundle(), verdict('incomplete', 'open'));

/** Edits by which the awaited verdict of the sample is given. */
const verdict = (code: string, group: string): readonly Edit[] => [
  { at: 'Observation.curability/status', set: 'final' },
  { at: 'Observation.curability/dataAbsentReason' },
  { at: 'Observation.curability/valueCodeableConcept', set: classOf(code, group) },
];

/** A class of curability with its coarse group. */
const classOf = (code: string, group: string): CodeableConcept => ({
  coding: [
    ...(local('curability', code).coding ?? []),
    ...(local('curability-group', group).coding ?? []),
  ],
  text: code,
});

/** The sample as it is sent once the case was withdrawn. */
function withdrawnBundle(): Bundle {
  const bundle = edited(sampleBundle(), [
    { at: 'Provenance.state-1/activity', set: coded(OPERATIONS, 'NULLIFY', 'nullify') },
  ]);
  for (const { resource } of bundle.entry ?? []) {
    if (resource === undefined || resource.resourceType === 'Provenance') continue;
    if (resource.resourceType === 'Condition') {
      const verificationStatus = coded(VERIFICATION, 'entered-in-error', 'Entered in Error');
      Object.assign(resource, { verificationStatus });
      Reflect.deleteProperty(resource, 'clinicalStatus');
    } else {
      Object.assign(resource, { status: 'entered-in-error' });
    }
  }
  return bundle;
}

/** The sample with a closure that was planned and not done. */
const notDoneBundle = (): Bundle =>
  edited(sampleBundle(), [
    { at: 'Procedure.closure/status', set: 'not-done' },
    { at: 'Procedure.closure/statusReason', set: { text: 'no clips left' } },
    { at: 'Procedure.closure/performedPeriod' },
  ]);

/** The sample with its references to others as searches, as one mode of delivery writes them. */
const conditionalBundle = (): Bundle =>
  edited(sampleBundle(), [
    { at: 'Procedure.esd/encounter/reference', set: 'Encounter?identifier=a%7Cenc-1' },
    { at: 'Procedure.esd/performer/0/actor/reference', set: 'Practitioner?identifier=a%7Ce-1' },
  ]);

/** The case without specimen, materials, sub-procedure and complication. */
function bareBundle(): Bundle {
  const kept = ['esd', 'lesion', 'en-bloc', 'endoscopy'].map((key) => `.${key}"`);
  const bundle = edited(sampleBundle(), [
    { at: 'Procedure.esd/complicationDetail' },
    { at: 'Procedure.esd/complication' },
    { at: 'Procedure.esd/usedReference' },
    { at: 'DiagnosticReport.endoscopy/media' },
    { at: 'DiagnosticReport.endoscopy/result', set: [to('Observation', 'en-bloc')] },
    {
      at: 'Provenance.state-1/target',
      set: [
        to('Procedure', 'esd'),
        to('Condition', 'lesion'),
        to('Observation', 'en-bloc'),
        to('DiagnosticReport', 'endoscopy'),
      ],
    },
  ]);
  const wanted = (bundle.entry ?? []).filter(({ resource }) => {
    const key = resource && 'identifier' in resource ? JSON.stringify(resource.identifier) : '';
    return resource?.resourceType === 'Provenance' || kept.some((end) => key.includes(end));
  });
  return { ...bundle, entry: wanted };
}

/** The sample with an appointment that is proposed for its first check. */
export const appointedBundle = (): Bundle =>
  withEntries(sampleBundle(), [
    appointment('first-check', {
      status: 'proposed',
      requestedPeriod: [{ start: '2026-06-02', end: '2026-09-02' }],
      participant: [{ actor: PATIENT, status: 'needs-action' }],
    }),
  ]);

/** After the verdict has changed: the first check is booked though nobody asks for it any more. */
const bookedBundle = (): Bundle =>
  withEntries(nonCurativeBundle(), [
    appointment('first-check', {
      status: 'booked',
      start: '2026-06-10T09:00:00+02:00',
      end: '2026-06-10T09:45:00+02:00',
      participant: [{ actor: PATIENT, status: 'accepted' }],
    }),
    appointment('meeting', {
      status: 'cancelled',
      cancelationReason: coded(CANCELLED, 'other', 'Other'),
      requestedPeriod: [{ start: '2026-03-24', end: '2026-04-07' }],
      participant: [{ actor: PATIENT, status: 'needs-action' }],
    }),
    task('meeting', 'multidisciplinary-meeting', 'meeting'),
    task('check', 'booking-check', 'first-check'),
  ]);

/** What is left of a booking once the case was taken back. */
const withdrawnBookedBundle = (): Bundle =>
  withEntries(withdrawnBundle(), [
    appointment('first-check', {
      status: 'booked',
      start: '2026-06-10T09:00:00+02:00',
      end: '2026-06-10T09:45:00+02:00',
      participant: [{ actor: PATIENT, status: 'accepted' }],
    }),
    task('check', 'booking-check', 'first-check'),
  ]);

const CANCELLED = 'http://terminology.hl7.org/CodeSystem/appointment-cancellation-reason';

/** An appointment for the request of that key. */
const appointment = (
  key: string,
  rest: Omit<Appointment, 'resourceType' | 'identifier' | 'basedOn'>,
): BundleEntry =>
  entry(key, {
    resourceType: 'Appointment',
    meta: metaOf('dr-follow-up-appointment'),
    identifier: [identifierOf('Appointment', key)],
    serviceType: [local('request-kind', 'upper-follow-up-endoscopy')],
    basedOn: [to('ServiceRequest', key)],
    ...rest,
  });

/** A task of that kind about the request of that key. */
const task = (key: string, kind: string, request: string): BundleEntry =>
  entry(key, {
    resourceType: 'Task',
    meta: metaOf('dr-follow-up-task'),
    identifier: [identifierOf('Task', key)],
    status: 'requested',
    intent: 'plan',
    code: local('request-kind', kind),
    focus: to('ServiceRequest', request),
    for: PATIENT,
    authoredOn: STATED,
  });

/** @returns the Bundle with these entries before its Provenance, which targets them too */
function withEntries(bundle: Bundle, entries: readonly BundleEntry[]): Bundle {
  const targeted = edited(
    bundle,
    entries.map(({ fullUrl }) => ({
      at: 'Provenance.state-1/target/-',
      set: { reference: fullUrl },
    })),
  );
  return { ...targeted, entry: [...entries, ...(targeted.entry ?? [])] };
}

/** The sample with that many further links to images. */
export const grownBundle = (count: number): Bundle =>
  withEntries(
    sampleBundle(),
    Array.from({ length: count }, (_, i) => imageLink(`image-${i}`)),
  );

/** The sample after a correction that took back a specimen, a closure and a complication. */
const correctedBundle = (): Bundle =>
  withEntries(sampleBundle(), [
    takenBackSpecimen(),
    entry('second-closure', {
      resourceType: 'Procedure',
      meta: metaOf('dr-sub-procedure'),
      identifier: [identifierOf('Procedure', 'second-closure')],
      partOf: [to('Procedure', 'esd')],
      status: 'entered-in-error',
      code: local('esd-adjunct', 'clip-closure'),
      subject: PATIENT,
      performedPeriod: { start: ENDED, end: STATED },
    }),
    entry('perforation', {
      resourceType: 'Condition',
      meta: metaOf('dr-complication'),
      identifier: [identifierOf('Condition', 'perforation')],
      extension: [{ url: EVENT_PART_OF, valueReference: to('Procedure', 'esd') }],
      verificationStatus: coded(VERIFICATION, 'entered-in-error', 'Entered in Error'),
      code: local('adverse-event', 'delayed-perforation'),
      subject: PATIENT,
    }),
  ]);

/** A case that was corrected to "never started" after a specimen had been reported. */
const neverStartedBundle = (): Bundle =>
  withEntries(
    edited(bareBundle(), [
      { at: 'Procedure.esd/status', set: 'not-done' },
      { at: 'Procedure.esd/statusReason', set: { text: 'lesion not found' } },
    ]),
    [takenBackSpecimen()],
  );

function takenBackSpecimen(): BundleEntry {
  return entry('B', {
    resourceType: 'Specimen',
    meta: metaOf('dr-specimen'),
    identifier: [identifierOf('Specimen', 'B')],
    status: 'entered-in-error',
    type: coded('http://snomed.info/sct', '119376003', 'Tissue specimen'),
    subject: PATIENT,
    request: [{ reference: 'ServiceRequest/request-1' }],
    collection: {
      collectedDateTime: STATED,
      bodySite: coded('http://snomed.info/sct', '34402009', 'Rectum structure'),
    },
  });
}

/** Every sample that has to pass, by its name. */
export const SAMPLES = {
  pending: sampleBundle,
  reported: reportedBundle,
  'non-curative': nonCurativeBundle,
  involved: involvedBundle,
  incomplete: incompleteBundle,
  withdrawn: withdrawnBundle,
  'not done': notDoneBundle,
  conditional: conditionalBundle,
  bare: bareBundle,
  appointed: appointedBundle,
  booked: bookedBundle,
  'withdrawn and booked': withdrawnBookedBundle,
  corrected: correctedBundle,
  'never started': neverStartedBundle,
} as const satisfies Record<string, () => Bundle>;
