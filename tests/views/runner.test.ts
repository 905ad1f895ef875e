import { evalSqlOnFhir } from '@medplum/core';
import type { Patient } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { parseView, resourcesIn, runView, ViewFault, type ViewRow } from '../../src/views/index.js';

// The rules are those of the processing model of SQL on FHIR 2.0; the cases are our own. What
// another runner can do as well is compared with it: npm @medplum/core, evalSqlOnFhir.

const PATIENTS: readonly Patient[] = [
  {
    resourceType: 'Patient',
    id: 'a',
    active: true,
    deceasedBoolean: true,
    name: [
      { use: 'official', family: 'Ash', given: ['Ada', 'Ann'] },
      { use: 'usual', family: 'Elm' },
    ],
    telecom: [{ system: 'phone', value: '1' }],
    contact: [
      { name: { family: 'Oak' }, telecom: [{ system: 'email', value: '2' }] },
      { name: { family: 'Yew' } },
    ],
  },
  { resourceType: 'Patient', id: 'b', name: [{ use: 'usual', family: 'Fir', given: ['Bo'] }] },
  { resourceType: 'Patient', id: 'c', active: false },
];

const definition = (more: object) => ({
  resourceType: 'ViewDefinition' as const,
  name: 'some_view',
  status: 'active' as const,
  resource: 'Patient',
  ...more,
});

const run = (more: object, resources: readonly object[] = PATIENTS): readonly ViewRow[] => {
  const view = parseView(definition(more));
  if (!view.ok) throw new Error(JSON.stringify(view.problems));
  return runView(view.value, resources.flatMap(resourcesIn));
};

const rulesOf = (more: object): readonly string[] => {
  const view = parseView(definition(more));
  return view.ok ? [] : view.problems.map(({ rule }) => rule);
};

const columns = (...pairs: readonly (readonly [string, string])[]) =>
  pairs.map(([name, path]) => ({ name, path }));
const ID = { column: columns(['id', 'id']) };
const FAMILY = columns(['family', 'family']);
const REACHED = columns(['by', 'system'], ['at', 'value']);

/** Views that both runners can run. */
const SHARED: Readonly<
  Record<string, { readonly view: object; readonly rows: readonly object[] }>
> = {
  'columns side by side': {
    view: { select: [ID, { column: columns(['active', 'active']) }] },
    rows: [
      { id: 'a', active: true },
      { id: 'b', active: null },
      { id: 'c', active: false },
    ],
  },
  'a row for each item': {
    view: { select: [ID, { forEach: 'name', column: FAMILY }] },
    rows: [
      { id: 'a', family: 'Ash' },
      { id: 'a', family: 'Elm' },
      { id: 'b', family: 'Fir' },
    ],
  },
  'a row of nothing for no item': {
    view: { select: [ID, { forEachOrNull: 'name', column: FAMILY }] },
    rows: [
      { id: 'a', family: 'Ash' },
      { id: 'a', family: 'Elm' },
      { id: 'b', family: 'Fir' },
      { id: 'c', family: null },
    ],
  },
  'items of items': {
    view: {
      select: [
        ID,
        {
          forEach: 'contact',
          column: columns(['who', 'name.family']),
          select: [{ forEach: 'telecom', column: REACHED }],
        },
      ],
    },
    rows: [{ id: 'a', who: 'Oak', by: 'email', at: '2' }],
  },
  'one part of a union after the other': {
    view: {
      select: [
        {
          ...ID,
          unionAll: [
            { forEach: 'contact.telecom', column: REACHED },
            { forEach: 'telecom', column: REACHED },
          ],
        },
      ],
    },
    rows: [
      { id: 'a', by: 'email', at: '2' },
      { id: 'a', by: 'phone', at: '1' },
    ],
  },
  'a filter that holds': {
    view: { select: [ID], where: [{ path: "name.where(use = 'official').exists()" }] },
    rows: [{ id: 'a' }],
  },
  'several filters': {
    view: {
      select: [ID],
      where: [{ path: 'name.exists()' }, { path: "name.where(use = 'official').empty()" }],
    },
    rows: [{ id: 'b' }],
  },
  'several values in a column of its own kind': {
    view: { select: [{ column: [{ name: 'given', path: 'name.given', collection: true }] }] },
    rows: [{ given: ['Ada', 'Ann'] }, { given: ['Bo'] }, { given: null }],
  },
};

describe('a view', () => {
  it.each(Object.entries(SHARED))('has %s', (name, { view, rows }) => {
    const empty = name.startsWith('several values') ? [] : null;
    const wanted = rows.map((row) =>
      Object.fromEntries(
        Object.entries(row).map(([key, value]) => [key, value === null ? empty : value]),
      ),
    );
    expect(run(view)).toEqual(wanted);
  });

  it.each(Object.entries(SHARED))(
    'gives another runner the same rows: %s',
    (_name, { view, rows }) => {
      // The other runner has its own declarations of the same types.
      const theirs = JSON.parse(JSON.stringify({ view: definition(view), patients: PATIENTS }));
      expect(evalSqlOnFhir(theirs.view, theirs.patients)).toEqual(rows);
    },
  );

  it('has all columns of a part empty where there is no item, those of inner parts too', () => {
    const inner = { forEach: 'telecom', column: REACHED };
    const part = {
      forEachOrNull: 'contact',
      column: columns(['who', 'name.family']),
      select: [inner],
    };
    expect(run({ select: [ID, part], where: [{ path: "id = 'b'" }] })).toEqual([
      { id: 'b', who: null, by: null, at: null },
    ]);
  });

  it('sees the type of a choice within an item', () => {
    const observation = {
      resourceType: 'Observation',
      component: [{ valueQuantity: { value: 3.5 } }, { valueCodeableConcept: { text: 'x' } }],
    };
    const part = { forEach: 'component', column: columns(['n', 'value.ofType(Quantity).value']) };
    expect(run({ resource: 'Observation', select: [part] }, [observation])).toEqual([
      { n: 3.5 },
      { n: null },
    ]);
  });

  it('knows its constants', () => {
    const constant = [
      { name: 'use', valueCode: 'usual' },
      { name: 'first', valueInteger: 0 },
      { name: 'dead', valueBoolean: true },
    ];
    const named = columns(['id', 'id'], ['usual', 'name.where(use = %use)[%first].family']);
    const where = [{ path: 'deceased.ofType(boolean) = %dead' }];
    expect(run({ constant, select: [{ column: named }], where })).toEqual([
      { id: 'a', usual: 'Elm' },
    ]);
  });

  it('leaves resources of other types out, and does not change those that it reads', () => {
    const before = structuredClone(PATIENTS);
    expect(run({ resource: 'Observation', select: [ID] })).toEqual([]);
    run({ select: [{ forEach: 'name', column: FAMILY }] });
    expect(PATIENTS).toEqual(before);
  });
});

describe('keys', () => {
  const keyed = (reference: object, type = '') =>
    run(
      {
        resource: 'Observation',
        select: [{ column: columns(['k', `subject.getReferenceKey(${type})`]) }],
      },
      [{ resourceType: 'Observation', subject: reference }],
    );

  it.each([
    [{ reference: 'Patient/a' }, '', 'a'],
    [{ reference: 'Patient/a' }, 'Patient', 'a'],
    [{ reference: 'Patient/a' }, 'Group', null],
    [{ reference: 'https://x.example/fhir/Patient/a/_history/2' }, 'Patient', 'a'],
    [{ reference: 'urn:uuid:0-1', type: 'Patient' }, 'Patient', '0-1'],
    [{ reference: 'urn:uuid:0-1', type: 'Patient' }, 'Group', null],
    [{ reference: '#p' }, '', null],
    [{ identifier: { value: 'x' } }, 'Patient', null],
  ])('of the reference %j for the type "%s" are %j', (reference, type, key) => {
    expect(keyed(reference, type)).toEqual([{ k: key }]);
  });

  it('join a Bundle that nobody has stored yet', () => {
    const bundle = {
      resourceType: 'Bundle',
      entry: [
        { fullUrl: 'urn:uuid:1', resource: { resourceType: 'Patient' } },
        { fullUrl: 'urn:uuid:2', resource: { resourceType: 'Patient', id: 'stored' } },
      ],
    };
    const keys = { select: [{ column: columns(['k', 'getResourceKey()']) }] };
    expect(run(keys, [bundle])).toEqual([{ k: '1' }, { k: 'stored' }]);
  });
});

describe('what is no view', () => {
  const UNION = (second: object) => ({ select: [{ unionAll: [{ column: FAMILY }, second] }] });

  it.each<[string, object, string]>([
    ['nothing to select', {}, 'view-shape'],
    ['an element that is not run', { select: [{ ...ID, repeat: ['item'] }] }, 'view-shape'],
    ['a name with a hyphen', { select: [{ column: columns(['a-b', 'id']) }] }, 'view-shape'],
    ['a path that is no text', { select: [{ forEach: 1, column: FAMILY }] }, 'view-shape'],
    ['a name twice', { select: [ID, ID] }, 'view-columns'],
    ['other columns in a union', UNION({ column: columns(['given', 'given']) }), 'view-union'],
    [
      'both kinds of for each',
      { select: [{ forEach: 'name', forEachOrNull: 'name', column: FAMILY }] },
      'view-for-each',
    ],
    ['a constant without a value', { constant: [{ name: 'x' }], select: [ID] }, 'view-constant'],
  ])('is refused: %s', (_name, more, rule) => {
    expect(rulesOf(more)).toEqual([rule]);
  });

  it.each<[string, object]>([
    ['several values in a column of one', { select: [{ column: columns(['f', 'name.family']) }] }],
    ['a filter that is not true or false', { select: [ID], where: [{ path: 'name.family' }] }],
    ['a path that is no FHIRPath', { select: [{ forEach: '@@', column: FAMILY }] }],
    ['a constant that there is not', { select: [{ column: columns(['x', '%nothing']) }] }],
    ['an object in a column', { select: [{ column: columns(['n', 'name.first()']) }] }],
  ])('is found when it runs: %s', (_name, more) => {
    expect(() => run(more)).toThrow(ViewFault);
  });
});
