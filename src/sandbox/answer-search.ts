import { keepSearch, keptSearch } from './page-store.js';
import type { Preferences } from './preferences.js';
import { type Query, readQuery } from './query.js';
import { Refusal } from './refusal.js';
import type { Reply } from './reply.js';
import type { ResourceType } from './resource-types.js';
import { findAll, readPage, toSearchset } from './search.js';
import type { SandboxDatabase } from './tables.js';
import type { World } from './world.js';

/** The name by which a link to a further page holds its place; of this server alone. */
const PAGE = '_page';

/**
 * Answers a search, or a further page of one.
 *
 * Source: HL7 FHIR R4, Search, and RESTful API, "search" and "Paging".
 *
 * @param params of address and body together
 */
export async function answerSearch(
  db: SandboxDatabase,
  type: ResourceType,
  params: URLSearchParams,
  world: World,
  { lenient }: Preferences,
): Promise<Reply> {
  const page = params.get(PAGE);
  if (page !== null) return await answerPage(db, type, page, world);
  const query = readQuery(type, params, { base: world.base, lenient });
  const ids = await findAll(db, query);
  const { applied, pageSize, countOnly } = query;
  const self = `${world.base}/${type}${applied.size === 0 ? '' : `?${applied}`}`;
  if (countOnly) return reply(toSearchset(world.base, ids.length, { self }, undefined));
  if (ids.length <= pageSize) return await onePage(db, query, ids, 0, { self }, world);
  const token = world.newId();
  await keepSearch(db, token, query, ids, world.nowMs);
  const next = pageLink(world, type, token, pageSize);
  return await onePage(db, query, ids, 0, { self, next }, world);
}

async function answerPage(
  db: SandboxDatabase,
  type: ResourceType,
  page: string,
  world: World,
): Promise<Reply> {
  const [, token = '', start = ''] = /^([0-9a-f-]{36})[.](\d{1,9})$/.exec(page) ?? [];
  const kept = token === '' ? undefined : await keptSearch(db, token, world.nowMs);
  if (kept === undefined || kept.type !== type) {
    throw new Refusal(410, 'not-found', 'This page is no longer kept: search again.');
  }
  const query = readQuery(type, kept.params, { base: world.base, lenient: false });
  const offset = Number(start);
  const following = offset + query.pageSize;
  const self = pageLink(world, type, token, offset);
  const next = pageLink(world, type, token, following);
  const links = following < kept.ids.length ? { self, next } : { self };
  return await onePage(db, query, kept.ids, offset, links, world);
}

async function onePage(
  db: SandboxDatabase,
  query: Query,
  ids: readonly string[],
  offset: number,
  links: { readonly self: string; readonly next?: string },
  { base }: World,
): Promise<Reply> {
  const found = await readPage(db, query, ids.slice(offset, offset + query.pageSize));
  return reply(toSearchset(base, ids.length, links, found));
}

const pageLink = ({ base }: World, type: ResourceType, token: string, offset: number) =>
  `${base}/${type}?${PAGE}=${token}.${offset}`;

const reply = (body: object): Reply => ({ status: 200, headers: {}, body });
