import type { JsonObject } from './json.js';

/** Codes of the value set issue-type (HL7 FHIR R4) that the sandbox uses. */
export type IssueCode =
  | 'invalid'
  | 'structure'
  | 'value'
  | 'invariant'
  | 'not-supported'
  | 'not-found'
  | 'multiple-matches'
  | 'conflict'
  | 'duplicate'
  | 'too-long'
  | 'too-costly'
  | 'exception';

/** What the sandbox answers instead of doing what it was asked. Never holds what was sent. */
export class Refusal extends Error {
  override readonly name = 'Refusal';

  readonly status: number;
  readonly code: IssueCode;
  /** FHIRPath to the place in what was sent. */
  readonly expression: string | undefined;
  readonly headers: Readonly<Record<string, string>>;

  constructor(
    status: number,
    code: IssueCode,
    message: string,
    more: { expression?: string; headers?: Readonly<Record<string, string>> } = {},
  ) {
    super(message);
    this.status = status;
    this.code = code;
    this.expression = more.expression;
    this.headers = more.headers ?? {};
  }
}

/** The one form in which the sandbox speaks of an error. Source: HL7 FHIR R4, OperationOutcome. */
export function toOperationOutcome(refusal: Refusal): JsonObject {
  return {
    resourceType: 'OperationOutcome',
    issue: [
      {
        severity: 'error',
        code: refusal.code,
        diagnostics: refusal.message,
        ...(refusal.expression === undefined ? {} : { expression: [refusal.expression] }),
      },
    ],
  };
}
