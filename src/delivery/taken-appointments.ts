import type { Appointment, Bundle, BundleEntry, Provenance, Resource } from 'fhir/r4.js';
import { classifyReading } from './classify.js';
import type { Clock } from './clock.js';
import type { FhirClient } from './fhir-client.js';
import { recordsAt, textAt } from './json.js';
import type { Failure } from './verdict.js';

/**
 * A transaction without those Appointments of ours that a scheduler has taken over on the server:
 * from then on they are read and not written. A server that cannot be asked gets none of them.
 *
 * @param sent as it would be sent
 */
export async function leaveTaken(
  { client, clock }: { readonly client: FhirClient; readonly clock: Clock },
  sent: Bundle,
  signal: AbortSignal,
): Promise<Bundle | Failure> {
  const ours = (sent.entry ?? []).flatMap(appointmentOf);
  if (ours.length === 0) return sent;
  const answer = await client.search('Appointment', criteriaOf(ours), signal);
  if (answer.kind !== 'answered' || answer.status !== 200 || answer.body.kind !== 'json') {
    const failure = classifyReading(answer, clock.now());
    return failure.failureClass === 'destination' ? failure : without(sent, () => true);
  }
  const theirs = appointmentsIn(answer.body.resource);
  return without(sent, (one) => isTaken(one, theirs.get(nameOf(one))));
}

function appointmentOf({ resource }: BundleEntry): readonly Appointment[] {
  return isAppointment(resource) ? [resource] : [];
}

const isAppointment = (resource: Resource | undefined): resource is Appointment =>
  resource?.resourceType === 'Appointment';

const isProvenance = (resource: Resource | undefined): resource is Provenance =>
  resource?.resourceType === 'Provenance';

/** Source: FHIR R4, search: several values of a token, and escaping. */
function criteriaOf(ours: readonly Appointment[]): string {
  const escaped = (text: string) => text.replaceAll(/[\\,$|]/g, (sign) => `\\${sign}`);
  const wanted = ours
    .flatMap(({ identifier = [] }) => identifier)
    .map(({ system = '', value = '' }) => `${escaped(system)}|${escaped(value)}`);
  return new URLSearchParams({
    identifier: wanted.join(','),
    _count: String(2 * wanted.length),
  }).toString();
}

const nameOf = (resource: unknown): string =>
  recordsAt(resource, 'identifier')
    .slice(0, 1)
    .map(({ system, value }) => `${system}|${value}`)
    .join();

/** As much of an Appointment on the server as tells whose it is now. */
interface Theirs {
  readonly status: string;
  readonly start: string | undefined;
}

const appointmentsIn = (body: unknown): ReadonlyMap<string, Theirs> =>
  new Map(
    recordsAt(body, 'entry')
      .map(({ resource }) => resource)
      .filter((resource) => textAt(resource, 'resourceType') === 'Appointment')
      .map((resource) => {
        const [status, start] = [textAt(resource, 'status') ?? '', textAt(resource, 'start')];
        return [nameOf(resource), { status, start }] as const;
      }),
  );

/** Codes of FHIR R4, appointmentstatus: as we write a proposal, and a visit that has begun. */
const OF_PROPOSALS: readonly string[] = ['proposed', 'cancelled'];
const BEGUN: readonly string[] = ['arrived', 'checked-in', 'fulfilled'];

/**
 * A proposal has no time; what has one is the word of the scheduler itself. To cancel that is not
 * to cancel what was booked in its place at another time.
 */
function isTaken({ start, status }: Appointment, theirs: Theirs | undefined): boolean {
  if (theirs === undefined) return false;
  if (start === undefined) return !OF_PROPOSALS.includes(theirs.status);
  const isElsewhen = theirs.status === 'booked' && !isSame(start, theirs.start);
  return BEGUN.includes(theirs.status) || (status === 'cancelled' && isElsewhen);
}

const isSame = (ours: string, theirs = ''): boolean => Date.parse(ours) === Date.parse(theirs);

function without(sent: Bundle, isLeft: (appointment: Appointment) => boolean): Bundle {
  const entries = sent.entry ?? [];
  const left = new Set(
    entries
      .filter((entry) => appointmentOf(entry).some(isLeft))
      .map(({ fullUrl }) => fullUrl ?? ''),
  );
  if (left.size === 0) return sent;
  const kept = entries.filter(({ fullUrl = '' }) => !left.has(fullUrl));
  return { ...sent, entry: kept.map((entry) => withoutTargets(entry, left)) };
}

function withoutTargets(entry: BundleEntry, left: ReadonlySet<string>): BundleEntry {
  const { resource } = entry;
  if (!isProvenance(resource)) return entry;
  const target = resource.target.filter(({ reference = '' }) => !left.has(reference));
  const provenance: Provenance = { ...resource, target };
  return { ...entry, resource: provenance };
}
