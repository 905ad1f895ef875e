import type { ConceptRow } from './read-csv.js';

/** Who may send a code: anyone, a holder of a SNOMED CT licence, or users of one country. */
export type Licence = 'open' | 'snomed-affiliate' | 'national';

const SNOMED_CT = 'http://snomed.info/sct';

/** Code systems of one country, or priced there; never sent, kept for the reader of the table. */
const NATIONAL: readonly string[] = [
  'https://fhir.hl7.org.uk/Id/opcs-4',
  'http://www.cms.gov/Medicare/Coding/ICD10',
  'http://www.cms.gov/Medicare/Coding/HCPCSReleaseCodeSets',
  'http://fhir.de/CodeSystem/bfarm/ops',
];

/** A membership in one of the two open sets of SNOMED CT, as `version_note` writes it. */
const IN_OPEN_SET = /\b(?:GPS 2020-09|IPS free set 2022-07): yes\b/;

/**
 * Finds the terms under which a code may be sent.
 *
 * Source: `shared/terminology/README.md`, "Licences": the Global Patient Set and the IPS free set
 * of SNOMED CT are CC BY 4.0, everything else of SNOMED CT needs an affiliate licence. A row that
 * names neither set counts as licence-bound.
 */
export function licenceOf({ system, version_note }: ConceptRow): Licence {
  if (NATIONAL.includes(system)) return 'national';
  if (system !== SNOMED_CT) return 'open';
  return IN_OPEN_SET.test(version_note) ? 'open' : 'snomed-affiliate';
}
