import { createPaths, type Paths } from './fhir-paths.js';
import type { Keyed } from './keys.js';
import { namesIn, type View, type ViewColumn, type ViewSelect } from './view.js';
import { ViewFault } from './view-fault.js';

export type Cell = string | number | boolean | null | readonly unknown[];
export type ViewRow = Readonly<Record<string, Cell>>;

/**
 * Runs a view over resources, in their order.
 *
 * Source: SQL on FHIR 2.0, processing model.
 *
 * @throws ViewFault when a path cannot be evaluated, a filter is neither true nor false, or a
 *   column that is no collection has several values
 */
export function runView(view: View, resources: readonly Keyed[]): readonly ViewRow[] {
  const paths = createPaths(view.constant);
  return resources
    .filter(({ resource }) => 'resourceType' in resource && resource.resourceType === view.resource)
    .flatMap((keyed) => {
      const at: At = { paths, keyed: { ...keyed, resource: structuredClone(keyed.resource) } };
      return view.where.every((path) => holds(path, at))
        ? product(view.select.map((part) => rowsOf(part, ROOT, at)))
        : [];
    });
}

/** Names of the columns in their order. */
export const columnsOf = ({ select }: View): readonly string[] => select.flatMap(namesIn);

interface At {
  readonly paths: Paths;
  readonly keyed: Keyed;
}

/** A focus is the path that leads to it: a value alone would have lost its type. */
const ROOT = '$this';

const within = (focus: string, path: string): string =>
  focus === ROOT ? path : `${focus}.select(${path})`;

function holds(path: string, { paths, keyed }: At): boolean {
  const [only, ...more] = paths.evaluate(path, keyed);
  if (more.length > 0 || (only !== undefined && typeof only !== 'boolean')) {
    throw new ViewFault('A filter of the view is neither true nor false.');
  }
  return only === true;
}

function rowsOf(part: ViewSelect, focus: string, at: At): readonly ViewRow[] {
  const foci = fociOf(part, focus, at);
  if (foci.length === 0 && part.forEachOrNull !== undefined) {
    return [Object.fromEntries(namesIn(part).map((name) => [name, null]))];
  }
  return foci.flatMap((each) =>
    product([
      [Object.fromEntries(part.column.map((column) => [column.name, cellOf(column, each, at)]))],
      ...part.select.map((inner) => rowsOf(inner, each, at)),
      ...(part.unionAll.length === 0
        ? []
        : [part.unionAll.flatMap((branch) => rowsOf(branch, each, at))]),
    ]),
  );
}

function fociOf({ forEach, forEachOrNull }: ViewSelect, focus: string, at: At): readonly string[] {
  const path = forEach ?? forEachOrNull;
  if (path === undefined) return [focus];
  const all = within(focus, path);
  return at.paths.evaluate(all, at.keyed).map((_value, i) => `(${all})[${i}]`);
}

/** Every row of the first beside every row of the next. */
const product = (parts: readonly (readonly ViewRow[])[]): readonly ViewRow[] =>
  parts.reduce<readonly ViewRow[]>(
    (rows, part) => rows.flatMap((row) => part.map((more) => ({ ...row, ...more }))),
    [{}],
  );

function cellOf({ name, path, collection }: ViewColumn, focus: string, at: At): Cell {
  const values = at.paths.evaluate(within(focus, path), at.keyed);
  if (collection) return values;
  const [only, ...more] = values;
  if (more.length > 0) throw new ViewFault(`The column ${name} has several values in one row.`);
  if (only === undefined) return null;
  if (typeof only === 'string' || typeof only === 'number' || typeof only === 'boolean') {
    return only;
  }
  throw new ViewFault(`The column ${name} holds no single value.`);
}
