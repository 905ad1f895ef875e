import { describe, expect, it } from 'vitest';
import { checkOutcomeReport } from '../../src/conformance/index.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { type OutcomeQuestion, readPublication } from '../../src/pipeline/index.js';
import { state } from '../store/samples.js';
import { countFacts, type Facts } from '../support/count-facts.js';

const YEAR: OutcomeQuestion = {
  from: '2025-01-01',
  to: '2025-12-31',
  filters: {},
  by: [],
  interval: 'wilson',
};

/** So many dissections of 2025, of which so many were not en bloc. */
const cases = (count: number, inPieces: number): readonly Facts[] =>
  Array.from({ length: count }, (_, i) => ({
    ...state(`case-${i}`).facts,
    resectedOn: '2025-06-15',
    withdrawn: false,
    enBloc: i < inPieces ? 'no' : 'yes',
  }));

/** A unit that shows small counts to its own people. */
const publication = (facts: readonly Facts[], question: OutcomeQuestion = YEAR) =>
  readPublication(question, {
    store: { outcomes: { read: (work) => work(countFacts(facts)) } },
    settings: {
      unit: { ...DEFAULT_UNIT_SETTINGS, smallCells: 'show' },
      secret: 'x'.repeat(40),
      softwareVersion: '0',
    },
    now: () => '2026-09-01T10:00:00Z',
  });

async function reportOf(facts: readonly Facts[]) {
  const found = await publication(facts);
  const report = found.kind === 'found' ? found.bundle.entry?.[1]?.resource : undefined;
  const checked = checkOutcomeReport(report);
  if (!checked.ok) throw new Error('there is a report');
  return checked.value;
}

/* Source: FHIR R4 (4.0.1), data-absent-reason: masked; project definition for what is hidden. */
describe('outcomes that are put on a FHIR server', () => {
  it('hide small counts though the unit shows them to its own people', async () => {
    const small = (await reportOf(cases(40, 2))).group?.[0];
    expect(small?.population).toBeUndefined();
    expect(small?.measureScore?.extension?.[0]?.valueCode).toBe('masked');
    // What is not small is shown: the rule above can fail.
    const large = (await reportOf(cases(40, 10))).group?.[0];
    expect(large?.population?.map(({ count }) => count)).toEqual([40, 40, 0, 30]);
  });

  it.each<[string, OutcomeQuestion]>([
    ['report-all-cases', { ...YEAR, filters: { organ: 'colon' } }],
    ['period-too-fine', { ...YEAR, from: '2025-01-02' }],
  ])('are not made of such a question: %s', async (rule, question) => {
    const found = await publication(cases(40, 10), question);
    expect(found.kind === 'invalid' && found.problems.map((each) => each.rule)).toEqual([rule]);
  });

  it('are of a period with both its days', async () => {
    const { from: _, ...open } = YEAR;
    const found = await publication(cases(40, 10), open);
    expect(found.kind === 'invalid' && found.problems.map((each) => each.rule)).toContain(
      'report-period',
    );
  });
});
