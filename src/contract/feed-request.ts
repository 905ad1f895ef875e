import { z } from 'zod';
import { type Checked, passed } from '../kernel/index.js';
import { ROUTES, type Route } from './examination/words.table.js';
import { readDocument } from './read-document.js';
import { oneOf, wholeIn } from './scalars.js';

/** Source: project definition; a subscription is made anew once a year at least. */
const MOST_DAYS = 366;
const DEFAULT_DAYS = 365;

/** A wish for a subscription to the calendar. */
const feedRequestSchema = z.strictObject({
  schema: z.literal('feed/1'),
  route: oneOf(ROUTES).optional().describe('follow-ups of this route alone; absent: of both'),
  expiresInDays: wholeIn({ from: 1, to: MOST_DAYS, unit: 'days' }).optional(),
});

export interface FeedRequestFields {
  readonly route?: Route;
  readonly expiresInDays: number;
}

/** @returns the wish, or every problem at once */
export function parseFeedRequest(bytes: Uint8Array): Checked<FeedRequestFields> {
  const read = readDocument(feedRequestSchema, bytes);
  if (!read.ok) return read;
  const { route, expiresInDays = DEFAULT_DAYS } = read.value;
  return passed({ expiresInDays, ...(route === undefined ? {} : { route }) });
}
