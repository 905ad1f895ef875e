import type { OutcomeReport } from '../../outcomes/index.js';
import { element, type Markup } from '../markup.js';
import { tableOf } from './table.js';

/** By which sets of rules the cases of the rate of curative resections were judged. */
export function judgedTable({ judgedBy, policy }: OutcomeReport): Markup {
  const isHiding = policy.smallCells === 'hide';
  if (judgedBy.length === 0) {
    const words = isHiding ? 'none can be named without small counts' : 'no case has a verdict';
    return element('p', {}, `Sets of rules behind the verdicts: ${words}.`);
  }
  return tableOf({
    caption: isHiding ? 'Sets of rules of all kept cases' : 'Sets of rules behind the verdicts',
    columns: [
      { title: 'Organ' },
      { title: 'Set of rules' },
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
