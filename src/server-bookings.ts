import {
  type AppointmentSearch,
  type AppointmentsFound,
  type Failure,
  findAppointments,
} from './delivery/index.js';
import type { Log } from './http/index.js';
import { learnBookings, type PipelineSettings, type RecordStore } from './pipeline/index.js';

/** What learning bookings from the FHIR server needs. */
export interface ServerBookingsDeps extends AppointmentSearch {
  readonly store: RecordStore;
  readonly settings: PipelineSettings;
  readonly mark: SeenMark;
  readonly log: Log;
}

/** Until when the Appointments of the server were seen. */
export interface SeenMark {
  read(): Promise<string | undefined>;
  keep(until: string): Promise<void>;
}

export interface ServerBookings {
  /** Looks once. Resolves when that is done, whatever became of it. */
  look(): Promise<void>;
  /** Breaks off the look that is under way and looks no more. */
  stop(): void;
}

/** The first look goes so far back: before it, no request of ours was there to be booked. */
const FIRST_BACK_MS = 24 * 60 * 60_000;
/** What was written while the last look was made can have an earlier time of change. */
const OVERLAP_MS = 10 * 60_000;

/**
 * Asks the FHIR server for Appointments that changed since the last look, and keeps what they say
 * of our requests as bookings. What could not be read or kept is looked at again the next time.
 */
export function createServerBookings(deps: ServerBookingsDeps): ServerBookings {
  const over = new AbortController();
  const { log } = deps;
  return {
    look: async () => {
      if (over.signal.aborted) return;
      try {
        await look(deps, over.signal);
      } catch (error) {
        log.warn({ event: 'bookings-not-learnt', err: error });
      }
    },
    stop: () => over.abort(),
  };
}

async function look(deps: ServerBookingsDeps, signal: AbortSignal): Promise<void> {
  const { store, settings, mark, clock, log } = deps;
  const last = await mark.read();
  const sinceMs = last === undefined ? clock.now() - FIRST_BACK_MS : Date.parse(last) - OVERLAP_MS;
  const found = await findAppointments(deps, instant(sinceMs), signal);
  if (signal.aborted) return;
  if (found.kind === 'failed') return sayFailed(found, log);
  if (!found.isWhole) log.warn({ event: 'appointments-incomplete' });
  const now = () => instant(clock.now());
  const done = await learnBookings(found.appointments, { store, settings, now });
  const { learnt, senseless, failed } = done;
  if (learnt > 0) log.info({ event: 'bookings-learnt', count: learnt });
  if (senseless > 0) log.warn({ event: 'appointments-senseless', count: senseless });
  for (const { caseId, error } of failed) {
    log.error({ event: 'bookings-not-learnt', caseId, err: error });
  }
  if (failed.length === 0) await mark.keep(nextMark(found, last, sinceMs));
}

/** The clock of the server alone says what it has seen; without it the same is read again. */
const nextMark = (
  { seenUntil }: AppointmentsFound,
  last: string | undefined,
  sinceMs: number,
): string => seenUntil ?? last ?? instant(sinceMs);

function sayFailed({ fault, failureClass }: Failure, log: Log): void {
  log.warn({ event: 'bookings-not-learnt', class: failureClass, fault });
}

const instant = (ms: number): string => new Date(ms).toISOString();
