import type { Basis, Citation } from '../kernel/index.js';
import { BIBLIOGRAPHY } from '../references/index.js';
import type { Rule } from '../rules/index.js';

/** Every citation of a rule once, in the order of its parts. */
export function citationsOf(rule: Rule): readonly Citation[] {
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

/** A citation for people: how well it supports, the work, and the place in it. */
export function describeCitation({ work, place, basis }: Citation): string {
  const found = Object.entries(BIBLIOGRAPHY).find(([key]) => key === work);
  return `${basis}, ${found === undefined ? work : found[1].citation}: ${place}`;
}

const BASES: Readonly<Record<Basis, string>> = {
  published: 'read in the work itself or its abstract',
  recalled: 'stands in the work by memory or by a second source',
  derived: 'follows by arithmetic, or fills a gap that the work leaves',
  practice: 'common practice without a source',
};

/** What the words for the support mean, those in use alone. */
export function describeBases(all: readonly Citation[]): readonly string[] {
  const used = new Set<string>(all.map(({ basis }) => basis));
  return Object.entries(BASES).flatMap(([basis, means]) =>
    used.has(basis) ? [`${basis}: ${means}`] : [],
  );
}

function partsOf(rule: Rule): readonly { readonly cites: readonly Citation[] }[] {
  switch (rule.kind) {
    case 'rule-set':
    case 'classification':
    case 'follow-up':
      return [...rule.table.flat(), ...rule.remarks];
    case 'score':
      return [...rule.items, ...rule.bands, ...rule.remarks];
    case 'quantity':
      return [];
  }
}

const keyOf = ({ work, place, basis }: Citation): string => `${work}|${place}|${basis}`;
