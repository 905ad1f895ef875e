import type { Answer } from './answer.js';
import {
  appointmentCriteria,
  type FoundAppointment,
  forRequests,
  type ReadAppointment,
  readAppointments,
  readRequests,
  requestCriteria,
} from './appointment-search.js';
import { classifyReading } from './classify.js';
import type { Clock } from './clock.js';
import type { FhirClient } from './fhir-client.js';
import { textAt } from './json.js';
import { nextPath } from './next-page.js';
import type { Failure } from './verdict.js';

export interface AppointmentSearch {
  readonly client: FhirClient;
  readonly baseUrl: string;
  readonly clock: Clock;
  /** Base of our identifier systems, by which a request is known as ours. */
  readonly identifierBase: string;
}

export interface AppointmentsFound {
  readonly kind: 'found';
  readonly appointments: readonly FoundAppointment[];
  /** Whether the last page was reached. */
  readonly isWhole: boolean;
  /** Everything that changed until then was seen; absent where nothing says so. */
  readonly seenUntil?: string;
}

/** Pages of one look; a server that links on for ever is left after so many. */
const MOST_PAGES = 500;
const IDS_AT_ONCE = 50;
/** With these a server says that it does not understand a parameter. */
const NOT_UNDERSTOOD: readonly number[] = [400, 404, 405, 422, 501];

/**
 * Appointments that changed since an instant and are based on requests of ours. Those of other
 * departments, which refer to nothing of ours, are passed over.
 *
 * @param since an instant, UTC
 */
export async function findAppointments(
  search: AppointmentSearch,
  since: string,
  signal: AbortSignal,
): Promise<AppointmentsFound | Failure> {
  const first = await ask(search, since, signal);
  if ('kind' in first) return first;
  const pages = await readOn(search, first, signal);
  if ('kind' in pages) return pages;
  const { read, isWhole, isSorted } = pages;
  const requests = await lookUp(search, pages, signal);
  if ('kind' in requests) return requests;
  const seenUntil = isWhole || isSorted ? latestOf(read) : undefined;
  return {
    kind: 'found',
    isWhole,
    appointments: read.flatMap((one) => forRequests(one, requests.known, search.identifierBase)),
    ...(seenUntil === undefined ? {} : { seenUntil }),
  };
}

interface FirstPage {
  readonly body: unknown;
  readonly isSorted: boolean;
}

/** Asks with fewer criteria where the server does not understand all of them. */
async function ask(
  { client, clock }: AppointmentSearch,
  since: string,
  signal: AbortSignal,
): Promise<FirstPage | Failure> {
  let failure: Failure | undefined;
  for (const criteria of appointmentCriteria(since)) {
    const answer = await client.search('Appointment', criteria, signal);
    if (isSearchset(answer)) {
      return { body: answer.body.resource, isSorted: criteria.includes('_sort=') };
    }
    failure = classifyReading(answer, clock.now());
    const isRefused = answer.kind === 'answered' && NOT_UNDERSTOOD.includes(answer.status);
    if (!isRefused) return failure;
  }
  return failure ?? STRANGE;
}

interface Pages {
  readonly read: readonly ReadAppointment[];
  readonly known: ReadonlyMap<string, readonly object[]>;
  /** Whether the last page was reached. */
  readonly isWhole: boolean;
  readonly isSorted: boolean;
}

async function readOn(
  { client, baseUrl, clock }: AppointmentSearch,
  { body: first, isSorted }: FirstPage,
  signal: AbortSignal,
): Promise<Pages | Failure> {
  const read: ReadAppointment[] = [];
  const known = new Map<string, readonly object[]>();
  let body = first;
  for (let page = 1; ; page += 1) {
    read.push(...readAppointments(body, baseUrl));
    for (const [id, identifiers] of readRequests(body)) known.set(id, identifiers);
    const next = nextPath(body, baseUrl);
    if (next === undefined) return { read, known, isWhole: true, isSorted };
    if (next === 'elsewhere' || page === MOST_PAGES) {
      return { read, known, isWhole: false, isSorted };
    }
    const answer = await client.page(next, signal);
    if (!isSearchset(answer)) return classifyReading(answer, clock.now());
    body = answer.body.resource;
  }
}

/** Asks for the requests that the server did not send along. */
async function lookUp(
  { client, clock }: AppointmentSearch,
  { read, known }: Pages,
  signal: AbortSignal,
): Promise<Pick<Pages, 'known'> | Failure> {
  const wanted = new Set(read.flatMap(({ requestIds }) => requestIds));
  const missing = [...wanted].filter((id) => !known.has(id));
  const all = new Map(known);
  for (let from = 0; from < missing.length; from += IDS_AT_ONCE) {
    const criteria = requestCriteria(missing.slice(from, from + IDS_AT_ONCE));
    const answer = await client.search('ServiceRequest', criteria, signal);
    if (!isSearchset(answer)) return classifyReading(answer, clock.now());
    for (const [id, identifiers] of readRequests(answer.body.resource)) all.set(id, identifiers);
  }
  return { known: all };
}

const STRANGE: Failure = {
  kind: 'failed',
  failureClass: 'non-conformant-server',
  fault: 'appointment-search',
  reason: 'The FHIR server did not answer the search for appointments as it was asked.',
  hold: false,
};

type Searchset = Extract<Answer, { kind: 'answered' }> & {
  readonly body: { readonly kind: 'json'; readonly resource: unknown };
};

const isSearchset = (answer: Answer): answer is Searchset =>
  answer.kind === 'answered' &&
  answer.status === 200 &&
  answer.body.kind === 'json' &&
  textAt(answer.body.resource, 'resourceType') === 'Bundle' &&
  textAt(answer.body.resource, 'type') === 'searchset';

function latestOf(read: readonly ReadAppointment[]): string | undefined {
  const instants = read
    .map(({ resource }) => Date.parse(textAt(resource['meta'], 'lastUpdated') ?? ''))
    .filter((ms) => !Number.isNaN(ms));
  return instants.length === 0 ? undefined : new Date(Math.max(...instants)).toISOString();
}
