import { describe, expect, it } from 'vitest';
import { answer } from '../../src/rules/index.js';
import { FOLLOW_UP_RULES } from '../../src/surveillance/index.js';
import { everyQuestion, type Plain } from '../support/every-question.js';
import { SECOND_FOLLOW_UPS } from './second-writing.js';

function answerOf(id: string, question: Plain): string {
  const rule = FOLLOW_UP_RULES.find((each) => each.id === id);
  if (rule === undefined) return 'no such rule';
  const result = answer(rule, question);
  return result.ok ? result.value.answer : result.problems.map((p) => p.rule).join(',');
}

describe('follow-up, against a second writing of the guidelines', () => {
  it('has one of every rule set', () => {
    expect(SECOND_FOLLOW_UPS.map(({ id }) => id)).toEqual(FOLLOW_UP_RULES.map(({ id }) => id));
  });

  it.each(SECOND_FOLLOW_UPS)('$id gives the same answer to every question', (second) => {
    const differing = second.spaces
      .flatMap(everyQuestion)
      .filter((question) => answerOf(second.id, question) !== second.says(question));
    expect(differing).toEqual([]);
  });

  it('would see a border that is moved by one', () => {
    const polyp = { esdDate: '2024-03-15', polypType: 'adenoma', histology: 'none', enBloc: true };
    const moved = { ...polyp, sizeMm: 9, count: 1 };
    const second = SECOND_FOLLOW_UPS.find(({ id }) => id === 'esge-pps-2020');
    expect(second?.says({ ...moved, sizeMm: 10 })).not.toBe(answerOf('esge-pps-2020', moved));
  });
});
