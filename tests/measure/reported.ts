import type { MeasureReport } from 'fhir/r4.js';
import { type Reporting, toMeasureReport } from '../../src/measure/index.js';
import {
  type IndicatorWord,
  type OutcomeQuery,
  type SmallCellPolicy,
  toReport,
} from '../../src/outcomes/index.js';
import { counted, QUERY, type Row } from '../outcomes/counted.js';

export const SHOW: SmallCellPolicy = { smallCells: 'show', threshold: 5 };
export const HIDE: SmallCellPolicy = { smallCells: 'hide', threshold: 5 };

export const YEAR: OutcomeQuery = { ...QUERY, from: '2025-01-01', to: '2025-12-31' };

export const REPORTING: Reporting = {
  identifierBase: 'https://unit.example/dissections',
  countedAt: '2026-12-31T10:00:00Z',
};

/** So many cases of 2025 of an organ by one operator, with a word for en bloc and others. */
export const rows = (
  count: number,
  words: Readonly<Record<string, IndicatorWord>>,
  place: Row['place'] = { organ: 'colon', operator: 'a' },
): readonly Row[] =>
  Array.from({ length: count }, () => ({ resectedOn: '2025-05-05', place, words }));

/** 60 cases: some of each word, and counts that are small. */
export const CASES: readonly Row[] = [
  ...rows(30, { enBloc: 'yes', r0: 'yes', death30d: 'no' }),
  ...rows(10, { enBloc: 'no', r0: 'missing', death30d: 'window-open' }),
  ...rows(8, { enBloc: 'yes', r0: 'no', death30d: 'missing' }, { organ: 'rectum', operator: 'b' }),
  ...rows(10, { enBloc: 'no', r0: 'yes', death30d: 'no' }, { organ: 'rectum', operator: 'b' }),
  ...rows(2, { enBloc: 'yes', r0: 'no', death30d: 'yes' }, { organ: 'rectum', operator: 'a' }),
];

/** The MeasureReport of these cases. */
export const reported = (
  cases: readonly Row[],
  query: OutcomeQuery = YEAR,
  policy: SmallCellPolicy = SHOW,
  reporting: Reporting = REPORTING,
): MeasureReport => toMeasureReport(toReport(query, policy, counted(cases, query)), reporting);
