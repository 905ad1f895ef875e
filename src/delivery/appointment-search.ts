import { isFhirId } from './fhir-id.js';
import { isRecord, recordsAt, textAt } from './json.js';

/** An Appointment of the FHIR server that is based on a request of ours. */
export interface FoundAppointment {
  readonly caseId: string;
  /** Key of the item of the plan. */
  readonly itemKey: string;
  /** Whether it is the one that we write for the item. */
  readonly isOurs: boolean;
  /** `Appointment/id`. */
  readonly reference: string;
  /** Code of FHIR R4, appointmentstatus, as it came. */
  readonly status: string;
  /** As they came. */
  readonly start?: string;
  readonly end?: string;
  /** When the server last changed it; absent where it does not say. */
  readonly updatedAt?: string;
}

/** An Appointment with what it is based on: identifiers told at once, and ids to look up. */
export interface ReadAppointment {
  readonly resource: Readonly<Record<string, unknown>>;
  readonly requestIds: readonly string[];
}

const COUNT = '200';
const NARROW = { 'based-on:missing': 'false', _sort: '_lastUpdated' };
const INCLUDE = { _include: 'Appointment:based-on' };

/**
 * Criteria of the search for Appointments that changed, the most telling first: a server that does
 * not know a parameter refuses it, and is asked with fewer.
 *
 * @param since an instant, UTC
 */
export const appointmentCriteria = (since: string): readonly string[] =>
  [{ ...NARROW, ...INCLUDE }, { _sort: '_lastUpdated', ...INCLUDE }, INCLUDE, {}].map((more) =>
    new URLSearchParams({ _lastUpdated: `ge${since}`, ...more, _count: COUNT }).toString(),
  );

/** Criteria of a look-up of requests by their ids on the server. */
export const requestCriteria = (ids: readonly string[]): string =>
  new URLSearchParams({ _id: ids.join(','), _count: String(ids.length) }).toString();

const resourcesIn = (body: unknown, type: string) =>
  recordsAt(body, 'entry')
    .map(({ resource }) => resource)
    .filter((resource) => textAt(resource, 'resourceType') === type)
    .flatMap((resource) => (isRecord(resource) ? [resource] : []));

/** @param baseUrl of the server: a reference to anywhere else is none of ours */
export function readAppointments(body: unknown, baseUrl: string): readonly ReadAppointment[] {
  return resourcesIn(body, 'Appointment')
    .filter(({ id }) => typeof id === 'string' && isFhirId(id))
    .map((resource) => ({
      resource,
      requestIds: recordsAt(resource, 'basedOn').flatMap(({ reference }) =>
        typeof reference === 'string' ? requestId(reference, baseUrl) : [],
      ),
    }));
}

/** The identifiers of the requests in an answer, by their ids on the server. */
export function readRequests(body: unknown): ReadonlyMap<string, readonly object[]> {
  return new Map(
    resourcesIn(body, 'ServiceRequest').flatMap((resource) => {
      const id = textAt(resource, 'id');
      return id === undefined ? [] : [[id, recordsAt(resource, 'identifier')] as const];
    }),
  );
}

/**
 * What an Appointment is for, as far as its requests are ours: one each.
 *
 * @param identifierBase of our identifier systems
 */
export function forRequests(
  { resource, requestIds }: ReadAppointment,
  requests: ReadonlyMap<string, readonly object[]>,
  identifierBase: string,
): readonly FoundAppointment[] {
  const ours = namesOf(recordsAt(resource, 'identifier'), `${identifierBase}/appointment`);
  const named = [
    ...recordsAt(resource, 'basedOn').flatMap(({ identifier }) =>
      isRecord(identifier) ? [identifier] : [],
    ),
    ...requestIds.flatMap((id) => requests.get(id) ?? []),
  ];
  const names = new Set(namesOf(named, `${identifierBase}/servicerequest`));
  const said = whatItSays(resource);
  return [...names].map((name) => ({
    caseId: name.slice(0, CASE_ID_LENGTH),
    itemKey: name.slice(CASE_ID_LENGTH + 1),
    isOurs: ours.includes(name),
    ...said,
  }));
}

/** Of an id of a case, which is a UUID. */
const CASE_ID_LENGTH = 36;
const NAME = /^[0-9a-f-]{36}\../;

const namesOf = (identifiers: readonly object[], system: string): readonly string[] =>
  identifiers.flatMap((identifier) => {
    const value = textAt(identifier, 'value') ?? '';
    return textAt(identifier, 'system') === system && NAME.test(value) ? [value] : [];
  });

function whatItSays(resource: Readonly<Record<string, unknown>>) {
  const [start, end] = [textAt(resource, 'start'), textAt(resource, 'end')];
  const updatedAt = textAt(resource['meta'], 'lastUpdated');
  return {
    reference: `Appointment/${textAt(resource, 'id')}`,
    status: textAt(resource, 'status') ?? '',
    ...(start === undefined ? {} : { start }),
    ...(end === undefined ? {} : { end }),
    ...(updatedAt === undefined ? {} : { updatedAt }),
  };
}

const REQUEST = /^ServiceRequest\/([A-Za-z0-9\-.]{1,64})(?:\/_history\/[A-Za-z0-9\-.]{1,64})?$/;

function requestId(reference: string, baseUrl: string): readonly string[] {
  const below = reference.startsWith(`${baseUrl}/`)
    ? reference.slice(baseUrl.length + 1)
    : reference;
  const id = REQUEST.exec(below)?.[1];
  return id === undefined ? [] : [id];
}
