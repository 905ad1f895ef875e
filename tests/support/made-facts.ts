import fc from 'fast-check';
import {
  INDICATOR_IDS,
  INDICATOR_WORDS,
  SIZE_BANDS,
  TRAINEE_BANDS,
} from '../../src/outcomes/index.js';
import { factColumns, factValues } from '../../src/store/fact-columns.js';
import type { Database } from '../../src/store/index.js';
import { state } from '../store/samples.js';
import type { Facts } from './count-facts.js';

const of = <const T>(...values: readonly T[]) => fc.constantFrom(...values);
const day = of('2024-12-31', '2025-01-01', '2025-06-15', '2025-12-31', '2026-02-28');
const later = of('2025-12-31', '2026-02-28', '2026-03-01', '2026-08-31');
const number = (max: number) => fc.option(fc.integer({ min: 0, max }).map((n) => n / 8));
const words = fc.record(
  Object.fromEntries(INDICATOR_IDS.map((id) => [id, of(...INDICATOR_WORDS)])),
);

/** What a record may tell, with few values so that cases meet in their cells. */
const told = fc.record({
  organ: of('oesophagus', 'stomach', 'colon'),
  curabilityRule: of('esge-esd-2022', 'jsccr-2019'),
  sizeBand: of(...SIZE_BANDS),
  fibrosis: of(null, 'F0', 'F2'),
  technique: of(null, 'esd', 'hybrid-esd'),
  operator: of('op-1', 'op-2'),
  traineeBand: of(...TRAINEE_BANDS),
  withdrawn: fc.integer({ min: 0, max: 9 }).map((n) => n === 0),
  resectedOn: day,
  scopeInAt: of('2025-03-02T08:00:00+01:00', '2025-03-02T07:30:00Z', '2025-03-02T09:00:00+02:00'),
  speedCm2PerH: number(400),
  specimenAreaCm2: number(300),
  lesionLongAxisMm: fc.integer({ min: 1, max: 900 }).map((n) => n / 8),
  procedureMin: number(3000),
  pathologyDays: number(240),
  firstCheckState: of('done', 'open', 'provisional', 'lost', 'ended', 'not-planned', 'unplanned'),
  firstCheckTiming: of(null, 'early', 'in-window', 'late'),
  firstCheckLatestOn: of(null, '2026-01-01', '2026-04-01'),
  recurrenceOn: fc.option(later),
  lastCheckOn: fc.option(later),
});

/** Facts of cases of an invented unit; each has an id of its own. */
export const madeFacts = (most: number, least = 0): fc.Arbitrary<readonly Facts[]> =>
  fc.array(fc.tuple(told, words), { minLength: least, maxLength: most }).map((rows) =>
    rows.map(([row, each], i): Facts => {
      const caseId = `case-${String(i).padStart(6, '0')}`;
      return { ...state(caseId).facts, ...row, ...each, caseId };
    }),
  );

/** Puts facts in place of all that are there. */
export async function putFacts(
  { pool }: Pick<Database, 'pool'>,
  rows: readonly Facts[],
): Promise<void> {
  await pool.query('truncate facts');
  if (rows.length === 0) return;
  const columns = factColumns();
  const width = columns.length;
  const places = rows.map(
    (_, row) => `(${columns.map((_column, i) => `$${row * width + i + 1}`).join(', ')})`,
  );
  await pool.query(
    `insert into facts (${columns.join(', ')}) values ${places.join(', ')}`,
    rows.flatMap((facts) => factValues(facts)),
  );
}
