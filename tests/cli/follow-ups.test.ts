import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FollowUpLists } from '../../src/cli/index.js';
import { listsOf } from '../../src/follow-up-lists.js';
import { toCsv } from '../../src/kernel/index.js';
import type { FollowUp, FollowUpQuery } from '../../src/pipeline/index.js';
import { madeBooking, madeFollowUp } from '../support/made-follow-ups.js';
import { run } from './run.js';

const TODAY = '2026-09-01';
const ID = '51e4623a-0000-8000-8000-000000000001';
const OTHER = '51e4999b-0000-8000-8000-000000000002';

const SCAR = madeFollowUp(ID, ['2026-09-02', '2026-12-02', '2026-12-02'], {
  patient: '=EX-P-1',
  followUp: { caseId: 'c329a6da-0000-8000-8000-000000000003', visitWith: [OTHER] },
});
const LATE = madeFollowUp(OTHER, ['2026-03-05', '2026-03-05', '2026-03-19'], {
  patient: 'EX-P-2',
  item: { kind: 'task', task: 'multidisciplinary-meeting', urgency: 'urgent' },
  followUp: { overdue: true },
});
const BOOKED = madeFollowUp('b0', ['2026-09-02', '2026-10-02', '2026-12-02'], {
  item: { route: 'lower', booking: madeBooking('2026-10-05') },
});

/** Lists over made follow-ups in pages of two; filters are the store's and are only written down. */
function madeLists(followUps: readonly FollowUp[], asked: FollowUpQuery[]): FollowUpLists {
  return listsOf({
    today: TODAY,
    page: (query) => {
      asked.push(query);
      const at = Number(query.after ?? 0);
      const next = at + 2 < followUps.length ? { next: String(at + 2) } : {};
      const page = { followUps: followUps.slice(at, at + 2), ...next, cursor: '' };
      return Promise.resolve({ kind: 'found', page });
    },
    one: (id) => Promise.resolve(followUps.find((each) => each.id === id)),
  });
}

async function asked(
  args: readonly string[],
  followUps: readonly FollowUp[] = [LATE, SCAR, BOOKED],
  files: Readonly<Record<string, string>> = {},
  colour = false,
) {
  const queries: FollowUpQuery[] = [];
  const readFile = async (path: string) => {
    const text = files[path];
    if (text === undefined) throw Object.assign(new Error(path), { code: 'ENOENT' });
    return Buffer.from(text);
  };
  const ran = await run(
    ['follow-ups', ...args],
    { colour, readFile },
    { followUps: (read) => read(madeLists(followUps, queries)) },
  );
  return { ...ran, queries };
}

describe('the list of follow-ups', () => {
  it('fits on a screen and says what presses', async () => {
    const { code, out } = await asked([]);
    expect([code, out]).toEqual([
      0,
      [
        'target      window                  what                       state              id        case',
        '2026-03-05  2026-03-05..2026-03-19  multidisciplinary meeting  overdue, urgent    51e4999b  0c51e499',
        '2026-12-02  2026-09-02..2026-12-02  upper endoscopy            open               51e4623a  c329a6da',
        '2026-10-02  2026-09-02..2026-12-02  lower endoscopy            booked 2026-10-05  b0        0cb0',
        '',
      ].join('\n'),
    ]);
    expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(100);
  });

  it('shows in colour what is overdue, and nothing that is not', async () => {
    const { out } = await asked([], undefined, {}, true);
    const esc = String.fromCharCode(27);
    const lines = out.split('\n').map((line) => line.includes(`${esc}[31m`));
    expect(lines).toEqual([false, true, false, false, false]);
    expect((await asked([])).out).not.toContain(esc);
  });

  it('says how many more there are, and how to see them', async () => {
    const many = Array.from({ length: 92 }, (_, i) => ({ ...SCAR, id: `id-${i}` }));
    const { out, queries } = await asked([], many);
    expect(out.trim().split('\n')).toHaveLength(52);
    expect(out).toContain('\n42 more: --limit 92 shows all.\n');
    expect(queries.map(({ after }) => after).slice(0, 3)).toEqual([undefined, '2', '4']);
    expect((await asked(['--limit', '92'], many)).out).not.toContain('more');
    expect((await asked([], [])).out).toBe('No follow-up matches.\n');
  });

  it('asks for what the options say', async () => {
    const days = ['--from', '2026-09-01', '--to', '2026-09-30'];
    const { queries } = await asked([
      ...days,
      '--route',
      'lower',
      '--state',
      'open,done',
      '--overdue',
    ]);
    expect(queries[0]).toEqual({
      ...{ from: '2026-09-01', to: '2026-09-30', route: 'lower', states: ['open', 'done'] },
      ...{ due: 'overdue', limit: 500 },
    });
    expect((await asked(['--unbooked-soon', '14'])).queries[0]).toEqual({
      ...{ due: 'unbooked-soon', withinDays: 14, limit: 500 },
    });
  });

  it.each([
    ['--from takes a day', ['--from', '2026-02-29']],
    ['--to lies before --from', ['--from', '2026-03-01', '--to', '2026-02-28']],
    ['--state takes: provisional', ['--state', 'open,closed']],
    ['--route takes: upper, lower', ['--route', 'both']],
    ['--limit takes a whole number', ['--limit', '0']],
    ['--unbooked-soon takes a whole number', ['--unbooked-soon', 'soon']],
    ['--overdue or --unbooked-soon', ['--overdue', '--unbooked-soon', '3']],
    ['--json or --csv', ['--json', '--csv']],
    ['--sessions says nothing here', ['--sessions', 'free.csv']],
    ['--route says nothing here', ['forecast', '--route', 'upper']],
    ['knows: why, propose, forecast', ['booking']],
    ['needs one ID', ['why']],
    ['needs one ID', ['why', 'EX-P-0001']],
    ['needs --sessions FILE', ['propose']],
  ])('refuses, with 2: %s', async (sentence, args) => {
    const { code, out, err, queries } = await asked(args);
    expect([code, out, queries]).toEqual([2, '', []]);
    expect(err).toContain(sentence);
  });
});

describe('follow-ups for programs and spreadsheets', () => {
  it('are whole in JSON', async () => {
    const { out } = await asked(['--json', '--limit', '2']);
    expect(JSON.parse(out)).toEqual({ followUps: [LATE, SCAR], more: 1 });
  });

  it('are rows of CSV that another reader reads, no cell of them a formula', async () => {
    const rows: readonly Record<string, string>[] = parse((await asked(['--csv'])).out, {
      ...{ columns: true, record_delimiter: '\r\n' },
    });
    expect(rows).toHaveLength(3);
    expect(rows[1]).toMatchObject({
      ...{ id: ID, patient_value: "'=EX-P-1", kind: 'endoscopy', task: '', row: 'GAS-1' },
      ...{ earliest: '2026-09-02', target: '2026-12-02', state: 'open', overdue: 'false' },
      ...{ visit_with: OTHER },
    });
    expect(rows[2]).toMatchObject({ booking: 'booked', booked_on: '2026-10-05' });
  });
});

// RFC 4180 section 2; csv-parse is the other reader.
describe('CSV, against RFC 4180', () => {
  const text = fc.oneof(
    fc.string(),
    fc.constantFrom('=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', 'a,b', '"', 'a\nb', ' '),
  );

  it('gives back every text, but for an apostrophe before what would be a formula', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1 }), (rows) => {
        const written = toCsv(['one', 'two'], rows);
        const [, ...read]: string[][] = parse(written, { record_delimiter: '\r\n' });
        const plain = read.map((row) => row.map((cell) => cell.replace(/^'(?=[=+\-@\t\r\n])/, '')));
        expect(plain).toEqual(
          rows.map((row) => row.map((cell) => cell.replace(/^'(?=[=+\-@\t\r\n])/, ''))),
        );
        for (const cell of read.flat()) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
      }),
    );
  });

  it('leaves numbers alone, and says nothing of what there is not', () => {
    expect(toCsv(['a', 'b', 'c'], [[-3, undefined, true]])).toBe('a,b,c\r\n-3,,true\r\n');
    expect(toCsv(['a'], [['say "a", b']])).toBe('a\r\n"say ""a"", b"\r\n');
  });
});

describe('why a follow-up is asked for', () => {
  it('is told with rule, days, inputs, sources and a caution', async () => {
    const { code, out } = await asked(['why', '51e46']);
    expect(code).toBe(0);
    for (const part of [
      'upper endoscopy: open, routine\n',
      `  id           ${ID}\n`,
      '2026-09-02 to 2026-12-02, best on 2026-12-02, counted from 2026-06-02',
      'row GAS-1 of esge-esd-2022, by esge-esd-2022-follow-up version 1',
      'organ stomach, enBloc true, ulcer not known',
      '  last changed 2026-06-20T08:00:00.000Z, state 2 of the record\n',
      '  follows      every 12 months\n',
      '  visit        also answers 51e4999b\n',
      '[1] recalled, ',
      'recalled: stands in the work by memory or by a second source',
      'Decision support, not a verdict.',
    ]) {
      expect(out).toContain(part);
    }
  });

  it('is whole in JSON, by the whole id too', async () => {
    const { out } = await asked(['why', ID, '--json']);
    expect(JSON.parse(out)).toMatchObject({ ...SCAR, caution: expect.any(String) });
  });

  it('is refused, with 1, for no id that is there and for one that several have', async () => {
    expect(await asked(['why', 'ffff'])).toMatchObject({ code: 1, out: '' });
    const { code, err } = await asked(['why', '51e4']);
    expect([code, err]).toEqual([
      ...[1, 'Several follow-ups have an id that begins so: name more of it.\n'],
    ]);
  });
});

describe('proposed days in the terminal', () => {
  const files = {
    'free.csv': 'date,route,places\n2026-11-30,upper,1\n',
    'odd.csv': 'date,route,places\n2026-11-31,upper,1\n2026-11-30,CANARY,1\n',
    'past.csv': 'date,route,places\n2026-08-31,upper,1\n',
  };
  const two = [SCAR, { ...SCAR, id: OTHER, patient: { ...SCAR.patient, value: 'EX-P-2' } }];

  it('say who gets which day, who gets none and why, and what lacks', async () => {
    const soon = ['2026-10-01', '2026-11-25', '2026-12-30'] as const;
    const followUps = [madeFollowUp('aa', soon), madeFollowUp('bb', soon)];
    const { code, out } = await asked(['propose', '--sessions', 'free.csv'], followUps, files);
    expect([code, out.split('\n')]).toEqual([
      0,
      [
        'Sessions from 2026-09-01 to 2026-11-30; nothing is booked by this.',
        'visits with a day: 1 (follow-ups: 1); without: 1; due after the last session: 0.',
        '',
        'day         session  target      off  may be on               patient  follow-ups',
        '2026-11-30  upper    2026-11-25   +5  2026-10-01..2026-12-30  EX-P-aa  aa',
        '',
        'Without a day:',
        'target      route  may be on               patient  follow-ups  why                        nearest',
        '2026-11-25  upper  2026-10-01..2026-12-30  EX-P-bb  bb          all places taken; goes on  none',
        '',
        'Places that lack:',
        'month    route  places',
        '2026-11  upper       1',
        '',
      ],
    ]);
  });

  it('are the same for programs and spreadsheets', async () => {
    const args = ['propose', '--sessions', 'free.csv', '--from', '2026-12-03'];
    expect((await asked(args, two, files)).code).toBe(1);
    const late = { 'free.csv': 'date,route,places\n2026-12-03,upper,1\n' };
    const json = JSON.parse((await asked([...args, '--json'], two, late)).out);
    expect(json.placed).toMatchObject([{ on: '2026-12-03', daysOff: 1, overdue: true }]);
    expect(json.placed[0].followUps).toEqual([{ id: ID, case: SCAR.case }]);
    const csv = (await asked([...args, '--csv'], two, late)).out;
    const rows: readonly Record<string, string>[] = parse(csv, { columns: true });
    expect(rows.map(({ day, why, follow_ups }) => [day, why, follow_ups])).toEqual([
      ['2026-12-03', '', ID],
      ['', 'all places taken', OTHER],
    ]);
  });

  it('are refused with all that is wrong in the file, and without what it says', async () => {
    const { code, out, err } = await asked(['propose', '--sessions', 'odd.csv'], two, files);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('[session-date]');
    expect(err).toContain('[session-route]');
    expect(err).not.toContain('CANARY');
  });

  it('end with 1 when all sessions are over, and with 3 without a file', async () => {
    const past = await asked(['propose', '--sessions', 'past.csv'], two, files);
    expect([past.code, past.err]).toEqual([
      ...[1, 'No session of the file has a place on 2026-09-01 or later.\n'],
    ]);
    expect((await asked(['propose', '--sessions', 'gone.csv'], two, files)).code).toBe(3);
  });
});

describe('the load to come in the terminal', () => {
  // Row GAS-1: every 12 months after the first.
  it('is a bar a month', async () => {
    const { out } = await asked(['forecast', '--from', '2026-11-15', '--months', '14'], [SCAR]);
    const lines = out.split('\n');
    expect(lines.slice(0, 3)).toEqual([
      ...['month    upper  lower  visits  # is a visit', '2026-11      0      0       0'],
      '2026-12      1      0       1  #',
    ]);
    expect(lines.filter((line) => line.includes('#'))).toHaveLength(3);
    expect(lines[14]).toBe('2027-12      1      0       1  #');
  });

  it('scales its bars', async () => {
    const many = Array.from({ length: 130 }, (_, i) =>
      madeFollowUp(`${i}`, ['2026-10-02', '2026-10-02', '2026-10-02']),
    );
    const { out } = await asked(['forecast', '--months', '2'], many);
    expect(out).toContain('# is up to 3 visits');
    expect(out).toContain(`130      0     130  ${'#'.repeat(44)}\n`);
  });

  it('is the same for programs and spreadsheets', async () => {
    const args = ['forecast', '--from', '2026-12-01', '--months', '1'];
    expect(JSON.parse((await asked([...args, '--json'])).out)).toMatchObject({
      ...{ months: [{ month: '2026-12', upper: 1, lower: 1 }], plans: 2, unsure: 0, undated: 0 },
    });
    expect((await asked([...args, '--csv'])).out).toBe('month,upper,lower\r\n2026-12,1,1\r\n');
  });
});
