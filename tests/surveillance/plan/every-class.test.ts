import { describe, expect, it } from 'vitest';
import { CURABILITY_RULES } from '../../../src/assessment/index.js';
import type { Organ } from '../../../src/contract/index.js';
import { type PlanFacts, planFollowUp } from '../../../src/surveillance/index.js';
import { ALWAYS_OPEN, REPORT, resected, toCome } from './plan-samples.js';

/** The choices of a unit, as the settings publish them. */
const CHOICES = {
  oesophagus: ['esge-esd-2022-follow-up', 'jges-jes-2020-follow-up'],
  stomach: ['esge-esd-2022-follow-up', 'jges-jgca-2021-follow-up', 'gastric-adenoma-practice'],
  duodenum: ['esge-duodenum-2021'],
  colon: [
    'esge-esd-2022-follow-up',
    'esge-pps-2020',
    'bsg-2019',
    'usmstf-2020',
    'jges-colorectal-2020',
  ],
} as const;
const ORGANS = ['oesophagus', 'stomach', 'duodenum', 'colon', 'rectum'] as const;
/** What is known of the resection: nothing of it is booked unless the report is final. */
const KNOWN = [
  { outcome: 'en-bloc', pathology: REPORT },
  { outcome: 'piecemeal', pathology: { ...REPORT, r0: false } },
  { outcome: 'en-bloc', pathology: { ...REPORT, status: 'interim' } },
  { outcome: 'en-bloc' },
  { outcome: 'piecemeal' },
  { outcome: 'abandoned' },
] as const satisfies readonly Pick<PlanFacts, 'outcome' | 'pathology'>[];
const GROUPS = ['curative', 'local-risk', 'non-curative', 'open'] as const;

/** Every class of every rule set of curability, and none. */
const CLASSES = CURABILITY_RULES.flatMap((rule) =>
  rule.kind === 'rule-set'
    ? [...new Set(rule.table.flat().map((row) => row.class))].map((found) => ({
        set: rule.id,
        found,
      }))
    : [],
);

const choicesOf = (organ: Organ) => CHOICES[organ === 'rectum' ? 'colon' : organ];

function* situations(organ: Organ): Generator<readonly [string, PlanFacts, string]> {
  const { pathology, tumour: own, ...rest } = resected(organ, '');
  // Both organs of the bowel go by the same rules: the choices are tried out at one of them.
  const choices = organ === 'rectum' ? choicesOf(organ).slice(0, 1) : choicesOf(organ);
  for (const chosen of choices) {
    for (const { set, found } of [...CLASSES, { set: 'esge-esd-2022', found: undefined }]) {
      for (const group of found === undefined ? GROUPS.slice(0, 1) : GROUPS) {
        for (const tumour of [own, 'other' as const, undefined]) {
          for (const known of KNOWN) {
            const facts: PlanFacts = {
              ...rest,
              ...known,
              ...(tumour && { tumour }),
              verdict: found === undefined ? { rule: set } : { rule: set, class: found, group },
              classes: found === undefined ? {} : { [set]: found },
            };
            const name = [chosen, found, group, tumour, JSON.stringify(known)].join(' ');
            yield [name, facts, chosen];
          }
        }
      }
    }
  }
}

describe('a plan is never a silent blank', () => {
  it('knows the classes of every rule set', () => {
    expect(new Set(CLASSES.map(({ set }) => set)).size).toBeGreaterThanOrEqual(6);
  });

  it.each(ORGANS)('%s: whatever the class, set, lineage and outcome', (organ) => {
    const blank: string[] = [];
    const early: string[] = [];
    for (const [name, facts, chosen] of situations(organ)) {
      const key = organ === 'rectum' ? 'rectum' : organ;
      const unit = {
        ...ALWAYS_OPEN,
        followUpRules: { ...ALWAYS_OPEN.followUpRules, [key]: chosen },
      };
      const plan = planFollowUp(facts, unit);
      const due = toCome(plan).filter(({ row }) => !row.startsWith('helicobacter'));
      if (due.length === 0) blank.push(name);
      // Nothing is booked before the report is final.
      const isFinal = facts.pathology?.status === 'final';
      const booked = due.some(({ kind, state }) => kind === 'endoscopy' && state === 'open');
      if (!isFinal && booked) early.push(name);
    }
    expect({ blank, early }).toEqual({ blank: [], early: [] });
  });

  it.each(ORGANS)('%s: what is not curative gets a meeting and no examination', (organ) => {
    const facts = resected(organ, 'high-risk');
    const plan = planFollowUp(facts, ALWAYS_OPEN);
    expect(toCome(plan).map(({ task }) => task)).toEqual(['multidisciplinary-meeting']);
  });
});
