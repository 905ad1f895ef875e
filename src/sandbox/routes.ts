import { answerSearch } from './answer-search.js';
import { capabilityStatement } from './capability-statement.js';
import { readResource } from './content.js';
import { answerHistory, answerRead, answerVersion, answerWrite } from './interactions.js';
import { isForm, isJsonBody, readPreferences, takesJson } from './preferences.js';
import { ID } from './reference.js';
import { Refusal } from './refusal.js';
import type { Reply } from './reply.js';
import { readJson, readText } from './request-body.js';
import type { Key } from './resource-store.js';
import { isResourceType, type ResourceType } from './resource-types.js';
import type { SandboxDatabase } from './tables.js';
import { runTransaction } from './transaction.js';
import { createOf, readTransaction, updateOf } from './transaction-bundle.js';
import type { World } from './world.js';

/** A request as the routes see it. */
export interface Asked {
  readonly db: SandboxDatabase;
  readonly path: Readonly<Record<string, string | string[] | undefined>>;
  /** What stood after the question mark. */
  readonly query: string;
  readonly header: (name: string) => string | undefined;
  readonly body: Uint8Array;
  readonly world: World;
}

type Answer = (asked: Asked) => Promise<Reply>;

/** Source: HL7 FHIR R4, RESTful API, "Summary" of the interactions. */
export const ROUTES: readonly (readonly ['get' | 'post' | 'put', string, Answer])[] = [
  ['get', '/metadata', inJson(metadata)],
  ['post', '/', inJson(transaction)],
  ['get', '/:type', inJson(search)],
  ['post', '/:type/_search', inJson(searchByForm)],
  ['post', '/:type', inJson(create)],
  ['put', '/:type', inJson(conditionalUpdate)],
  ['get', '/:type/:id', inJson(read)],
  ['put', '/:type/:id', inJson(update)],
  ['get', '/:type/:id/_history', inJson(history)],
  ['get', '/:type/:id/_history/:version', inJson(version)],
];

function inJson(answer: Answer): Answer {
  return async (asked) => {
    const format = new URLSearchParams(asked.query).get('_format');
    if (takesJson(asked.header('accept'), format)) return await answer(asked);
    throw new Refusal(406, 'not-supported', 'The sandbox speaks application/fhir+json alone.');
  };
}

async function metadata({ world }: Asked): Promise<Reply> {
  return { status: 200, headers: {}, body: capabilityStatement(world.base, world.supports) };
}

async function transaction(asked: Asked): Promise<Reply> {
  const { db, world } = asked;
  if (!world.supports.transaction) {
    throw new Refusal(405, 'not-supported', 'This server has no transactions.', {
      headers: { Allow: 'GET' },
    });
  }
  const requests = readTransaction(resourceIn(asked), world);
  const { returns } = preferencesOf(asked);
  const body = await runTransaction(db, requests, world, returns === 'representation');
  return { status: 200, headers: {}, body };
}

async function search(asked: Asked): Promise<Reply> {
  const { db, path, query, world } = asked;
  const params = new URLSearchParams(query);
  return await answerSearch(db, typeOf(path), params, world, preferencesOf(asked));
}

/** Source: HL7 FHIR R4, RESTful API, "search": parameters of address and body count alike. */
async function searchByForm(asked: Asked): Promise<Reply> {
  const { db, path, query, world, body } = asked;
  if (body.length > 0 && !isForm(asked.header('content-type'))) {
    throw new Refusal(415, 'not-supported', 'A search is sent as a form.');
  }
  const both = [...new URLSearchParams(query), ...new URLSearchParams(readText(body))];
  const params = new URLSearchParams(both);
  return await answerSearch(db, typeOf(path), params, world, preferencesOf(asked));
}

async function create(asked: Asked): Promise<Reply> {
  const { db, path, world } = asked;
  const type = typeOf(path);
  const resource = readResource(resourceIn(asked), type, type);
  const interaction = createOf(type, resource, asked.header('if-none-exist'), world);
  return await answerWrite(db, interaction, world, preferencesOf(asked));
}

async function read({ db, path }: Asked): Promise<Reply> {
  return await answerRead(db, keyOf(path));
}

async function update(asked: Asked): Promise<Reply> {
  const { db, path, world } = asked;
  const { type, id } = keyOf(path);
  const resource = readResource(resourceIn(asked), type, type);
  const ifMatch = asked.header('if-match');
  const interaction = updateOf(type, resource, { id, ifMatch }, world);
  return await answerWrite(db, interaction, world, preferencesOf(asked));
}

async function conditionalUpdate(asked: Asked): Promise<Reply> {
  const { db, path, query, world } = asked;
  const type = typeOf(path);
  const resource = readResource(resourceIn(asked), type, type);
  const ifMatch = asked.header('if-match');
  const interaction = updateOf(type, resource, { query, ifMatch }, world);
  return await answerWrite(db, interaction, world, preferencesOf(asked));
}

async function history({ db, path, world }: Asked): Promise<Reply> {
  return await answerHistory(db, keyOf(path), world);
}

async function version({ db, path }: Asked): Promise<Reply> {
  const wanted = path['version'];
  return await answerVersion(db, keyOf(path), typeof wanted === 'string' ? wanted : '');
}

const preferencesOf = (asked: Asked) => readPreferences(asked.header('prefer'));

function resourceIn(asked: Asked) {
  if (isJsonBody(asked.header('content-type'))) return readJson(asked.body);
  throw new Refusal(415, 'not-supported', 'A resource is sent as application/fhir+json.');
}

function typeOf({ type }: Asked['path']): ResourceType {
  if (typeof type === 'string' && isResourceType(type)) return type;
  throw new Refusal(404, 'not-supported', 'The sandbox does not keep resources of this type.');
}

function keyOf(path: Asked['path']): Key {
  const { id } = path;
  if (typeof id === 'string' && ID.test(id)) return { type: typeOf(path), id };
  throw new Refusal(404, 'not-found', 'There is nothing at this address.');
}
