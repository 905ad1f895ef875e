import type { Supports } from './interaction.js';

/** What a request is worked on with, beside the database. */
export interface World {
  /** Address of this server without a slash at its end. */
  readonly base: string;
  readonly supports: Supports;
  /** Status for a reference to a resource that is not there. */
  readonly missingReferenceStatus: 400 | 409 | 422;
  readonly nowMs: number;
  readonly newId: () => string;
}
