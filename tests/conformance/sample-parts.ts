import type {
  BundleEntry,
  CodeableConcept,
  FhirResource,
  Identifier,
  Meta,
  Observation,
  Reference,
} from 'fhir/r4.js';
import { keyedUuid } from '../../src/kernel/index.js';

/** Canonical base of everything that the project publishes. */
export const BASE = 'https://dissection-records.example/fhir';
/** Identifier base of the invented unit. */
const SITE = 'https://unit-one.example/ids';
const CASE = 'case-4711';
const SECRET = 'an invented secret of an invented unit, for tests';

/** The case: resection from 09:00 to 10:30 on 2 March 2026, state 1 sent the next day. */
export const STARTED = '2026-03-02T09:00:00+01:00';
export const ENDED = '2026-03-02T10:30:00+01:00';
export const STATED = '2026-03-03T08:15:00+01:00';

const UCUM = 'http://unitsofmeasure.org';
export const EVENT_PART_OF = 'http://hl7.org/fhir/StructureDefinition/event-partOf';

const systemOf = (type: string): string => `${SITE}/${type.toLowerCase()}`;

export const identifierOf = (type: string, key: string): Identifier => ({
  system: systemOf(type),
  value: `${CASE}.${key}`,
});

export const urlOf = (type: string, key: string): string =>
  `urn:uuid:${keyedUuid(SECRET, systemOf(type), `${CASE}.${key}`)}`;

export const to = (type: string, key: string): Reference => ({ reference: urlOf(type, key), type });

/** Somebody or something that others own: by identifier, resolved when it is delivered. */
export const outside = (type: string, value: string): Reference => ({
  type,
  identifier: { system: systemOf(type), value },
});

export const PATIENT = outside('Patient', 'p-0815');
export const ENDOSCOPIST = outside('Practitioner', 'e-1');
export const UNIT = outside('Organization', 'unit-one');

export const metaOf = (profile: string): Meta => ({
  profile: [`${BASE}/StructureDefinition/${profile}`],
  tag: [{ system: `${BASE}/CodeSystem/dr-revision`, code: '1' }],
});

/** A concept of one of the project's own code systems. */
export const local = (set: string, code: string, text = code): CodeableConcept => ({
  coding: [{ system: `${BASE}/CodeSystem/${set}`, code, display: text }],
  text,
});

/** A concept of a published code system. */
export const coded = (system: string, code: string, display: string): CodeableConcept => ({
  coding: [{ system, code, display }],
});

export const quantity = (value: number, unit: string) => ({
  value,
  unit,
  system: UCUM,
  code: unit,
});

/** An entry that is written by its identifier. */
export function entry(key: string, resource: FhirResource): BundleEntry {
  const type = resource.resourceType;
  const { system, value } = identifierOf(type, key);
  const url = `${type}?identifier=${encodeURIComponent(`${system}|${value}`)}`;
  return { fullUrl: urlOf(type, key), resource, request: { method: 'PUT', url } };
}

type Finding = Partial<Observation> & Pick<Observation, 'code'>;

/** An Observation of the case; the key of its entry is the code of its item. */
export function observation(profile: string, item: string, rest: Partial<Observation>) {
  const finding: Finding = { code: local('esd-observation', item), ...rest };
  return entry(item, {
    resourceType: 'Observation',
    meta: metaOf(profile),
    identifier: [identifierOf('Observation', item)],
    status: 'final',
    category: [
      coded('http://terminology.hl7.org/CodeSystem/observation-category', 'procedure', 'Procedure'),
    ],
    subject: PATIENT,
    partOf: [to('Procedure', 'esd')],
    focus: [to('Condition', 'lesion')],
    effectivePeriod: { start: STARTED, end: ENDED },
    issued: STATED,
    performer: [ENDOSCOPIST],
    ...finding,
  });
}
