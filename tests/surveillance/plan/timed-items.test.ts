import { describe, expect, it } from 'vitest';
import { type PlanFacts, planFollowUp } from '../../../src/surveillance/index.js';
import {
  DILATATION,
  STRICTURE_CHECK,
  TASK_DAYS,
} from '../../../src/surveillance/plan/timed-items.table.js';
import {
  ALWAYS_OPEN,
  happened,
  itemOf,
  looked,
  NO_EVENTS,
  REPORT,
  resected,
  shortOf,
  toCome,
} from './plan-samples.js';

// Source: the list of other timed items: weeks after the dissection of 15 March 2024, by hand.

const plan = (facts: PlanFacts, unit = ALWAYS_OPEN) => planFollowUp(facts, unit);
const READING = { ...ALWAYS_OPEN, strictureProphylaxis: 'from-three-quarters' as const };

describe('a wide wound of the oesophagus', () => {
  const wide = (defectPercent: number, more: Partial<PlanFacts> = {}) =>
    resected('oesophagus', 'low-risk', { defectPercent, ...more });

  it.each([
    [75, false, true],
    [75.1, true, true],
    [74.9, false, false],
    [100, true, true],
  ])('of %d %% asks for a stricture: above 3/4 %s, from 3/4 on %s', (percent, above, from) => {
    expect(itemOf(plan(wide(percent)), 'stricture-check.1') !== undefined).toBe(above);
    expect(itemOf(plan(wide(percent), READING), 'stricture-check.1') !== undefined).toBe(from);
  });

  it('asks by a call after 1 to 2 weeks and a look after 2 to 4', () => {
    const found = plan(wide(90));
    expect(itemOf(found, 'stricture-call.1')?.due).toMatchObject({
      earliest: '2024-03-22',
      latest: '2024-03-29',
    });
    expect(itemOf(found, 'stricture-check.1')?.due).toMatchObject({
      earliest: '2024-03-29',
      latest: '2024-04-12',
    });
  });

  it('is a matter of the oesophagus alone', () => {
    const found = plan(resected('stomach', 'low-risk', { defectPercent: 100 }));
    expect(itemOf(found, 'stricture-check.1')).toBeUndefined();
  });

  it('is answered by a look at any time, which is no first check of the series', () => {
    const found = plan(wide(90, { examinations: [looked('2024-04-02')] }));
    expect(itemOf(found, 'stricture-check.1')).toMatchObject({ state: 'done' });
    expect(toCome(found).map(shortOf)).toEqual(['OES-1.1 open']);
    expect(found.unplanned).toEqual([]);
  });

  it('is answered by a stricture that was told, and a dilatation asks for the next look', () => {
    const events = {
      ...NO_EVENTS,
      strictures: [happened('2024-04-02')],
      dilatations: [happened('2024-04-05'), happened('2024-04-14')],
    };
    const found = plan(wide(90, { events }));
    expect(itemOf(found, 'stricture-check.1')?.doneBy).toMatchObject({
      kind: 'event',
      on: '2024-04-02',
    });
    expect(itemOf(found, 'dilatation.1')).toMatchObject({ state: 'done' });
    // 1 to 2 weeks after the last one.
    expect(itemOf(found, 'dilatation.2')).toMatchObject({
      state: 'to-confirm',
      due: { earliest: '2024-04-21', latest: '2024-04-28' },
    });
    const passed = looked('2024-04-25', { passage: { passes: true, dilated: false } });
    const over = plan(wide(90, { events, examinations: [passed] }));
    expect(toCome(over).map(shortOf)).toEqual(['OES-1.1 open']);
  });
});

describe('Helicobacter pylori', () => {
  it.each([
    ['unknown', ['helicobacter-test.1 open']],
    ['positive', ['helicobacter-treatment.1 open', 'helicobacter-confirmation.1 to-confirm']],
    ['negative', []],
    ['eradicated', []],
  ] as const)('%s after a dissection in the stomach', (helicobacter, expected) => {
    const found = toCome(plan(resected('stomach', 'low-risk', { helicobacter })));
    expect(found.map(shortOf).filter((text) => text.startsWith('helicobacter'))).toEqual(expected);
  });

  it('is not asked for elsewhere', () => {
    const found = plan(resected('oesophagus', 'low-risk', { helicobacter: 'positive' }));
    expect(toCome(found).map(shortOf)).toEqual(['OES-1.1 open']);
  });
});

describe('the mucosa around a lesion of the stomach', () => {
  type Background = NonNullable<NonNullable<PlanFacts['pathology']>['background']>;
  const NOTHING: Background = {
    gastritisStage: '0',
    extent: 'none',
    metaplasia: 'none',
    helicobacterGastritis: false,
    staged: true,
  };
  const around = (found: string, background: Partial<Background>, more: Partial<PlanFacts> = {}) =>
    resected('stomach', found, {
      pathology: { ...REPORT, background: { ...NOTHING, ...background } },
      ...more,
    });

  it('of an advanced stage is named beside the yearly look, which comes first', () => {
    expect(toCome(plan(around('low-risk', { gastritisStage: 'III' })))).toMatchObject([
      { key: 'GAS-1.1', overlaps: [{ row: 'MUCOSA-advanced', target: '2027-03-15' }] },
    ]);
  });

  it('is looked at after three years where nothing else is planned', () => {
    const found = plan(around('no-rule', { extent: 'antrum-and-corpus' }));
    expect(itemOf(found, 'MUCOSA-advanced.1')).toMatchObject({ due: { target: '2027-03-15' } });
  });

  it('of a limited change is considered, not planned', () => {
    const found = plan(around('no-rule', { extent: 'one-site', metaplasia: 'incomplete' }));
    expect(itemOf(found, 'MUCOSA-limited.1')).toMatchObject({
      state: 'to-confirm',
      reasons: [{ code: 'considered' }],
    });
  });

  it('below that is nobody’s concern', () => {
    const found = plan(around('low-risk', { gastritisStage: 'II', extent: 'one-site' }));
    expect(toCome(found)).toMatchObject([{ key: 'GAS-1.1', overlaps: [] }]);
  });

  it('has its own three years, whatever the yearly looks', () => {
    const examinations = ['2024-09-15', '2025-09-15', '2026-09-15', '2027-09-15'].map((on) =>
      looked(on),
    );
    const found = plan(around('low-risk', { gastritisStage: 'IV' }, { examinations }));
    expect(toCome(found)).toMatchObject([
      { key: 'GAS-1.5', overlaps: [{ row: 'MUCOSA-advanced', target: '2030-09-15' }] },
    ]);
  });

  it('is staged once if the stage is not known; a second look is no routine', () => {
    const notes = (facts: PlanFacts) => plan(facts).notes.map(({ note }) => note);
    expect(notes(around('low-risk', {}))).toEqual(['second-look']);
    expect(notes(resected('stomach', 'low-risk'))).toEqual([
      'second-look',
      'gastritis-stage-unknown',
    ]);
    expect(notes(resected('colon', 'low-risk'))).toEqual([]);
  });
});

describe('a duodenal adenoma', () => {
  const adenoma = (...examinations: PlanFacts['examinations']) =>
    resected('duodenum', 'no-rule', {
      pathology: { ...REPORT, polypType: 'adenoma' },
      examinations,
    });

  it('asks once for a colonoscopy, if it was never done', () => {
    const found = plan(adenoma());
    expect(itemOf(found, 'colonoscopy-once.1')).toMatchObject({
      route: 'lower',
      state: 'to-confirm',
      due: { target: '2024-06-15' },
    });
    const done = plan(adenoma(looked('2024-05-02', { route: 'lower' })));
    expect(itemOf(done, 'colonoscopy-once.1')?.state).toBe('done');
    expect(toCome(done).map(shortOf)).toEqual(['DUO-1.1 open']);
  });
});

describe('the days of each task', () => {
  // Source: the list of timed items (14 days; 2 to 4 weeks; 1 to 2 weeks; 4 weeks after treatment);
  // what has no days there is due within four weeks, as a meeting is.
  it.each([
    ['await-pathology', 14, 14, 28],
    ['multidisciplinary-meeting', 14, 14, 28],
    ['clinician-decision', 0, 14, 28],
    ['expert-centre', 0, 14, 28],
    ['surgery-referral', 0, 14, 28],
    ['additional-treatment', 0, 14, 28],
    ['recurrence-treatment', 0, 14, 28],
    ['stricture-call', 7, 7, 14],
    ['helicobacter-test', 0, 14, 28],
    ['helicobacter-treatment', 0, 14, 28],
    ['helicobacter-confirmation', 28, 42, 84],
  ] as const)('%s', (task, earliest, target, latest) => {
    expect(TASK_DAYS[task].days).toEqual({ earliest, target, latest });
  });

  it('are in order and cited', () => {
    for (const { days, cites, look } of [
      ...Object.values(TASK_DAYS),
      STRICTURE_CHECK,
      DILATATION,
    ]) {
      expect(days.earliest <= days.target && days.target <= days.latest).toBe(true);
      expect(cites.length).toBeGreaterThan(0);
      expect(look).not.toBe('');
    }
  });
});
