import { invariant, isCalendarDate } from '../kernel/index.js';

/**
 * What follows a check: months from it, once or again and again, as long as it falls no later than
 * `until` months after the anchor; a day; or a word where only the findings will give a date.
 */
export type Following =
  | { readonly after: number }
  | { readonly every: number; readonly until?: number }
  | { readonly on: string }
  | { readonly word: string };

/**
 * Reads what follows as plans write it, its parts joined by commas: `6`, `12*` again and again,
 * `6*until-36`, a day, or a word; an empty text has no part.
 *
 * @throws InvariantError when a part in digits is neither a day nor months above 0
 */
export const readFollowing = (text: string): readonly Following[] =>
  text === '' ? [] : text.split(',').map(readPart);

function readPart(part: string): Following {
  const [, months, again, until] = /^(\d+)(?:(\*)(?:until-(\d+))?)?$/.exec(part) ?? [];
  if (months === undefined) {
    if (!/^\d/.test(part)) return { word: part };
    invariant(isCalendarDate(part), 'what follows in digits is months or a date');
    return { on: part };
  }
  invariant(Number(months) > 0, 'what follows comes after a month or more');
  if (again === undefined) return { after: Number(months) };
  return { every: Number(months), ...(until === undefined ? {} : { until: Number(until) }) };
}
