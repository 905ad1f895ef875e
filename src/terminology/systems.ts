import type { LocalSet } from './code-ref.js';

/** Canonical base of everything that this project publishes. */
export const BASE = 'https://dissection-records.example/fhir';

/** Canonical URIs of the code systems of others that the program names itself. */
export const systems = {
  loinc: 'http://loinc.org',
  snomedCt: 'http://snomed.info/sct',
  ucum: 'http://unitsofmeasure.org',
  icd10: 'http://hl7.org/fhir/sid/icd-10',
  icdO3: 'http://terminology.hl7.org/CodeSystem/icd-o-3',
} as const;

/** The URI of one of our own code systems, one a set of `local-codes.csv`. */
export const localSystem = (set: LocalSet): string => `${BASE}/CodeSystem/${set}`;
