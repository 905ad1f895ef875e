import { isCalendarDate } from '../kernel/index.js';
import type { FollowUp, FollowUpQuery } from '../pipeline/index.js';
import { readArguments } from './arguments.js';
import { UsageError } from './world.js';

const OPTIONS = {
  from: { type: 'string' },
  to: { type: 'string' },
  state: { type: 'string', multiple: true },
  route: { type: 'string' },
  overdue: { type: 'boolean' },
  'unbooked-soon': { type: 'string' },
  limit: { type: 'string' },
  sessions: { type: 'string' },
  months: { type: 'string' },
  json: { type: 'boolean' },
  csv: { type: 'boolean' },
} as const;

type Name = keyof typeof OPTIONS;
type State = FollowUp['item']['state'];
type Route = FollowUp['item']['route'];

/** How the answer is written. */
export type Form = 'text' | 'json' | 'csv';

export interface FollowUpsFlags {
  readonly query: Omit<FollowUpQuery, 'limit' | 'after' | 'since'>;
  readonly limit?: number;
  readonly from?: string;
  readonly months?: number;
  readonly sessions?: string;
  readonly form: Form;
}

export const STATES: readonly State[] = [
  ...(['provisional', 'open', 'to-confirm', 'done', 'superseded', 'revoked'] as const),
];
const ROUTES: readonly Route[] = ['upper', 'lower'];

/**
 * Reads the options of one way to call the command, and what else was named.
 *
 * @throws UsageError for an option that this way does not have, or a value that it does not take
 */
export function readFollowUpsFlags(
  args: readonly string[],
  allowed: readonly Name[],
): { readonly flags: FollowUpsFlags; readonly names: readonly string[] } {
  const { values, positionals } = readArguments(args, OPTIONS);
  for (const name of Object.keys(values)) {
    const isAllowed = allowed.some((one) => one === name);
    if (!isAllowed) throw new UsageError(`--${name} says nothing here.`);
  }
  return { flags: toFlags(values), names: positionals };
}

type Values = ReturnType<typeof readArguments<typeof OPTIONS>>['values'];

function toFlags(values: Values): FollowUpsFlags {
  const { sessions } = values;
  const from = dayOf('from', values.from);
  const limit = wholeOf('limit', values.limit, 1, 100_000);
  const months = wholeOf('months', values.months, 1, 120);
  return {
    query: queryOf(values, from),
    form: formOf(values.json, values.csv),
    ...(from === undefined ? {} : { from }),
    ...(limit === undefined ? {} : { limit }),
    ...(months === undefined ? {} : { months }),
    ...(sessions === undefined ? {} : { sessions }),
  };
}

function queryOf(values: Values, from: string | undefined): FollowUpsFlags['query'] {
  const to = dayOf('to', values.to);
  if (from !== undefined && to !== undefined && to < from) {
    throw new UsageError('--to lies before --from.');
  }
  const states = values.state?.flatMap((list) => list.split(',')).map(stateOf);
  const route = routeOf(values.route);
  const withinDays = wholeOf('unbooked-soon', values['unbooked-soon'], 0, 3650);
  if (values.overdue && withinDays !== undefined) {
    throw new UsageError('--overdue or --unbooked-soon, not both.');
  }
  return {
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(states === undefined ? {} : { states }),
    ...(route === undefined ? {} : { route }),
    ...(values.overdue ? { due: 'overdue' as const } : {}),
    ...(withinDays === undefined ? {} : { due: 'unbooked-soon' as const, withinDays }),
  };
}

function formOf(json: boolean | undefined, csv: boolean | undefined): Form {
  if (json && csv) throw new UsageError('--json or --csv, not both.');
  if (json) return 'json';
  return csv ? 'csv' : 'text';
}

function dayOf(name: Name, text: string | undefined): string | undefined {
  if (text === undefined || isCalendarDate(text)) return text;
  throw new UsageError(`--${name} takes a day, YYYY-MM-DD.`);
}

function wholeOf(
  name: Name,
  text: string | undefined,
  from: number,
  to: number,
): number | undefined {
  if (text === undefined) return undefined;
  const number = /^\d{1,9}$/.test(text) ? Number(text) : -1;
  if (number >= from && number <= to) return number;
  throw new UsageError(`--${name} takes a whole number from ${from} to ${to}.`);
}

function stateOf(text: string): State {
  const known = STATES.find((state) => state === text);
  if (known === undefined) throw new UsageError(`--state takes: ${STATES.join(', ')}.`);
  return known;
}

function routeOf(text: string | undefined): Route | undefined {
  const known = ROUTES.find((route) => route === text);
  if (text !== undefined && known === undefined) {
    throw new UsageError(`--route takes: ${ROUTES.join(', ')}.`);
  }
  return known;
}
