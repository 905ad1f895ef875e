import { describe, expect, it } from 'vitest';
import { askClass, type ClassRule } from '../../src/rules/index.js';
import { FOLLOW_UPS } from '../../src/surveillance/follow-ups.table.js';
import { FOLLOW_UP_RULES } from '../../src/surveillance/index.js';
import { inDates, type Schedule } from '../../src/surveillance/schedule.js';
import { everyQuestion, type Plain } from '../support/every-question.js';
import { SECOND_FOLLOW_UPS } from '../surveillance/second-writing.js';
import { countsInReadme } from './counts.js';
import { changesOfSchedule } from './schedule-changes.js';

const ON = '2024-03-15';

const ruleOf = (id: string): ClassRule | undefined =>
  FOLLOW_UP_RULES.find((rule): rule is ClassRule => rule.id === id && rule.kind === 'follow-up');

/** Fields as a rule reads them: its word for "not back", and the stage of a later examination. */
const asRead = (question: Plain): Plain => ({
  stage: 'firstSurveillance' in question || 'eradicationDate' in question ? 'later' : 'first',
  ...question,
  ...('class' in question ? { class: question['class'] ?? 'not-back' } : {}),
});

/** What the second writings say to the questions that lead to each row; without stop rules. */
function saidByRow(): ReadonlyMap<string, ReadonlySet<string>> {
  const said = new Map<string, Set<string>>();
  for (const { id, spaces, says } of SECOND_FOLLOW_UPS) {
    const rule = ruleOf(id);
    if (rule === undefined) throw new Error(`no follow-up rule ${id}`);
    for (const question of spaces.flatMap(everyQuestion)) {
      const { decision } = askClass(rule, asRead(question));
      if (decision.kind === 'indeterminate') throw new Error('every field is told');
      const texts = said.get(decision.class) ?? new Set();
      said.set(decision.class, texts.add(says(question).replace(/;stop=.*/, '')));
    }
  }
  return said;
}

const SAID = saidByRow();
const ROWS: readonly (readonly [string, Schedule])[] = Object.entries(FOLLOW_UPS).map(
  ([row, { schedule }]) => [row, schedule],
);

let made = 0;

describe.each(ROWS)('one changed point of the schedule of %s', (row, schedule) => {
  const texts = [...(SAID.get(row) ?? [])];

  it('is noticed by the second writings, which agree with the schedule as it is', () => {
    expect(texts).toEqual([inDates(schedule, ON)]);
    const changes = changesOfSchedule(schedule);
    expect(changes.length).toBeGreaterThan(0);
    made += changes.length;
    const unnoticed = changes.filter(({ to }) => texts.includes(inDates(to, ON) ?? ''));
    expect(unnoticed.map(({ name }) => name)).toEqual([]);
  });
});

describe('the changes of schedules', () => {
  it('are as many as is written down', () => {
    expect({ made, unnoticed: 0 }).toEqual(countsInReadme('schedules'));
  });
});
