import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allRules } from '../../src/pipeline/rules.js';
import { askingOf } from './asking.js';
import { countsInReadme, totalInReadme } from './counts.js';
import { EQUIVALENT, NEVER_TOLD } from './equivalent.table.js';
import { plantedInFields } from './field-changes.js';
import { questionsWithHole, someQuestions } from './holes.js';
import { type KnownRule, knownRules } from './known-rules.js';
import { inOneLine } from './names.js';
import { fateOf, said } from './noticing.js';
import { type Planted, plantedInScore, plantedInTable } from './table-changes.js';

const KNOWN = knownRules();
const IMPOSSIBLE = 'no possible question meets it';

function plantedIn({ rule }: KnownRule): readonly Planted<KnownRule['rule']>[] {
  return rule.kind === 'score' ? plantedInScore(rule) : plantedInTable(rule);
}

const counted = { tables: { made: 0, unnoticed: 0 }, absence: { made: 0, unnoticed: 0 } };

// The oracle is the second writing of each rule, made from the prose of its source.
describe.each(KNOWN)('one changed point of $rule.id', (known) => {
  it('is noticed by a question of the tests, or is listed as making no difference', () => {
    const fates = plantedIn(known)
      .map((planted) => ({ ...planted, fate: fateOf(known, planted) }))
      // Steps that never hold together may stand in any order.
      .filter(({ ordersSteps, fate }) => !(ordersSteps && fate === IMPOSSIBLE));
    counted.tables.made += fates.length;
    const unnoticed = fates.filter(({ fate }) => fate !== 'noticed');
    counted.tables.unnoticed += unnoticed.length;
    const reasons = [...new Set(unnoticed.map(({ fate }) => fate))];
    const listed = Object.fromEntries(
      reasons.map((reason) => [
        reason,
        inOneLine(unnoticed.filter(({ fate }) => fate === reason).map(({ name }) => name)),
      ]),
    );
    expect(listed).toEqual(EQUIVALENT[known.rule.id] ?? {});
  });

  it('in what absence means is noticed by a question with holes, or is listed', () => {
    const asking = askingOf(known);
    const bases = someQuestions(known, asking, 12);
    const planted = plantedInFields(known.rule);
    counted.absence.made += planted.length;
    const unnoticed = Object.keys(known.rule.fields).flatMap((field) => {
      const questions = questionsWithHole(known, asking, bases, field);
      const differs = (rule: KnownRule['rule']) =>
        questions.find(({ question, expected }) => said(known, rule, question) !== expected());
      expect(differs(known.rule)).toBeUndefined();
      return planted.filter((change) => change.field === field && !differs(change.rule));
    });
    counted.absence.unnoticed += unnoticed.length;
    const listed = Object.values(NEVER_TOLD[known.rule.id] ?? {}).flat();
    expect([...inOneLine(unnoticed.map(({ name }) => name))].sort()).toEqual([...listed].sort());
  });
});

describe('the changes', () => {
  it('are made in every rule that can be asked, quantities aside', () => {
    const ids = KNOWN.map(({ rule }) => rule.id);
    const tables = allRules().filter(({ kind }) => kind !== 'quantity');
    expect(tables.map(({ id }) => id).filter((id) => !ids.includes(id))).toEqual([]);
  });

  it('are many: a generator that gives none would prove nothing', () => {
    expect(counted.tables.made).toBeGreaterThan(3000);
    expect(counted.absence.made).toBeGreaterThan(1000);
    expect(counted.tables.unnoticed / counted.tables.made).toBeLessThan(0.2);
  });

  it('are as many as is written down', () => {
    expect(counted).toEqual({
      tables: countsInReadme('tables'),
      absence: countsInReadme('absence'),
    });
    const { made, unnoticed } = totalInReadme();
    const said = readFileSync('DEVELOPERS.md', 'utf8').replaceAll(/\s+/g, ' ');
    expect(said).toContain(`Of ${made} changes ${made - unnoticed} are noticed.`);
    expect(said).toContain(`The other ${unnoticed} change no answer`);
  });
});

describe('the search for a question that tells', () => {
  const known = KNOWN.find(({ rule }) => rule.id === 'ecura');
  if (known === undefined) throw new Error('the score has a second writing');
  const change = plantedIn(known).find(({ name }) => name.startsWith('lymphatic-invasion: 3 as 4'));
  if (change === undefined) throw new Error('the points of an item are changed');

  it('calls no change noticed that changes nothing', () => {
    expect(fateOf(known, change)).toBe('noticed');
    expect(fateOf(known, { ...change, rule: known.rule })).not.toBe('noticed');
  });

  it('asks for another question where the tests have none that tells', () => {
    const without = known.axes.map((space) => ({ ...space, ly: ['0'] }));
    expect(fateOf({ ...known, axes: without }, change)).toBe('a question is missing in the tests');
  });

  it('stops at a second writing that disagrees with the rule itself', () => {
    const wrong = { ...known, expected: () => '9;high;22.7' };
    expect(() => fateOf(wrong, change)).toThrow('ecura differs from its second writing');
  });
});

describe('the lists of changes that make no difference', () => {
  it('name only rules that there are', () => {
    const ids = KNOWN.map(({ rule }) => rule.id);
    const listed = [...Object.keys(EQUIVALENT), ...Object.keys(NEVER_TOLD)];
    expect(listed.filter((id) => !ids.includes(id))).toEqual([]);
  });
});
