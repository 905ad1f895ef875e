import { describe, expect, it } from 'vitest';
import type { CurabilityGroup } from '../../src/assessment/assessment.js';
import { AGREE } from '../../src/assessment/classifications/agree.table.js';
import { CLAVIEN_DINDO } from '../../src/assessment/classifications/clavien-dindo.table.js';
import { RULE_SETS } from '../../src/assessment/curability/rule-sets.js';
import { BLEEDING_DEFINITIONS } from '../../src/assessment/events/late-bleeding.table.js';
import { SCAR_RECURRENCE } from '../../src/assessment/events/recurrence.table.js';
import { SCORE_RULES } from '../../src/assessment/scores/score-rules.js';
import {
  CURABILITY_CLASSES,
  CURABILITY_GROUPS,
  CURABILITY_REASONS,
  RULES,
  SCORE_GROUPS,
} from '../../src/terminology/index.js';

/** Rules about what came after a dissection. */
const EVENT_RULES = [
  AGREE,
  CLAVIEN_DINDO,
  ...BLEEDING_DEFINITIONS.map(({ rule }) => rule),
  SCAR_RECURRENCE,
];

/**
 * Classes as their works name them, and the local code of each.
 *
 * Source: ESGE guideline update, Endoscopy 2022;54:591-622; JGES guideline, Dig Endosc 2021;33:4-20,
 * and JGCA guideline, Gastric Cancer 2023;26:1-25; JSCCR guideline, Int J Clin Oncol 2020;25:1-42; JGES and
 * JES guideline, Dig Endosc 2020;32:452-493; statement E7, Clin Endosc 2020;53:142-166.
 */
const PUBLISHED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'esge-esd-2022': {
    'very-low-risk': 'esge-very-low-risk',
    'low-risk': 'esge-low-risk',
    'local-risk': 'esge-local-risk',
    'high-risk': 'esge-high-risk',
  },
  'jges-jgca-2021': {
    eCuraA: 'ecura-a',
    eCuraB: 'ecura-b',
    'eCuraC-1': 'ecura-c1',
    'eCuraC-2': 'ecura-c2',
  },
  'jsccr-2019': {
    'follow-up': 'jsccr-follow-up',
    'consider-surgery': 'jsccr-consider-surgery',
    surgery: 'jsccr-surgery',
  },
  'jges-jes-2020': {
    curative: 'jes-curative',
    undetermined: 'jes-undetermined',
    'additional-treatment': 'jes-additional-treatment',
  },
  'kr-2020': {
    'no-further-treatment': 'kr-no-further-treatment',
    'close-follow-up': 'kr-close-follow-up',
    undetermined: 'kr-undetermined',
    'additional-treatment': 'kr-additional-treatment',
  },
};
const SHARED = { 'no-rule': 'no-rule', incomplete: 'incomplete' };

const SETS = Object.values(RULE_SETS).map(({ id, table }) => ({ id, rows: table.flat() }));

/** Words without a code, of those that rules can answer with. */
const uncoded = (words: readonly (string | undefined)[], codes: object): readonly string[] =>
  [...new Set(words)]
    .filter((word) => word !== undefined && !Object.hasOwn(codes, word))
    .map(String);

describe('the classes of the rule sets that a unit may choose', () => {
  it('are of the sets that are published here', () => {
    expect(SETS.map(({ id }) => id).sort()).toEqual(Object.keys(PUBLISHED).sort());
    expect(Object.keys(CURABILITY_CLASSES).sort()).toEqual(Object.keys(PUBLISHED).sort());
  });

  it.each(Object.entries(PUBLISHED))('%s: each has the code of its work', (set, classes) => {
    const codes = Object.entries(CURABILITY_CLASSES[set] ?? {}).map(([word, { local }]) => [
      word,
      local?.code,
    ]);
    expect(Object.fromEntries(codes)).toEqual({ ...SHARED, ...classes });
  });

  it.each(SETS)('$id: every class and reason of its table has a code', ({ id, rows }) => {
    expect(
      uncoded(
        rows.map((row) => row.class),
        CURABILITY_CLASSES[id] ?? {},
      ),
    ).toEqual([]);
    expect(
      uncoded(
        rows.map(({ reason }) => reason),
        CURABILITY_REASONS,
      ),
    ).toEqual([]);
  });

  it('never have the code for an answer that is missing', () => {
    const codes = Object.values(CURABILITY_CLASSES).flatMap((classes) =>
      Object.values(classes).map(({ local }) => local?.code),
    );
    expect(codes).toContain('incomplete');
    expect(codes).not.toContain('indeterminate');
  });

  it('would be missed without a code', () => {
    expect(uncoded(['eCuraD', 'eCuraA'], CURABILITY_CLASSES['jges-jgca-2021'] ?? {})).toEqual([
      'eCuraD',
    ]);
  });
});

describe('the reasons', () => {
  it('are all given by a rule set: no code stands idle', () => {
    const given = new Set(SETS.flatMap(({ rows }) => rows.map(({ reason }) => reason)));
    expect(Object.keys(CURABILITY_REASONS).filter((code) => !given.has(code))).toEqual([]);
  });
});

describe('the coarse groups', () => {
  it('are those of the assessment', () => {
    const groups: Readonly<Record<CurabilityGroup, true>> = {
      curative: true,
      'local-risk': true,
      'non-curative': true,
      open: true,
    };
    expect(Object.keys(CURABILITY_GROUPS).sort()).toEqual(Object.keys(groups).sort());
  });
});

describe('the rules that are sent as methods', () => {
  it('are rule sets that can be chosen, scores, gradings and rules of events, no others', () => {
    const ids = [...SETS, ...SCORE_RULES, ...EVENT_RULES].map(({ id }) => id);
    expect(Object.keys(RULES).sort()).toEqual(ids.sort());
  });

  it.each(SCORE_RULES)('$id: every group of it has a code', (rule) => {
    const groups = rule.kind === 'score' ? rule.bands.map(({ group }) => group) : ['no score'];
    expect(uncoded(groups, SCORE_GROUPS)).toEqual([]);
  });

  it('give every group of the scores: no code stands idle', () => {
    const given = SCORE_RULES.flatMap((rule) =>
      rule.kind === 'score' ? rule.bands.map(({ group }) => group) : [],
    );
    expect(new Set(given)).toEqual(new Set(Object.keys(SCORE_GROUPS)));
  });
});
