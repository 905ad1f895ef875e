/**
 * One thing that somebody else sent us wrong. Never holds the value that came: a problem may
 * be logged by its receiver, and the value may be about a patient.
 */
export interface Problem {
  /** Stable key of the rule that was broken, kebab-case or a published rule id (CC-01). */
  readonly rule: string;
  /** JSON Pointer (RFC 6901) to the place in the document; '' is the whole document. */
  readonly pointer: string;
  /** One plain sentence that says what is wrong. */
  readonly message: string;
  /** What would have been accepted. */
  readonly expected: string;
}

/** A value that has passed its checks, or all the problems that it had. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export const passed = <T>(value: T): Checked<T> => ({ ok: true, value });

export const failed = <T>(problems: readonly Problem[]): Checked<T> => ({ ok: false, problems });
