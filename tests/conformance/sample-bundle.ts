import type { Bundle, BundleEntry, Period, Provenance } from 'fhir/r4.js';
import { sampleFindings } from './sample-findings.js';
import {
  BASE,
  coded,
  ENDED,
  ENDOSCOPIST,
  EVENT_PART_OF,
  entry,
  identifierOf,
  local,
  metaOf,
  outside,
  PATIENT,
  quantity,
  STARTED,
  STATED,
  to,
  UNIT,
  urlOf,
} from './sample-parts.js';

const STOMACH = coded('http://snomed.info/sct', '69695003', 'Stomach structure');
const CLINICAL = 'http://terminology.hl7.org/CodeSystem/condition-clinical';
const VERIFIED = 'http://terminology.hl7.org/CodeSystem/condition-ver-status';
const OPERATION = 'http://terminology.hl7.org/CodeSystem/v3-DataOperation';
const AGENT = 'http://terminology.hl7.org/CodeSystem/provenance-participant-type';

const BACK_LINK = { url: EVENT_PART_OF, valueReference: to('Procedure', 'esd') };
const ACTIVE = coded(CLINICAL, 'active', 'Active');

/**
 * One dissection of a gastric lesion as the transaction that fhir-mapping asks for: everything
 * about it is invented. Its specimen waits for the pathologist, so the report is preliminary.
 *
 * @returns a new Bundle with every call, to be changed at will
 */
export function sampleBundle(): Bundle {
  const entries = [
    ...procedures(),
    ...conditions(),
    ...sampleFindings(),
    ...specimen(),
    ...materials(),
    report(),
    firstCheck(),
  ];
  const bundle: Bundle = {
    resourceType: 'Bundle',
    type: 'transaction',
    timestamp: STATED,
    entry: [...entries, provenance(entries)],
  };
  // As after a journey over the wire: no object stands at two places.
  return JSON.parse(JSON.stringify(bundle));
}

/** A request of the follow-up plan; it does not wait for pathology. */
export function planned(key: string, code: string, window: Period): BundleEntry {
  return entry(key, {
    resourceType: 'ServiceRequest',
    meta: metaOf('dr-follow-up-request'),
    identifier: [identifierOf('ServiceRequest', key)],
    requisition: { system: 'https://unit-one.example/ids/follow-up-plan', value: 'plan-1' },
    status: 'active',
    intent: 'plan',
    code: local('request-kind', code),
    subject: PATIENT,
    occurrencePeriod: window,
    authoredOn: STATED,
    reasonReference: [to('Observation', 'curability')],
    supportingInfo: [to('Procedure', 'esd')],
  });
}

const firstCheck = () =>
  planned('first-check', 'upper-follow-up-endoscopy', { start: '2026-06-02', end: '2026-09-02' });

/** Where an image is kept. */
export function imageLink(key: string): BundleEntry {
  return entry(key, {
    resourceType: 'Media',
    meta: metaOf('dr-media'),
    identifier: [identifierOf('Media', key)],
    partOf: [to('Procedure', 'esd')],
    status: 'completed',
    subject: PATIENT,
    createdDateTime: ENDED,
    content: { contentType: 'image/jpeg', url: 'https://archive.example/images/1' },
  });
}

function procedures(): readonly BundleEntry[] {
  return [
    entry('esd', {
      resourceType: 'Procedure',
      meta: metaOf('dr-esd-procedure'),
      identifier: [
        identifierOf('Procedure', 'esd'),
        { system: 'https://unit-one.example/ids/session', value: 'session-12' },
      ],
      status: 'completed',
      category: coded('http://snomed.info/sct', '387713003', 'Surgical procedure'),
      code: local('esd-procedure', 'esd-stomach', 'Endoscopic submucosal dissection of stomach'),
      subject: PATIENT,
      encounter: outside('Encounter', 'enc-1'),
      performedPeriod: { start: STARTED, end: ENDED },
      performer: [{ actor: ENDOSCOPIST }],
      reasonReference: [to('Condition', 'lesion')],
      bodySite: [STOMACH],
      outcome: local('resection-integrity', 'complete', 'Endoscopically complete'),
      report: [to('DiagnosticReport', 'endoscopy')],
      complication: [local('adverse-event', 'delayed-bleeding', 'Delayed bleeding')],
      complicationDetail: [to('Condition', 'delayed-bleeding')],
      usedReference: [to('Device', 'knife')],
      usedCode: [local('device-type', 'distal-cap', 'Distal transparent cap')],
    }),
    entry('closure', {
      resourceType: 'Procedure',
      meta: metaOf('dr-sub-procedure'),
      identifier: [identifierOf('Procedure', 'closure')],
      partOf: [to('Procedure', 'esd')],
      status: 'completed',
      code: local('esd-adjunct', 'clip-closure', 'Closure of mucosal defect by clips'),
      subject: PATIENT,
      performedPeriod: { start: '2026-03-02T10:10:00+01:00', end: '2026-03-02T10:25:00+01:00' },
    }),
  ];
}

function conditions(): readonly BundleEntry[] {
  return [
    entry('lesion', {
      resourceType: 'Condition',
      meta: metaOf('dr-lesion'),
      identifier: [identifierOf('Condition', 'lesion')],
      clinicalStatus: ACTIVE,
      verificationStatus: coded(VERIFIED, 'provisional', 'Provisional'),
      code: coded('http://hl7.org/fhir/sid/icd-10', 'D00.2', 'Carcinoma in situ: Stomach'),
      bodySite: [STOMACH],
      subject: PATIENT,
    }),
    entry('delayed-bleeding', {
      resourceType: 'Condition',
      meta: metaOf('dr-complication'),
      identifier: [identifierOf('Condition', 'delayed-bleeding')],
      extension: [BACK_LINK],
      clinicalStatus: ACTIVE,
      verificationStatus: coded(VERIFIED, 'confirmed', 'Confirmed'),
      code: local('adverse-event', 'delayed-bleeding', 'Delayed bleeding'),
      severity: local('ae-severity', 'agree-iiia', 'AGREE IIIa'),
      subject: PATIENT,
      onsetDateTime: '2026-03-02T22:40:00+01:00',
    }),
  ];
}

function specimen(): readonly BundleEntry[] {
  return [
    entry('A', {
      resourceType: 'Specimen',
      meta: metaOf('dr-specimen'),
      identifier: [identifierOf('Specimen', 'A')],
      accessionIdentifier: { system: 'https://laboratory.example/ids/accession', value: 'H26-88' },
      status: 'available',
      type: coded('http://snomed.info/sct', '119376003', 'Tissue specimen'),
      subject: PATIENT,
      request: [to('ServiceRequest', 'pathology')],
      collection: {
        collector: ENDOSCOPIST,
        collectedDateTime: '2026-03-02T10:08:00+01:00',
        method: local('esd-procedure', 'esd-stomach'),
        bodySite: STOMACH,
      },
      processing: [
        {
          procedure: local('specimen-processing', 'pinned', 'Stretched and pinned'),
          timeDateTime: '2026-03-02T10:40:00+01:00',
        },
      ],
      container: [{ additiveCodeableConcept: { text: 'Formalin' } }],
    }),
    entry('pathology', {
      resourceType: 'ServiceRequest',
      meta: metaOf('dr-pathology-request'),
      identifier: [identifierOf('ServiceRequest', 'pathology')],
      status: 'active',
      intent: 'order',
      priority: 'routine',
      code: local('request-kind', 'histopathology-esd'),
      subject: PATIENT,
      authoredOn: ENDED,
      requester: ENDOSCOPIST,
      specimen: [to('Specimen', 'A')],
      supportingInfo: [to('Procedure', 'esd')],
    }),
  ];
}

function materials(): readonly BundleEntry[] {
  return [
    entry('knife', {
      resourceType: 'Device',
      meta: metaOf('dr-device'),
      identifier: [identifierOf('Device', 'knife')],
      status: 'active',
      type: local('device-type', 'knife-needle-type', 'Needle-type knife'),
      deviceName: [{ name: 'Needle-type knife', type: 'user-friendly-name' }],
      patient: PATIENT,
    }),
    entry('injectate', {
      resourceType: 'MedicationAdministration',
      meta: metaOf('dr-injectate'),
      identifier: [identifierOf('MedicationAdministration', 'injectate')],
      partOf: [to('Procedure', 'esd')],
      status: 'completed',
      medicationCodeableConcept: local('injectate', 'hyaluronate', 'Sodium hyaluronate solution'),
      subject: PATIENT,
      effectivePeriod: { start: STARTED, end: ENDED },
      dosage: { dose: quantity(25, 'mL') },
    }),
    entry('sedation', {
      resourceType: 'MedicationAdministration',
      meta: metaOf('dr-drug-given'),
      identifier: [identifierOf('MedicationAdministration', 'sedation')],
      partOf: [to('Procedure', 'esd')],
      status: 'completed',
      medicationCodeableConcept: { text: 'Propofol' },
      subject: PATIENT,
      effectivePeriod: { start: STARTED, end: ENDED },
      dosage: { dose: quantity(320, 'mg'), rateQuantity: quantity(4, 'mg/h') },
    }),
    entry('antithrombotic', {
      resourceType: 'MedicationStatement',
      meta: metaOf('dr-antithrombotic'),
      identifier: [identifierOf('MedicationStatement', 'antithrombotic')],
      partOf: [to('Procedure', 'esd')],
      status: 'on-hold',
      medicationCodeableConcept: { text: 'Low-dose acetylsalicylic acid' },
      subject: PATIENT,
      effectivePeriod: { start: '2020-05', end: '2026-02-27' },
      dosage: [
        { text: 'once a day', timing: { repeat: { frequency: 1, period: 1, periodUnit: 'd' } } },
      ],
    }),
    imageLink('bed'),
  ];
}

function report(): BundleEntry {
  const results = sampleFindings()
    .filter(({ resource }) => resource?.resourceType === 'Observation')
    .flatMap(({ fullUrl }) => (fullUrl === undefined ? [] : [{ reference: fullUrl }]));
  return entry('endoscopy', {
    resourceType: 'DiagnosticReport',
    meta: metaOf('dr-endoscopy-report'),
    identifier: [identifierOf('DiagnosticReport', 'endoscopy')],
    extension: [BACK_LINK],
    status: 'preliminary',
    category: [coded('http://loinc.org', '27895-2', 'Gastrointestinal endoscopy studies (set)')],
    code: {
      coding: [
        { system: 'http://loinc.org', code: '18751-8', display: 'Endoscopy study' },
        { system: `${BASE}/CodeSystem/report-kind`, code: 'endoscopy-report' },
      ],
    },
    subject: PATIENT,
    effectivePeriod: { start: STARTED, end: ENDED },
    issued: STATED,
    performer: [UNIT],
    result: results,
    media: [{ link: to('Media', 'bed') }],
    conclusion: 'Resected in one piece; the pathology result is awaited.',
  });
}

function provenance(targets: readonly BundleEntry[]): BundleEntry {
  const tag = { system: `${BASE}/CodeSystem/dr-provenance`, code: 'case-4711.1' };
  const meta = metaOf('dr-provenance');
  const resource: Provenance = {
    resourceType: 'Provenance',
    meta: { ...meta, tag: [...(meta.tag ?? []), tag] },
    target: targets.map(({ fullUrl }) => ({ reference: fullUrl ?? '' })),
    recorded: STATED,
    activity: coded(OPERATION, 'CREATE', 'create'),
    agent: [
      { type: coded(AGENT, 'author', 'Author'), who: ENDOSCOPIST },
      { type: coded(AGENT, 'assembler', 'Assembler'), who: { display: 'dissection-records' } },
      { type: coded(AGENT, 'enterer', 'Enterer'), who: { display: 'note system' } },
    ],
    entity: [
      {
        role: 'source',
        what: {
          identifier: { system: 'https://unit-one.example/ids/submission', value: 'case-4711/1' },
        },
      },
    ],
  };
  return {
    fullUrl: urlOf('Provenance', 'state-1'),
    resource,
    request: {
      method: 'POST',
      url: 'Provenance',
      ifNoneExist: `_tag=${encodeURIComponent(`${tag.system}|${tag.code}`)}`,
    },
  };
}
