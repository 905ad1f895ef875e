import type { Bundle } from 'fhir/r4.js';
import { urlOf } from '../conformance/sample-parts.js';

/**
 * One change to a Bundle. `at` is a JSON Pointer from the Bundle (`/type`) or, after the type
 * and key of an entry, from its resource (`Procedure.esd/status`); `entry:` before them means
 * the entry itself (`entry:Procedure.esd/request/method`). The last step `-` appends to a list.
 * Without `set` the value is removed.
 */
export interface Edit {
  readonly at: string;
  readonly set?: unknown;
}

/** @returns a changed copy */
export function edited(bundle: Bundle, edits: readonly Edit[]): Bundle {
  const copy = structuredClone(bundle);
  for (const edit of edits) apply(copy, edit);
  return copy;
}

function apply(bundle: Bundle, { at, set }: Edit): void {
  const [start = '', ...path] = at.split('/');
  const steps = [...startOf(bundle, start), ...path];
  const last = steps.pop() ?? '';
  const holder = steps.reduce<unknown>(child, bundle);
  if (Array.isArray(holder)) {
    if (last === '-') holder.push(set);
    else if (set === undefined) holder.splice(Number(last), 1);
    else holder[Number(last)] = set;
  } else if (isRecord(holder)) {
    if (set === undefined && !(last in holder)) throw new Error(`nothing to remove at ${at}`);
    if (set === undefined) delete holder[last];
    else holder[last] = set;
  } else {
    throw new Error(`nothing at ${at}`);
  }
}

function startOf(bundle: Bundle, start: string): readonly string[] {
  if (start === '') return [];
  const [type = '', key = ''] = start.replace('entry:', '').split('.');
  const index = (bundle.entry ?? []).findIndex(({ fullUrl }) => fullUrl === urlOf(type, key));
  if (index < 0) throw new Error(`no entry ${start}`);
  return ['entry', String(index), ...(start.startsWith('entry:') ? [] : ['resource'])];
}

function child(holder: unknown, step: string): unknown {
  if (Array.isArray(holder)) return holder[Number(step)];
  return isRecord(holder) ? holder[step] : undefined;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
