import type { Bundle, BundleEntry, Procedure, Provenance, Reference, Resource } from 'fhir/r4.js';
import { isFhirId } from './fhir-id.js';
import { isRecord, recordsAt, textAt } from './json.js';
import { identifierCriteria, type PatientIdentifier } from './patient.js';

/** The number under which a laboratory keeps a report, as it stands in a transcription of ours. */
export type Accession = PatientIdentifier;

/** FHIR R4 value set of identifier types, code of an accession number (v2-0203). */
const ACCESSION = 'ACSN';
/** The tag of reports that we wrote from what the note system told. */
const TRANSCRIBED = 'transcribed';

/** The accessions of the reports that the record transcribes. */
export function accessionsOf(bundle: Bundle): readonly Accession[] {
  return recordsAt(bundle, 'entry')
    .map(({ resource }) => resource)
    .filter((resource) => textAt(resource, 'resourceType') === 'DiagnosticReport')
    .flatMap((report) => recordsAt(report, 'identifier'))
    .filter(({ type }) => recordsAt(type, 'coding').some(({ code }) => code === ACCESSION))
    .flatMap(({ system, value }) =>
      typeof system === 'string' && typeof value === 'string' ? [{ system, value }] : [],
    );
}

/** The body of `POST DiagnosticReport/_search`: the number never stands in a URL. */
export const reportCriteria = (accession: Accession): string => identifierCriteria(accession, 10);

/**
 * Reports of the laboratory itself in a searchset: those that carry the number and are not ours.
 * A server that ignores the parameter answers with whatever it has; that counts for nothing.
 */
export function readReportSearch(body: unknown, accession: Accession): readonly string[] {
  return recordsAt(body, 'entry')
    .map(({ resource }) => resource)
    .filter((resource) => textAt(resource, 'resourceType') === 'DiagnosticReport')
    .filter((report) => carries(report, accession) && !isTranscribed(report))
    .flatMap((report) => {
      const id = textAt(report, 'id') ?? '';
      return isFhirId(id) ? [`DiagnosticReport/${id}`] : [];
    });
}

/**
 * Names reports of the laboratory in the dissection and as sources of the record. The transcription
 * stays: its Observations are what the verdict rests on, and outcomes count no others.
 */
export function linkReports(bundle: Bundle, references: readonly string[]): Bundle {
  if (references.length === 0) return bundle;
  const links = references.map((reference): Reference => ({ reference, type: 'DiagnosticReport' }));
  return { ...bundle, entry: (bundle.entry ?? []).map((entry) => linkEntry(entry, links)) };
}

function linkEntry(entry: BundleEntry, links: readonly Reference[]): BundleEntry {
  const { resource } = entry;
  if (isDissection(resource)) {
    const dissection: Procedure = { ...resource, report: [...(resource.report ?? []), ...links] };
    return { ...entry, resource: dissection };
  }
  if (!isProvenance(resource)) return entry;
  const sources = links.map((what) => ({ role: 'source' as const, what }));
  const provenance: Provenance = { ...resource, entity: [...(resource.entity ?? []), ...sources] };
  return { ...entry, resource: provenance };
}

const isDissection = (resource: Resource | undefined): resource is Procedure =>
  resource?.meta?.profile?.some((profile) => profile.endsWith('/dr-esd-procedure')) === true;

const isProvenance = (resource: Resource | undefined): resource is Provenance =>
  resource?.resourceType === 'Provenance';

const carries = (report: unknown, accession: Accession): boolean =>
  recordsAt(report, 'identifier').some(
    ({ system, value }) => system === accession.system && value === accession.value,
  );

function isTranscribed(report: unknown): boolean {
  const meta = isRecord(report) ? report['meta'] : undefined;
  return recordsAt(meta, 'tag').some(({ code }) => code === TRANSCRIBED);
}
