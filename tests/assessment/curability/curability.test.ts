import { describe, expect, it } from 'vitest';
import { assessCurability, groupOf } from '../../../src/assessment/curability/curability.js';
import { CURABILITY_GROUPS } from '../../../src/assessment/curability/groups.table.js';
import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';
import {
  CURABILITY_RULES,
  RULE_SETS,
  SETS_OF_ORGAN,
} from '../../../src/assessment/curability/rule-sets.js';
import { USUALLY } from '../../../src/assessment/curability/usually.table.js';
import type { Reason } from '../../../src/assessment/index.js';
import { CURABILITY_RULE_SETS, ORGANS } from '../../../src/contract/index.js';
import { BIBLIOGRAPHY } from '../../../src/references/index.js';
import { askClass } from '../../../src/rules/index.js';
import { ALL_SETS, allQuestions, HARMLESS, JAPAN_COLORECTUM, type Known } from './spaces.js';

const told = (asked: Partial<CurabilityQuestion>) => ({ ...HARMLESS, ...asked });

const isR0 = ({ enBloc, hm, vm }: CurabilityQuestion) => enBloc && hm === '0' && vm === '0';

type Cited = Pick<Reason, 'cites'>;
type Group = (set: string, decided: string, asked: CurabilityQuestion) => string;

/** Questions whose group is curative without R0, or with invaded vessels. */
function curedInSpiteOf({ rule, ...known }: Known, group: Group): readonly object[] {
  const found: object[] = [];
  for (const asked of allQuestions({ rule, ...known })) {
    if (isR0(asked) && asked.ly === '0' && asked.v === '0') continue;
    const { decision } = askClass(rule, { ...asked });
    if (decision.kind === 'indeterminate') continue;
    if (group(rule.id, decision.class, asked) === 'curative' && found.push(asked) === 5) break;
  }
  return found;
}

// Conditions of cure common to all guidelines: Endoscopy 2022;54:591-622, abstract (R0 en bloc, no
// lymphovascular invasion), and every other set by second sources.
describe('the group curative', () => {
  it.each(ALL_SETS)(
    'needs R0 and free vessels, whatever the class: $rule.id',
    (known) => {
      const group: Group = (set, decided, asked) => groupOf(set, decided, { ...asked });
      expect(curedInSpiteOf(known, group)).toEqual([]);
    },
    60_000,
  );

  it('would be given without R0 if the name of the class alone decided', () => {
    const byName: Group = (_set, decided) => (decided === 'follow-up' ? 'curative' : 'open');
    expect(curedInSpiteOf(JAPAN_COLORECTUM, byName)).not.toEqual([]);
  });

  it.each([
    ['follow-up with an involved horizontal margin', 'jsccr-2019', 'follow-up', { hm: '1' }],
    ['follow-up with a margin that cannot be assessed', 'jsccr-2019', 'follow-up', { hm: 'X' }],
    ['follow-up in pieces', 'jsccr-2019', 'follow-up', { enBloc: false }],
    ['curative in pieces', 'jges-jes-2020', 'curative', { enBloc: false }],
  ])('becomes local-risk: %s', (_of, set, decided, change) => {
    expect(groupOf(set, decided, { ...HARMLESS, ...change })).toBe('local-risk');
    expect(groupOf(set, decided, { ...HARMLESS })).toBe('curative');
  });

  it.each(['enBloc', 'hm', 'vm'])('stays open as long as %s is not known', (field) => {
    expect(groupOf('jsccr-2019', 'follow-up', { ...HARMLESS, [field]: undefined })).toBe('open');
    expect(groupOf('jsccr-2019', 'follow-up', { ...HARMLESS, [field]: null })).toBe('open');
  });

  it('is refused by one margin that is known, even if the other is not', () => {
    const asked = { ...HARMLESS, enBloc: undefined };
    expect(groupOf('jsccr-2019', 'follow-up', { ...asked, hm: '1' })).toBe('local-risk');
  });
});

describe('every class of every set', () => {
  it.each(ALL_SETS)('has a group and says what usually follows: $rule.id', ({ rule }) => {
    const classes = [...new Set(rule.table.flat().map((row) => row.class))].sort();
    const groups: Readonly<Record<string, object>> = CURABILITY_GROUPS;
    const usually: Readonly<Record<string, object>> = USUALLY;
    expect(Object.keys(groups[rule.id] ?? {}).sort()).toEqual(classes);
    expect(Object.keys(usually[rule.id] ?? {}).sort()).toEqual(classes);
  });

  it('is cited with works of the bibliography', () => {
    const rows = ALL_SETS.flatMap(({ rule }) => [...rule.table.flat(), ...rule.remarks]);
    const tables: readonly Readonly<Record<string, Readonly<Record<string, Cited>>>>[] = [
      CURABILITY_GROUPS,
      USUALLY,
    ];
    const others = tables.flatMap((table) => Object.values(table).flatMap(Object.values<Cited>));
    for (const { cites } of [...rows, ...others]) {
      expect(cites.length).toBeGreaterThan(0);
      for (const { work } of cites) expect(Object.keys(BIBLIOGRAPHY)).toContain(work);
    }
  });
});

describe('the rule sets of an organ', () => {
  it.each(ORGANS)('are those that a unit may choose, and those for comparison: %s', (organ) => {
    const chooseable: Readonly<Record<string, readonly string[]>> = CURABILITY_RULE_SETS;
    const confirmed = SETS_OF_ORGAN[organ].filter(({ unconfirmed }) => unconfirmed === undefined);
    expect(confirmed.map(({ id }) => id)).toEqual(chooseable[organ] ?? []);
  });

  it('are all among the rules, each once, under its own id', () => {
    const ids = CURABILITY_RULES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [id, rule] of Object.entries(RULE_SETS)) expect(rule.id).toBe(id);
    for (const rule of Object.values(SETS_OF_ORGAN).flat())
      expect(CURABILITY_RULES).toContain(rule);
  });
});

describe('a verdict', () => {
  it('names set, version, class, group, the row that decided and what usually follows', () => {
    const { verdict } = assessCurability(told({}), 'stomach', 'esge-esd-2022', false);
    expect(verdict).toEqual({
      rule: 'esge-esd-2022',
      version: 1,
      outcome: {
        kind: 'decided',
        class: 'very-low-risk',
        group: 'curative',
        reasons: [
          {
            row: 'gastric-intramucosal',
            says: expect.stringContaining('within the mucosa'),
            cites: [expect.objectContaining({ work: 'esgeEsd2022', basis: 'published' })],
          },
        ],
      },
      usually: expect.stringMatching(/no.* further treatment.*clinicians decide/),
      remarks: [],
    });
  });

  it('awaits pathology only where its class is open and no report is there', () => {
    const dayZero = { tumour: 'gastric', enBloc: true, endoscopicallyComplete: true };
    const ask = (asked: object, awaits: boolean) =>
      assessCurability({ ...asked }, 'stomach', 'esge-esd-2022', awaits);
    expect(ask(dayZero, true)).toMatchObject({
      verdict: { outcome: { kind: 'indeterminate', awaits: 'pathology' }, usually: '' },
      others: [],
    });
    expect(ask(dayZero, false).verdict.outcome).not.toHaveProperty('awaits');
    const abandoned = { ...dayZero, enBloc: false, endoscopicallyComplete: false };
    expect(ask(abandoned, true)).toMatchObject({
      verdict: { outcome: { class: 'incomplete', group: 'open' } },
      others: [],
    });
  });

  it('shows another set that has an answer where the own one has none', () => {
    const asked = told({ tumour: 'colorectal', depth: 'sm', smDepthUm: 1000, vm: '0' });
    const open = { ...asked, budding: null };
    const { verdict, others } = assessCurability(open, 'colon', 'esge-esd-2022', false);
    expect(verdict.outcome).toMatchObject({ kind: 'indeterminate', missing: ['budding'] });
    expect(others).toMatchObject([
      { rule: 'jsccr-2019', outcome: { class: 'consider-surgery', group: 'non-curative' } },
    ]);
  });

  it('does not show a set that gives the same class and group, or has no rule', () => {
    const squamous = told({ tumour: 'squamous', depth: 'sm', smDepthUm: 100 });
    const { others } = assessCurability(squamous, 'oesophagus', 'jges-jes-2020', false);
    expect(others.map(({ rule }) => rule)).toEqual(['esge-esd-2022']);
    const barrett = assessCurability(
      told({ tumour: 'barrett' }),
      'oesophagus',
      'jges-jes-2020',
      false,
    );
    expect(barrett).toMatchObject({
      verdict: { outcome: { class: 'no-rule', group: 'open' } },
      others: [{ rule: 'esge-esd-2022' }],
    });
  });

  it('marks the set that is shown for comparison only', () => {
    const { others } = assessCurability(told({}), 'stomach', 'jges-jgca-2021', false);
    expect(others.map(({ rule, unconfirmed }) => [rule, unconfirmed === undefined])).toEqual([
      ['esge-esd-2022', true],
      ['maps-iii-2025', false],
    ]);
  });

  // Curability rules, inputs: the duodenum has no table, the answer is no-rule.
  it('says that no rule speaks of the duodenum, whatever the tumour is called', () => {
    for (const tumour of ['other', 'gastric'] as const) {
      expect(assessCurability(told({ tumour }), 'duodenum', 'esge-esd-2022', false)).toMatchObject({
        verdict: { outcome: { class: 'no-rule', group: 'open' } },
        others: [],
      });
    }
  });

  it('says that a set has no rule for an organ that it does not speak of', () => {
    const asked = told({ tumour: 'gastric' });
    expect(assessCurability(asked, 'oesophagus', 'jges-jgca-2021', false).verdict).toMatchObject({
      outcome: { class: 'no-rule' },
    });
  });
});
