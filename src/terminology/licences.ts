import type { CONCEPTS } from './concepts.table.js';

type CodingRow = (typeof CONCEPTS)[keyof typeof CONCEPTS][number];

/** Who may send a code: anyone, a holder of a SNOMED CT licence, or nobody (national codes). */
export type Licence = CodingRow['licence'];

/** What a site is licensed for; without it only freely licensed codes are sent. */
export interface Licences {
  readonly snomedCt: boolean;
}

/** Whether a site may send a code under these terms. */
export function mayBeSent(licence: Licence, { snomedCt }: Licences): boolean {
  switch (licence) {
    case 'open':
      return true;
    case 'snomed-affiliate':
      return snomedCt;
    case 'national':
      return false;
  }
}

/** Notices that the owners of the terminologies ask to be shown. Source: shared/terminology. */
export const LICENCE_NOTICES = {
  loinc:
    'This material contains content from LOINC (http://loinc.org). LOINC is copyright (c) ' +
    '1995-2020, Regenstrief Institute, Inc. and the Logical Observation Identifiers Names and ' +
    'Codes (LOINC) Committee and is available at no cost under the license at ' +
    'http://loinc.org/license. LOINC is a registered United States trademark of Regenstrief ' +
    'Institute, Inc.',
  snomedCt:
    'This material includes SNOMED Clinical Terms (SNOMED CT) content of the Global Patient Set ' +
    'and of the IPS free set, used under CC BY 4.0 by attribution to SNOMED International, which ' +
    'does not endorse this project. Other SNOMED CT content is sent only where the site has ' +
    'switched it on, and then under the licence that the site itself holds.',
} as const;
