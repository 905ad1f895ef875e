import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS, type UnitSettings } from '../../src/contract/index.js';
import type { CaseInOrder, OutcomeReport, ReportCell } from '../../src/outcomes/index.js';
import { createOutcomesService } from '../../src/pipeline/index.js';
import { state } from '../store/samples.js';
import { countFacts, type Facts } from '../support/count-facts.js';
import { madeFacts } from '../support/made-facts.js';

function serviceOver(
  facts: readonly Facts[],
  change: Partial<UnitSettings> = {},
  inOrder?: readonly CaseInOrder[],
) {
  const counts = countFacts(facts);
  const other = inOrder === undefined ? {} : { inOrder: async () => inOrder };
  return createOutcomesService({
    store: {
      outcomes: { read: (work) => work({ ...counts, ...other }) },
      facts: async function* () {},
    },
    settings: {
      unit: { ...DEFAULT_UNIT_SETTINGS, ...change },
      secret: 'x'.repeat(40),
      softwareVersion: '0',
    },
    now: () => '2026-09-01T10:00:00Z',
  });
}

type Service = ReturnType<typeof serviceOver>;
type Question = Parameters<Service['readOutcomes']>[0];

const ALL: Question = { filters: {}, by: [], interval: 'wilson' };

async function reportOf(
  service: Service,
  question: Partial<Question> = {},
): Promise<OutcomeReport> {
  const found = await service.readOutcomes({ ...ALL, ...question });
  if (found.kind !== 'found') throw new Error('the question is a sound one');
  return found.report;
}

const indicatorsOf = (cell: ReportCell | undefined) => [cell?.cases, cell?.indicators];

/** Each case four times, so that some counts are small and others are not. */
const many = madeFacts(80, 60).map((facts) => Array.from({ length: 4 }, () => facts).flat());

describe('the years of a printed report', () => {
  it.each(['show', 'hide'] as const)(
    'say what each year says by itself: %s',
    async (smallCells) => {
      let shown = 0;
      const property = fc.asyncProperty(many, async (facts) => {
        const service = serviceOver(facts, { smallCells });
        const found = await service.readOutcomesAtLarge({ ...ALL, filters: { organ: 'colon' } });
        if (found.kind !== 'found') throw new Error('the question is a sound one');
        for (const { label, cell } of found.report.periods) {
          const year = { from: `${label}-01-01`, to: `${label}-12-31` };
          const alone = await reportOf(service, { ...year, filters: { organ: 'colon' } });
          expect(indicatorsOf(cell)).toEqual(indicatorsOf(alone.cells[0]));
          shown += cell.indicators.filter(({ kind }) => kind === 'rate').length;
        }
      });
      await fc.assert(property, { numRuns: 8, seed: 5 });
      expect(shown).toBeGreaterThan(10);
    },
  );

  it('are left out where so fine a question would be refused', async () => {
    const filters = { organ: 'colon', fibrosis: 'F0', technique: 'esd' };
    const periods = async (smallCells: 'show' | 'hide') => {
      const facts = [{ ...state('case-1').facts, ...filters }];
      const found = await serviceOver(facts, { smallCells }).readOutcomesAtLarge({
        ...ALL,
        filters,
      });
      return found.kind === 'found' ? found.report.periods.length : undefined;
    };
    expect([await periods('show'), await periods('hide')]).toEqual([1, 0]);
  });
});

describe('what is shown where small counts are hidden', () => {
  it('is a part of what is shown where they are not', async () => {
    const property = fc.asyncProperty(
      many,
      fc.constantFrom<Partial<Question>>(
        { by: ['organ'] },
        { by: ['organ', 'technique'] },
        { by: ['operator'], from: '2025-01-01', to: '2025-12-31' },
        { filters: { organ: 'stomach' }, by: ['fibrosis'] },
      ),
      async (facts, question) => {
        const all = await reportOf(serviceOver(facts, { smallCells: 'show' }), question);
        const some = await reportOf(serviceOver(facts), question);
        for (const cell of some.cells) {
          const same = all.cells.find(
            ({ stratum }) => JSON.stringify(stratum) === JSON.stringify(cell.stratum),
          );
          if (cell.cases !== undefined) expect(cell.cases).toBe(same?.cases);
          for (const result of cell.indicators) {
            if (result.kind !== 'suppressed') expect(same?.indicators).toContainEqual(result);
          }
          for (const result of cell.quantities) {
            if (result.kind !== 'suppressed') expect(same?.quantities).toContainEqual(result);
          }
        }
      },
    );
    await fc.assert(property, { numRuns: 12 });
  });
});

describe('the rule sets of an answer', () => {
  const QUESTIONS: readonly Partial<Question>[] = [
    {},
    { by: ['ruleSet'] },
    { filters: { fibrosis: 'F0' } },
    { from: '2025-01-01', to: '2025-12-31', by: ['operator'] },
  ];

  it('are the same without a count whatever is asked, where small counts are hidden', async () => {
    let told = 0;
    const property = fc.asyncProperty(many, async (facts) => {
      const service = serviceOver(facts);
      const reports = await Promise.all(QUESTIONS.map((each) => reportOf(service, each)));
      const sets = reports.map(({ judgedBy }) => JSON.stringify(judgedBy));
      expect(new Set(sets).size).toBe(1);
      expect(sets[0]).not.toMatch(/\d[,}]/);
      const byBoth = await reportOf(service, { by: ['organ', 'ruleSet'] });
      const shown = byBoth.cells.slice(1).filter(({ cases }) => cases !== undefined);
      expect(reports[0]?.judgedBy).toEqual(shown.map(({ stratum }) => stratum));
      told += shown.length;
    });
    await fc.assert(property, { numRuns: 6, seed: 1 });
    expect(told).toBeGreaterThan(10);
  });

  it('are counted within the question where small counts are shown', async () => {
    const property = fc.asyncProperty(many, async (facts) => {
      const service = serviceOver(facts, { smallCells: 'show' });
      for (const question of QUESTIONS) {
        const { judgedBy, cells } = await reportOf(service, question);
        const rate = cells[0]?.indicators.find(({ id }) => id === 'curative');
        const judged = judgedBy.reduce((sum, each) => sum + (each.judged ?? 0), 0);
        expect(judged).toBe(rate?.kind === 'rate' ? rate.denominator : 0);
      }
    });
    await fc.assert(property, { numRuns: 6, seed: 1 });
  });
});

describe('a curve', () => {
  const one: CaseInOrder = {
    on: '2026-03-02',
    operator: 'op-1',
    organ: 'colon',
    words: { enBloc: 'yes', r0: 'yes', curative: 'yes', intraproceduralPerforation: 'no' },
    speedCm2PerH: 9,
    areaCm2: 12,
  };
  const asked = { filters: {}, series: 'cusum-r0', aims: {} } as const;

  it('is refused where it would show too many cases, and not one fewer', async () => {
    const curve = (count: number) =>
      serviceOver(
        [],
        { smallCells: 'show' },
        Array.from({ length: count }, () => one),
      ).readSeries(asked);
    expect(await curve(10_000)).toMatchObject({ kind: 'found', series: { kind: 'cusum' } });
    expect(await curve(10_001)).toMatchObject({
      ...{ kind: 'invalid', problems: [{ rule: 'too-many-cases' }] },
    });
  });

  it('follows the aims of the question, the rest those of its table', async () => {
    const service = serviceOver([], { smallCells: 'show' }, [one]);
    const found = await service.readSeries({ ...asked, aims: { acceptable: 0.1 } });
    expect(found).toMatchObject({
      ...{ kind: 'found', series: { aims: { acceptable: 0.1, unacceptable: 0.4, alpha: 0.1 } } },
    });
  });

  it('of a report runs over the organs of its aims, and says which', async () => {
    const cases = (['colon', 'stomach', 'oesophagus', 'rectum'] as const).map((organ) => ({
      ...{ ...one, organ },
    }));
    const titles = async (filters: Question['filters']) => {
      const asked = cases.filter(({ organ }) => organ === (filters.organ ?? organ));
      const service = serviceOver([], { smallCells: 'show' }, asked);
      const found = await service.readOutcomesAtLarge({ ...ALL, filters });
      return found.kind === 'found'
        ? found.report.series.map(({ title, series }) => `${title}: ${series.kind}`)
        : [];
    };
    expect(await titles({})).toEqual([
      'Case by case: En bloc resection, colon and rectum: cusum',
      'Case by case: R0 resection: cusum',
      'Case by case: Perforation during the procedure, colon and rectum: cusum',
      'Speed against size: speed',
      'Speed against size, colon and rectum: speed',
    ]);
    expect(await titles({ organ: 'stomach', operator: 'op-1' })).toEqual([
      'Case by case: En bloc resection: hidden',
      'Case by case: R0 resection, stomach: cusum',
      'Case by case: Perforation during the procedure: hidden',
      'Learning curve, stomach: learning-curve',
      'Speed against size, stomach: speed',
    ]);
  });

  it('of single cases is left out of a report of too many, which says so', async () => {
    const titles = async (count: number) => {
      const cases = Array.from({ length: count }, () => one);
      const service = serviceOver([], { smallCells: 'show' }, cases);
      const found = await service.readOutcomesAtLarge(ALL);
      return found.kind === 'found'
        ? found.report.series.map(({ title, series }) => [title, series.kind])
        : [];
    };
    expect(await titles(3)).toContainEqual(['Speed against size', 'speed']);
    expect(await titles(10_001)).toEqual([['Case by case', 'hidden']]);
  });

  it('reads no case where small counts are hidden', async () => {
    const counts = { ...countFacts([]), inOrder: () => Promise.reject(new Error('it was read')) };
    const service = createOutcomesService({
      store: { outcomes: { read: (work) => work(counts) }, facts: async function* () {} },
      settings: { unit: DEFAULT_UNIT_SETTINGS, secret: 'x'.repeat(40), softwareVersion: '0' },
      now: () => '2026-09-01T10:00:00Z',
    });
    for (const series of [asked, { filters: {}, series: 'speed' } as const]) {
      expect(await service.readSeries(series)).toMatchObject({ series: { kind: 'hidden' } });
    }
    await expect(
      createOutcomesService({
        store: { outcomes: { read: (work) => work(counts) }, facts: async function* () {} },
        settings: {
          unit: { ...DEFAULT_UNIT_SETTINGS, smallCells: 'show' },
          ...{ secret: 'x'.repeat(40), softwareVersion: '0' },
        },
        now: () => '2026-09-01T10:00:00Z',
      }).readSeries(asked),
    ).rejects.toThrow('it was read');
  });
});
