import type { Citation } from '../kernel/index.js';
import {
  describeAsking,
  describeCondition,
  describeValues,
  type Fields,
  type Remark,
  type Rule,
} from '../rules/index.js';
import { describeBands } from './describe-bands.js';
import { citationsOf, describeBases, describeCitation, numbersOf } from './rule-sources.js';
import { wrap } from './wrap.js';

/** All of a rule for people: what it asks, what it gives, who says so and where. */
export function describeRule(rule: Rule, caution: string): string {
  const all = citationsOf(rule);
  const { id, version, title, population, unconfirmed, cites } = rule;
  return [
    wrap('', `${id}, version ${version}: ${title}`),
    wrap('  ', `${population}${numbersOf(cites, all)}`),
    ...(unconfirmed === undefined ? [] : [wrap('  ', `Cannot be chosen: ${unconfirmed}`)]),
    ...core(rule, all),
    ...(rule.kind === 'quantity' ? [] : remarks(rule.remarks, rule.fields, all)),
    '',
    'Fields (null: asked and not known; absent: missing, where it is asked for)',
    ...fields(rule),
    '',
    'Sources',
    ...describeBases(all).map((line) => wrap('  ', line)),
    ...all.map((citation, i) => wrap(`  [${i + 1}] `, describeCitation(citation))),
    '',
    wrap('', caution),
  ].join('\n');
}

function core(rule: Rule, all: readonly Citation[]): readonly string[] {
  switch (rule.kind) {
    case 'quantity':
      return ['', 'Formula', wrap('  ', rule.formula)];
    case 'score':
      return [
        '',
        'Points (added up, never below 0)',
        ...rule.items.map(({ points, when, cites }) =>
          wrap(
            `  ${points > 0 ? '+' : ''}${points}  `,
            `${describeCondition(when, rule.fields)}${numbersOf(cites, all)}`,
          ),
        ),
        ...describeBands(rule.bands, rule.fields, (cites) => numbersOf(cites, all)),
      ];
    case 'rule-set':
    case 'classification':
    case 'follow-up':
      return [
        '',
        'Table (the first step with a row that holds decides; each of its rows that holds is a reason)',
        ...rule.table.flatMap((step, i) =>
          step.flatMap(({ when, class: decided, reason, cites }, j) => {
            const isHead = j === 0 || step[j - 1]?.class !== decided;
            const why = reason === undefined ? '' : ` (${reason})`;
            const words = describeCondition(when, rule.fields);
            return [
              ...(isHead ? [`  ${i + 1}. ${decided}`] : []),
              wrap('     ', `${words}${why}${numbersOf(cites, all)}`),
            ];
          }),
        ),
      ];
  }
}

function remarks(
  shown: readonly Remark[],
  of: Fields,
  all: readonly Citation[],
): readonly string[] {
  if (shown.length === 0) return [];
  return [
    '',
    'Remarks (shown beside an answer; they change nothing)',
    ...shown.map(({ when, beside, says, cites }) => {
      const classes = beside === undefined ? '' : `${beside.join(', ')}; `;
      const where = `${classes}${describeCondition(when, of)}`;
      return wrap('  ', `${where}: ${says}${numbersOf(cites, all)}`);
    }),
  ];
}

/** One entry a field; what is read from a list of the document stands below that list. */
function fields({ fields: of, nameOf, lists = {} }: Rule): readonly string[] {
  const plain = Object.keys(of).filter((name) => (nameOf?.(name) ?? name) === name);
  const width = Math.max(...[...Object.keys(lists), ...plain].map((name) => name.length));
  const entry = (name: string) => aboutField(of, name).join(' ');
  return [
    ...Object.entries(lists).flatMap(([list, holds]) => [
      wrap(`  ${list.padEnd(width)}  `, `${holds}. From it are read:`),
      ...Object.keys(of)
        .filter((name) => nameOf?.(name) === list)
        .map((name) => wrap('      ', `${name}: ${entry(name)}`)),
    ]),
    ...plain.map((name) => wrap(`  ${name.padEnd(width)}  `, entry(name))),
  ];
}

function aboutField(of: Fields, name: string): readonly string[] {
  const field = of[name];
  if (field === undefined) return [];
  return [`${field.says}: ${describeValues(field)}.`, ...describeAsking(field, of)];
}
