import type { Caller, Service } from '../pipeline/index.js';
import type { Noted } from './exchange.js';
import type { Reply } from './send.js';

/** A request that was let through, as its route sees it. */
export interface Asked {
  readonly caller: Caller;
  /** The bytes of the body; checks its form and size first. */
  readonly body: () => Promise<Uint8Array>;
  /** A part of the path by its name, the empty string where the path has none. */
  readonly param: (name: string) => string;
  /** What stands behind the question mark of the address, undecoded; the empty string without one. */
  readonly query: () => string;
  /** A field of the header, where it was sent once. */
  readonly header: (name: string) => string | undefined;
  /** For the log. */
  readonly note: (noted: Noted) => void;
}

/** How the service stands. */
export interface Health {
  /** False from the moment when the service begins to stop. */
  accepting(): boolean;
  /** How the FHIR server stands; does not touch readiness, because cases are kept meanwhile. */
  fhirServer(): { readonly state: string; readonly reason?: string };
}

export interface Parts {
  readonly service: Service;
  readonly health: Health;
}

export interface Route {
  readonly method: 'GET' | 'POST';
  readonly path: string;
  /** @throws Refused */
  readonly answer: (asked: Asked, parts: Parts) => Promise<Reply>;
}
