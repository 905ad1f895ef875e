import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../../src/contract/index.js';
import {
  type FollowUpPlan,
  type PlanFacts,
  planFollowUp,
} from '../../../src/surveillance/index.js';
import { ALWAYS_OPEN, ESD_ON, idOf, looked, NO_EVENTS, REPORT, resected } from './plan-samples.js';

// Laws of a plan, whatever was told: arithmetic of sets and of days, no number of ours.

const day = fc
  .integer({ min: 1, max: 4000 })
  .map((days) => new Date(Date.UTC(2024, 2, 15 + days)).toISOString().slice(0, 10));

const examination = fc
  .record({
    on: day,
    number: fc.nat(10_000),
    recurrence: fc.constantFrom('none', 'none', 'none', 'found', 'open', 'not-told'),
    treated: fc.boolean(),
    carcinoma: fc.boolean(),
    findings: fc.constantFrom('none', 'needing-surveillance', 'open', 'not-told'),
    barrettLeft: fc.option(fc.boolean(), { nil: undefined }),
    incomplete: fc.boolean(),
    step: fc.constantFrom('as-planned', 'sooner', 'stop', undefined),
    dilated: fc.option(fc.boolean(), { nil: undefined }),
  })
  .map(({ on, number, barrettLeft, step, dilated, ...more }) =>
    looked(on, {
      id: idOf(`X-${number}`),
      ...more,
      ...(barrettLeft === undefined ? {} : { barrettLeft }),
      ...(step === undefined ? {} : { next: { step } }),
      ...(dilated === undefined ? {} : { passage: { passes: true, dilated } }),
    }),
  );

const facts: fc.Arbitrary<PlanFacts> = fc
  .record({
    organ: fc.constantFrom('oesophagus', 'stomach', 'duodenum', 'colon', 'rectum'),
    found: fc.constantFrom('very-low-risk', 'low-risk', 'local-risk', 'high-risk', 'no-rule'),
    barrett: fc.boolean(),
    outcome: fc.constantFrom('en-bloc', 'piecemeal'),
    depth: fc.constantFrom('m', 'sm'),
    status: fc.constantFrom('interim', 'final', 'final', undefined),
    decision: fc.constantFrom('no-surgery', 'surgery', 'further-staging', undefined),
    age: fc.integer({ min: 40, max: 95 }),
    defectPercent: fc.integer({ min: 0, max: 100 }),
    examinations: fc.uniqueArray(examination, { maxLength: 6, selector: ({ id }) => id.value }),
  })
  .map((told) => {
    const { organ, found, barrett, outcome, depth, status, decision, age, defectPercent } = told;
    const { pathology, ...base } = resected(organ, found, {
      outcome,
      ageYears: age,
      defectPercent,
    });
    const meetings = decision === undefined ? [] : [{ ...idAndDay, decision }];
    const route = organ === 'colon' || organ === 'rectum' ? 'lower' : 'upper';
    return {
      ...base,
      ...(barrett && organ === 'oesophagus' ? { tumour: 'barrett' as const } : {}),
      ...(status && { pathology: { ...REPORT, status, depth, polypType: 'adenoma' } }),
      events: { ...NO_EVENTS, meetings },
      examinations: told.examinations.map((each) => ({ ...each, route })),
    } satisfies PlanFacts;
  });
const idAndDay = { id: idOf('V-1'), on: '2024-04-10' };

const unit = fc
  .record({
    closedWeekdays: fc.subarray(['monday', 'wednesday', 'saturday', 'sunday'] as const),
    closedDays: fc.array(day, { maxLength: 20 }),
  })
  .map((closed) => ({ ...DEFAULT_UNIT_SETTINGS, ...closed }));

const doneIds = (plan: FollowUpPlan): readonly string[] =>
  [
    ...plan.items.flatMap(({ doneBy }) =>
      doneBy?.kind === 'examination' ? [doneBy.id.value] : [],
    ),
    ...plan.unplanned.map(({ id }) => id.value),
  ].sort();

const RUNS = { numRuns: 150 };

describe('a plan', () => {
  it('is the same when it is made again, and when what was is what is', () => {
    fc.assert(
      fc.property(facts, unit, (told, settings) => {
        const plan = planFollowUp(told, settings);
        expect(planFollowUp(told, settings)).toEqual(plan);
        expect(planFollowUp(told, settings, [told])).toEqual(plan);
        expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
      }),
      RUNS,
    );
  });

  it('does not depend on the order in which examinations were told', () => {
    fc.assert(
      fc.property(facts, unit, (told, settings) => {
        const turned = { ...told, examinations: [...told.examinations].reverse() };
        expect(planFollowUp(turned, settings)).toEqual(planFollowUp(told, settings));
      }),
      RUNS,
    );
  });

  it('keeps every examination, as the answer to an item or beside the items', () => {
    fc.assert(
      fc.property(facts, (told) => {
        const kept = new Set(doneIds(planFollowUp(told, ALWAYS_OPEN)));
        expect(told.examinations.filter(({ id }) => !kept.has(id.value))).toEqual([]);
      }),
      RUNS,
    );
  });

  it('loses nothing that was done when another examination is told', () => {
    fc.assert(
      fc.property(facts, examination, (told, more) => {
        const before = doneIds(planFollowUp(told, ALWAYS_OPEN));
        const examinations = [
          ...told.examinations,
          { ...more, id: idOf('X-new'), route: told.route },
        ];
        const after = new Set(doneIds(planFollowUp({ ...told, examinations }, ALWAYS_OPEN)));
        expect(before.filter((id) => !after.has(id))).toEqual([]);
      }),
      RUNS,
    );
  });

  it('has each key once and every window in order, after the dissection, on open days', () => {
    fc.assert(
      fc.property(facts, unit, (told, settings) => {
        const { items } = planFollowUp(told, settings);
        expect(new Set(items.map(({ key }) => key)).size).toBe(items.length);
        for (const { due, proposed, noOpenDay } of items) {
          if (due === undefined) continue;
          expect(due.earliest >= ESD_ON).toBe(true);
          expect([due.earliest, due.target, due.latest].sort()).toEqual(Object.values(due));
          expect(proposed === undefined).toBe(noOpenDay === true);
          if (proposed === undefined) continue;
          const days = [
            due.earliest,
            proposed.earliest,
            proposed.target,
            proposed.latest,
            due.latest,
          ];
          expect([...days].sort()).toEqual(days);
          for (const open of Object.values(proposed)) {
            expect(settings.closedDays).not.toContain(open);
          }
        }
      }),
      RUNS,
    );
  });

  it('never has two examinations to come of one route and series', () => {
    fc.assert(
      fc.property(facts, (told) => {
        const series = planFollowUp(told, ALWAYS_OPEN).items.filter(
          ({ kind, state, row }) =>
            kind === 'endoscopy' &&
            state !== 'done' &&
            !['stricture-check', 'dilatation', 'colonoscopy-once'].includes(row),
        );
        expect(series.length).toBeLessThanOrEqual(1);
      }),
      RUNS,
    );
  });

  it('supersedes what only an earlier plan had, each once, in whatever order they come', () => {
    fc.assert(
      fc.property(facts, facts, facts, (now, one, other) => {
        const plan = planFollowUp(now, ALWAYS_OPEN, [one, other]);
        expect(planFollowUp(now, ALWAYS_OPEN, [other, one])).toEqual(plan);
        const own = planFollowUp(now, ALWAYS_OPEN).items.map(({ key }) => key);
        for (const { key, state } of plan.items) {
          expect(state === 'superseded').toBe(!own.includes(key));
        }
      }),
      RUNS,
    );
  });
});
