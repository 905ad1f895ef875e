import type { Basis, Citation } from '../kernel/index.js';
import { BIBLIOGRAPHY } from '../references/index.js';
import type { Rule } from '../rules/index.js';

/** Every citation of a rule once, in the order of its parts. */
export function citationsOf(rule: Rule): readonly Citation[] {
  const remarks = rule.kind === 'quantity' ? [] : rule.remarks.flatMap(({ cites }) => cites);
  return distinct([...decisiveCitationsOf(rule), ...remarks]);
}

/** Those of what decides, without remarks. */
export function decisiveCitationsOf(rule: Rule): readonly Citation[] {
  return distinct([...rule.cites, ...partsOf(rule).flatMap(({ cites }) => cites)]);
}

/** Each citation once, in the order of its first place. */
export function distinct(cites: readonly Citation[]): readonly Citation[] {
  return [...new Map(cites.map((citation) => [keyOf(citation), citation])).values()];
}

/** Numbers of the citations in the list of a rule: ` [1, 4]`, or nothing. */
export function numbersOf(cites: readonly Citation[], all: readonly Citation[]): string {
  const keys = all.map(keyOf);
  const numbers = cites.map((citation) => keys.indexOf(keyOf(citation)) + 1);
  return numbers.length === 0 ? '' : ` [${[...new Set(numbers)].sort((a, b) => a - b).join(', ')}]`;
}

/** The works of some citations once, in the order of their first place. */
export function worksOf(cites: readonly Citation[]): readonly string[] {
  return [...new Set(cites.map(({ work }) => work))];
}

/** Numbers of the works with the letter of their support: ` [1p, 4r]`, or nothing. */
export function marksOf(cites: readonly Citation[], works: readonly string[]): string {
  const marks = cites
    .map(({ work, basis }) => ({ number: works.indexOf(work) + 1, letter: BASES[basis].letter }))
    .sort(
      (a, b) => a.number - b.number || BEST_FIRST.indexOf(a.letter) - BEST_FIRST.indexOf(b.letter),
    )
    .map(({ number, letter }) => `${number}${letter}`);
  return marks.length === 0 ? '' : ` [${[...new Set(marks)].join(', ')}]`;
}

/** A citation for people: how well it supports, the work, and the place in it. */
export function describeCitation({ work, place, basis }: Citation): string {
  return `${basis}, ${describeWork(work)}: ${place}`;
}

/** A work for people. */
export function describeWork(work: string): string {
  const found = Object.entries(BIBLIOGRAPHY).find(([key]) => key === work);
  return found === undefined ? work : found[1].citation;
}

interface Support {
  readonly letter: string;
  readonly means: string;
}

const BASES: Readonly<Record<Basis, Support>> = {
  published: { letter: 'p', means: 'read in the work itself or its abstract' },
  recalled: { letter: 'r', means: 'stands in the work by memory or by a second source' },
  derived: { letter: 'd', means: 'follows by arithmetic, or fills a gap that the work leaves' },
  practice: { letter: 'c', means: 'common practice without a source' },
};

const BEST_FIRST = Object.values(BASES).map(({ letter }) => letter);

/** What the words for the support mean, those in use alone. */
export function describeBases(all: readonly Citation[]): readonly string[] {
  return supportIn(all).map(([basis, { means }]) => `${basis}: ${means}`);
}

/** What the letters for the support mean, those in use alone. */
export function describeLetters(all: readonly Citation[]): string {
  return supportIn(all)
    .map(([, { letter, means }]) => `${letter} ${means}`)
    .join('; ');
}

function supportIn(all: readonly Citation[]): readonly (readonly [string, Support])[] {
  const used = new Set<string>(all.map(({ basis }) => basis));
  return Object.entries(BASES).filter(([basis]) => used.has(basis));
}

function partsOf(rule: Rule): readonly { readonly cites: readonly Citation[] }[] {
  switch (rule.kind) {
    case 'rule-set':
    case 'classification':
    case 'follow-up':
      return rule.table.flat();
    case 'score':
      return [...rule.items, ...rule.bands];
    case 'quantity':
      return [];
  }
}

const keyOf = ({ work, place, basis }: Citation): string => `${work}|${place}|${basis}`;
