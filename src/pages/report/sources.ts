import type { Basis, Citation } from '../../kernel/index.js';
import { BIBLIOGRAPHY } from '../../references/index.js';
import { type Content, element, type Markup } from '../markup.js';

/** Works in the order in which a report cites them. */
export interface Sources {
  /** The places cited, each with the number of its work and how well it supports. */
  readonly mention: (cites: readonly Citation[]) => readonly Content[];
  readonly list: Markup;
}

const WORKS: Readonly<Record<string, { readonly citation: string } | undefined>> = BIBLIOGRAPHY;

/** How well a source supports what is said. */
const BASIS_WORDS: { readonly [B in Basis]: string } = {
  published: 'read in the work',
  recalled: 'from memory or a second source',
  derived: 'derived',
  practice: 'common practice, no source',
};

/** The work in full, the place in it and its mark, in one sentence without its full stop. */
export const citationText = ({ work, place, basis }: Citation): string =>
  `${WORKS[work]?.citation ?? work}: ${place} (${BASIS_WORDS[basis]})`;

/** Numbers the works of these citations. */
export function sourcesOf(cites: readonly Citation[]): Sources {
  const works = [...new Set(cites.map(({ work }) => work))];
  const number = (work: string): string => String(works.indexOf(work) + 1);
  return {
    mention: (some) =>
      some.flatMap(({ work, place, basis }, i) => [
        i === 0 ? '' : '; ',
        `${place}, ${BASIS_WORDS[basis]} `,
        element('a', { href: `#source-${number(work)}` }, `[${number(work)}]`),
      ]),
    list: element(
      'ol',
      {},
      ...works.map((work) =>
        element('li', { id: `source-${number(work)}` }, WORKS[work]?.citation ?? work),
      ),
    ),
  };
}
