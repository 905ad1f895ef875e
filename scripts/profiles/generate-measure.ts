import { toMeasure } from '../../src/measure/index.js';

/** @returns the definitions of the outcomes as a Measure, by its path in the repository */
export async function generateMeasure(): Promise<ReadonlyMap<string, string>> {
  const measure = toMeasure();
  return new Map([
    [`profiles/Measure-${measure.id}.json`, `${JSON.stringify(measure, null, 2)}\n`],
  ]);
}
