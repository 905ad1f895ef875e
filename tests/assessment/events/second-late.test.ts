import { describe, expect, it } from 'vitest';
import { BLEEDING_DEFINITIONS } from '../../../src/assessment/events/late-bleeding.table.js';
import { SCAR_RECURRENCE } from '../../../src/assessment/events/recurrence.table.js';
import { everyQuestion } from '../../support/every-question.js';
import { disagreements } from '../scores/ask.js';
import { SECOND_LATE } from './second-late.js';

const RULES = [...BLEEDING_DEFINITIONS.map(({ rule }) => rule), SCAR_RECURRENCE];

describe.each(RULES)('$id', (rule) => {
  const second = SECOND_LATE.find(({ id }) => id === rule.id);
  if (second === undefined) throw new Error('every rule has a second writing');
  const every = everyQuestion<object>(second.choices);

  it('agrees with a second writing of its definition on every question', () => {
    expect(every.length).toBeGreaterThan(30);
    expect(disagreements(rule, every, second.says)).toEqual([]);
  });

  it('would be caught with another answer to one question', () => {
    const [first] = every;
    const other = (asked: object) => (asked === first ? 'other' : second.says(asked));
    expect(disagreements(rule, every, other)).toHaveLength(1);
  });

  it('gives one class in each step', () => {
    for (const step of rule.table) expect(new Set(step.map((row) => row.class)).size).toBe(1);
  });
});
