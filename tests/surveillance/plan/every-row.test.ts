import { addMonths, format } from 'date-fns';
import { describe, expect, it } from 'vitest';
import type { UnitSettings } from '../../../src/contract/index.js';
import { FOLLOW_UPS } from '../../../src/surveillance/follow-ups.table.js';
import { type PlanFacts, planFollowUp } from '../../../src/surveillance/index.js';
import {
  ALWAYS_OPEN,
  ESD_ON,
  happened,
  looked,
  NO_EVENTS,
  REPORT,
  resected,
  toCome,
} from './plan-samples.js';

/** Each row once more, as the guidelines say it: months from the dissection. */
interface Series {
  readonly row: string;
  readonly facts: PlanFacts;
  readonly unit?: Partial<UnitSettings['followUpRules']>;
  /** Earliest, target and latest of the first examination. */
  readonly first: readonly [number, number, number];
  /** Of the examinations that follow, if each takes place on its day. */
  readonly later: readonly number[];
  /** The task at the end; absent where it goes on for ever. */
  readonly end?: string;
}

const noSurgery = {
  ...NO_EVENTS,
  meetings: [{ ...happened('2024-04-10'), decision: 'no-surgery' as const }],
};
const carcinoma = (depth: string) => ({ pathology: { ...REPORT, histology: 'carcinoma', depth } });
const byClass = (set: string, found: string, group: PlanFacts['verdict']['group'], more = {}) => ({
  verdict: { rule: set, class: found, ...(group && { group }) },
  classes: { [set]: found },
  ...more,
});
const adenoma = (more: Partial<PlanFacts> = {}) =>
  resected('colon', 'very-low-risk', { pathology: { ...REPORT, polypType: 'adenoma' }, ...more });
const JES = { oesophagus: 'jges-jes-2020-follow-up' } as const;
const JGCA = { stomach: 'jges-jgca-2021-follow-up' } as const;
const YEARLY_FROM_6 = [18, 30, 42];
const HALF_YEARLY = [12, 18, 24, 30];

// Source: the guideline that each row names, and its table of follow-up; written without the code.
const SERIES: readonly Series[] = [
  {
    row: 'OES-1',
    facts: resected('oesophagus', 'very-low-risk'),
    first: [3, 6, 6],
    later: YEARLY_FROM_6,
  },
  {
    row: 'OES-1',
    facts: resected('oesophagus', 'low-risk'),
    first: [3, 6, 6],
    later: YEARLY_FROM_6,
  },
  {
    row: 'OES-2',
    facts: resected('oesophagus', 'local-risk'),
    first: [3, 3, 6],
    later: [9, 21, 33],
  },
  {
    row: 'OES-3',
    facts: resected('oesophagus', '', byClass('jges-jes-2020', 'curative', 'curative')),
    unit: JES,
    first: [6, 12, 12],
    later: [24, 36],
  },
  {
    row: 'OES-4',
    facts: resected('oesophagus', '', {
      ...byClass('jges-jes-2020', 'additional-treatment', 'non-curative'),
      events: noSurgery,
    }),
    unit: JES,
    first: [3, 6, 6],
    later: HALF_YEARLY,
  },
  {
    row: 'OES-4',
    facts: resected('oesophagus', 'high-risk', { ...carcinoma('sm'), events: noSurgery }),
    first: [3, 6, 6],
    later: HALF_YEARLY,
  },
  {
    row: 'BAR-1',
    facts: resected('oesophagus', 'very-low-risk', { tumour: 'barrett' }),
    first: [2, 3, 3],
    later: [6, 9, 12],
  },
  { row: 'GAS-1', facts: resected('stomach', 'low-risk'), first: [3, 6, 6], later: YEARLY_FROM_6 },
  { row: 'GAS-2', facts: resected('stomach', 'local-risk'), first: [3, 3, 6], later: [9, 21, 33] },
  {
    row: 'GAS-3',
    facts: resected('stomach', 'high-risk', { events: noSurgery }),
    first: [3, 3, 6],
    // Every 6 months for 3 years, then every year.
    later: [9, 15, 21, 27, 33, 45, 57],
  },
  {
    row: 'GAS-4',
    facts: resected('stomach', '', byClass('jges-jgca-2021', 'eCuraA', 'curative')),
    unit: JGCA,
    first: [6, 12, 12],
    later: [24, 36],
  },
  {
    row: 'GAS-5',
    facts: resected('stomach', '', byClass('jges-jgca-2021', 'eCuraB', 'curative')),
    unit: JGCA,
    first: [6, 6, 12],
    later: HALF_YEARLY,
  },
  {
    row: 'GAS-6',
    facts: resected('stomach', '', byClass('jges-jgca-2021', 'eCuraC-1', 'local-risk')),
    unit: JGCA,
    first: [3, 6, 6],
    later: HALF_YEARLY,
  },
  {
    row: 'GAS-7',
    facts: resected('stomach', '', {
      ...byClass('jges-jgca-2021', 'eCuraC-2', 'non-curative'),
      events: noSurgery,
    }),
    unit: JGCA,
    first: [3, 6, 6],
    later: HALF_YEARLY,
  },
  {
    row: 'GAS-8',
    facts: resected('stomach', 'very-low-risk', {
      pathology: { ...REPORT, histology: 'low-grade-dysplasia' },
    }),
    unit: { stomach: 'gastric-adenoma-practice' },
    first: [3, 6, 6],
    later: YEARLY_FROM_6,
  },
  {
    row: 'COL-1',
    facts: resected('colon', 'very-low-risk'),
    first: [36, 36, 36],
    later: [96],
    end: 'return-to-screening',
  },
  {
    row: 'COL-1',
    facts: adenoma({ sizeMm: 10 }),
    unit: { colon: 'esge-pps-2020' },
    first: [36, 36, 36],
    later: [96],
    end: 'return-to-screening',
  },
  {
    row: 'COL-2',
    facts: resected('rectum', 'local-risk', { outcome: 'piecemeal' }),
    first: [3, 6, 6],
    // 12 months after the first, then as COL-1: 3 years, then 5.
    later: [18, 54, 114],
    end: 'return-to-screening',
  },
  {
    row: 'COL-3',
    facts: resected('rectum', 'local-risk'),
    first: [3, 6, 6],
    later: [18, 54, 114],
    end: 'return-to-screening',
  },
  {
    row: 'COL-4',
    facts: resected('colon', 'low-risk', carcinoma('sm')),
    first: [12, 12, 12],
    later: [48, 108],
    end: 'clinician-decision',
  },
  {
    row: 'COL-5',
    facts: resected('rectum', 'high-risk', { ...carcinoma('sm'), events: noSurgery }),
    first: [3, 6, 6],
    later: [12, 18, 24, 30, 36, 48, 60],
    end: 'clinician-decision',
  },
  {
    row: 'COL-6',
    facts: adenoma({ sizeMm: 20 }),
    unit: { colon: 'bsg-2019' },
    first: [36, 36, 36],
    later: [],
    end: 'clinician-decision',
  },
  {
    row: 'COL-7',
    facts: adenoma({ sizeMm: 20, pathology: { ...REPORT, r0: false } }),
    unit: { colon: 'bsg-2019' },
    first: [2, 4, 6],
    later: [16, 52],
    end: 'clinician-decision',
  },
  {
    row: 'COL-8',
    facts: adenoma({ sizeMm: 20, outcome: 'piecemeal' }),
    unit: { colon: 'usmstf-2020' },
    first: [6, 6, 6],
    later: [18, 54],
    end: 'clinician-decision',
  },
  {
    row: 'COL-9',
    facts: adenoma({ pathology: { ...REPORT, polypType: 'traditional-serrated' } }),
    unit: { colon: 'usmstf-2020' },
    first: [36, 36, 36],
    later: [],
    end: 'clinician-decision',
  },
  {
    row: 'COL-10',
    facts: resected('colon', 'local-risk', { ...carcinoma('m'), outcome: 'piecemeal' }),
    unit: { colon: 'jges-colorectal-2020' },
    first: [6, 6, 6],
    later: [],
    end: 'clinician-decision',
  },
  {
    row: 'DUO-1',
    facts: resected('duodenum', 'no-rule', { pathology: { ...REPORT, polypType: 'adenoma' } }),
    first: [3, 3, 3],
    later: [15],
    end: 'clinician-decision',
  },
];

/** date-fns is another implementation of calendar months; noon keeps every time zone safe. */
const months = (count: number): string =>
  format(addMonths(new Date(2024, 2, 15, 12), count), 'yyyy-MM-dd');

/** Walks through a plan: each examination takes place on its target day. */
function walked({ facts, unit, later }: Series) {
  const settings = {
    ...ALWAYS_OPEN,
    followUpRules: { ...ALWAYS_OPEN.followUpRules, ...unit },
  };
  let told = facts;
  const rows: string[] = [];
  const targets: string[] = [];
  for (let i = 0; i <= later.length + 1; i += 1) {
    const next = toCome(planFollowUp(told, settings)).find(
      ({ kind, route }) => kind === 'endoscopy' && route === facts.route,
    );
    if (next?.due === undefined) break;
    rows.push(next.row);
    targets.push(next.due.target);
    const examination = looked(next.due.target, { route: facts.route });
    told = { ...told, examinations: [...told.examinations, examination] };
  }
  const first = toCome(planFollowUp(facts, settings)).find(({ kind }) => kind === 'endoscopy');
  const end = toCome(planFollowUp(told, settings)).find(({ kind }) => kind === 'task');
  return { first, rows, targets, end: end?.task };
}

describe('each row of the follow-up table, walked from the dissection to its end', () => {
  it.each(SERIES)('$row of $facts.organ, $facts.verdict.class', (series) => {
    const { first, rows, targets, end } = walked(series);
    expect(rows[0]).toBe(series.row);
    expect(first?.due).toEqual({
      earliest: months(series.first[0]),
      target: months(series.first[1]),
      latest: months(series.first[2]),
    });
    const expected = [series.first[1], ...series.later].map(months);
    expect(targets.slice(0, expected.length)).toEqual(expected);
    if (series.end === undefined) expect(targets.length).toBeGreaterThan(expected.length);
    else
      expect({ count: targets.length, end }).toEqual({ count: expected.length, end: series.end });
  });

  it('would see an interval that is a month too long', () => {
    const [series] = SERIES;
    if (series === undefined) throw new Error('there is a series');
    const { targets } = walked(series);
    expect(targets.slice(1, 2)).not.toEqual([months(19)]);
  });

  it('leaves no row of a resection out', () => {
    const reached = new Set([
      ...SERIES.flatMap((series) => walked(series).rows),
      ...['BAR-2', 'BAR-3', 'BAR-4', 'COL-1-found', 'COL-1-none'],
      ...['MUCOSA-advanced', 'MUCOSA-limited', 'MUCOSA-none'],
      // Rows without a resection, and tasks; iodine and unseen dysplasia are told by no message.
      ...['BAR-5-none', 'BAR-5-short', 'BAR-5-long', 'BAR-5-expert', 'OES-3-many'],
      ...['MUCOSA-low-grade', 'MUCOSA-high-grade', 'meeting', 'clinician', 'pathology'],
    ]);
    expect(Object.keys(FOLLOW_UPS).filter((row) => !reached.has(row))).toEqual([]);
  });

  it('counts from the dissection', () => {
    expect(months(0)).toBe(ESD_ON);
  });
});
