import { readdirSync, readFileSync } from 'node:fs';
import { evalSqlOnFhir } from '@medplum/core';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  columnsOf,
  publishedViews,
  resourcesIn,
  runView,
  type ViewRow,
} from '../../src/views/index.js';
import { exampleCases, type MadeCase } from '../measure/made-cases.js';

const FOLDER = new URL('../../profiles/views/', import.meta.url);
const VIEWS = publishedViews();

let cases: readonly MadeCase[] = [];
/** Rows of each view over all cases at once. */
let rows: ReadonlyMap<string, readonly ViewRow[]> = new Map();
beforeAll(async () => {
  cases = await exampleCases();
  const resources = cases.flatMap(({ bundle }) => resourcesIn(bundle));
  rows = new Map([...VIEWS].map(([name, view]) => [name, runView(view, resources)]));
}, 60_000);

const allRows = (name: string): readonly ViewRow[] => rows.get(name) ?? [];

/** Of the Procedure of the dissection itself. */
const caseRow = ({ facts }: MadeCase): ViewRow =>
  allRows('esd_case').find((row) => row['case_id'] === facts.caseId) ?? {};

const rowsOf = (name: string, made: MadeCase): readonly ViewRow[] => {
  const { procedure_key: key } = caseRow(made);
  return allRows(name).filter((row) => row['procedure_key'] === key);
};

/** The answer to an item, or to one of a panel, by the unit, or by its laboratory; null where there is none. */
function answer(
  made: MadeCase,
  item: string,
  column: 'value_code' | 'value_number',
  by: 'unit' | 'laboratory' = 'unit',
) {
  const told = rowsOf('esd_finding', made).find(
    (row) =>
      [row['item'], `${row['panel']}/${row['item']}`].includes(item) &&
      (row['category'] === 'laboratory') === (by === 'laboratory'),
  );
  return told?.[column] ?? null;
}

const standing = () => cases.filter(({ facts }) => !facts.withdrawn);

describe('the published views', () => {
  it('are all that lie in the folder, and each is named as its file', () => {
    const files = readdirSync(FOLDER).map((file) => file.replace('.json', ''));
    expect([...VIEWS.keys()].sort()).toEqual(files.sort());
  });

  // SQL on FHIR 2.0, ViewDefinition: url, name, status, fhirVersion, resource.
  it.each([...VIEWS.keys()])('%s says of itself what others need to know', (name) => {
    const written = JSON.parse(readFileSync(new URL(`${name}.json`, FOLDER), 'utf8'));
    expect(written).toMatchObject({
      url: `https://dissection-records.example/fhir/ViewDefinition/${name}`,
      status: 'active',
      fhirVersion: ['4.0.1'],
    });
  });

  it('have one row a dissection, none of a case that was withdrawn', () => {
    expect(allRows('esd_case').map((row) => row['case_id'])).toEqual(
      standing().map(({ facts }) => facts.caseId),
    );
    expect(cases.length).toBeGreaterThan(standing().length);
  });

  it('join by the key of the procedure', () => {
    const keys = new Set(allRows('esd_case').map((row) => row['procedure_key']));
    for (const name of ['esd_complication', 'esd_follow_up']) {
      expect(allRows(name).length, name).toBeGreaterThan(0);
      expect(allRows(name).filter((row) => !keys.has(row['procedure_key'] ?? null))).toEqual([]);
    }
    for (const made of standing()) expect(rowsOf('esd_finding', made).length).toBeGreaterThan(0);
  });

  it('fill every column somewhere in the examples, but for keys of patients that are stored', () => {
    for (const [name, view] of VIEWS) {
      const all = allRows(name);
      const empty = columnsOf(view).filter((column) => all.every((row) => row[column] === null));
      expect(empty, name).toEqual(name === 'esd_case' ? ['patient_key'] : []);
    }
  });
});

const SAME: readonly (readonly [
  string,
  (made: MadeCase) => unknown,
  (made: MadeCase) => unknown,
])[] = [
  ['caseId', (made) => caseRow(made)['case_id'], ({ facts }) => facts.caseId],
  ['organ', (made) => caseRow(made)['procedure'], ({ facts }) => `esd-${facts.organ}`],
  ['scopeInAt', (made) => caseRow(made)['started'], ({ facts }) => facts.scopeInAt],
  [
    'resectedOn',
    (made) => String(caseRow(made)['ended']).slice(0, 10),
    ({ facts }) => facts.resectedOn,
  ],
  [
    'technique',
    (made) => caseRow(made)['is_hybrid'],
    ({ facts }) => facts.technique === 'hybrid-esd',
  ],
  ['fibrosis', (made) => answer(made, 'fibrosis', 'value_code'), ({ facts }) => facts.fibrosis],
  [
    'lesionLongAxisMm',
    (made) => answer(made, 'lesion-length', 'value_number'),
    ({ facts }) => facts.lesionLongAxisMm,
  ],
  ['pieces', (made) => answer(made, 'piece-count', 'value_number'), ({ facts }) => facts.pieces],
  [
    'specimenLongAxisMm',
    (made) => answer(made, 'specimen-dimensions/specimen-length', 'value_number'),
    ({ facts }) => facts.specimenLongAxisMm,
  ],
  [
    'specimenAreaCm2',
    (made) => answer(made, 'specimen-area', 'value_number'),
    ({ facts }) => facts.specimenAreaCm2,
  ],
  [
    'speedCm2PerH',
    (made) => answer(made, 'dissection-speed', 'value_number'),
    ({ facts }) => facts.speedCm2PerH,
  ],
  [
    'dissectionMin',
    (made) => answer(made, 'dissection-duration', 'value_number'),
    ({ facts }) => facts.dissectionMin,
  ],
  [
    'procedureMin',
    (made) => answer(made, 'procedure-duration', 'value_number'),
    ({ facts }) => facts.procedureMin,
  ],
  [
    'horizontalMargin',
    (made) => answer(made, 'lateral-margin', 'value_code', 'laboratory'),
    ({ facts }) =>
      facts.horizontalMargin === null ? null : `hm${facts.horizontalMargin.toLowerCase()}`,
  ],
  [
    'verticalMargin',
    (made) => answer(made, 'vertical-margin', 'value_code', 'laboratory'),
    ({ facts }) =>
      facts.verticalMargin === null ? null : `vm${facts.verticalMargin.toLowerCase()}`,
  ],
  [
    'perforation',
    (made) => rowsOf('esd_complication', made).some((row) => row['complication'] === 'perforation'),
    ({ facts }) => facts.perforation === true,
  ],
  [
    'adverseEvent30d',
    (made) => answer(made, 'adverse-event-30d', 'value_code'),
    ({ facts: { adverseEvent30d: word } }) => (word === 'yes' || word === 'no' ? word : null),
  ],
];

describe('rows of the views beside the facts of the same cases', () => {
  it.each(SAME)('%s is the same', (_name, byView, byFacts) => {
    const told = standing().map(byView);
    expect(told).toEqual(standing().map(byFacts));
    expect(new Set(told).size).toBeGreaterThan(1);
  });
});

describe('the views, run by another runner', () => {
  // npm @medplum/core has no keys of resources and references: those columns are left out.
  it.each([...VIEWS.keys()])('%s has the same rows', (name) => {
    const written = JSON.parse(readFileSync(new URL(`${name}.json`, FOLDER), 'utf8'));
    for (const part of written.select) {
      if (part.column === undefined) continue;
      part.column = part.column.filter(({ path }: { path: string }) => !path.includes('Key('));
    }
    const hasKey = (column: string): boolean => column.endsWith('_key');
    const resources = cases.flatMap(({ bundle }) => (bundle.entry ?? []).map((e) => e.resource));
    const theirs = evalSqlOnFhir(written, JSON.parse(JSON.stringify(resources)));
    const ours = allRows(name).map((row) =>
      Object.fromEntries(Object.entries(row).filter(([column]) => !hasKey(column))),
    );
    expect(ours).toEqual(theirs);
  });
});
