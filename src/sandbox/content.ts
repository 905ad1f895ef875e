import { canonicalText, isList, isObject, type Json, type JsonObject, textOf } from './json.js';
import { ID } from './reference.js';
import { Refusal } from './refusal.js';
import type { ResourceType } from './resource-types.js';

/** Control characters but tab and line ends, and halves of a surrogate pair. */
const FORBIDDEN = /[\p{Surrogate}\p{Cc}]/u;
const ALLOWED_CONTROLS = /[\t\n\r]/g;

/**
 * Looks at what came as a server does that knows no profile: it is a resource of the right type,
 * its id is an id, and nothing in it is empty.
 *
 * Source: HL7 FHIR R4, RESTful API, "create" and "update"; JSON Representation of Resources.
 *
 * @param place FHIRPath to where the resource stood
 * @throws Refusal 400
 */
export function readResource(value: Json | undefined, type: ResourceType, place: string) {
  if (!isObject(value)) throw new Refusal(400, 'structure', 'A resource is missing.', at(place));
  if (value['resourceType'] !== type) {
    throw new Refusal(400, 'invalid', 'The resource type is not that of the address.', at(place));
  }
  const { id } = value;
  if (id !== undefined && (typeof id !== 'string' || !ID.test(id))) {
    throw new Refusal(400, 'value', 'The id is none that FHIR allows.', at(`${place}.id`));
  }
  const { meta } = value;
  if (meta !== undefined && !isObject(meta)) {
    throw new Refusal(400, 'structure', 'meta is an object.', at(`${place}.meta`));
  }
  refuseEmpty(value, place);
  return value;
}

function refuseEmpty(value: Json, place: string): void {
  if (typeof value === 'string') {
    if (value === '') throw new Refusal(400, 'value', 'A text is empty.', at(place));
    if (!FORBIDDEN.test(value.replace(ALLOWED_CONTROLS, ''))) return;
    throw new Refusal(400, 'value', 'A text holds a character that FHIR forbids.', at(place));
  }
  const inner: readonly (readonly [string, Json])[] = isList(value)
    ? value.map((each, index) => [`${place}[${index}]`, each])
    : isObject(value)
      ? Object.entries(value).map(([key, each]) => [`${place}.${key}`, each])
      : [];
  if (typeof value === 'object' && value !== null && inner.length === 0) {
    throw new Refusal(400, 'structure', 'An object or array is empty.', at(place));
  }
  for (const [path, each] of inner) refuseEmpty(each, path);
}

const at = (expression: string) => ({ expression });

/** The resource as this server keeps and gives it: with id, version and time. */
export function withServerMeta(
  resource: JsonObject,
  { id, version, updatedMs }: { id: string; version: number; updatedMs: number },
): JsonObject {
  const { resourceType, id: _id, meta, ...content } = resource;
  const kept = isObject(meta) ? meta : {};
  const lastUpdated = new Date(updatedMs).toISOString();
  return {
    resourceType: resourceType ?? '',
    id,
    meta: { ...kept, versionId: String(version), lastUpdated },
    ...content,
  };
}

/** Whether two say the same, but for what this server adds by itself. */
export function sameContent(a: JsonObject, b: JsonObject): boolean {
  return canonicalText(withoutServerMeta(a)) === canonicalText(withoutServerMeta(b));
}

function withoutServerMeta(resource: JsonObject): JsonObject {
  const { id: _id, meta, ...content } = resource;
  const { versionId: _version, lastUpdated: _time, ...kept } = isObject(meta) ? meta : {};
  return { ...content, ...(Object.keys(kept).length === 0 ? {} : { meta: kept }) };
}

/** @returns the id of the body; undefined when it has none */
export const idOf = (resource: JsonObject): string | undefined => textOf(resource, 'id');
