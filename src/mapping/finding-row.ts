import type { ITEMS, LocalRef, WORD_CODES } from '../terminology/index.js';
import type { Unit } from './values.js';

export type ItemKey = keyof typeof ITEMS;
export type WordList = keyof typeof WORD_CODES;

/** How a field of a message becomes the value of an Observation or of one of its components. */
export type ValueRow = { readonly at: string } & (
  | { readonly kind: 'coded'; readonly words: WordList }
  | { readonly kind: 'measured'; readonly unit: Unit }
  | { readonly kind: 'answer' }
  | { readonly kind: 'time' }
);

/** One component, or, for `each`, one for every word of a list. */
export type PartRow = { readonly code: ItemKey | LocalRef } & (
  | ValueRow
  | {
      readonly at: string;
      readonly kind: 'each';
      readonly words: WordList;
      /** An empty list is an answer: none of the words. */
      readonly noneIsNo?: true;
    }
);

/**
 * What an Observation says: one value; a list of words, each a component answered yes, an empty
 * list the answer no; or a panel of parts.
 */
export type FindingRow = {
  readonly item: ItemKey;
  /** Whom it describes: the lesion and its resection, or the patient and the session. */
  readonly about: 'lesion' | 'session';
  readonly category: 'procedure' | 'exam' | 'laboratory' | 'survey';
  /** Said as absent when not told, unless the dissection was never started. */
  readonly counted?: true;
  /** Also about the specimen. */
  readonly onSpecimen?: true;
} & (
  | { readonly value: ValueRow; readonly parts?: readonly PartRow[] }
  | { readonly list: { readonly at: string; readonly words: WordList } }
  | { readonly parts: readonly PartRow[] }
);

export const coded = (at: string, words: WordList): ValueRow => ({ at, kind: 'coded', words });
export const measured = (at: string, unit: Unit): ValueRow => ({ at, kind: 'measured', unit });
export const answer = (at: string): ValueRow => ({ at, kind: 'answer' });
export const time = (at: string): ValueRow => ({ at, kind: 'time' });
export const part = (code: PartRow['code'], value: ValueRow): PartRow => ({ code, ...value });
export const each = (code: ItemKey, at: string, words: WordList): PartRow => ({
  code,
  at,
  kind: 'each',
  words,
});

/** As `each`, of a list whose emptiness says none. */
export const eachOrNone = (code: ItemKey, at: string, words: WordList): PartRow => ({
  code,
  at,
  kind: 'each',
  words,
  noneIsNo: true,
});
