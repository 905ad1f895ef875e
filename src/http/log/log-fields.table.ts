/** Words of our own: event names, states, faults, roles. */
const WORD = /^[a-z0-9][a-z0-9-]{0,59}$/;
const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

const whole = (value: unknown): boolean => Number.isSafeInteger(value);
const text =
  (form: RegExp) =>
  (value: unknown): boolean =>
    typeof value === 'string' && form.test(value);

/**
 * The only fields that a log line may hold, each with the form that its value must have; anything
 * else is left out. None of them can carry what was sent to us.
 */
export const LOG_FIELDS: Readonly<Record<string, (value: unknown) => boolean>> = {
  event: text(WORD),
  method: text(/^[A-Z]{1,20}$/),
  /** The pattern of the route as it was declared, never the URL. */
  route: text(/^\/[a-z/-]*(:[a-zA-Z]+[a-z/.-]*)*$/),
  status: whole,
  durationMs: (value) => typeof value === 'number' && Number.isFinite(value),
  correlationId: text(UUID),
  traceId: text(/^[0-9a-f]{32}$/),
  /** Our own opaque id. */
  caseId: text(UUID),
  state: whole,
  delivery: text(WORD),
  class: text(WORD),
  fault: text(WORD),
  attempt: whole,
  count: whole,
  role: text(WORD),
  keyId: text(/^[0-9a-f]{8}$/),
  /** A code of PostgreSQL. */
  sqlState: text(/^([0-9A-Z]{5}|none)$/),
  port: whole,
};
