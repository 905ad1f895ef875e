import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { answer, type Rule } from '../../../src/rules/index.js';

/** A worked example of the published table. */
export interface Example {
  readonly id: string;
  readonly inputs_json: string;
  readonly rule_or_score: string;
  readonly expected: string;
  readonly source: string;
  readonly read_or_memory: string;
}

/** The worked examples of these rules, with the rule of each. */
export function examplesOf(rules: readonly Rule[]): readonly (Example & { readonly of: Rule })[] {
  const text = readFileSync(new URL('../../published/worked-examples.csv', import.meta.url));
  const examples: readonly Example[] = parse(text, { columns: true });
  return examples.flatMap((example) => {
    const of = rules.find(({ id }) => id === example.rule_or_score);
    return of === undefined ? [] : [{ ...example, of }];
  });
}

/** The short answer; a refused document gives the rules that it broke, in brackets. */
export function shortAnswer(rule: Rule, document: unknown): string {
  const answered = answer(rule, document);
  return answered.ok
    ? answered.value.answer
    : `(${answered.problems.map(({ rule: broken, pointer }) => `${broken} ${pointer}`).join(', ')})`;
}

/** What a second writing of a rule would have answered otherwise: empty when both agree. */
export function disagreements<Q>(
  rule: Rule,
  questions: readonly Q[],
  secondWriting: (question: Q) => string,
): readonly string[] {
  return questions
    .filter((question) => shortAnswer(rule, question) !== secondWriting(question))
    .map((question) => JSON.stringify(question));
}
