import type { CaseFields } from './case.js';

/** The readable part of a case: a field that broke its own rule is left out. */
export type Readable<T> = T extends readonly (infer E)[]
  ? readonly Readable<E>[]
  : T extends object
    ? { readonly [K in keyof T]?: Readable<T[K]> | undefined }
    : T;

export type ReadableCase = Readable<CaseFields>;

/** A rule across fields. Silent when a field that it needs is absent. */
export interface CrossCheck {
  readonly rule: string;
  readonly message: string;
  readonly expected: string;
  /** @returns JSON Pointers of the places where the rule is broken */
  readonly broken: (sent: ReadableCase) => readonly string[];
}
