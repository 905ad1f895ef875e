import type { Bundle, BundleEntry } from 'fhir/r4.js';
import { edited } from '../faults/edit.js';
import { imageLink, sampleBundle } from './sample-bundle.js';
import {
  coded,
  ENDED,
  entry,
  identifierOf,
  local,
  metaOf,
  observation,
  outside,
  PATIENT,
  STARTED,
  STATED,
  to,
  UNIT,
} from './sample-parts.js';

const V2_SECTION = 'http://terminology.hl7.org/CodeSystem/v2-0074';

/** The sample with a pathology report: everything is final and nothing waits. */
export function reportedBundle(): Bundle {
  const bundle = edited(sampleBundle(), [
    { at: 'Specimen.A/status', set: 'unavailable' },
    { at: 'ServiceRequest.pathology/status', set: 'completed' },
    { at: 'DiagnosticReport.endoscopy/status', set: 'final' },
    { at: 'Observation.curability/status', set: 'final' },
    { at: 'Procedure.esd/report/-', set: to('DiagnosticReport', 'pathology') },
  ]);
  return withEntries(bundle, [
    observation('dr-pathology-finding', 'vertical-margin', {
      specimen: to('Specimen', 'A'),
      valueCodeableConcept: local('margin-status', 'vm0'),
    }),
    entry('pathology', {
      resourceType: 'DiagnosticReport',
      meta: metaOf('dr-pathology-report'),
      identifier: [identifierOf('DiagnosticReport', 'pathology')],
      status: 'final',
      category: [coded(V2_SECTION, 'SP', 'Surgical Pathology')],
      code: coded('http://loinc.org', '11529-5', 'Surgical pathology study'),
      subject: PATIENT,
      effectivePeriod: { start: STARTED, end: ENDED },
      issued: STATED,
      performer: [UNIT],
      result: [to('Observation', 'vertical-margin')],
    }),
  ]);
}

/** The sample as it is sent once the case was withdrawn. */
export function withdrawnBundle(): Bundle {
  const kept = ['Device', 'Media', 'Provenance', 'Condition'];
  const bundle = sampleBundle();
  for (const { resource } of bundle.entry ?? []) {
    if (resource && 'status' in resource && !kept.includes(resource.resourceType)) {
      Object.assign(resource, { status: 'entered-in-error' });
    }
  }
  return bundle;
}

/** The sample with a closure that was planned and not done. */
export const notDoneBundle = (): Bundle =>
  edited(sampleBundle(), [
    { at: 'Procedure.closure/status', set: 'not-done' },
    { at: 'Procedure.closure/statusReason', set: { text: 'no clips left' } },
    { at: 'Procedure.closure/performedPeriod' },
  ]);

/** The sample with its references to others as searches, as one mode of delivery writes them. */
export const conditionalBundle = (): Bundle =>
  edited(sampleBundle(), [
    { at: 'Procedure.esd/encounter/reference', set: 'Encounter?identifier=a%7Cenc-1' },
    { at: 'Procedure.esd/performer/0/actor/reference', set: 'Practitioner?identifier=a%7Ce-1' },
  ]);

/** The case without specimen, materials, sub-procedure and complication. */
export function bareBundle(): Bundle {
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

/** The sample with a proposed appointment: a type that is checked though not yet sent. */
export const appointedBundle = (): Bundle =>
  withEntries(sampleBundle(), [
    entry('first-check', {
      resourceType: 'Appointment',
      meta: metaOf('dr-followup-appointment'),
      identifier: [identifierOf('Appointment', 'first-check')],
      status: 'proposed',
      requestedPeriod: [{ start: '2026-06-01', end: '2026-06-30' }],
      participant: [{ actor: outside('Patient', 'p-0815'), status: 'needs-action' }],
    }),
  ]);

/** @returns the Bundle with these entries before its Provenance, which targets them too */
export function withEntries(bundle: Bundle, entries: readonly BundleEntry[]): Bundle {
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

/** Every sample that has to pass, by its name. */
export const SAMPLES = {
  pending: sampleBundle,
  reported: reportedBundle,
  withdrawn: withdrawnBundle,
  'not done': notDoneBundle,
  conditional: conditionalBundle,
  bare: bareBundle,
  appointed: appointedBundle,
} as const satisfies Record<string, () => Bundle>;
