/** Where the newest state of a case stands on its way to the FHIR server. */
export interface DeliveryState {
  readonly name:
    | 'queued'
    | 'sending'
    | 'delivered'
    | 'waiting-patient'
    | 'waiting-case'
    | 'dead-letter';
  /** State number that this is about. */
  readonly state: number;
  /** Since when, instant of our clock, UTC. */
  readonly since: string;
  /** When it is tried next, UTC; absent when nothing is planned. */
  readonly nextAttemptAt?: string;
  readonly attempts: number;
  /** Why it stands so, a plain sentence without patient data. */
  readonly reason?: string;
}
