import { z } from 'zod';
import { type Checked, failed, type Problem, passed } from '../kernel/index.js';
import { wholeIn } from './scalars.js';
import { shapeProblems } from './shape-problems.js';

/** A whole number written in decimal digits. */
export const wholeText = (from: number, to: number) => {
  const whole = wholeIn({ from, to });
  return z
    .string()
    .regex(/^(0|[1-9]\d{0,5})$/)
    .transform(Number)
    .pipe(whole)
    .meta({ title: whole.meta()?.title ?? '' });
};

/** Words with a comma between them, each at most once. */
export const wordsText = <const T extends readonly [string, ...string[]]>(
  words: T,
  most: number = words.length,
) => {
  const many = most < words.length ? `at most ${most} words` : 'words';
  const title = `${many} with a comma between them, each at most once: ${words.join(', ')}`;
  const listed = (text: string): readonly T[number][] =>
    text.split(',').flatMap((part) => words.filter((word) => word === part));
  const isList = (text: string): boolean => {
    const parts = text.split(',');
    const isKnown = listed(text).length === parts.length;
    return isKnown && new Set(parts).size === parts.length && parts.length <= most;
  };
  return z.string().refine(isList, title).transform(listed).meta({ title });
};

/**
 * Reads the query of an address.
 *
 * @param search what stands behind the question mark
 * @param together what the parameters cannot be beside each other; asked where each is sound
 * @returns the parameters, or every problem at once; the pointer of each names the parameter
 */
export function readQuery<T extends z.ZodObject>(
  schema: T,
  search: string,
  together: (read: z.infer<T>) => readonly Problem[],
): Checked<z.infer<T>> {
  const names = Object.keys(schema.shape);
  const given = [...new URLSearchParams(search)];
  const told = given.map(([name]) => name);
  const repeated = [...new Set(told.filter((name, i) => told.indexOf(name) !== i))];
  const raw = Object.fromEntries(given);
  const read = schema.safeParse(raw);
  const problems = [
    ...repeated.map((name) => repeatedProblem(name, names)),
    ...shapeProblems(schema, read.error?.issues ?? [], raw).map((problem) =>
      inWordsOfQuery(problem, names),
    ),
  ];
  if (!read.success || problems.length > 0) return failed(problems);
  const besides = together(read.data);
  return besides.length > 0 ? failed(besides) : passed(read.data);
}

/** A name that is none of ours may be anything, so it is not repeated. */
const repeatedProblem = (name: string, names: readonly string[]): Problem => ({
  rule: 'repeated-parameter',
  pointer: names.includes(name) ? `/${name}` : '',
  message: 'This parameter is given more than once.',
  expected: 'each parameter once',
});

function inWordsOfQuery(problem: Problem, names: readonly string[]): Problem {
  if (problem.rule !== 'unknown-field') return problem;
  return {
    rule: 'unknown-parameter',
    pointer: '',
    message: 'There is a parameter that is not offered here.',
    expected: `only the parameters: ${names.join(', ')}`,
  };
}

export const DAYS_OUT_OF_ORDER: Problem = {
  rule: 'days-out-of-order',
  pointer: '/to',
  message: 'The last day lies before the first one.',
  expected: 'a day that is not before `from`',
};

interface Days {
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}

export const areDaysInOrder = ({ from, to }: Days): boolean =>
  from === undefined || to === undefined || from <= to;
