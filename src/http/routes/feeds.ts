import { isUnreadable, parseFeedRequest } from '../../contract/index.js';
import { hashFeedToken, makeFeedToken } from '../keys/feed-token.js';
import { type Refusal, Refused } from '../problem-document.js';
import type { Route } from '../route.js';
import { idOf } from './follow-up-id.js';

/** A subscription to the calendar; its address is told here and never again. */
export const createFeed: Route = {
  method: 'POST',
  path: '/follow-ups/feeds',
  answer: async ({ body }, { service }) => {
    const wish = parseFeedRequest(await body());
    if (!wish.ok) {
      throw new Refused({
        problem: isUnreadable(wish.problems) ? 'unreadable-body' : 'invalid-message',
        detail: 'No feed was made.',
        errors: wish.problems,
      });
    }
    const { token, tokenHash } = makeFeedToken();
    const feed = await service.createFeed({ ...wish.value, tokenHash });
    return { status: 201, body: { ...feed, path: `/follow-ups/feeds/${token}.ics` } };
  },
};

/** Every feed that was ever made, without its address. */
export const listFeeds: Route = {
  method: 'GET',
  path: '/follow-ups/feeds',
  answer: async (_asked, { service }) => ({
    status: 200,
    body: { feeds: await service.listFeeds() },
  }),
};

/** From now on the address of the feed names nothing. Once more does no harm. */
export const revokeFeed: Route = {
  method: 'POST',
  path: '/follow-ups/feeds/:id/revoke',
  answer: async (asked, { service }) => {
    const feed = await service.revokeFeed(idOf(asked, NO_FEED));
    if (feed === undefined) throw new Refused(NO_FEED);
    return { status: 200, body: feed };
  },
};

/**
 * The calendar as calendars read it. Whoever subscribes may keep it and asks each time whether it
 * is still the same.
 *
 * Source: RFC 5545; RFC 9110 sections 8.8.3 and 13.1.2 (entity tags), RFC 9111 section 5.2.2.
 */
export const readFeed: Route = {
  method: 'GET',
  path: '/follow-ups/feeds/:token.ics',
  answer: async ({ param, header }, { service }) => {
    const tokenHash = hashFeedToken(param('token'));
    const feed = tokenHash === undefined ? undefined : await service.readFeed(tokenHash);
    if (feed === undefined) throw new Refused(NO_FEED);
    const ETag = `"${feed.hash}"`;
    const headers = { ETag, 'Cache-Control': 'private, no-cache' };
    if (isAmong(ETag, header('if-none-match'))) return { status: 304, body: '', headers };
    return { status: 200, body: feed.text, mediaType: 'text/calendar; charset=utf-8', headers };
  },
};

/** By the weak comparison, for which `W/` counts for nothing. */
function isAmong(tag: string, known = ''): boolean {
  const tags = known.split(',').map((each) => each.trim().replace(/^W\//, ''));
  return tags.includes(tag) || tags.includes('*');
}

/** The same for one that was revoked or is over: nobody learns that there was one. */
const NO_FEED: Refusal = {
  problem: 'not-found',
  detail: 'There is no such feed.',
};
