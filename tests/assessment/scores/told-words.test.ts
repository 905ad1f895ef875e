import { describe, expect, it } from 'vitest';
import { RECORD_SCORES } from '../../../src/assessment/scores/record-scores.js';
import { type CaseFields, parseCase } from '../../../src/contract/index.js';
import { readTold, type ScoreRule, type Told } from '../../../src/rules/index.js';
import { sampleCases } from '../../support/generate-case.js';

const parsed = (document: object): CaseFields => {
  const checked = parseCase(new TextEncoder().encode(JSON.stringify(document)));
  if (!checked.ok) throw new Error('a generated case is sound');
  return checked.value.fields;
};

/** What a score would refuse of what a case tells it. */
function refused({ fields, contradictions }: ScoreRule, told: Told): readonly string[] {
  const given = Object.entries(told).filter(([, value]) => value !== undefined);
  const read = readTold(fields, contradictions, Object.fromEntries(given));
  return read.ok ? [] : read.problems.map(({ rule, pointer }) => `${rule} ${pointer}`);
}

/** Generated cases may lie more than a lifetime after a birth; nobody is that old. */
const CASES = sampleCases(400)
  .map(parsed)
  .map((fields) => ({ ...fields, patient: { ...fields.patient, bornOn: undefined } }));

// A law: what a record tells a score is a question that people may ask of it too.
describe.each(RECORD_SCORES)('a case told to $rule.id', ({ rule, organs, told }) => {
  it('is told in the words of the score', () => {
    const questions = CASES.filter(({ lesion }) => organs.includes(lesion.organ)).map((fields) =>
      told({ fields, report: undefined, gastricClass: undefined }),
    );
    expect(questions.length).toBeGreaterThan(50);
    expect(questions.flatMap((question) => refused(rule, question))).toEqual([]);
  });

  it('would be caught with a word that the score does not know', () => {
    const [name] = Object.keys(rule.fields);
    expect(refused(rule, { [name ?? '']: 'unheard of' })).toHaveLength(1);
  });
});
