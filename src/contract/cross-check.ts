import type { Problem } from '../kernel/index.js';

/** The readable part of a message: a field that broke its own rule is left out. */
export type Readable<T> = T extends readonly (infer E)[]
  ? readonly Readable<E>[]
  : T extends object
    ? { readonly [K in keyof T]?: Readable<T[K]> | undefined }
    : T;

/** A rule across fields. Silent when a field that it needs is absent. */
export interface CrossCheck<Sent> {
  readonly rule: string;
  readonly message: string;
  readonly expected: string;
  /** @returns JSON Pointers of the places where the rule is broken */
  readonly broken: (sent: Sent) => readonly string[];
}

/** @returns every place where a rule is broken, in the order of the rules */
export function crossProblems<Sent>(checks: readonly CrossCheck<Sent>[], sent: Sent): Problem[] {
  return checks.flatMap(({ rule, message, expected, broken }) =>
    broken(sent).map((pointer) => ({ rule, pointer, message, expected })),
  );
}
