import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { describe, expect, it } from 'vitest';
import { BEST_J } from '../../../src/assessment/scores/best-j.table.js';
import { answer } from '../../../src/rules/index.js';
import { disagreements, shortAnswer } from './ask.js';
import { type BestJQuestion, bestJ, EVERY_BEST_J, KINDS } from './second-best-j.js';

const REST = { haemodialysis: false, lowerThird: false, multiple: false, sizeMm: 20 };

describe('BEST-J score', () => {
  it('agrees with a second writing on every combination of drugs and items', () => {
    expect(EVERY_BEST_J).toHaveLength(4 ** 5 + 3 ** 5 * 2 ** 4);
    expect(disagreements(BEST_J, EVERY_BEST_J, bestJ)).toEqual([]);
  });

  it('would be caught with aspirin at 1 point, as it is often remembered', () => {
    const asOnePoint = (q: BestJQuestion) => {
      const drugs = q.drugs.map((d) => (d.kind === 'aspirin' ? { ...d, kind: 'cilostazol' } : d));
      return bestJ({ ...q, drugs });
    };
    expect(disagreements(BEST_J, EVERY_BEST_J, asOnePoint).length).toBeGreaterThan(0);
  });

  it.each([1, 29, 30, 31, 200])('sees a border of size above 30 mm only (%s mm)', (sizeMm) => {
    const document = { ...REST, drugs: [], sizeMm };
    expect(shortAnswer(BEST_J, document)).toBe(bestJ(document));
  });

  it('gives a total of each height its group, also far above 5', () => {
    const drugs = KINDS.map((kind) => ({ kind, interrupted: false }));
    const most = { drugs, haemodialysis: true, lowerThird: true, multiple: true, sizeMm: 31 };
    expect(shortAnswer(BEST_J, most)).toBe('19;very-high;29.7');
  });
});

describe('drugs of the BEST-J score', () => {
  it.each([
    [[{ kind: 'other', interrupted: false }], '0;low;2.8'],
    [[{ kind: 'other', interrupted: true }], '0;low;2.8'],
    [[{ kind: 'other' }], '0;low;2.8'],
    [
      [
        { kind: 'doac', interrupted: true },
        { kind: 'doac', interrupted: true },
      ],
      '3;high;11.4',
    ],
    [
      [
        { kind: 'p2y12', interrupted: true },
        { kind: 'p2y12', interrupted: false },
      ],
      '2;intermediate;6.1',
    ],
    [
      [{ kind: 'p2y12', interrupted: true }, { kind: 'p2y12' }],
      'indeterminate;missing=drugs;range=1-2',
    ],
    [[{ kind: 'p2y12', interrupted: false }, { kind: 'p2y12' }], '2;intermediate;6.1'],
  ])('counts kinds, not drugs: %j gives %s', (drugs, expected) => {
    expect(shortAnswer(BEST_J, { ...REST, drugs })).toBe(expected);
    expect(bestJ({ ...REST, drugs })).toBe(expected);
  });

  it.each([
    [{}, 'indeterminate;missing=drugs,haemodialysis,lowerThird,multiple,sizeMm;range=0-19'],
    [{ ...REST }, 'indeterminate;missing=drugs;range=0-13'],
    [{ ...REST, drugs: null }, 'indeterminate;missing=drugs;range=0-13'],
    [
      { ...REST, drugs: [{ kind: 'aspirin' }], sizeMm: null },
      'indeterminate;missing=drugs,sizeMm;range=1-3',
    ],
  ])('names the list, not its parts, when %j leaves it open', (document, expected) => {
    expect(shortAnswer(BEST_J, document)).toBe(expected);
  });

  it.each([
    [{ drugs: 'aspirin' }, '(wrong-type /drugs)'],
    [{ drugs: [null] }, '(wrong-type /drugs/0)'],
    [{ drugs: [[]] }, '(wrong-type /drugs/0)'],
    [{ drugs: ['aspirin'] }, '(wrong-type /drugs/0)'],
    [{ drugs: [{ kind: 'heparin', interrupted: true }] }, '(not-in-list /drugs/0/kind)'],
    [{ drugs: [{ interrupted: true }] }, '(not-in-list /drugs/0/kind)'],
    [{ drugs: [{ kind: 'other', interrupted: 'yes' }] }, '(wrong-type /drugs/0/interrupted)'],
    [{ drugs: [{ kind: 'other', dose: 1 }] }, '(unknown-field /drugs/0)'],
    [{ aspirin: true }, '(unknown-field /aspirin)'],
    [{ 'a/b~c': true }, '(unknown-field /a~1b~0c)'],
    [null, '(wrong-type )'],
    [[], '(wrong-type )'],
    ['drugs', '(wrong-type )'],
    [
      { drugs: 1, size: 3, haemodialysis: 'no' },
      '(unknown-field /size, wrong-type /drugs, wrong-type /haemodialysis)',
    ],
  ])('refuses %j with every fault at once', (document, expected) => {
    expect(shortAnswer(BEST_J, document)).toBe(expected);
  });

  it('names the fields that people can send when it refuses one', () => {
    expect(answer(BEST_J, { aspirinInterrupted: true })).toMatchObject({
      problems: [
        { expected: 'only the fields: drugs, haemodialysis, lowerThird, multiple, sizeMm' },
      ],
    });
  });
});

/** Exact interval of a proportion by the beta distribution of an independent package. */
function clopperPearson(events: number, of: number): readonly [number, number] {
  return [
    100 * betaQuantile(0.025, events, of - events + 1),
    100 * betaQuantile(0.975, events + 1, of - events),
  ];
}

/** Wilson interval, to show that the published one is not it. */
function wilson(events: number, of: number): readonly [number, number] {
  const z = 1.959964;
  const p = events / of;
  const half = z * Math.sqrt((p * (1 - p)) / of + (z * z) / (4 * of * of));
  const centre = p + (z * z) / (2 * of);
  return [
    (100 * (centre - half)) / (1 + (z * z) / of),
    (100 * (centre + half)) / (1 + (z * z) / of),
  ];
}

const oneDecimal = (numbers: readonly number[]) => numbers.map((n) => n.toFixed(1));

describe('published table of the BEST-J score', () => {
  const rates = BEST_J.bands.map(({ rate }) => {
    const { events = Number.NaN, of = Number.NaN, percent = Number.NaN, interval } = rate ?? {};
    const { lowerPercent = Number.NaN, upperPercent = Number.NaN, method } = interval ?? {};
    return { events, of, percent, printed: [lowerPercent, upperPercent], method };
  });

  // Source: Hatta 2021, table of risk groups: 8291 patients, 3 without data.
  it('adds up to 8288 patients and 387 bleeds', () => {
    expect(rates.reduce((sum, { of }) => sum + of, 0)).toBe(8291 - 3);
    expect(rates.reduce((sum, { events }) => sum + events, 0)).toBe(387);
  });

  it.each(rates)('prints $percent % of $events bleeds in $of patients', (rate) => {
    expect(rate.percent.toFixed(1)).toBe(((100 * rate.events) / rate.of).toFixed(1));
  });

  it.each(rates)('prints the exact interval of $events in $of: $printed', (rate) => {
    expect(rate.method).toBe('clopper-pearson');
    expect(oneDecimal(rate.printed)).toEqual(oneDecimal(clopperPearson(rate.events, rate.of)));
  });

  it('would be caught with Wilson intervals', () => {
    const last = rates.at(-1);
    expect(oneDecimal(wilson(last?.events ?? 0, last?.of ?? 0))).toEqual(['23.8', '36.3']);
    expect(oneDecimal(last?.printed ?? [])).not.toEqual(['23.8', '36.3']);
  });

  it('rises from group to group', () => {
    const percents = rates.map(({ percent }) => percent);
    expect(percents).toEqual([...percents].sort((a, b) => a - b));
    expect(new Set(percents).size).toBe(4);
  });
});
