import { describe, expect, it } from 'vitest';
import { SCORE_RULES } from '../../../src/assessment/scores/score-rules.js';
import { examplesOf, shortAnswer } from './ask.js';

describe('scores, against the worked examples', () => {
  it.each(examplesOf(SCORE_RULES))(
    '$id: $rule_or_score gives $expected ($source, $read_or_memory)',
    ({ of, inputs_json, expected }) => {
      expect(shortAnswer(of, JSON.parse(inputs_json))).toBe(expected);
    },
  );

  it('has an example of every score of the table but the one of 2023', () => {
    const shown = new Set(examplesOf(SCORE_RULES).map(({ rule_or_score }) => rule_or_score));
    const without = SCORE_RULES.map(({ id }) => id).filter((id) => !shown.has(id));
    expect(without).toEqual(['colorectal-difficulty-2023']);
  });
});
