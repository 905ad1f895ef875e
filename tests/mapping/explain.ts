import { isDeepStrictEqual } from 'node:util';
import type { Bundle } from 'fhir/r4.js';
import type { MappingSettings } from '../../src/mapping/index.js';
import type { RecordView } from '../../src/record/index.js';
import type { Draft } from '../support/consistent-case.js';
import { keyOf, resourcesOf } from './records.js';

/** A field of a case: one leaf, an empty list, or an identifier as a whole. */
export interface InputLeaf {
  readonly pointer: string;
  /** The pointer with `*` for each index. */
  readonly pattern: string;
  readonly value: Draft;
  /** The record that holds it. */
  readonly holder: Draft;
  /** One-based place in the innermost list; 0 outside of lists. */
  readonly nth: number;
}

/** What a record says and under which settings, and all that it became. */
export interface Told {
  readonly version: RecordView;
  readonly settings: MappingSettings;
  readonly resources: readonly Draft[];
  /** The key of each resource. */
  readonly keys: readonly string[];
}

/** Where a field of the case is found again. */
export interface FieldSource {
  /** Pattern of the pointer in the case. */
  readonly at: string;
  /** Type and key of the resource; `*` any text, `{n}` place in the list, `{name}` sibling. */
  readonly in: string;
  /** `a.b` a child, `a[]` each of a list, `a[code]` those of a list that carry the code. */
  readonly path: string;
  /** What stands there; undefined where this row does not apply. */
  readonly says: (leaf: InputLeaf, told: Told) => unknown;
  /** Several equal fields may share one place. */
  readonly shared?: true;
}

/** What may stand at a place of a resource without being a field of the case. */
export interface FixedSource {
  readonly in: string;
  readonly path: string;
  readonly says: (resource: Draft, told: Told) => readonly unknown[];
}

/** A field that the journal alone keeps. */
export interface JournalOnly {
  readonly at: string;
  readonly when?: (leaf: InputLeaf) => boolean;
  readonly reason: string;
}

export interface Tables {
  readonly fields: readonly FieldSource[];
  readonly fixed: readonly FixedSource[];
  readonly journalOnly: readonly JournalOnly[];
}

/** Fields of the case that are lost, and leaves of the resources that nothing explains. */
export interface Unexplained {
  readonly lost: readonly string[];
  readonly stray: readonly string[];
}

/** The message whose fields are looked for, and the resources that must say nothing else. */
export interface Scope {
  readonly fields: Draft;
  readonly owns: (resource: Draft) => boolean;
}

/** What a plan asks for is accounted for by its items, in the tests of follow-up requests. */
const isOfCase = ({ resourceType, intent }: Draft): boolean =>
  intent !== 'plan' && resourceType !== 'Appointment';

/** @param scope the case and its resources, unless another message is looked for */
export function explain(
  version: RecordView,
  settings: MappingSettings,
  bundle: Bundle,
  tables: Tables,
  scope: Scope = { fields: version.now.esdCase.fields, owns: isOfCase },
): Unexplained {
  const resources = resourcesOf(bundle);
  const told = { version, settings, resources, keys: resources.map(keyOf) };
  const explained = new Set<string>();
  const leaves = inputLeaves(scope.fields);
  const alike = grouped(leaves, ({ pattern }) => pattern);
  const rows = grouped(tables.fields, ({ at }) => at);
  const lost = leaves
    .filter((leaf) => !isFound(leaf, alike, told, rows, explained))
    .filter((leaf) => !tables.journalOnly.some((row) => isJournalOnly(row, leaf)));
  for (const row of tables.fixed) markFixed(row, told, explained);
  const stray = resources.flatMap((resource, i) =>
    (scope.owns(resource) ? leafPointers(resource, `${i}`) : [])
      .filter((pointer) => !explained.has(pointer))
      .map((pointer) => `${resource.resourceType} ${keyOf(resource)} ${pointer}`),
  );
  return { lost: lost.map(({ pointer }) => pointer), stray };
}

const isJournalOnly = ({ at, when }: JournalOnly, leaf: InputLeaf): boolean =>
  at === leaf.pattern && (when === undefined || when(leaf));

/** Whether the field stands in the resources, as often as it was told. */
function isFound(
  leaf: InputLeaf,
  leaves: ReadonlyMap<string, readonly InputLeaf[]>,
  told: Told,
  rows: ReadonlyMap<string, readonly FieldSource[]>,
  explained: Set<string>,
): boolean {
  const found = (rows.get(leaf.pattern) ?? []).map((row) => {
    const expected = row.says(leaf, told);
    if (expected === undefined) return false;
    const name = filledIn(row.in, leaf);
    const places = placesOf(told, name, row.path).filter(({ value }) =>
      isDeepStrictEqual(value, expected),
    );
    for (const { pointer, value } of places) mark(value, pointer, explained);
    const alike = (leaves.get(leaf.pattern) ?? []).filter(
      (other) =>
        filledIn(row.in, other) === name && isDeepStrictEqual(row.says(other, told), expected),
    );
    return places.length >= (row.shared ? 1 : alike.length);
  });
  return found.some((isThere) => isThere);
}

function grouped<T>(list: readonly T[], nameOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of list) {
    const name = nameOf(item);
    groups.set(name, [...(groups.get(name) ?? []), item]);
  }
  return groups;
}

function markFixed(row: FixedSource, told: Told, explained: Set<string>): void {
  const byResource = new Map<Draft, readonly unknown[]>();
  for (const { pointer, value, resource } of placesOf(told, row.in, row.path)) {
    const allowed = byResource.get(resource) ?? row.says(resource, told);
    byResource.set(resource, allowed);
    if (allowed.some((one) => isDeepStrictEqual(one, value))) mark(value, pointer, explained);
  }
}

function mark(value: unknown, pointer: string, explained: Set<string>): void {
  for (const leaf of leafPointers(value, pointer)) explained.add(leaf);
}

function leafPointers(node: unknown, pointer: string): readonly string[] {
  if (node === null || typeof node !== 'object') return node === undefined ? [] : [pointer];
  return Object.entries(node).flatMap(([key, child]) => leafPointers(child, `${pointer}/${key}`));
}

interface Place {
  readonly pointer: string;
  readonly value: Draft;
  readonly resource: Draft;
}

function placesOf({ resources, keys }: Told, name: string, path: string): readonly Place[] {
  const [type = '', key = ''] = name.split(' ');
  const fits = key.includes('*') ? new RegExp(`^${key.replaceAll('*', '.*')}$`) : undefined;
  return resources.flatMap((resource, i) => {
    if (type !== '*' && resource.resourceType !== type) return [];
    const own = keys[i] ?? '';
    if (fits === undefined ? own !== key : !fits.test(own)) return [];
    return path
      .split('.')
      .reduce<readonly Place[]>(
        (places, step) => places.flatMap((place) => taken(place, step)),
        [{ pointer: `${i}`, value: resource, resource }],
      );
  });
}

function taken({ pointer, value, resource }: Place, step: string): readonly Place[] {
  const [, name = '', list, code = ''] = step.match(/^(\w+)(\[([^\]]*)\])?$/) ?? [];
  const child = value[name];
  if (child === undefined) return [];
  const at = `${pointer}/${name}`;
  if (list === undefined) return [{ pointer: at, value: child, resource }];
  if (!Array.isArray(child)) return [];
  return child.flatMap((entry, i) =>
    code === '' || carries(entry, code) ? [{ pointer: `${at}/${i}`, value: entry, resource }] : [],
  );
}

const carries = ({ code, type }: Draft, wanted: string): boolean =>
  ((code ?? type)?.coding ?? []).some((coding: Draft) => coding.code === wanted);

const filledIn = (name: string, { nth, holder }: InputLeaf): string =>
  name.replaceAll(/\{(\w+)\}/g, (_all, field: string) =>
    field === 'n' ? String(nth) : field === 'drug' ? (holder.agent ?? holder.class) : holder[field],
  );

/** Every field that a case tells. */
export function inputLeaves(fields: Draft): readonly InputLeaf[] {
  return leavesUnder(fields, '', {}, 0);
}

function leavesUnder(
  node: Draft,
  pointer: string,
  holder: Draft,
  nth: number,
): readonly InputLeaf[] {
  const isList = Array.isArray(node);
  const whole = node === null || typeof node !== 'object' || (isList && node.length === 0);
  if (whole || (pointer !== '/patient' && isIdentifier(node))) {
    return [{ pointer, pattern: pointer.replaceAll(/\/\d+/g, '/*'), value: node, holder, nth }];
  }
  return Object.entries(node).flatMap(([key, child]) =>
    leavesUnder(child, `${pointer}/${key}`, isList ? holder : node, isList ? Number(key) + 1 : nth),
  );
}

const isIdentifier = (node: Draft): boolean => Object.keys(node).sort().join() === 'system,value';
