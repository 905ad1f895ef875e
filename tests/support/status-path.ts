import type { Bundle } from 'fhir/r4.js';
import type { Draft } from './consistent-case.js';

/**
 * Statuses that may follow a status, by type of resource; the same status may always stand, and so
 * may `entered-in-error` after any, which "should never have existed".
 *
 * Source: FHIR R4 (4.0.1), the definitions of the codes of the code systems
 * - observation-status, diagnostic-report-status: "amended: subsequent to being final"; so is what
 *   was corrected or appended;
 * - request-status: "revoked: terminated prior to the known full completion", "completed: no further
 *   activity will occur", "on-hold: temporarily withdrawn but expected to resume";
 * - specimen-status: "unavailable: lost, destroyed or consumed";
 * - task-status: "draft: not yet ready to be acted upon", "requested: ready to be acted upon and
 *   action is sought", "cancelled: the task was not completed", "completed". What is completed,
 *   cancelled, rejected or failed is over. `received`, `accepted` and `in-progress` are for tasks
 *   with an owner, who says so; ours have none;
 * - appointmentstatus: "proposed: none of the participants have finalized their acceptance, and the
 *   start/end time might not be set yet", "booked: confirmed to go ahead at the date/times
 *   specified", "noshow: have not appeared". From cancelled and noshow back to booked: our
 *   Appointment is that of a request, and a scheduler books the request anew (project definition).
 */
const CHANGED = ['amended', 'corrected', 'appended'] as const;
const REPORTED: Path = {
  registered: ['preliminary', 'partial', 'final'],
  partial: ['preliminary', 'final'],
  preliminary: ['final'],
  final: CHANGED,
  amended: ['corrected', 'appended'],
  corrected: ['amended', 'appended'],
  appended: ['amended', 'corrected'],
};
const PATHS: Readonly<Record<string, Path>> = {
  Observation: REPORTED,
  DiagnosticReport: REPORTED,
  ServiceRequest: { draft: ['active', 'revoked'], active: ['completed', 'revoked', 'on-hold'] },
  Specimen: { available: ['unavailable', 'unsatisfactory'] },
  Task: {
    draft: ['requested', 'cancelled'],
    requested: ['on-hold', 'completed', 'cancelled'],
    'on-hold': ['requested', 'completed', 'cancelled'],
  },
  Appointment: {
    proposed: ['booked', 'cancelled'],
    booked: ['cancelled', 'noshow'],
    cancelled: ['booked'],
    noshow: ['booked'],
  },
};
type Path = Readonly<Record<string, readonly string[]>>;

/** Moves between two Bundles of one case that FHIR R4 does not know, in plain words. */
export function illegalMoves(before: Bundle, after: Bundle): readonly string[] {
  const was = statusesOf(before);
  return [...statusesOf(after)].flatMap(([url, now]) => {
    const earlier = was.get(url);
    if (earlier === undefined) {
      // What was never final cannot be subsequent to it.
      return isChanged(now.status) ? [`${now.name} begins as ${now.status}`] : [];
    }
    if (earlier.status === now.status || now.status === 'entered-in-error') return [];
    const next = PATHS[now.type]?.[earlier.status] ?? [];
    return next.includes(now.status) ? [] : [`${now.name} from ${earlier.status} to ${now.status}`];
  });
}

/** What stood before and is in the later Bundle no more, statements of who sent what apart. */
export function lostResources(before: Bundle, after: Bundle): readonly string[] {
  const now = statusesOf(after);
  return [...statusesOf(before)]
    .filter(([url, { type }]) => type !== 'Provenance' && !now.has(url))
    .map(([, { name }]) => name);
}

interface Standing {
  readonly type: string;
  readonly name: string;
  readonly status: string;
}

const isChanged = (status: string): boolean => CHANGED.some((changed) => changed === status);

function statusesOf({ entry = [] }: Bundle): ReadonlyMap<string, Standing> {
  return new Map(
    entry.map(({ fullUrl = '', resource }) => {
      const { resourceType: type, identifier, status }: Draft = resource ?? {};
      const key = String(identifier?.[0]?.value ?? '').replace(/^[0-9a-f-]{36}\.?/, '');
      return [fullUrl, { type, name: `${type}/${key}`, status: String(status) }] as const;
    }),
  );
}
