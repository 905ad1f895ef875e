import { createHash } from 'node:crypto';
import { parse } from 'csv-parse/sync';
import { parse as parseHtml } from 'parse5';
import { SaxesParser } from 'saxes';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadBatch } from '../../scripts/synthetic/load-batch.js';
import { syntheticCase } from '../../scripts/synthetic/synthetic-case.js';
import { UNITS } from '../../scripts/synthetic/units.table.js';
import {
  DEFAULT_UNIT_SETTINGS,
  OUTCOME_CHARTS,
  type UnitSettings,
} from '../../src/contract/index.js';
import { INDICATOR_IDS, type OutcomeReport } from '../../src/outcomes/index.js';
import { createService, type DataDictionary } from '../../src/pipeline/index.js';
import { createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { READ_AS, readParquetFile } from '../support/read-parquet.js';
import { jsonOf, type RunningApp, runApp, stopApps } from './running-app.js';

const COUNT = 120;
const WANTED = { seed: 3, units: UNITS, untilOn: '2026-06-30' };
const NOW = '2026-09-01T10:00:00.000Z';

const test = await testDatabase();
const database = await test.open();
const settingsWith = (change: Partial<UnitSettings>) => ({
  unit: { ...DEFAULT_UNIT_SETTINGS, ...change },
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0',
});
const serviceWith = (change: Partial<UnitSettings>) =>
  createService({
    store: createRecordStore(database),
    settings: settingsWith(change),
    now: () => NOW,
  });

let open: RunningApp;
let hiding: RunningApp;

beforeAll(async () => {
  await loadBatch(database, settingsWith({}), WANTED, { from: 0, to: COUNT }, NOW);
  open = await runApp({ service: serviceWith({ smallCells: 'show', name: 'An invented unit' }) });
  hiding = await runApp({ service: serviceWith({}) });
}, 120_000);
afterAll(stopApps);

const reportOf = async (app: RunningApp, query = ''): Promise<OutcomeReport> => {
  const response = await app.get(`/outcomes${query}`);
  expect(response.status).toBe(200);
  return JSON.parse(await response.text());
};
const textOf = async (path: string, app = open) => (await app.get(path)).text();

interface CsvRow {
  readonly [name: string]: string;
}
const rowsOf = (text: string): readonly CsvRow[] => parse(text, { columns: true });
/** `bleeding6h30d` is the same, `r0` too; `enBloc` is `en_bloc`. */
const columnOf = (id: string): string =>
  id.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

describe('an export that is read by another program', () => {
  it('gives the counts of the outcomes, of all cases and of each organ', async () => {
    const rows = rowsOf(await textOf('/outcomes/export.csv'));
    const { cells } = await reportOf(open, '?by=organ');
    expect(rows.length).toBeGreaterThan(COUNT * 0.9);
    expect(cells.length).toBeGreaterThan(4);
    for (const { stratum, cases, indicators } of cells) {
      const some = rows.filter(({ organ }) => (stratum.organ ?? organ) === organ);
      expect(some.length).toBe(cases);
      for (const result of indicators) {
        const column = columnOf(result.id);
        const count = (word: string) => some.filter((row) => row[column] === word).length;
        const counts = { missing: count('missing'), windowOpen: count('window-open') };
        const told = count('yes') + count('no');
        expect(result).toMatchObject(
          told === 0
            ? { kind: 'no-rate', ...counts }
            : { kind: 'rate', numerator: count('yes'), denominator: told, ...counts },
        );
      }
    }
  });

  it('gives the numbers of values, and their medians', async () => {
    const rows = rowsOf(await textOf('/outcomes/export.csv?organ=stomach'));
    const { cells } = await reportOf(open, '?organ=stomach');
    const speed = cells[0]?.quantities.find(({ id }) => id === 'speedCm2PerH');
    const begun = rows.filter((row) => row['en_bloc'] !== 'not-applicable');
    const values = begun.flatMap(({ speed_cm2_per_h: text }) =>
      text === undefined || text === '' ? [] : [Number(Number(text).toFixed(1))],
    );
    const sorted = values.toSorted((a, b) => a - b);
    const middle = (sorted.length - 1) / 2;
    const median = ((sorted[Math.floor(middle)] ?? 0) + (sorted[Math.ceil(middle)] ?? 0)) / 2;
    expect(sorted.length).toBeGreaterThan(10);
    expect(speed).toMatchObject({ n: sorted.length, missing: begun.length - sorted.length });
    expect(speed).toHaveProperty('median', expect.closeTo(median, 5));
  });

  it('is the same as lines of JSON', async () => {
    const csv = rowsOf(await textOf('/outcomes/export.csv'));
    const lines = (await textOf('/outcomes/export.ndjson')).trim().split('\n');
    const asText = lines.map((line) =>
      Object.fromEntries(
        Object.entries(JSON.parse(line)).map(([name, value]) => [
          name,
          value === null ? '' : String(value),
        ]),
      ),
    );
    expect(asText).toEqual(csv);
  });

  it('is the same as Parquet, as another implementation reads it', async () => {
    const response = await open.get('/outcomes/export.parquet');
    // https://www.iana.org/assignments/media-types/application/vnd.apache.parquet
    expect(response.headers.get('content-type')).toBe('application/vnd.apache.parquet');
    expect(response.headers.get('content-disposition')).toMatch(/filename="cases\.parquet"/);
    const read = await readParquetFile(new Uint8Array(await response.arrayBuffer()));
    const lines = (await textOf('/outcomes/export.ndjson')).trim().split('\n');
    expect(read.rows).toEqual(lines.map((line) => JSON.parse(line)));
    expect(read.rows.length).toBeGreaterThan(COUNT * 0.9);
    // Beside the rows the file tells nothing that was not made for exports.
    expect(read.keys).toEqual([]);
    const dictionary: DataDictionary = JSON.parse(await textOf('/outcomes/dictionary'));
    expect(read.columns).toEqual(
      dictionary.columns.map(({ name, parquet }) => [name, READ_AS[parquet]]),
    );
  });

  it('has no rows as Parquet where there are no cases, and its columns all the same', async () => {
    const none = await open.get('/outcomes/export.parquet?from=1990-01-01&to=1990-12-31');
    const read = await readParquetFile(new Uint8Array(await none.arrayBuffer()));
    const { columns }: DataDictionary = JSON.parse(await textOf('/outcomes/dictionary'));
    expect(read.rows).toEqual([]);
    expect(read.columns.map(([name]) => name)).toEqual(columns.map(({ name }) => name));
  });

  it('has the columns of the dictionary, no other, and no time of a day', async () => {
    const text = await textOf('/outcomes/export.csv');
    const { columns } = JSON.parse(await textOf('/outcomes/dictionary'));
    const names = columns.map(({ name }: { readonly name: string }) => name);
    expect(text.split('\r\n')[0]).toBe(names.join(','));
    expect(text).not.toMatch(/\d\d:\d\d/);
    expect('2026-01-01T09:30:00Z').toMatch(/\d\d:\d\d/);
    for (const id of INDICATOR_IDS) expect(names).toContain(columnOf(id));
  });

  it('holds words of the dictionary where it lists them', async () => {
    const rows = rowsOf(await textOf('/outcomes/export.csv'));
    const { columns } = JSON.parse(await textOf('/outcomes/dictionary'));
    let looked = 0;
    for (const { name, values } of columns) {
      if (values === undefined) continue;
      for (const row of rows) {
        if (row[name] === '') continue;
        looked += 1;
        expect(values, name).toContain(row[name]);
      }
    }
    expect(looked).toBeGreaterThan(2000);
  });

  it('names operators otherwise than the outcomes do', async () => {
    const exported = new Set(
      rowsOf(await textOf('/outcomes/export.csv')).map(({ operator }) => operator),
    );
    const { cells } = await reportOf(open, '?by=operator');
    const counted = cells.flatMap(({ stratum }) => stratum.operator ?? []);
    expect(exported.size).toBe(counted.length);
    expect(counted.filter((each) => exported.has(each))).toEqual([]);
  });

  it('runs nothing in a spreadsheet', async () => {
    const row = { row: '=1+1', organ: '@sum', site: '+1', unit: '-x', operator: '\tx', n: -3 };
    const app = await runApp({
      service: {
        exportCases: () => ({
          kind: 'rows',
          rows: (async function* () {
            yield [row];
          })(),
        }),
      },
    });
    const [first = {}] = rowsOf(await textOf('/outcomes/export.csv', app));
    const { row: id, organ, site, unit, operator } = first;
    expect([id, organ, site, unit, operator]).toEqual(["'=1+1", "'@sum", "'+1", "'-x", "'\tx"]);
  });

  it('is cut off where it fails on the way, so that no part is taken for the whole', async () => {
    const app = await runApp({
      service: {
        exportCases: () => ({
          kind: 'rows',
          rows: (async function* () {
            yield [{ row: 'a' }];
            throw new Error('the store is gone');
          })(),
        }),
      },
    });
    const response = await app.get('/outcomes/export.csv');
    await expect(response.text()).rejects.toThrow();
    await expect.poll(() => app.logLines().join('')).toContain('"class":"cut"');
  });

  it('is offered to HEAD without being read', async () => {
    const response = await open.get('/outcomes/export.csv', { method: 'HEAD' });
    expect(response.headers.get('content-type')).toBe('text/csv; charset=utf-8; header=present');
    expect(await response.text()).toBe('');
  });
});

const IDENTIFIERS = ['patient', 'case', 'session', 'unit', 'operator', 'assistants', 'trainee'];

/** Values of all identifiers of people, cases and units in a message. */
function identifiersIn(value: unknown, isBelow = false): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]): readonly string[] => {
    const below = isBelow || IDENTIFIERS.includes(name);
    if (below && name === 'value' && typeof inner === 'string') return [inner];
    return identifiersIn(inner, below);
  });
}

describe('what anybody receives', () => {
  const PATHS = [
    ...['/outcomes', '/outcomes?by=operator', '/outcomes?by=organ,fibrosis', '/outcomes/report'],
    ...['/outcomes/report?by=operator', '/outcomes/series?series=cusum-r0', '/outcomes/dictionary'],
    ...['/outcomes/series?series=funnel&indicator=r0', '/outcomes/export.csv'],
    ...['/outcomes/export.ndjson', '/outcomes/charts/funnel.svg?indicator=r0'],
    ...['/outcomes?organ=liver', '/outcomes/charts/cusum-r0.svg'],
  ];

  it('holds no identifier of a patient, an operator, a case or a unit; neither do logs', async () => {
    const messages = Array.from({ length: COUNT }, (_, i) => syntheticCase(WANTED, i)).flat();
    const known = new Set(messages.flatMap(({ text }) => identifiersIn(JSON.parse(text))));
    const answers = await Promise.all(PATHS.map((path) => textOf(path)));
    const whole = [...answers, ...open.logLines()].join('\n');
    expect(known.size).toBeGreaterThan(COUNT * 2);
    expect(whole.length).toBeGreaterThan(50_000);
    expect([...known].filter((value) => whole.includes(value))).toEqual([]);
    const sent = messages.map(({ text }) => text).join('\n');
    expect([...known].filter((value) => sent.includes(value)).length).toBe(known.size);
  });

  it('has no query in its log', async () => {
    await textOf('/outcomes?organ=colon');
    await expect.poll(() => open.logLines().join('')).toContain('"route":"/outcomes"');
    expect(open.logLines().join('')).not.toContain('colon');
  });
});

describe('where small counts are hidden', () => {
  const shown = ({ cells }: OutcomeReport) =>
    cells.flatMap(({ indicators }) =>
      indicators.flatMap((result) =>
        result.kind === 'rate' ? [[result.numerator, result.denominator - result.numerator]] : [],
      ),
    );
  const isSmall = (count: number) => count > 0 && count < 5;

  it('none is in an answer, and there are some where they are shown', async () => {
    for (const query of ['', '?by=organ', '?by=organ,fibrosis', '?by=operator', '?organ=colon']) {
      const counts = shown(await reportOf(hiding, query)).flat();
      expect(counts.filter(isSmall)).toEqual([]);
      expect(
        shown(await reportOf(open, query))
          .flat()
          .some(isSmall),
      ).toBe(true);
    }
  });

  it('a unit can say otherwise what is small', async () => {
    const app = await runApp({ service: serviceWith({ smallCellThreshold: 40 }) });
    const counts = shown(await reportOf(app, '?by=organ')).flat();
    expect(counts.filter((count) => count > 0 && count < 40)).toEqual([]);
    expect((await reportOf(app)).policy).toEqual({ smallCells: 'hide', threshold: 40 });
  });

  it.each(['/outcomes/export.csv', '/outcomes/export.ndjson', '/outcomes/export.parquet'])(
    '%s is refused',
    async (path) => {
      const response = await hiding.get(path);
      expect(response.status).toBe(403);
      expect((await jsonOf(response))['type']).toMatch(/\/small-counts-hidden$/);
    },
  );

  it('there is no curve of single cases', async () => {
    const series = JSON.parse(await textOf('/outcomes/series?series=cusum-en-bloc', hiding));
    expect(series.kind).toBe('hidden');
    const { over, points } = JSON.parse(await textOf('/outcomes/series?series=cusum-en-bloc'));
    expect(over).toEqual({ organs: ['colon', 'rectum'] });
    expect(points.length).toBe(
      rowsOf(await textOf('/outcomes/export.csv')).filter(
        ({ en_bloc: word, organ }) =>
          ['yes', 'no'].includes(word ?? '') && ['colon', 'rectum'].includes(organ ?? ''),
      ).length,
    );
  });

  it.each([
    ['?from=2025-02-01', 'period-too-fine', '/from'],
    ['?from=2025-01-01&to=2025-11-30', 'period-too-fine', '/to'],
    ['?organ=colon&technique=esd&by=fibrosis,sizeBand', 'question-too-fine', '/by'],
  ])('%s is refused: %s', async (query, rule, pointer) => {
    const response = await hiding.get(`/outcomes${query}`);
    expect(response.status).toBe(400);
    expect((await jsonOf(response))['errors']).toMatchObject([{ rule, pointer }]);
    expect((await open.get(`/outcomes${query}`)).status).toBe(200);
  });
});

const OPERATOR = '0b54d9a2-6f0e-8c11-9b7d-2f3f5a6b7c8d';

describe('a question', () => {
  it.each([
    ['/outcomes?organ=liver', [['', '/organ']]],
    [
      '/outcomes?from=2025-02-29&by=colour',
      [
        ['', '/from'],
        ['', '/by'],
      ],
    ],
    ['/outcomes?by=organ,organ', [['', '/by']]],
    ['/outcomes?by=organ,fibrosis,technique', [['', '/by']]],
    ['/outcomes?from=2026-01-01&to=2025-01-01', [['days-out-of-order', '/to']]],
    ['/outcomes?patient=4711', [['unknown-parameter', '']]],
    ['/outcomes?organ=colon&organ=rectum', [['repeated-parameter', '/organ']]],
    ['/outcomes?operator=EX-OP-1', [['', '/operator']]],
    ['/outcomes/export.csv?by=organ', [['unknown-parameter', '']]],
    ['/outcomes/export.parquet?by=organ', [['unknown-parameter', '']]],
    // Rows of an operator of the outcomes would join the pseudonyms of two purposes.
    [`/outcomes/export.csv?operator=${OPERATOR}`, [['unknown-parameter', '']]],
    ['/outcomes/series?series=none', [['', '/series']]],
    ['/outcomes/series?series=learning-curve', [['', '/operator']]],
    ['/outcomes/series?series=funnel', [['', '/indicator']]],
    [
      '/outcomes/series?series=cusum-r0&acceptable=0.3&unacceptable=0.2',
      [['aims-out-of-order', '/unacceptable']],
    ],
    ['/outcomes/series?series=cusum-r0&alpha=0.6&beta=0.5', [['aims-out-of-order', '/beta']]],
    ['/outcomes/series?series=cusum-r0&alpha=1', [['', '/alpha']]],
    ['/outcomes/charts/rates.svg', [['', '/indicator']]],
    [
      '/outcomes/charts/learning-curve.svg?form=simple',
      [
        ['', '/operator'],
        ['', '/form'],
      ],
    ],
  ] as const)('%s is refused with every problem', async (path, expected) => {
    const response = await open.get(path);
    expect(response.status).toBe(400);
    const body = await jsonOf(response);
    expect(body['type']).toMatch(/\/invalid-query$/);
    const errors: unknown = body['errors'];
    expect(errors).toHaveLength(expected.length);
    for (const [rule, pointer] of expected) {
      const one = { pointer, ...(rule === '' ? {} : { rule }) };
      expect(errors).toContainEqual(expect.objectContaining(one));
    }
    expect(JSON.stringify(body)).not.toMatch(/liver|4711|EX-OP-1|colour/);
  });

  it('without cases is answered, with no rate', async () => {
    const { cells } = await reportOf(open, '?from=1999-01-01&to=1999-12-31&by=organ');
    expect(cells).toHaveLength(1);
    expect(cells[0]).toMatchObject({ cases: 0 });
    expect(cells[0]?.indicators.every(({ kind }) => kind === 'no-rate')).toBe(true);
  });

  it('is answered by the interval that it names', async () => {
    const { cells } = await reportOf(open, '?interval=clopper-pearson');
    const methods = cells.flatMap(({ indicators }) =>
      indicators.flatMap((result) => (result.kind === 'rate' ? [result.interval.method] : [])),
    );
    expect(new Set(methods)).toEqual(new Set(['clopper-pearson']));
  });
});

describe('what people look at', () => {
  it('is a page that allows its own style alone, and says what the numbers say', async () => {
    const response = await open.get('/outcomes/report?by=organ');
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
    const text = await response.text();
    const styles = [...text.matchAll(/<style>([^<]*)<\/style>/g)].map(([, rules = '']) =>
      createHash('sha256').update(rules, 'utf8').digest('base64'),
    );
    expect(styles.length).toBeGreaterThan(0);
    expect(response.headers.get('content-security-policy')).toContain(
      `default-src 'none'; style-src ${styles.map((hash) => `'sha256-${hash}'`).join(' ')};`,
    );
    const errors: string[] = [];
    const tree = parseHtml(text, { onParseError: ({ code }) => errors.push(code) });
    expect(errors).toEqual([]);
    expect(tree.childNodes.length).toBeGreaterThan(0);
    expect(text).not.toMatch(/<script|<link|<img|src=/);
    expect(text).toContain(
      `<dd>An invented unit <small>${DEFAULT_UNIT_SETTINGS.identifierBase}</small></dd>`,
    );
    const { cells } = await reportOf(open);
    const enBloc = cells[0]?.indicators[0];
    expect(enBloc?.kind).toBe('rate');
    if (enBloc?.kind === 'rate') expect(text).toContain(`>${enBloc.numerator}<`);
  });

  it.each(['rates', 'speed'])('shows how one operator learns: %s', async (form) => {
    const { cells } = await reportOf(open, '?by=operator');
    const busiest = cells.slice(1).toSorted((a, b) => (b.cases ?? 0) - (a.cases ?? 0))[0];
    const asked = `operator=${busiest?.stratum.operator}&blockSize=5`;
    const { blocks } = JSON.parse(await textOf(`/outcomes/series?series=learning-curve&${asked}`));
    const svg = await textOf(`/outcomes/charts/learning-curve.svg?${asked}&form=${form}`);
    expect(blocks.length).toBeGreaterThan(3);
    const drawn = svg.match(/<title>Cases \d+ to \d+: (en bloc|median speed) /g);
    expect(drawn).toHaveLength(blocks.length);
    expect(svg).not.toContain(busiest?.stratum.operator ?? '');
  });

  it.each([
    ...OUTCOME_CHARTS.filter((name) => name !== 'learning-curve').map((name) => ({
      name,
      query: ['funnel', 'rates', 'rates-by-year'].includes(name) ? '?indicator=enBloc' : '',
    })),
    { name: 'rates', query: '?indicator=r0&by=organ' },
    { name: 'cusum-speed', query: '?form=sequential&acceptable=0.1' },
  ])('$name.svg$query is well-formed XML', async ({ name, query }) => {
    const response = await open.get(`/outcomes/charts/${name}.svg${query}`);
    expect(response.headers.get('content-type')).toBe('image/svg+xml; charset=utf-8');
    const text = await response.text();
    const parser = new SaxesParser();
    const names: string[] = [];
    parser.on('opentag', (tag) => names.push(tag.name));
    parser.on('error', (error) => {
      throw error;
    });
    parser.write(text).close();
    expect(names[0]).toBe('svg');
    expect(names).toContain('path');
  });

  it('has a mark for each exported dissection with an area and a speed', async () => {
    const svg = await textOf('/outcomes/charts/speed.svg?organ=colon');
    const both = rowsOf(await textOf('/outcomes/export.csv?organ=colon')).filter(
      (row) =>
        row['en_bloc'] !== 'not-applicable' && row['specimen_area_cm2'] && row['speed_cm2_per_h'],
    );
    const areas = both.map((row) => Number(row['specimen_area_cm2']));
    const speeds = both.map((row) => Number(row['speed_cm2_per_h']));
    const ends = (values: readonly number[]) =>
      `${Math.min(...values).toFixed(1)} to ${Math.max(...values).toFixed(1)}`;
    expect(both.length).toBeGreaterThan(5);
    expect(svg).toContain(
      `${both.length} dissections with areas of ${ends(areas)} cm² and speeds of ${ends(speeds)} cm²/h`,
    );
    const reaching = speeds.filter((speed) => speed >= 9).length;
    expect(svg).toContain(`${reaching} of them reach 9 cm²/h`);
    expect(svg).toContain('PMC7411630');
  });

  it('shows no single case where small counts are hidden, and says so', async () => {
    const svg = await textOf('/outcomes/charts/speed.svg', hiding);
    expect(svg).toContain('small counts are hidden here');
    expect(svg).not.toMatch(/dissections? with areas/);
    const report = await textOf('/outcomes/report', hiding);
    expect(report).toMatch(/Speed against size<\/h3><p>Not shown: [^<]*hidden here/);
    expect(report).not.toMatch(/dissections? with areas/);
    expect(await textOf('/outcomes/report')).toMatch(/dissections with areas/);
  });

  it('is not any name', async () => {
    expect((await open.get('/outcomes/charts/pie.svg')).status).toBe(404);
  });
});
