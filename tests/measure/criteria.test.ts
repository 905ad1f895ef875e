import fhirpath from 'fhirpath';
import { beforeAll, describe, expect, it } from 'vitest';
import { INITIAL_POPULATION, SEARCHES, type Searches } from '../../src/measure/criteria.table.js';
import { toMeasure } from '../../src/measure/index.js';
import { INDICATOR_IDS, type IndicatorWord } from '../../src/outcomes/index.js';
import { toExportRow } from '../../src/pipeline/export-rows.js';
import { exampleCases, type MadeCase, syntheticCases } from './made-cases.js';
import { found } from './searching.js';

let cases: readonly MadeCase[] = [];
beforeAll(async () => {
  cases = [...(await exampleCases()), ...(await syntheticCases(7, 60))];
}, 120_000);

/** Words whose cases are in a population. */
const WORDS: Readonly<Record<keyof Searches, readonly IndicatorWord[]>> = {
  'initial-population': ['yes', 'no', 'missing', 'window-open', 'not-applicable'],
  denominator: ['yes', 'no', 'missing', 'window-open'],
  'denominator-exclusion': ['missing', 'window-open'],
  numerator: ['yes'],
};

const standing = () => cases.filter(({ facts }) => !facts.withdrawn);

const ROWS = INDICATOR_IDS.flatMap((id) =>
  Object.entries(SEARCHES[id]).map(([population, search]) => ({ id, population, search })),
);

const isPopulation = (name: string): name is keyof Searches => Object.hasOwn(WORDS, name);

/** Cases that the search finds but for those that are excluded before, beside those by the facts. */
function both(id: (typeof INDICATOR_IDS)[number], population: string, search: string) {
  const words = isPopulation(population) ? WORDS[population] : [];
  const asked = standing().filter(
    ({ facts }) => population !== 'numerator' || facts[id] === 'yes' || facts[id] === 'no',
  );
  return {
    bySearch: asked
      .filter(({ bundle }) => found(bundle, search).length > 0)
      .map(({ facts }) => facts.caseId),
    byFacts: asked
      .filter(({ facts }) => words.includes(facts[id]))
      .map(({ facts }) => facts.caseId),
  };
}

describe('criteria that are searches, run over the Bundles of 80 cases', () => {
  it.each(ROWS)('$id, $population: find the cases that the facts count', (row) => {
    const { bySearch, byFacts } = both(row.id, row.population, row.search);
    expect(byFacts.length).toBeGreaterThan(0);
    expect(bySearch).toEqual(byFacts);
  });

  it('find every case once in the initial population', () => {
    for (const { bundle } of cases) expect(found(bundle, INITIAL_POPULATION)).toHaveLength(1);
  });
});

describe('criteria that are FHIRPath', () => {
  const { group = [] } = toMeasure();
  const asked = INDICATOR_IDS.flatMap((id, i) =>
    (group[i]?.population ?? []).flatMap(({ code, criteria }) =>
      criteria.language === 'text/fhirpath'
        ? [{ id, population: code?.coding?.[0]?.code ?? '', expression: criteria.expression ?? '' }]
        : [],
    ),
  );

  it.each(asked)('$id, $population: count the rows of the facts that it counts', (row) => {
    const words = isPopulation(row.population) ? WORDS[row.population] : [];
    for (const { facts } of standing()) {
      const said = fhirpath.evaluate(
        toExportRow(facts, 'x'.repeat(32)),
        row.expression,
        {},
        undefined,
        { async: false },
      );
      expect(said).toEqual([words.includes(facts[row.id])]);
    }
  });

  it('are there for every population that no search says', () => {
    const searches = ROWS.length + INDICATOR_IDS.length;
    expect(asked.length + searches).toBe(4 * INDICATOR_IDS.length);
  });

  it('would be noticed, were a word forgotten', () => {
    const facts = { r0: 'window-open' };
    const forgotten = "r0 = 'missing'";
    expect(fhirpath.evaluate(facts, forgotten, {}, undefined, { async: false })).toEqual([false]);
  });
});
