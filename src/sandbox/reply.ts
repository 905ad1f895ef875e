import { entityTag } from './interaction.js';
import { nameOf, type Stored } from './resource-store.js';

/** What is answered, before it becomes bytes. */
export interface Reply {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  /** A resource; absent where the client wanted none. */
  readonly body?: object;
}

/** Headers that tell of one version. Source: HL7 FHIR R4, RESTful API, "read" and "create". */
export function versionHeaders(stored: Stored): Readonly<Record<string, string>> {
  return {
    ETag: entityTag(stored.version),
    'Last-Modified': new Date(stored.updatedMs).toUTCString(),
  };
}

/** Type/id/_history/version, below the base. */
export const locationOf = (stored: Stored): string =>
  `${nameOf(stored)}/_history/${stored.version}`;
