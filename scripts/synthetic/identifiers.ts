import type { Identifier } from '../../src/contract/index.js';
import type { DrawnCase } from './drawn-case.js';

/** What is numbered; each has a system of its own under the arc for examples (urn:oid:2.999). */
const KINDS = {
  patient: 1,
  case: 2,
  session: 3,
  operator: 5,
  unit: 6,
  laboratory: 8,
  accession: 11,
  event: 12,
  examination: 13,
} as const;

/** Every identifier says that what it names is invented. */
const invented = (kind: keyof typeof KINDS, value: string): Identifier => ({
  system: `urn:oid:2.999.77.${KINDS[kind]}`,
  value: `INVENTED-${value}`,
});

export const unitName = ({ unit, set }: DrawnCase): string => `${unit.name}-${set}`;
export const sourceOf = (drawn: DrawnCase): string => `invented-${unitName(drawn)}`;

export const caseIdentifier = (name: string): Identifier => invented('case', `C-${name}`);
export const patientOf = ({ name }: DrawnCase): Identifier => invented('patient', `P-${name}`);
export const sessionOf = ({ name }: DrawnCase): Identifier => invented('session', `S-${name}`);
export const unitOf = (drawn: DrawnCase): Identifier => invented('unit', `U-${unitName(drawn)}`);
export const operatorOf = (drawn: DrawnCase, number = drawn.operator.number): Identifier =>
  invented('operator', `D-${unitName(drawn)}-${number}`);
export const laboratoryOf = (drawn: DrawnCase): Identifier =>
  invented('laboratory', `L-${unitName(drawn)}`);
export const accessionOf = ({ name }: DrawnCase): Identifier => invented('accession', `A-${name}`);
export const eventOf = ({ name }: DrawnCase, word: string): Identifier =>
  invented('event', `V-${name}-${word}`);
export const examinationOf = ({ name }: DrawnCase, number: number): Identifier =>
  invented('examination', `X-${name}-${number}`);

/** What every message of a case begins with. */
export const envelopeOf = (drawn: DrawnCase) => ({
  source: sourceOf(drawn),
  case: caseIdentifier(drawn.name),
  patient: patientOf(drawn),
});
