import { keyedUuid } from '../kernel/index.js';

interface Identified {
  readonly system: string;
  readonly value: string;
}

/** What a keyed id is made for; ids made for two purposes cannot be joined. */
type Purpose =
  | 'case'
  | 'follow-up'
  | 'search-case'
  | 'search-patient'
  | 'search-session'
  | 'pseudonym'
  | 'operator-in-outcomes'
  | 'export-row'
  | 'export-operator'
  | 'export-unit'
  | 'site';

/**
 * A keyed id of an identifier for one purpose.
 *
 * @param secret the site secret
 */
export function keyed(secret: string, purpose: Purpose, { system, value }: Identified): string {
  return keyedUuid(secret, `${purpose}|${system}`, value);
}

/** Tells one site secret from another without telling the secret. */
export function siteMarkOf(secret: string): string {
  return keyed(secret, 'site', { system: '', value: '' });
}

/** Who dissected, as the facts for outcomes name them: nothing else is keyed like this. */
export function operatorInOutcomes(secret: string, operator: Identified): string {
  return keyed(secret, 'operator-in-outcomes', operator);
}

/** The opaque id under which a case is kept and named to others. */
export function caseIdOf(secret: string, identifier: Identified): string {
  return keyed(secret, 'case', identifier);
}

/** The opaque id of one item of the plan of a case; it stays as long as its key does. */
export function followUpIdOf(secret: string, caseId: string, itemKey: string): string {
  return keyed(secret, 'follow-up', { system: caseId, value: itemKey });
}

/** The keyed hash that the follow-ups of one patient share. */
export function patientKeyOf(secret: string, patient: Identified): string {
  return keyed(secret, 'search-patient', patient);
}

/** The keys under which a case is found again. */
export function searchKeysOf(
  secret: string,
  { case: own, patient, session }: SearchedBy,
): Readonly<Record<string, string>> {
  return {
    ...(own === undefined ? {} : { case: keyed(secret, 'search-case', own) }),
    ...(patient === undefined ? {} : { patient: patientKeyOf(secret, patient) }),
    ...(session === undefined ? {} : { session: keyed(secret, 'search-session', session) }),
  };
}

interface SearchedBy {
  readonly case?: Identified | undefined;
  readonly patient?: Identified | undefined;
  readonly session?: Identified | undefined;
}
