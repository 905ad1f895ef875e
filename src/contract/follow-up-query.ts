import { z } from 'zod';
import { type Checked, type Problem, passed } from '../kernel/index.js';
import { ROUTES, type Route } from './examination/words.table.js';
import {
  areDaysInOrder,
  DAYS_OUT_OF_ORDER,
  readQuery,
  wholeText,
  wordsText,
} from './read-query.js';
import { date, oneOf } from './scalars.js';

/** How an item of a plan can stand, as a query names it. */
const ITEM_STATES = ['provisional', 'open', 'to-confirm', 'done', 'superseded', 'revoked'] as const;

const KINDS = ['endoscopy', 'task'] as const;
const DUE = ['overdue', 'unbooked-soon'] as const;

/** Items in one answer. */
const MOST = 500;
const DEFAULT_LIMIT = 100;
/** Days ahead that `due=unbooked-soon` looks. Source: project definition. */
export const DEFAULT_WITHIN_DAYS = 28;
const MOST_WITHIN_DAYS = 366;

const token = (from: string) =>
  z
    .string()
    .regex(/^[A-Za-z0-9_-]{1,300}$/)
    .meta({ title: `the value of \`${from}\` of an answer` });

/** Parameters of the address; none of them can be about a patient. */
const followUpQuerySchema = z.strictObject({
  from: date.optional(),
  to: date.optional(),
  state: wordsText(ITEM_STATES).optional(),
  kind: oneOf(KINDS).optional(),
  route: oneOf(ROUTES).optional(),
  due: oneOf(DUE).optional(),
  withinDays: wholeText(0, MOST_WITHIN_DAYS).optional(),
  booked: oneOf(['true', 'false']).optional(),
  since: token('cursor').optional(),
  limit: wholeText(1, MOST).optional(),
  after: token('next').optional(),
});

export interface FollowUpQueryFields {
  /** YYYY-MM-DD. */
  readonly from?: string;
  readonly to?: string;
  readonly states?: readonly (typeof ITEM_STATES)[number][];
  readonly kind?: (typeof KINDS)[number];
  readonly route?: Route;
  readonly due?: (typeof DUE)[number];
  /** Days ahead that `unbooked-soon` looks. */
  readonly withinDays: number;
  readonly booked?: boolean;
  readonly since?: string;
  readonly limit: number;
  readonly after?: string;
}

/**
 * Reads the query of an address.
 *
 * @param search what stands behind the question mark
 * @returns the query, or every problem at once; the pointer of each names the parameter
 */
export function parseFollowUpQuery(search: string): Checked<FollowUpQueryFields> {
  const read = readQuery(followUpQuerySchema, search, togetherProblems);
  return read.ok ? passed(toFields(read.value)) : read;
}

type Read = z.infer<typeof followUpQuerySchema>;

function toFields({ state, limit, withinDays, booked, ...rest }: Read): FollowUpQueryFields {
  const { from, to, kind, route, due, since, after } = rest;
  return {
    limit: limit ?? DEFAULT_LIMIT,
    withinDays: withinDays ?? DEFAULT_WITHIN_DAYS,
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(state === undefined ? {} : { states: state }),
    ...(kind === undefined ? {} : { kind }),
    ...(route === undefined ? {} : { route }),
    ...(due === undefined ? {} : { due }),
    ...(booked === undefined ? {} : { booked: booked === 'true' }),
    ...(since === undefined ? {} : { since }),
    ...(after === undefined ? {} : { after }),
  };
}

/** What each parameter by itself cannot tell. */
function togetherProblems({ from, to, since, limit: _limit, ...rest }: Read): readonly Problem[] {
  const isSelective = Object.values({ ...rest, from, to }).some((value) => value !== undefined);
  return [
    ...(areDaysInOrder({ from, to }) ? [] : [DAYS_OUT_OF_ORDER]),
    ...(since !== undefined && isSelective ? [SINCE_ALONE] : []),
    ...(rest.withinDays !== undefined && rest.due !== 'unbooked-soon' ? [WITHIN_WHAT] : []),
  ];
}

const SINCE_ALONE: Problem = {
  rule: 'since-alone',
  pointer: '/since',
  message: 'Changes are told of every follow-up, whatever it is.',
  expected: '`since` with no other parameter than `limit`',
};

const WITHIN_WHAT: Problem = {
  rule: 'needs-unbooked-soon',
  pointer: '/withinDays',
  message: 'This parameter says how far `due=unbooked-soon` looks.',
  expected: '`due=unbooked-soon` beside it, or no such parameter',
};
