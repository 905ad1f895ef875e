import { quartilesOfCounted } from '../statistics/index.js';
import type { CountedCell, MeasuredCell, Quartiles, StratumValues } from './counts.js';
import type { IndicatorId, QuantityId } from './words.js';

/** A case is in the denominator of a quantity where this word of it is applicable. */
const MEASURED_WHERE: { readonly [Id in QuantityId]: IndicatorId } = {
  speedCm2PerH: 'enBloc',
  sizeMm: 'enBloc',
  procedureMin: 'enBloc',
  pathologyDays: 'r0',
};

/**
 * Quartiles of a cell.
 *
 * @param values of the strata that make up the cell
 */
export function quantitiesOf(
  indicators: CountedCell['indicators'],
  values: readonly StratumValues[],
): MeasuredCell['quantities'] {
  const of = (id: QuantityId): Quartiles => {
    const told = values.flatMap((each) => each.values[id]);
    const n = told.reduce((sum, { count }) => sum + count, 0);
    const { yes, no, missing, 'window-open': open } = indicators[MEASURED_WHERE[id]];
    const found = quartilesOfCounted(told) ?? { q1: null, median: null, q3: null };
    return { n, missing: yes + no + missing + open - n, ...found };
  };
  return {
    speedCm2PerH: of('speedCm2PerH'),
    sizeMm: of('sizeMm'),
    procedureMin: of('procedureMin'),
    pathologyDays: of('pathologyDays'),
  };
}
