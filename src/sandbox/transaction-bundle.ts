import { readResource } from './content.js';
import { type Create, type Request, type Update, versionOfTag } from './interaction.js';
import { isList, isObject, type Json, type JsonObject, textOf } from './json.js';
import { readCriteria, readQuery } from './query.js';
import { Refusal } from './refusal.js';
import { isResourceType, type ResourceType } from './resource-types.js';
import type { World } from './world.js';

/** Where an entry is to be carried out: the parts of its url below the base. */
interface Address {
  readonly type: ResourceType;
  readonly id?: string;
  readonly query?: string;
}

/** Parts of an entry's request that are not supported; to pass over them would be a lie. */
const UNSUPPORTED = ['ifNoneMatch', 'ifModifiedSince'] as const;

/**
 * Reads a transaction.
 *
 * Source: HL7 FHIR R4, Bundle (bdl-3, bdl-5, bdl-7) and RESTful API, "transaction".
 *
 * @returns one request for each entry, in their order
 * @throws Refusal 400; 405 for a method that the sandbox does not have
 */
export function readTransaction(bundle: Json | undefined, world: World): readonly Request[] {
  if (!isObject(bundle) || bundle['resourceType'] !== 'Bundle') {
    throw new Refusal(400, 'structure', 'The base of the server takes a Bundle.');
  }
  if (bundle['type'] !== 'transaction') {
    const message = 'The sandbox takes Bundles of type transaction alone.';
    throw new Refusal(400, 'not-supported', message, { expression: 'Bundle.type' });
  }
  const { entry = [] } = bundle;
  if (!isList(entry)) {
    throw new Refusal(400, 'structure', 'entry is a list.', { expression: 'Bundle.entry' });
  }
  const requests = entry.map((each, index) => readEntry(each, `Bundle.entry[${index}]`, world));
  const fullUrls = requests.flatMap(({ fullUrl }) => fullUrl ?? []);
  if (new Set(fullUrls).size === fullUrls.length) return requests;
  throw new Refusal(400, 'invariant', 'Two entries have the same fullUrl (bdl-7).');
}

function readEntry(entry: Json, place: string, world: World): Request {
  const request = isObject(entry) ? entry['request'] : undefined;
  const method = isObject(request) ? textOf(request, 'method') : undefined;
  const url = isObject(request) ? textOf(request, 'url') : undefined;
  if (!isObject(entry) || !isObject(request) || method === undefined || url === undefined) {
    const message = 'An entry of a transaction needs request.method and request.url (bdl-3).';
    throw new Refusal(400, 'invariant', message, { expression: place });
  }
  if (UNSUPPORTED.some((name) => request[name] !== undefined)) {
    const message = 'Of the conditions only ifMatch and ifNoneExist are supported.';
    throw new Refusal(400, 'not-supported', message, { expression: `${place}.request` });
  }
  const fullUrl = textOf(entry, 'fullUrl');
  const address = readAddress(url, `${place}.request.url`, world.base);
  const interaction = withPlace(place, () => {
    switch (method) {
      case 'GET':
        return readGet(address, world);
      case 'POST':
        return readPost(address, entry['resource'], request, place, world);
      case 'PUT':
        return readPut(address, entry['resource'], request, place, world);
      default:
        throw new Refusal(405, 'not-supported', 'Of the methods GET, POST and PUT are supported.', {
          headers: { Allow: 'GET, POST, PUT' },
        });
    }
  });
  return { interaction, place, ...(fullUrl === undefined ? {} : { fullUrl }) };
}

function readAddress(url: string, place: string, base: string): Address {
  const relative = url.startsWith(`${base}/`) ? url.slice(base.length + 1) : url;
  const [, type = '', id, query] =
    /^\/?([A-Za-z]+)(?:\/([A-Za-z0-9\-.]{1,64}))?(?:\?(.*))?$/.exec(relative) ?? [];
  if (isResourceType(type)) {
    return { type, ...(id === undefined ? {} : { id }), ...(query === undefined ? {} : { query }) };
  }
  const message = 'The address is none of this server, or of a type that it does not keep.';
  throw new Refusal(404, 'not-supported', message, { expression: place });
}

function readGet({ type, id, query }: Address, { base }: World): Request['interaction'] {
  if (id !== undefined) return { kind: 'read', type, id };
  const params = new URLSearchParams(query ?? '');
  return { kind: 'find', query: readQuery(type, params, { base, lenient: false }) };
}

function readPost(
  { type, id, query }: Address,
  resource: Json | undefined,
  request: JsonObject,
  place: string,
  world: World,
): Create {
  if (id !== undefined || query !== undefined) {
    throw new Refusal(400, 'invalid', 'A create goes to its type, without id or criteria.');
  }
  const content = readResource(resource, type, `${place}.resource`);
  return createOf(type, content, textOf(request, 'ifNoneExist'), world);
}

function readPut(
  { type, id, query }: Address,
  resource: Json | undefined,
  request: JsonObject,
  place: string,
  world: World,
): Update {
  const content = readResource(resource, type, `${place}.resource`);
  return updateOf(type, content, { id, query, ifMatch: textOf(request, 'ifMatch') }, world);
}

/** @throws Refusal where the condition is not supported or not understood */
export function createOf(
  type: ResourceType,
  resource: JsonObject,
  ifNoneExist: string | undefined,
  { base, supports }: World,
): Create {
  if (ifNoneExist === undefined) return { kind: 'create', type, resource };
  if (!supports.conditionalCreate) {
    throw new Refusal(400, 'not-supported', 'Conditional create is not supported.');
  }
  return { kind: 'create', type, resource, ifNoneExist: readCriteria(type, ifNoneExist, base) };
}

/** @throws Refusal where the condition is not supported or not understood */
export function updateOf(
  type: ResourceType,
  resource: JsonObject,
  asked: { id?: string | undefined; query?: string | undefined; ifMatch?: string | undefined },
  { base, supports }: World,
): Update {
  const ifMatch = asked.ifMatch === undefined ? {} : { ifMatch: versionOfTag(asked.ifMatch) };
  if (asked.id !== undefined) {
    if (resource['id'] === asked.id) {
      return { kind: 'update', type, resource, which: { id: asked.id }, ...ifMatch };
    }
    throw new Refusal(400, 'invalid', 'The body needs the id of the address.');
  }
  if (!supports.conditionalUpdate) {
    throw new Refusal(400, 'not-supported', 'Conditional update is not supported.');
  }
  const criteria = readCriteria(type, asked.query ?? '', base);
  return { kind: 'update', type, resource, which: { criteria }, ...ifMatch };
}

/** Tells a refusal in which entry it arose. */
function withPlace<T>(expression: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Refusal) || error.expression !== undefined) throw error;
    const { status, code, message, headers } = error;
    throw new Refusal(status, code, message, { expression, headers });
  }
}
