import { type Checked, failed, isCalendarDate, type Problem, passed } from '../kernel/index.js';
import { type Route, SERVED_BY, type Session } from './demand.js';

/** The columns of a file of sessions, in their order; in JSON the fields of each session. */
const COLUMNS = ['date', 'route', 'places'] as const;

/** A session as it was written. */
interface Written {
  /** Counts from 0. */
  readonly at: number;
  /** How a sentence about it begins. */
  readonly place: string;
  /** In the order of the columns; as many as were there. */
  readonly cells: readonly unknown[];
}

const MOST_PLACES = 999;

/**
 * Reads sessions: CSV with the header `date,route,places`, or a JSON list of such objects. Strict:
 * what could be read in two ways is a problem, and all problems are told at once. Their pointers
 * count sessions from 0, as in the JSON list; of a CSV file the sentence names the line too.
 *
 * Source: RFC 4180 section 2 (records, header, quoted fields); RFC 8259 for the JSON form.
 */
export function readSessions(text: string): Checked<readonly Session[]> {
  const unmarked = text.replace(/^\ufeff/, '');
  const written = /^\s*[[{]/.test(unmarked) ? readJsonList(unmarked) : readCsv(unmarked);
  if (!written.ok) return written;
  const sessions = written.value.map(toSession);
  const problems = sessions.flatMap((session) => (session.ok ? [] : session.problems));
  if (problems.length > 0) return failed(problems);
  return passed(sessions.flatMap((session) => (session.ok ? [session.value] : [])));
}

function readJsonList(text: string): Checked<readonly Written[]> {
  const list = parsed(text);
  if (!Array.isArray(list)) {
    const message = 'This is no JSON list.';
    return failed([{ rule: 'sessions-list', pointer: '', message, expected: JSON_FORM }]);
  }
  return passed(list.map((one: unknown, at) => ({ at, place: '', cells: fieldsOf(one) })));
}

const JSON_FORM = 'a list of {"date": "2026-09-04", "route": "upper", "places": 4}';

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** The values of the columns; none of what has other fields, or not all. */
function fieldsOf(one: unknown): readonly unknown[] {
  if (typeof one !== 'object' || one === null || Array.isArray(one)) return [];
  const fields = new Map<string, unknown>(Object.entries(one));
  const isWhole = fields.size === COLUMNS.length && COLUMNS.every((name) => fields.has(name));
  return isWhole ? COLUMNS.map((name) => fields.get(name)) : [];
}

/** The line that ends the text may be empty, no other. */
function readCsv(text: string): Checked<readonly Written[]> {
  const [header = '', ...rows] = text.replace(/\r?\n$/, '').split(/\r?\n/);
  if (cellsOf(header).join() !== COLUMNS.join()) {
    const message = 'Line 1 does not name the columns.';
    const expected = `${COLUMNS.join()} (with commas), or a JSON list`;
    return failed([{ rule: 'sessions-header', pointer: '', message, expected }]);
  }
  return passed(
    rows.map((row, at) => {
      const [date, route, places, ...more] = cellsOf(row);
      const number = /^\d{1,9}$/.test(places ?? '') ? Number(places) : places;
      const cells = places === undefined ? [] : [date, route, number, ...more];
      return { at, place: `Line ${at + 2}: `, cells };
    }),
  );
}

/** No cell of a session holds a comma or a quotation mark. */
const cellsOf = (row: string): readonly string[] =>
  row.split(',').map((cell) => /^"([^"]*)"$/.exec(cell)?.[1] ?? cell);

function toSession({ at, place, cells }: Written): Checked<Session> {
  const told = (column: string, message: string, expected: string): Problem => {
    const [rule, pointer] = [`session-${column}`, `/${at}/${column}`];
    return { rule, pointer, message: `${place}${message}`, expected };
  };
  if (cells.length !== COLUMNS.length) {
    const message = `${place}This is not a date, a route and places.`;
    const expected = COLUMNS.join();
    return failed([{ rule: 'session-fields', pointer: `/${at}`, message, expected }]);
  }
  const [on, route, places] = cells;
  if (isDate(on) && isRoute(route) && isPlaces(places)) return passed({ on, route, places });
  const most = `a whole number from 0 to ${MOST_PLACES}`;
  return failed([
    ...(isDate(on) ? [] : [told('date', 'This is no calendar date.', 'YYYY-MM-DD')]),
    ...(isRoute(route) ? [] : [told('route', 'This is no route.', ROUTES.join(', '))]),
    ...(isPlaces(places) ? [] : [told('places', 'This is no number of places.', most)]),
  ]);
}

const ROUTES = Object.keys(SERVED_BY);
const isRoute = (value: unknown): value is Route =>
  typeof value === 'string' && ROUTES.includes(value);
const isDate = (value: unknown): value is string =>
  typeof value === 'string' && isCalendarDate(value);
const isPlaces = (value: unknown): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= MOST_PLACES;
