import { parse } from 'csv-parse/sync';
import { parse as parseHtml } from 'parse5';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createOutcomesService } from '../../src/pipeline/index.js';
import { state } from '../store/samples.js';
import { countFacts, type Facts, isAsked } from '../support/count-facts.js';
import { readParquetFile } from '../support/read-parquet.js';
import { run } from './run.js';

const ORGANS = ['stomach', 'colon'] as const;
/** 60 cases: four of the stomach, all of 2024, are no en bloc resections. */
const FACTS: readonly Facts[] = Array.from({ length: 60 }, (_, i) => ({
  ...state(`case-${i}`).facts,
  resectedOn: `202${4 + (i % 3)}-03-02`,
  organ: ORGANS[i % 2] ?? 'stomach',
  enBloc: i % 12 === 0 && i < 48 ? ('no' as const) : ('yes' as const),
  speedCm2PerH: i,
}));

async function asked(
  args: readonly string[],
  smallCells: 'show' | 'hide' = 'show',
  terminal = false,
  all: readonly Facts[] = FACTS,
) {
  const service = createOutcomesService({
    store: {
      outcomes: { read: (work) => work(countFacts(all)) },
      facts: async function* (cases) {
        yield all.filter((facts) => isAsked(cases, facts));
      },
    },
    settings: {
      unit: { ...DEFAULT_UNIT_SETTINGS, smallCells },
      secret: 'x'.repeat(40),
      softwareVersion: '0',
    },
    now: () => '2026-09-01T10:00:00Z',
  });
  return run(args, { terminal }, { outcomes: (read) => read(service) });
}

describe('outcomes on a screen', () => {
  it('fit on it, with interval, method, what is missing and a caution', async () => {
    const { code, out } = await asked(['outcomes']);
    const lines = out.split('\n');
    expect(code).toBe(0);
    expect(lines.length).toBeLessThanOrEqual(40);
    expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(100);
    // Wilson score of 56 of 60, computed by hand from the formula of Newcombe 1998, method 3.
    expect(out).toMatch(/^en bloc +93\.3 % ! +84\.1 to 97\.4 +56 +60 +0 +0$/m);
    expect(out).toMatch(/^R0 +- +0 +60 +0$/m);
    expect(out).toMatch(/^speed, cm2\/h +14\.8 +29\.5 +44\.3 +60 +0$/m);
    expect(out).toContain('Wilson score');
    expect(out).toContain('Decision support');
    // Nobody at all is no small count: 0 of 60 has no mark.
    expect(out.replace(/\s+/g, ' ')).toContain('!: events or others are from 1 to 4.');
    const none = FACTS.map((one) => ({ ...one, enBloc: 'no' as const }));
    const { out: zero } = await asked(['outcomes'], 'show', false, none);
    expect(zero).toMatch(/^en bloc +0\.0 % +0\.0 to 6\.0 +0 +60 /m);
  });

  it('say between which ends a rate lies with what is missing, and by which rules it was judged', async () => {
    const facts = FACTS.slice(0, 50).map((one, i) => ({
      ...{ ...one, organ: 'colon', curabilityRule: i < 20 ? 'jsccr-2019' : 'esge-esd-2022' },
      curative: i < 8 ? ('missing' as const) : i < 20 ? ('no' as const) : ('yes' as const),
    }));
    const { out } = await asked(['outcomes'], 'show', false, facts);
    // 30 of 42; 30 and 38 of 50, by division.
    expect(out).toMatch(/^curative +71\.4 % .* 30 +42 +8 +0 +60\.0 to 76\.0$/m);
    expect(out).toContain('Curative by: colon esge-esd-2022 30, jsccr-2019 12.');
    const words = out.replace(/\s+/g, ' ');
    expect(words).toContain(
      'mixes verdicts by several rule sets (colon: esge-esd-2022, jsccr-2019)',
    );
    const hidden = await asked(['outcomes'], 'hide', false, facts);
    expect(hidden.out).toContain(
      'Curative by: colon esge-esd-2022, jsccr-2019, of all kept cases.',
    );
  });

  it('stand in groups, small ones marked where they are shown', async () => {
    const { out } = await asked(['outcomes', '--by', 'organ', '--interval', 'clopper-pearson']);
    expect(out).toMatch(/^organ colon +100\.0 % .* 30 +30 +0 +0$/m);
    expect(out).toMatch(/^organ stomach +86\.7 % .* 26 +30 +0 +0$/m);
    expect(out).toContain('Clopper-Pearson');
    const some = await asked([
      'outcomes',
      '--by',
      'organ',
      '--from',
      '2024-01-01',
      '--to',
      '2024-12-31',
    ]);
    expect(some.out).toMatch(/^organ stomach +\d+\.\d % ! .*$/m);
  });

  it('hide small counts where the unit hides them', async () => {
    const { out } = await asked(
      ['outcomes', '--by', 'organ', '--from', '2024-01-01', '--to', '2024-12-31'],
      'hide',
    );
    expect(out).toMatch(/^organ stomach +hidden$/m);
    expect(out).not.toMatch(/ ! /);
  });

  it('are what the service answers, as JSON', async () => {
    const { out } = await asked([
      'outcomes',
      '--json',
      '--organ',
      'colon',
      '--rule-set',
      'jsccr-2019',
    ]);
    expect(JSON.parse(out)).toMatchObject({
      query: { filters: { organ: 'colon', ruleSet: 'jsccr-2019' }, asOf: '2026-09-01' },
      cells: [{ cases: 0 }],
    });
  });

  it('are a page for printing', async () => {
    const { code, out } = await asked(['outcomes', 'report', '--by', 'organ']);
    const errors: string[] = [];
    parseHtml(out, { onParseError: ({ code: name }) => errors.push(name) });
    expect([code, errors]).toEqual([0, []]);
    expect(out).toContain('<svg');
  });

  it.each([
    ['--organ: ', ['outcomes', '--organ', 'liver']],
    ['--size-band: ', ['outcomes', '--size-band', 'small']],
    ['--to: The last day lies before', ['outcomes', '--from', '2026-02-01', '--to', '2026-01-01']],
    ['--by: ', ['outcomes', '--by', 'organ,fibrosis,technique']],
    ['--interval: ', ['outcomes', '--interval', 'wald']],
    ['outcomes knows: report', ['outcomes', 'chart']],
    ['takes options alone', ['outcomes', 'report', 'x']],
    ['--csv says nothing here', ['outcomes', '--csv']],
    ['--json says nothing here', ['outcomes', 'report', '--json']],
    ['Either --csv, --ndjson or --parquet', ['export']],
    ['Either --csv, --ndjson or --parquet', ['export', '--csv', '--parquet']],
    ['--parquet says nothing here', ['outcomes', '--parquet']],
    ['options: There is', ['export', '--csv', '--by', 'organ']],
    ['takes options alone', ['export', '--csv', 'x']],
  ])('are refused: %s', async (says, args) => {
    const { code, out, err } = await asked(args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
    expect(err).not.toContain('liver');
  });

  it('say every option that is wrong at once', async () => {
    const { err } = await asked(['outcomes', '--organ', 'x', '--by', 'y', '--from', 'z']);
    for (const name of ['--organ', '--by', '--from']) expect(err).toContain(`${name}: `);
  });

  it('of some days are refused where small counts are hidden', async () => {
    const { code, err } = await asked(['outcomes', '--from', '2026-02-01'], 'hide');
    expect(code).toBe(1);
    expect(err).toContain('--from: Where small counts are hidden');
  });
});

describe('an export', () => {
  it('is one row a case, as CSV and as lines', async () => {
    const csv = await asked(['export', '--csv', '--organ', 'colon']);
    const lines = await asked(['export', '--ndjson', '--organ', 'colon']);
    const rows: readonly { readonly organ: string }[] = parse(csv.out, { columns: true });
    expect(rows).toHaveLength(30);
    expect(rows.every(({ organ }) => organ === 'colon')).toBe(true);
    expect(lines.out.trim().split('\n')).toHaveLength(30);
    expect([csv.code, lines.code]).toEqual([0, 0]);
  });

  it('is the same as Parquet, which another implementation reads', async () => {
    const { code, out, bytes } = await asked(['export', '--parquet', '--organ', 'colon']);
    const lines = await asked(['export', '--ndjson', '--organ', 'colon']);
    const { rows } = await readParquetFile(bytes ?? new Uint8Array());
    expect([code, out]).toEqual([0, '']);
    expect(rows).toHaveLength(30);
    const parsed = lines.out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(rows).toEqual(parsed);
  });

  it('writes no Parquet to a screen, but text', async () => {
    const { code, out, bytes, err } = await asked(['export', '--parquet'], 'show', true);
    expect([code, out, bytes]).toEqual([2, '', undefined]);
    expect(err).toContain('> cases.parquet');
    expect((await asked(['export', '--csv'], 'show', true)).out).toContain('colon');
  });

  it.each(['--csv', '--parquet'])(
    '%s is refused where small counts are hidden, and says how to show them',
    async (form) => {
      const { code, out, bytes, err } = await asked(['export', form], 'hide');
      expect([code, out, bytes]).toEqual([1, '', undefined]);
      expect(err).toContain('smallCells');
    },
  );
});
