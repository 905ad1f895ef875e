import { invariant, type Problem } from '../kernel/index.js';
import type { CaseFields } from './case/case.js';
import { type CrossCheck, crossProblems } from './cross-check.js';
import type { Identifier } from './scalars.js';

/** A message about a case, and the case as known now. */
export interface WithCase<Sent> {
  readonly sent: Sent;
  readonly esd: CaseFields;
}

interface AboutCase {
  readonly case: Identifier;
  readonly patient: Identifier;
}

/** The message is about the patient of the case. Project rule. */
export const samePatient: CrossCheck<WithCase<AboutCase>> = {
  rule: 'patient-differs',
  message: 'The message is about another patient than the case.',
  expected: 'the patient of the case',
  broken: ({ sent, esd }) => (isSame(sent.patient, esd.patient) ? [] : ['/patient']),
};

/**
 * Holds a message against its case.
 *
 * @param sent has passed its own checks
 * @param esd the case that the message names
 * @returns every contradiction, by pointers into the message; none of them if all fits
 * @throws InvariantError if the message names another case: the caller paired them wrongly
 */
export function problemsAgainstCase<Sent extends AboutCase>(
  checks: readonly CrossCheck<WithCase<Sent>>[],
  sent: Sent,
  esd: CaseFields,
): readonly Problem[] {
  invariant(isSame(sent.case, esd.case), 'a message is held against the case that it names');
  return crossProblems(checks, { sent, esd });
}

const isSame = (a: Identifier, b: Identifier): boolean =>
  a.system === b.system && a.value === b.value;
