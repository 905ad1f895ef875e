/** The parts of a trace context that are used. */
export interface TraceContext {
  /** 32 lower-case hexadecimal digits, not all zero. */
  readonly traceId: string;
}

const TRACEPARENT = /^00-([0-9a-f]{32})-([0-9a-f]{16})-[0-9a-f]{2}$/;

/**
 * Reads the header `traceparent` of version 00.
 *
 * Source: W3C Trace Context (Recommendation, 23 November 2021), section 3.2.
 *
 * @returns undefined for anything else: the receiver starts a trace of its own
 */
export function parseTraceparent(header: string | undefined): TraceContext | undefined {
  const [, traceId, parentId] = TRACEPARENT.exec(header ?? '') ?? [];
  if (traceId === undefined || parentId === undefined) return undefined;
  return isZero(traceId) || isZero(parentId) ? undefined : { traceId };
}

const isZero = (digits: string): boolean => /^0+$/.test(digits);
