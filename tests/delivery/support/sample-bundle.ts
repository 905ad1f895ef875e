import type {
  Bundle,
  BundleEntry,
  Condition,
  FhirResource,
  Observation,
  Procedure,
  Reference,
} from 'fhir/r4.js';
import type { CheckedBundle } from '../../../src/conformance/index.js';
import { keyedUuid } from '../../../src/kernel/index.js';

/*
 * A record in mode-free form, of an invented unit. It holds no more than delivery looks at.
 */

export const SID = 'https://unit.example/id';
const TAGS = 'https://dissection-records.example/fhir/CodeSystem/dr-provenance';

/** The record number must turn up in no log, no reason and no URL. */
export const RECORD_NUMBER = 'RN-77341908';

export const PATIENT: Reference = {
  type: 'Patient',
  identifier: { system: `${SID}/patient`, value: RECORD_NUMBER },
};

const ENCOUNTER: Reference = {
  type: 'Encounter',
  identifier: { system: `${SID}/encounter`, value: 'visit-4' },
};

const SECRET = 'an invented secret of thirty-two characters';

const fullUrl = (type: string, key: string): string =>
  `urn:uuid:${keyedUuid(SECRET, `${SID}/${type.toLowerCase()}`, key)}`;

/** An entry that is written by its identifier. */
export function entry(
  resource: Procedure | Condition | Observation,
  key: string,
): BundleEntry<FhirResource> {
  const type = resource.resourceType;
  const system = `${SID}/${type.toLowerCase()}`;
  return {
    fullUrl: fullUrl(type, key),
    resource: { ...resource, identifier: [{ system, value: key }] },
    request: { method: 'PUT', url: `${type}?identifier=${system}%7C${key}` },
  };
}

/** The case `case-1` with so many Observations. */
export function sampleBundle(observations = 2, patient: Reference = PATIENT): CheckedBundle {
  const procedure = fullUrl('Procedure', 'case-1.esd');
  const lesion = fullUrl('Condition', 'case-1.lesion1');
  const keys = Array.from({ length: observations }, (_, index) => `case-1.item${index}`);
  const entries: BundleEntry<FhirResource>[] = [
    entry(
      {
        resourceType: 'Procedure',
        status: 'completed',
        subject: patient,
        encounter: ENCOUNTER,
        reasonReference: [{ reference: lesion }],
      },
      'case-1.esd',
    ),
    entry({ resourceType: 'Condition', subject: patient, encounter: ENCOUNTER }, 'case-1.lesion1'),
    ...keys.map((key) =>
      entry(
        {
          resourceType: 'Observation',
          status: 'final',
          code: { text: 'item' },
          subject: patient,
          partOf: [{ reference: procedure }],
          focus: [{ reference: lesion }],
        },
        key,
      ),
    ),
  ];
  return checked([...entries, provenance(entries)]);
}

function provenance(entries: readonly BundleEntry[]): BundleEntry<FhirResource> {
  return {
    fullUrl: fullUrl('Provenance', 'case-1.1'),
    resource: {
      resourceType: 'Provenance',
      meta: { tag: [{ system: TAGS, code: 'case-1.1' }] },
      target: entries.map(({ fullUrl: reference = '' }) => ({ reference })),
      recorded: '2026-03-02T09:30:00+01:00',
      agent: [{ who: { identifier: { system: `${SID}/practitioner`, value: 'op-1' } } }],
    },
    request: { method: 'POST', url: 'Provenance', ifNoneExist: `_tag=${TAGS}%7Ccase-1.1` },
  };
}

/** Gives the brand of a checked Bundle to a sample. */
export function checked(entries: BundleEntry<FhirResource>[]): CheckedBundle {
  const bundle: Bundle = { resourceType: 'Bundle', type: 'transaction', entry: entries };
  return bundle as CheckedBundle;
}

/** What a server answers that has done all of a transaction. */
export function doneResponse(sent: Bundle, status = '201 Created'): Bundle {
  return {
    resourceType: 'Bundle',
    type: 'transaction-response',
    entry: (sent.entry ?? []).map(({ resource, request }, index) => {
      const url = request?.url ?? '';
      const direct = url.includes('/') && !url.includes('?');
      const location = direct ? url : `${resource?.resourceType}/id-${index}`;
      return { response: { status, location: `${location}/_history/1`, etag: 'W/"1"' } };
    }),
  };
}
