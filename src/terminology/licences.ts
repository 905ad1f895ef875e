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
