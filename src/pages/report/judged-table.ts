import type { OutcomeReport } from '../../outcomes/index.js';
import { element, type Markup } from '../markup.js';
import { tableOf } from './table.js';

/** By which rule sets the cases of the rate of curative resections were judged. */
export function judgedTable({ judgedBy, policy }: OutcomeReport): Markup {
  const isHiding = policy.smallCells === 'hide';
  if (judgedBy.length === 0) {
    const words = isHiding ? 'none can be named without small counts' : 'no case has a verdict';
    return element('p', {}, `Rule sets behind the verdicts: ${words}.`);
  }
  return tableOf({
    caption: isHiding ? 'Rule sets of all kept cases' : 'Rule sets behind the verdicts',
    columns: [
      { title: 'Organ' },
      { title: 'Rule set' },
      { title: 'Cases in the rate', isNumber: true },
    ],
    parts: [
      {
        rows: judgedBy.map(({ organ, ruleSet, judged }) => ({
          head: organ,
          cells: [ruleSet, judged === undefined ? 'not counted here' : String(judged)],
        })),
      },
    ],
  });
}
