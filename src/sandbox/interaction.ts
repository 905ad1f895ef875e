import type { JsonObject } from './json.js';
import type { Query } from './query.js';
import { Refusal } from './refusal.js';
import type { ResourceType } from './resource-types.js';

/** What the sandbox can be switched to lack, so that clients meet such servers too. */
export interface Supports {
  readonly transaction: boolean;
  readonly updateCreate: boolean;
  readonly conditionalUpdate: boolean;
  readonly conditionalCreate: boolean;
  readonly conditionalReference: boolean;
}

export const SUPPORTS_ALL: Supports = {
  transaction: true,
  updateCreate: true,
  conditionalUpdate: true,
  conditionalCreate: true,
  conditionalReference: true,
};

export interface Create {
  readonly kind: 'create';
  readonly type: ResourceType;
  readonly resource: JsonObject;
  readonly ifNoneExist?: Query;
}

export interface Update {
  readonly kind: 'update';
  readonly type: ResourceType;
  readonly resource: JsonObject;
  /** The id of the address, or criteria to find the resource by. */
  readonly which: { readonly id: string } | { readonly criteria: Query };
  /** The version that is to be replaced, and no other. */
  readonly ifMatch?: string;
}

export interface Read {
  readonly kind: 'read';
  readonly type: ResourceType;
  readonly id: string;
}

export interface Find {
  readonly kind: 'find';
  readonly query: Query;
}

/** One request, alone or as an entry of a transaction. */
export interface Request<Interaction = Create | Update | Read | Find> {
  readonly interaction: Interaction;
  /** FHIRPath to the entry it came in; empty when it came alone. */
  readonly place: string;
  readonly fullUrl?: string;
}

export type Write = Request<Create | Update>;

/** FHIRPath to the resource of a request. */
export const placeOfResource = ({ place, type }: { place: string; type: ResourceType }): string =>
  place === '' ? type : `${place}.resource`;

/**
 * Reads an entity tag. Source: HL7 FHIR R4, RESTful API, "Managing Resource Contention".
 *
 * @returns the version id in it
 * @throws Refusal 400
 */
export function versionOfTag(tag: string): string {
  const [, version] = /^(?:W\/)?"([^"]+)"$/.exec(tag.trim()) ?? [];
  if (version === undefined) throw new Refusal(400, 'value', 'If-Match needs one entity tag.');
  return version;
}

export const entityTag = (version: number): string => `W/"${version}"`;
