import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { pathologySchema } from '../../../src/contract/index.js';
import elements from '../../published/pathology-elements.json' with { type: 'json' };
import type { SchemaNode } from '../../support/from-json-schema.js';
import { changed, problemsOf, rulesOf } from './sound-report.js';

const schema: SchemaNode = JSON.parse(
  JSON.stringify(z.toJSONSchema(pathologySchema, { io: 'input' })),
);

/** @param pointer with `*` for the entries of a list */
function placeOf(pointer: string): SchemaNode | undefined {
  return pointer
    .split('/')
    .slice(1)
    .reduce<SchemaNode | undefined>(
      (node, key) => (key === '*' ? node?.items : node?.properties?.[key]),
      schema,
    );
}

describe(`${elements.work} has a place in the pathology message`, () => {
  it.each(elements.elements)('$element', ({ pointers, words }) => {
    for (const pointer of pointers) expect(placeOf(pointer), pointer).toBeDefined();
    const offered = pointers.flatMap((pointer) => placeOf(pointer)?.enum ?? []);
    expect(offered).toEqual(expect.arrayContaining(words ?? []));
  });

  it('and what is not there would be seen', () => {
    expect(placeOf('/findings/sizeCm')).toBeUndefined();
    expect(placeOf('/specimen/pieces/0')).toBeUndefined();
  });
});

// ITBCC 2016, as quoted in J Clin Oncol 2019;37:1886: buds in a hot spot of 0.785 mm2.
describe('the grade of budding, against the table of the ITBCC', () => {
  const grades = ['1', '2', '3'];
  it.each([
    [0, '1'],
    [4, '1'],
    [5, '2'],
    [9, '2'],
    [10, '3'],
    [80, '3'],
  ])('%s buds are grade %s and no other', (count, meant) => {
    const accepted = grades.filter(
      (grade) => rulesOf(changed({ 'findings.budding': { grade, count } })).length === 0,
    );
    expect(accepted).toEqual([meant]);
  });
});

/**
 * Which pT goes with which depth. CC-05 (common practice) names the cells in capitals: pT1a with
 * SM, pT1b with M in the upper tract, colorectal pTis with SM. The others: UICC TNM 8, oesophagus,
 * stomach, small intestine, colon and rectum; from memory. Tis: epithelium (colorectal: up to the
 * lamina propria). T1a: lamina propria or muscularis mucosae. T1b: submucosa (colorectal T1). T2:
 * muscularis propria.
 */
const TNM = [
  { tumour: 'squamous', depth: 'ep', fits: ['pTis'], never: ['pT1b', 'pT2'] },
  { tumour: 'squamous', depth: 'lpm', fits: ['pT1a', 'pT1'], never: ['pTis', 'pT1b', 'pT2'] },
  { tumour: 'squamous', depth: 'mm', fits: ['pT1a', 'pT1'], never: ['pTis', 'pT1b', 'pT2'] },
  { tumour: 'squamous', depth: 'sm', fits: ['pT1b', 'pT1'], never: ['pTis', 'pT1a', 'pT2'] },
  { tumour: 'squamous', depth: 'mp', fits: ['pT2'], never: ['pTis', 'pT1', 'pT1a', 'pT1b'] },
  ...['barrett', 'gastric', 'duodenal'].flatMap((tumour) => [
    { tumour, depth: 'm', fits: ['pTis', 'pT1a', 'pT1'], never: ['pT1b', 'pT2'] },
    { tumour, depth: 'sm', fits: ['pT1b', 'pT1'], never: ['pTis', 'pT1a', 'pT2'] },
    { tumour, depth: 'mp', fits: ['pT2'], never: ['pTis', 'pT1', 'pT1a', 'pT1b'] },
  ]),
  { tumour: 'colorectal', depth: 'm', fits: ['pTis'], never: ['pT1', 'pT1a', 'pT1b', 'pT2'] },
  { tumour: 'colorectal', depth: 'sm', fits: ['pT1'], never: ['pTis', 'pT2'] },
  { tumour: 'colorectal', depth: 'mp', fits: ['pT2'], never: ['pTis', 'pT1'] },
];

describe('the pT, against the UICC TNM', () => {
  const said = (tumour: string, depth: string, pT: string) => {
    const findings = { tumour, depth, pT, histology: 'carcinoma' };
    return rulesOf(changed({ findings }));
  };

  it.each(TNM)('$tumour $depth: $fits, never $never', ({ tumour, depth, fits, never }) => {
    for (const pT of [...fits, 'pTX']) expect(said(tumour, depth, pT), pT).toEqual([]);
    for (const pT of never) expect(said(tumour, depth, pT), pT).toEqual(['CC-05']);
    for (const pT of [...fits, ...never]) expect(said(tumour, 'X', pT), pT).toEqual([]);
  });
});

interface Row {
  readonly id: string;
  readonly inputs_json: string;
}
const questions = parse<Row>(readFileSync('tests/published/worked-examples.csv'), { columns: true })
  .filter(({ id }) => /^(ESGE|JGCA|JSCCR|JES)-\d/.test(id))
  .map(({ id, inputs_json }) => ({ id, asked: JSON.parse(inputs_json) }));

/** Told by the case and not by the laboratory. */
const OF_THE_CASE = ['enBloc', 'endoscopicallyComplete'];

describe('every worked example of curability can be told in a report, field by field', () => {
  it('of which there are many', () => {
    expect(questions.length).toBeGreaterThan(45);
  });

  it.each(questions)('$id', ({ asked }) => {
    expect(problemsOf(reportOf(asked))).toEqual([]);
  });

  it('and a question that the message has no words for would be seen', () => {
    const asked = { tumour: 'gastric', histology: 'cancer', depth: 'm', hm: '2' };
    expect(problemsOf(reportOf(asked)).map(({ pointer }) => pointer)).toEqual([
      '/findings/histology',
      '/findings/hm/state',
    ]);
  });
});

/** The fields of a question as findings, one to one; a field asked for and not known is left out. */
function reportOf(asked: Readonly<Record<string, unknown>>): unknown {
  const told = Object.entries(asked).filter(
    ([field, value]) => value !== null && !OF_THE_CASE.includes(field),
  );
  const findings = Object.fromEntries(
    told.map(([field, value]) => {
      if (field === 'hm' || field === 'vm') return [field, { state: value }];
      return field === 'budding' ? [field, { grade: String(value) }] : [field, value];
    }),
  );
  return changed({ findings, specimen: undefined });
}
