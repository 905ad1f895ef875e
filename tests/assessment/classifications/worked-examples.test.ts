import { describe, expect, it } from 'vitest';
import { CLASSIFICATION_RULES } from '../../../src/assessment/classifications/classification-rules.js';
import { examplesOf, shortAnswer } from '../scores/ask.js';

describe('classifications, against the worked examples', () => {
  it.each(examplesOf(CLASSIFICATION_RULES))(
    '$id: $rule_or_score gives $expected ($source, $read_or_memory)',
    ({ of, inputs_json, expected }) => {
      expect(shortAnswer(of, JSON.parse(inputs_json))).toBe(expected);
    },
  );

  it('has an example of every classification that the table names', () => {
    const shown = new Set(
      examplesOf(CLASSIFICATION_RULES).map(({ rule_or_score }) => rule_or_score),
    );
    const without = CLASSIFICATION_RULES.map(({ id }) => id).filter((id) => !shown.has(id));
    expect(without).toEqual(['stricture-flag-stomach', 'fibrosis', 'difficult-esd']);
  });
});
