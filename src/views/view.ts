import { z } from 'zod';
import { type Checked, failed, type Problem, passed } from '../kernel/index.js';

/** A column of a view. */
export interface ViewColumn {
  readonly name: string;
  /** FHIRPath. */
  readonly path: string;
  /** Whether a row may hold several values; else more than one is a fault of the view. */
  readonly collection: boolean;
}

/** A part of a view: its columns, for each focus, beside those of its parts. */
export interface ViewSelect {
  readonly column: readonly ViewColumn[];
  readonly select: readonly ViewSelect[];
  readonly unionAll: readonly ViewSelect[];
  readonly forEach?: string;
  readonly forEachOrNull?: string;
}

/** As much of a ViewDefinition of SQL on FHIR (2.0) as is run here. */
export interface View {
  readonly name: string;
  readonly resource: string;
  readonly constant: Readonly<Record<string, string | number | boolean>>;
  readonly where: readonly string[];
  readonly select: readonly ViewSelect[];
}

const NAME = /^[A-Za-z][A-Za-z0-9_]{0,254}$/;
const name = z.string().regex(NAME).meta({ title: 'a name of letters, digits and _' });
const path = z.string().min(1).max(10_000);

const column = z.strictObject({
  name,
  path,
  description: z.string().optional(),
  type: z.string().optional(),
  collection: z.boolean().default(false),
});

const select = z.strictObject({
  column: z.array(column).min(1).optional(),
  get select() {
    return z.array(select).min(1).optional();
  },
  get unionAll() {
    return z.array(select).min(1).optional();
  },
  forEach: path.optional(),
  forEachOrNull: path.optional(),
});

/** Constants by the kinds of value that FHIRPath compares as they are. */
const constant = z.strictObject({
  name,
  valueBoolean: z.boolean().optional(),
  valueCode: z.string().optional(),
  valueDecimal: z.number().optional(),
  valueId: z.string().optional(),
  valueInteger: z.number().int().optional(),
  valueString: z.string().optional(),
  valueUri: z.string().optional(),
});

const view = z.looseObject({
  resourceType: z.literal('ViewDefinition'),
  name,
  resource: z.string().regex(/^[A-Z][A-Za-z]+$/),
  constant: z.array(constant).default([]),
  where: z.array(z.strictObject({ path, description: z.string().optional() })).default([]),
  select: z.array(select).min(1),
});

type Select = z.infer<typeof select>;

/**
 * Reads a ViewDefinition.
 *
 * Source: SQL on FHIR 2.0, StructureDefinition ViewDefinition. Run are column, collection, select,
 * forEach, forEachOrNull, unionAll, where and constants; any other element of a select is refused.
 *
 * @returns the view, or everything that is wrong with it
 */
export function parseView(value: unknown): Checked<View> {
  const read = view.safeParse(value);
  if (!read.success) {
    return failed(
      read.error.issues.map(({ path: at, message }) => ({
        rule: 'view-shape',
        pointer: at.map((step) => `/${String(step)}`).join(''),
        message: 'The view cannot be run: here stands nothing that is known, or not what belongs.',
        expected: message,
      })),
    );
  }
  const { name: viewName, resource, constant: constants, where, select: selects } = read.data;
  const problems = [
    ...constants.flatMap((one, i) => (givenIn(one) === undefined ? [noValue(i)] : [])),
    ...selects.flatMap((one, i) => selectProblems(one, `/select/${i}`)),
    ...repeatedNames(selects),
  ];
  if (problems.length > 0) return failed(problems);
  return passed({
    name: viewName,
    resource,
    constant: Object.fromEntries(constants.map((one) => [one.name, givenIn(one) ?? ''])),
    where: where.map((one) => one.path),
    select: selects.map(toSelect),
  });
}

function toSelect({
  column: columns = [],
  select: parts = [],
  unionAll = [],
  ...each
}: Select): ViewSelect {
  return {
    column: columns.map((one) => ({
      name: one.name,
      path: one.path,
      collection: one.collection,
    })),
    select: parts.map(toSelect),
    unionAll: unionAll.map(toSelect),
    ...(each.forEach === undefined ? {} : { forEach: each.forEach }),
    ...(each.forEachOrNull === undefined ? {} : { forEachOrNull: each.forEachOrNull }),
  };
}

function givenIn(constantOf: z.infer<typeof constant>): string | number | boolean | undefined {
  const { name: _name, ...values } = constantOf;
  const given = Object.values(values).filter((value) => value !== undefined);
  return given.length === 1 ? given[0] : undefined;
}

/** Names of all columns of a part in their order. */
export const namesIn = (part: ViewSelect): readonly string[] => [
  ...part.column.map((one) => one.name),
  ...part.select.flatMap(namesIn),
  ...(part.unionAll[0] === undefined ? [] : namesIn(part.unionAll[0])),
];

function selectProblems(part: Select, pointer: string): readonly Problem[] {
  const { forEach, forEachOrNull, select: parts = [], unionAll = [] } = part;
  const [first, ...others] = unionAll.map((one) => namesIn(toSelect(one)).join());
  return [
    ...(forEach !== undefined && forEachOrNull !== undefined ? [twoForEach(pointer)] : []),
    ...(others.some((names) => names !== first) ? [otherColumns(pointer)] : []),
    ...parts.flatMap((one, i) => selectProblems(one, `${pointer}/select/${i}`)),
    ...unionAll.flatMap((one, i) => selectProblems(one, `${pointer}/unionAll/${i}`)),
  ];
}

function repeatedNames(selects: readonly Select[]): readonly Problem[] {
  const names = selects.map(toSelect).flatMap(namesIn);
  return new Set(names).size === names.length ? [] : [REPEATED];
}

const REPEATED: Problem = {
  rule: 'view-columns',
  pointer: '/select',
  message: 'Two columns of the view have the same name.',
  expected: 'each name once',
};
const noValue = (index: number): Problem => ({
  rule: 'view-constant',
  pointer: `/constant/${index}`,
  message: 'A constant has one value.',
  expected:
    'one of valueBoolean, valueCode, valueDecimal, valueId, valueInteger, valueString, valueUri',
});
const twoForEach = (pointer: string): Problem => ({
  rule: 'view-for-each',
  pointer,
  message: 'forEach and forEachOrNull stand together.',
  expected: 'one of them',
});
const otherColumns = (pointer: string): Problem => ({
  rule: 'view-union',
  pointer: `${pointer}/unionAll`,
  message: 'The parts of a union have different columns, or have them in another order.',
  expected: 'the same columns in the same order',
});
