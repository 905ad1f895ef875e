import { writeCalendar } from '../calendar/index.js';
import { addDays, compareInstants, keyedUuid, sha256 } from '../kernel/index.js';
import type { FeedStore, FollowUpStore, StoredFeed } from './follow-up-ports.js';
import type { PipelineSettings } from './settings.js';

/** What feeds need of the world. */
export interface FeedDeps {
  readonly store: { readonly feeds: FeedStore; readonly followUps: FollowUpStore };
  readonly settings: PipelineSettings;
  /** The present, UTC instant. */
  readonly now: () => string;
}

/** What a new feed is to show and for how long. */
export interface FeedWish {
  readonly route?: StoredFeed['route'];
  readonly expiresInDays: number;
  /** SHA-256 of the secret, hexadecimal; whoever wishes it makes the secret and keeps it. */
  readonly tokenHash: string;
}

/** A calendar as a feed gives it. */
export interface FeedText {
  /** iCalendar, `text/calendar` in UTF-8. */
  readonly text: string;
  /** SHA-256 of the text, hexadecimal: the same as long as it is. */
  readonly hash: string;
}

/** Days after which an event of the past is left out. Source: project definition. */
const PAST_DAYS = 400;

/** Makes a feed. Nothing of it leads back to its secret. */
export async function createFeed(
  { route, expiresInDays, tokenHash }: FeedWish,
  { store, settings, now }: FeedDeps,
): Promise<StoredFeed> {
  const createdAt = now();
  const feed: StoredFeed = {
    id: keyedUuid(settings.secret, 'feed', tokenHash),
    ...(route === undefined ? {} : { route }),
    createdAt,
    expiresAt: `${addDays(createdAt.slice(0, 10), expiresInDays)}${createdAt.slice(10)}`,
  };
  await store.feeds.create(feed, tokenHash);
  return feed;
}

/** @returns undefined when no feed with this secret is in force now */
export async function readFeed(
  tokenHash: string,
  { store, settings, now }: FeedDeps,
): Promise<FeedText | undefined> {
  const feed = await store.feeds.findByHash(tokenHash);
  const at = now();
  if (feed === undefined || feed.revokedAt !== undefined) return undefined;
  if (compareInstants(feed.expiresAt, at) <= 0) return undefined;
  const events = await store.followUps.events(addDays(at.slice(0, 10), -PAST_DAYS), feed.route);
  const text = writeCalendar(events, hostOf(settings.unit.identifierBase));
  return { text, hash: sha256(new TextEncoder().encode(text)) };
}

/** What the ids of events end in: the same wherever the service runs. */
const hostOf = (identifierBase: string): string =>
  new URL(identifierBase).host || identifierBase.replaceAll(':', '.');
