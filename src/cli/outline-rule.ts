import type { Citation } from '../kernel/index.js';
import type { ClassRule, QuantityRule, Rule, ScoreRule } from '../rules/index.js';
import { describeBands } from './describe-bands.js';
import { outlineCondition } from './outline-condition.js';
import {
  decisiveCitationsOf,
  describeLetters,
  describeWork,
  marksOf,
  worksOf,
} from './rule-sources.js';
import { wrap } from './wrap.js';

/** A rule at a glance: a line a row, each with the works behind it and how well they support it. */
export function outlineRule(rule: Rule, caution: string): string {
  const all = decisiveCitationsOf(rule);
  const works = worksOf(all);
  const marks = (cites: readonly Citation[]) => marksOf(cites, works);
  const { id, version, title, population, unconfirmed, cites } = rule;
  return [
    wrap('', `${id}, version ${version}: ${title}`),
    wrap('  ', `${population}${marks(cites)}`),
    ...(unconfirmed === undefined ? [] : [wrap('  ', `Cannot be chosen: ${unconfirmed}`)]),
    ...core(rule, marks),
    '',
    wrap('Reads    ', namesOf(rule).join(', ')),
    ...works.map((work, i) =>
      wrap(`${i === 0 ? 'Sources' : '       '}  [${i + 1}] `, describeWork(work)),
    ),
    wrap('         ', describeLetters(all)),
    wrap('More     ', moreOf(rule)),
    '',
    wrap('', caution),
  ].join('\n');
}

type Marks = (cites: readonly Citation[]) => string;

function core(rule: Rule, marks: Marks): readonly string[] {
  switch (rule.kind) {
    case 'quantity':
      return formula(rule);
    case 'score':
      return points(rule, marks);
    case 'rule-set':
    case 'classification':
    case 'follow-up':
      return table(rule, marks);
  }
}

const formula = ({ formula: text }: QuantityRule) => ['', 'Formula', wrap('  ', text)];

function points({ items, bands, fields }: ScoreRule, marks: Marks): readonly string[] {
  return [
    '',
    'Points (added up, never below 0)',
    ...items.map(({ points: given, when, cites }) =>
      wrap(
        `  ${given > 0 ? '+' : ''}${given}  `,
        `${outlineCondition(when, fields)}${marks(cites)}`,
      ),
    ),
    ...describeBands(bands, fields, marks),
  ];
}

/** Number and class stand beside the first row of a class in a step. */
function table({ table: steps, fields }: ClassRule, marks: Marks): readonly string[] {
  const heads = steps.map((step, i) => step.map((row) => `${i + 1} ${row.class}`));
  const width = Math.max(...heads.flat().map((head) => head.length));
  return [
    '',
    'Table (the first number with a row that holds decides; all its rows that hold are reasons)',
    ...steps.flatMap((step, i) =>
      step.map(({ when, class: decided, reason, cites }, j) => {
        const head = step[j - 1]?.class === decided ? '' : `${i + 1} ${decided}`;
        const why = reason === undefined ? '' : ` (${reason})`;
        return wrap(
          `  ${head.padEnd(width)}  `,
          `${outlineCondition(when, fields)}${why}${marks(cites)}`,
        );
      }),
    ),
  ];
}

/** The members of a question, a list once. */
function namesOf({ fields, nameOf }: Rule): readonly string[] {
  return [...new Set(Object.keys(fields).map((name) => nameOf?.(name) ?? name))];
}

function moreOf(rule: Rule): string {
  const remarks = rule.kind === 'quantity' ? 0 : rule.remarks.length;
  const said = remarks === 0 ? '' : ` and ${remarks} remark${remarks === 1 ? '' : 's'}`;
  return `--full: what is read, places in the works${said}; --json: all of it as data`;
}
