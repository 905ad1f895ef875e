import { describe, expect, it } from 'vitest';
import { assessCurability } from '../../../src/assessment/curability/curability.js';
import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';
import type { RuleSetId } from '../../../src/assessment/curability/rule-sets.js';
import { CURABILITY_RULE_SETS } from '../../../src/contract/index.js';
import { HARMLESS } from './spaces.js';

const SM1 = { depth: 'sm', smDepthUm: 300, sizeMm: 20 } as const;
const COLORECTAL = { tumour: 'colorectal', depth: 'sm', smDepthUm: 600 } as const;
const SQUAMOUS = { tumour: 'squamous', sizeMm: 20 } as const;

interface Disagreement {
  readonly of: string;
  readonly asked: Partial<CurabilityQuestion>;
  /** Class, group and reasons by the European guideline of 2022. */
  readonly europe: string;
  /** The same by the others that are shown beside it; a set that agrees is not. */
  readonly others: Readonly<Record<string, string>>;
}

// The published disagreements of the rule sets: the table of section 5 of the curability rules,
// from Endoscopy 2022;54:591-622, Dig Endosc 2021;33:4-20, Int J Clin Oncol 2020;25:1-42, Dig
// Endosc 2020;32:452-493; Endoscopy 2025;57:504-554 and Clin Endosc 2020;53:142-166 beside them.
const ROWS: readonly Disagreement[] = [
  {
    of: 'gastric, differentiated, exactly 500 um deep, 30 mm',
    asked: { ...SM1, smDepthUm: 500, sizeMm: 30 },
    europe: 'low-risk curative',
    others: { 'jges-jgca-2021': 'eCuraC-2 non-curative deeper-than-sm1' },
  },
  {
    of: 'gastric, undifferentiated, intramucosal, no ulcer, 20 mm',
    asked: { gastricType: 'undifferentiated', sizeMm: 20 },
    europe: 'high-risk non-curative undifferentiated-small',
    others: { 'jges-jgca-2021': 'eCuraA curative', 'maps-iii-2025': 'low-risk curative' },
  },
  {
    of: 'gastric, differentiated, intramucosal, ulcer, 30 mm',
    asked: { ulcer: 'UL1', sizeMm: 30 },
    europe: 'low-risk curative ulcerated',
    others: { 'jges-jgca-2021': 'eCuraA curative', 'maps-iii-2025': 'very-low-risk curative' },
  },
  {
    of: 'gastric, upper submucosa, ulcer, 30 mm',
    asked: { ...SM1, ulcer: 'UL1', sizeMm: 30 },
    europe: 'high-risk non-curative ulcerated-submucosal',
    others: { 'jges-jgca-2021': 'eCuraB curative', 'maps-iii-2025': 'low-risk curative' },
  },
  {
    of: 'colorectal, exactly 1000 um deep, nothing else',
    asked: { ...COLORECTAL, smDepthUm: 1000 },
    europe: 'low-risk curative',
    others: { 'jsccr-2019': 'consider-surgery non-curative deep-submucosa' },
  },
  {
    of: 'colorectal, upper submucosa, only the horizontal margin involved',
    asked: { ...COLORECTAL, hm: '1' },
    europe: 'high-risk non-curative margin-or-piecemeal-with-sm',
    others: { 'jsccr-2019': 'follow-up local-risk' },
  },
  {
    of: 'gastric, upper submucosa, horizontal margin involved',
    asked: { ...SM1, hm: '1' },
    europe: 'high-risk non-curative margin-or-piecemeal-with-sm',
    others: {
      'jges-jgca-2021': 'eCuraC-1 local-risk horizontal-margin',
      'maps-iii-2025': 'local-risk local-risk horizontal-margin',
    },
  },
  {
    of: 'gastric, upper submucosa, piecemeal',
    asked: { ...SM1, enBloc: false },
    europe: 'high-risk non-curative margin-or-piecemeal-with-sm',
    others: {
      'jges-jgca-2021': 'eCuraC-1 local-risk piecemeal',
      'maps-iii-2025': 'local-risk local-risk piecemeal',
    },
  },
  {
    of: 'squamous, muscularis mucosae, 20 mm',
    asked: { ...SQUAMOUS, depth: 'mm' },
    europe: 'low-risk curative',
    others: { 'jges-jes-2020': 'undetermined open', 'kr-2020': 'close-follow-up open' },
  },
  {
    of: 'squamous, 200 um deep, 20 mm',
    asked: { ...SQUAMOUS, depth: 'sm', smDepthUm: 200 },
    europe: 'low-risk curative',
    others: {
      'jges-jes-2020': 'additional-treatment non-curative submucosal-invasion',
      'kr-2020': 'additional-treatment non-curative submucosal-invasion',
    },
  },
  {
    of: 'Barrett, of which one set alone speaks',
    asked: { tumour: 'barrett', depth: 'sm', smDepthUm: 500 },
    europe: 'low-risk curative',
    others: {},
  },
];

const CHOOSABLE: readonly RuleSetId[] = Object.values(CURABILITY_RULE_SETS).flat();

const ORGAN = {
  squamous: 'oesophagus',
  barrett: 'oesophagus',
  gastric: 'stomach',
  colorectal: 'rectum',
  other: 'duodenum',
} as const;

function assess(change: Partial<CurabilityQuestion>, chosen: RuleSetId = 'esge-esd-2022') {
  const asked = { ...HARMLESS, ...change };
  const { verdict, others } = assessCurability(asked, ORGAN[asked.tumour], chosen, false);
  return {
    verdict,
    others,
    own: textOf(verdict),
    beside: Object.fromEntries(others.map((other) => [other.rule, textOf(other)])),
  };
}

type Verdict = ReturnType<typeof assessCurability>['verdict'];

function textOf({ outcome }: Verdict): string {
  if (outcome.kind === 'indeterminate') return `missing ${outcome.missing.join()}`;
  const reasons = new Set(outcome.reasons.flatMap(({ reason }) => reason ?? []));
  return [outcome.class, outcome.group, ...reasons].join(' ');
}

describe('where rule sets disagree', () => {
  it.each(ROWS)('$of', ({ asked, europe, others }) => {
    const { own, beside } = assess(asked);
    expect(own).toBe(europe);
    expect(beside).toEqual(others);
  });

  it.each(ROWS.filter(({ others }) => Object.keys(others).length > 0))(
    '$of: a unit that chose another set sees the European answer beside its own',
    ({ asked, europe, others }) => {
      const chosen = CHOOSABLE.filter((id) => id in others);
      expect(chosen).not.toEqual([]);
      for (const id of chosen) {
        const { own, beside } = assess(asked, id);
        expect(own).toBe(others[id]);
        expect(beside).toMatchObject({ 'esge-esd-2022': europe });
      }
    },
  );
});
