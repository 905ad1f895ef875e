import type { TargetHealth } from './delivery/index.js';

/** How the FHIR server stands, in the words of people and not of the circuit breaker. */
const WORDS = {
  starting: 'not asked yet',
  closed: 'up',
  'half-open': 'coming back',
  open: 'down',
  paused: 'paused',
} as const satisfies Record<TargetHealth['state'], string>;

export interface FhirServerState {
  readonly state: (typeof WORDS)[TargetHealth['state']];
  readonly reason?: string;
}

export function fhirServerState({ state, reason }: TargetHealth): FhirServerState {
  return { state: WORDS[state], ...(reason === undefined ? {} : { reason }) };
}
