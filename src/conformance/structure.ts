import type { Problem } from '../kernel/index.js';
import { isObject, pathOf } from './quick/node.js';

/** Where the walk stands: the way back to the Bundle. */
interface Place {
  readonly key: string;
  readonly parent: Place | undefined;
}

const DATES = new Set(['date', 'dateTime', 'instant']);
const LONE_SURROGATE = /\p{Surrogate}/u;
/** Control characters below U+0020 but tab, line feed and carriage return. */
const CONTROL = /[^\P{Cc}\t\n\r\x7f-\x9f]/u;

const SENTENCES = {
  'structure-null': ['A value is null.', 'a value, or no element'],
  'structure-empty-object': ['An element has no content.', 'content, or no element'],
  'structure-empty-list': ['A list has no items.', 'at least one item, or no list'],
  'structure-blank': ['A text is empty or blank.', 'a text with visible characters, or no element'],
  'structure-unicode': ['A text is not well-formed Unicode.', 'text without lone surrogates'],
  'structure-control': [
    'A text holds a control character.',
    'no character below U+0020 but tab, line feed and carriage return',
  ],
  'structure-date': ['A date does not exist in the calendar.', 'a day that the month has'],
} as const;

/**
 * Checks what no JSON schema says: nothing is null, empty or blank, text is well-formed, days
 * exist in the calendar.
 *
 * Source: FHIR R4 (4.0.1), JSON representation ("properties can never be empty or null") and
 * data types (string, date).
 *
 * @param bundle a value that the schema has accepted
 */
export function structureProblems(bundle: unknown): readonly Problem[] {
  const problems: Problem[] = [];
  walk(bundle, 'Bundle', undefined, (rule, place) => {
    const [message, expected] = SENTENCES[rule];
    problems.push({ rule, pointer: pointerTo(place), message, expected });
  });
  return problems;
}

type Report = (rule: keyof typeof SENTENCES, place: Place | undefined) => void;

function walk(value: unknown, path: string, place: Place | undefined, report: Report): void {
  if (value === null) report('structure-null', place);
  else if (typeof value === 'string') text(value, path, place, report);
  else if (Array.isArray(value)) {
    if (value.length === 0) report('structure-empty-list', place);
    for (const [i, item] of value.entries()) {
      walk(item, path, { key: String(i), parent: place }, report);
    }
  } else if (isObject(value)) {
    const named = value['resourceType'];
    const own = path === 'Resource' && typeof named === 'string' ? named : path;
    let keys = 0;
    for (const key in value) {
      keys += 1;
      walk(value[key], pathOf(own, key), { key, parent: place }, report);
    }
    if (keys === 0) report('structure-empty-object', place);
  }
}

function text(value: string, path: string, place: Place | undefined, report: Report): void {
  if (value.trim() === '') report('structure-blank', place);
  if (LONE_SURROGATE.test(value)) report('structure-unicode', place);
  if (CONTROL.test(value)) report('structure-control', place);
  if (DATES.has(path) && !existsInCalendar(value)) report('structure-date', place);
}

/** Whether the month has that day; a date without a day exists. Gregorian calendar. */
function existsInCalendar(date: string): boolean {
  const [year = 0, month = 0, day] = date.slice(0, 10).split('-').map(Number);
  if (day === undefined) return true;
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = month === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
  return day >= 1 && day <= days;
}

function pointerTo(place: Place | undefined): string {
  if (place === undefined) return '';
  const key = place.key.replaceAll('~', '~0').replaceAll('/', '~1');
  return `${pointerTo(place.parent)}/${key}`;
}
