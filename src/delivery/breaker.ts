/**
 * Whether the target may be used.
 *
 * `starting`: not probed yet. `closed`: in use; `failures` destination faults came in a row.
 * `open`: not in use; probed from `probeAt` on. `half-open`: the probe succeeded, one record at
 * a time goes out until one of them shows that the target works again.
 * A state with `down` has been reported as down, and will be reported as up once.
 */
export type BreakerState =
  | { readonly kind: 'starting'; readonly probeAt: number; readonly down: boolean }
  | { readonly kind: 'closed'; readonly failures: number }
  | { readonly kind: 'open'; readonly probeAt: number; readonly failures: number }
  | { readonly kind: 'half-open'; readonly failures: number };

/** What happened; instants in milliseconds since 1970. */
export type BreakerEvent =
  /** A destination fault. `hold`: one is enough to open. */
  | { readonly kind: 'fault'; readonly now: number; readonly hold: boolean; readonly until: number }
  /** The target dealt with a record as it should, even if by refusing it. */
  | { readonly kind: 'answered' }
  | { readonly kind: 'probe-ok' }
  | { readonly kind: 'probe-failed'; readonly now: number };

export interface BreakerStep {
  readonly state: BreakerState;
  /** To be reported once: the target went down, or came back. */
  readonly alert?: 'down' | 'up';
}

/** Source: project definition. */
const OPENS_AFTER = 5;
export const PROBE_EVERY_MS = 30_000;

export const initialBreaker = (now: number): BreakerState => ({
  kind: 'starting',
  probeAt: now,
  down: false,
});

/** The next state of the breaker, and whether somebody must be told. */
export function stepBreaker(state: BreakerState, event: BreakerEvent): BreakerStep {
  switch (event.kind) {
    case 'fault':
      return afterFault(state, event);
    case 'answered':
      if (state.kind === 'half-open') return { state: CLOSED, alert: 'up' };
      return { state: state.kind === 'closed' ? CLOSED : state };
    case 'probe-ok':
      if (state.kind === 'starting') {
        return state.down ? { state: CLOSED, alert: 'up' } : { state: CLOSED };
      }
      if (state.kind !== 'open') return { state };
      return { state: { kind: 'half-open', failures: state.failures } };
    case 'probe-failed': {
      const probeAt = event.now + PROBE_EVERY_MS;
      if (state.kind === 'open') return { state: { ...state, probeAt } };
      if (state.kind !== 'starting') return { state };
      const next: BreakerState = { kind: 'starting', probeAt, down: true };
      return state.down ? { state: next } : { state: next, alert: 'down' };
    }
  }
}

const CLOSED: BreakerState = { kind: 'closed', failures: 0 };

function afterFault(
  state: BreakerState,
  event: Extract<BreakerEvent, { readonly kind: 'fault' }>,
): BreakerStep {
  if (state.kind === 'starting') return { state };
  const failures = state.failures + 1;
  const probeAt = Math.max(event.now + PROBE_EVERY_MS, event.until);
  switch (state.kind) {
    case 'open':
      return { state: { ...state, failures } };
    case 'half-open':
      return { state: { kind: 'open', probeAt, failures } };
    case 'closed':
      return event.hold || failures >= OPENS_AFTER
        ? { state: { kind: 'open', probeAt, failures }, alert: 'down' }
        : { state: { kind: 'closed', failures } };
  }
}
