import { invariant } from '../kernel/index.js';
import type { CONCEPTS } from './concepts.table.js';
import { LOCAL_CODES } from './local-codes.table.js';

/** A concept of a code system of others; a key of `concepts.csv` with a code that may be sent. */
export type ConceptKey = keyof typeof CONCEPTS;

/** A code system of our own; a set of `local-codes.csv`. */
export type LocalSet = keyof typeof LOCAL_CODES;
export type LocalCode<Set extends LocalSet> = keyof (typeof LOCAL_CODES)[Set] & string;

/** A code of our own with the set it belongs to. */
export type LocalRef<Set extends LocalSet = LocalSet> = {
  readonly [S in Set]: { readonly set: S; readonly code: LocalCode<S> };
}[Set];

/** What others call a concept. */
export interface Others {
  readonly open?: readonly ConceptKey[];
  /** Wider concepts, each sent only where no code of its system could be. */
  readonly broader?: readonly ConceptKey[];
}

/** A concept of a record: how others code it, how we do, and what a person reads. */
export interface CodeRef {
  readonly open: readonly ConceptKey[];
  readonly broader?: readonly ConceptKey[];
  readonly local?: LocalRef;
  readonly text: string;
}

/** A concept by its local code alone, read as that code is displayed. */
export function localRef(local: LocalRef, others: Others = {}): CodeRef {
  return { open: [], ...others, local, text: localDisplay(local.set, local.code) };
}

/** All codes of a set by code, with what others call them where they do. */
export function setRefs<Set extends LocalSet>(
  set: Set,
  others: Partial<Record<LocalCode<Set>, Others>> = {},
): Readonly<Record<LocalCode<Set>, CodeRef>> {
  const named: Readonly<Record<string, Others | undefined>> = others;
  const refs: object = Object.fromEntries(
    Object.keys(LOCAL_CODES[set]).map((code) => {
      const local = { set, code };
      invariant(isLocalRef(local), `the code ${code} is in the set ${set}`);
      return [code, localRef(local, named[code])];
    }),
  );
  invariant(covers(set, refs), `every code of ${set} has a row`);
  return refs;
}

/** The display of a code of our own; throws InvariantError when the set has no such code. */
export function localDisplay(set: LocalSet, code: string): string {
  const rows: Readonly<Record<string, { readonly display: string }>> = LOCAL_CODES[set];
  const row = rows[code];
  invariant(row !== undefined, `the code ${code} is in the set ${set}`);
  return row.display;
}

function isLocalRef(ref: { readonly set: LocalSet; readonly code: string }): ref is LocalRef {
  return Object.hasOwn(LOCAL_CODES[ref.set], ref.code);
}

function covers<Set extends LocalSet>(
  set: Set,
  refs: object,
): refs is Record<LocalCode<Set>, CodeRef> {
  return Object.keys(LOCAL_CODES[set]).every((code) => Object.hasOwn(refs, code));
}
