import { invariant } from '../kernel/index.js';
import type {
  CubeCell,
  Dimension,
  IndicatorId,
  QuantityId,
  Quartiles,
  Stratum,
  StratumQuartiles,
  WordCounts,
} from '../outcomes/index.js';
import { COUNTED_INDICATORS, COUNTED_WORDS, MEASURED_QUANTITIES } from './outcome-statements.js';

/** A row of `cellsStatement`. */
export function toCell(
  row: readonly unknown[],
  by: readonly Dimension[],
  byYear: boolean,
): CubeCell {
  const from = by.length + Number(byYear);
  const cases = numberAt(row, from);
  const of = (id: IndicatorId): WordCounts => {
    const at = from + 1 + COUNTED_INDICATORS.indexOf(id) * COUNTED_WORDS.length;
    const counts = {
      yes: numberAt(row, at),
      no: numberAt(row, at + 1),
      missing: numberAt(row, at + 2),
      'window-open': numberAt(row, at + 3),
    };
    const told = Object.values(counts).reduce((sum, each) => sum + each, 0);
    return { ...counts, 'not-applicable': cases - told };
  };
  return {
    stratum: stratumOf(row, by, 0),
    ...(byYear ? { year: String(row[by.length]) } : {}),
    cases,
    indicators: {
      enBloc: of('enBloc'),
      r0: of('r0'),
      curative: of('curative'),
      intraproceduralPerforation: of('intraproceduralPerforation'),
      delayedPerforation: of('delayedPerforation'),
      bleeding28d: of('bleeding28d'),
      bleeding6h30d: of('bleeding6h30d'),
      bleeding30dCsdb: of('bleeding30dCsdb'),
      stricture: of('stricture'),
      conversionToSurgery: of('conversionToSurgery'),
      death30d: of('death30d'),
      readmission30d: of('readmission30d'),
      adverseEvent30d: of('adverseEvent30d'),
      residualOrRecurrence: of('residualOrRecurrence'),
    },
  };
}

/** A row of `quartilesStatement`. */
export function toQuartiles(row: readonly unknown[], by: readonly Dimension[]): StratumQuartiles {
  const isAll = numberAt(row, 0) !== 0;
  const of = (id: QuantityId): Quartiles => {
    const at = 1 + by.length + MEASURED_QUANTITIES.indexOf(id) * 3;
    const [q1, median, q3] = numbersAt(row, at + 2);
    const values = { q1: q1 ?? null, median: median ?? null, q3: q3 ?? null };
    return { n: numberAt(row, at), missing: numberAt(row, at + 1), ...values };
  };
  return {
    stratum: isAll ? {} : stratumOf(row, by, 1),
    quantities: {
      speedCm2PerH: of('speedCm2PerH'),
      sizeMm: of('sizeMm'),
      procedureMin: of('procedureMin'),
      pathologyDays: of('pathologyDays'),
    },
  };
}

const stratumOf = (row: readonly unknown[], by: readonly Dimension[], at: number): Stratum =>
  Object.fromEntries(by.map((dimension, i) => [dimension, String(row[at + i])]));

function numberAt(row: readonly unknown[], at: number): number {
  const value = row[at];
  invariant(typeof value === 'number', 'the database counts in numbers');
  return value;
}

/** Quartiles of nothing are null. */
function numbersAt(row: readonly unknown[], at: number): readonly number[] {
  const value = row[at];
  return Array.isArray(value) ? value.map(Number) : [];
}
