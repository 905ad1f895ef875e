import type { LocalSet } from './code-ref.js';

/** Canonical base of everything that this project publishes. */
export const BASE = 'https://dissection-records.example/fhir';

/** The URI of one of our own code systems, one a set of `local-codes.csv`. */
export const localSystem = (set: LocalSet): string => `${BASE}/CodeSystem/${set}`;
