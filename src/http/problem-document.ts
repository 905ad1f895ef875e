import type { Problem } from '../kernel/index.js';
import { PROBLEM_BASE, PROBLEM_TYPES, type ProblemName } from './problem-types.table.js';

/** A refusal as its receiver reads it. */
export interface ProblemDocument {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  /** The correlation id of the request, `urn:uuid:`. */
  readonly instance: string;
  readonly errors?: readonly Problem[];
}

/** What a route says when it refuses. Never holds anything that came with the request. */
export interface Refusal {
  readonly problem: ProblemName;
  readonly detail: string;
  readonly errors?: readonly Problem[];
  readonly headers?: Readonly<Record<string, string>>;
}

/** When a sender may try again, in seconds. Source: project definition. */
export const RETRY_AFTER = { 'Retry-After': '5' } as const;

/** An error that ends a request with the refusal that it carries. */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly refusal: Refusal;

  constructor(refusal: Refusal) {
    super(refusal.problem);
    this.refusal = refusal;
  }
}

export const PROBLEM_MEDIA_TYPE = 'application/problem+json';

/**
 * Source: RFC 9457 section 3.
 *
 * @param correlationId a UUID
 */
export function problemDocument(refusal: Refusal, correlationId: string): ProblemDocument {
  const { title, status } = PROBLEM_TYPES[refusal.problem];
  return {
    type: `${PROBLEM_BASE}${refusal.problem}`,
    title,
    status,
    detail: refusal.detail,
    instance: `urn:uuid:${correlationId}`,
    ...(refusal.errors === undefined ? {} : { errors: refusal.errors }),
  };
}
