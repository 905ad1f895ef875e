import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { describe, expect, it } from 'vitest';
import { BEST_J } from '../../../src/assessment/scores/best-j.table.js';
import { answer } from '../../../src/rules/index.js';
import { disagreements, everyQuestion, shortAnswer } from './ask.js';

const KINDS = ['warfarin', 'doac', 'p2y12', 'aspirin', 'cilostazol'] as const;
type Kind = (typeof KINDS)[number];
type Use = 'not-taken' | 'continued' | 'interrupted' | 'not-known';

interface Drug {
  readonly kind: string;
  readonly interrupted?: boolean | null;
}
interface Question {
  readonly drugs: readonly Drug[];
  readonly haemodialysis: boolean;
  readonly lowerThird: boolean;
  readonly multiple: boolean;
  readonly sizeMm: number;
}

// Source: Hatta W et al. Gut 2021;70:476-484, groups and rates from its table of risk groups, the
// weights from the score's own calculator (second source), in plain words: warfarin and DOAC 4,
// haemodialysis 3, P2Y12 and aspirin 2, cilostazol 1, size above 30 mm 1, lower third 1, several
// tumours 1, minus 1 for each kind of drug that was interrupted. A kind whose interruption is not
// known leaves the total open by 1.
function secondWriting({ drugs, haemodialysis, lowerThird, multiple, sizeMm }: Question): string {
  let total = 0;
  let open = 0;
  for (const kind of new Set(drugs.map((drug) => drug.kind))) {
    const of = drugs.filter((drug) => drug.kind === kind);
    if (kind === 'other') continue;
    if (kind === 'warfarin' || kind === 'doac') total += 4;
    if (kind === 'p2y12' || kind === 'aspirin') total += 2;
    if (kind === 'cilostazol') total += 1;
    if (of.some(({ interrupted }) => interrupted === false)) continue;
    if (of.every(({ interrupted }) => interrupted === true)) total -= 1;
    else open += 1;
  }
  if (haemodialysis) total += 3;
  if (lowerThird) total += 1;
  if (multiple) total += 1;
  if (sizeMm > 30) total += 1;
  if (open > 0) return `indeterminate;missing=drugs;range=${total - open}-${total}`;
  if (total < 2) return `${total};low;2.8`;
  if (total < 3) return `${total};intermediate;6.1`;
  if (total < 5) return `${total};high;11.4`;
  return `${total};very-high;29.7`;
}

const INTERRUPTED: Record<Exclude<Use, 'not-taken'>, boolean | null> = {
  continued: false,
  interrupted: true,
  'not-known': null,
};

const listOf = (uses: Record<Kind, Use>): readonly Drug[] =>
  KINDS.flatMap((kind) => {
    const use = uses[kind];
    return use === 'not-taken' ? [] : [{ kind, interrupted: INTERRUPTED[use] }];
  });

const FLAGS = [false, true];
const listsOf = (uses: readonly Use[]) =>
  everyQuestion<Record<Kind, Use>>({
    warfarin: uses,
    doac: uses,
    p2y12: uses,
    aspirin: uses,
    cilostazol: uses,
  }).map(listOf);

/** Every use of the drugs beside nothing else, and every use that is known beside every item. */
const EVERY = [
  ...everyQuestion<Question>({
    drugs: listsOf(['not-taken', 'continued', 'interrupted', 'not-known']),
    haemodialysis: [false],
    lowerThird: [false],
    multiple: [false],
    sizeMm: [30],
  }),
  ...everyQuestion<Question>({
    drugs: listsOf(['not-taken', 'continued', 'interrupted']),
    haemodialysis: FLAGS,
    lowerThird: FLAGS,
    multiple: FLAGS,
    sizeMm: [30, 30.1],
  }),
];
const REST = { haemodialysis: false, lowerThird: false, multiple: false, sizeMm: 20 };

describe('BEST-J score', () => {
  it('agrees with a second writing on every combination of drugs and items', () => {
    expect(EVERY).toHaveLength(4 ** 5 + 3 ** 5 * 2 ** 4);
    expect(disagreements(BEST_J, EVERY, secondWriting)).toEqual([]);
  });

  it('would be caught with aspirin at 1 point, as it is often remembered', () => {
    const asOnePoint = (q: Question) => {
      const drugs = q.drugs.map((d) => (d.kind === 'aspirin' ? { ...d, kind: 'cilostazol' } : d));
      return secondWriting({ ...q, drugs });
    };
    expect(disagreements(BEST_J, EVERY, asOnePoint).length).toBeGreaterThan(0);
  });

  it.each([1, 29, 30, 31, 200])('sees a border of size above 30 mm only (%s mm)', (sizeMm) => {
    const document = { ...REST, drugs: [], sizeMm };
    expect(shortAnswer(BEST_J, document)).toBe(secondWriting(document));
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
    expect(secondWriting({ ...REST, drugs })).toBe(expected);
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
