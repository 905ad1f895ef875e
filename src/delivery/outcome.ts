import { recordsAt, textAt } from './json.js';

/** What may be known of an OperationOutcome beyond its issue codes. */
export type OutcomeWord = 'patient-missing' | 'several-patients' | 'several-matches';

/** An OperationOutcome without a word that the server wrote itself. */
export interface ScrubbedOutcome {
  /** Issue codes, distinct, of the published set only. */
  readonly codes: readonly string[];
  /** Element paths such as `Bundle.entry[3].resource.status`. */
  readonly places: readonly string[];
  readonly words: readonly OutcomeWord[];
}

/** Source: FHIR R4 (4.0.1), CodeSystem issue-type. */
export const ISSUE_CODES: ReadonlySet<string> = new Set([
  ...['invalid', 'structure', 'required', 'value', 'invariant'],
  ...['security', 'login', 'unknown', 'expired', 'forbidden', 'suppressed'],
  ...['processing', 'not-supported', 'duplicate', 'multiple-matches', 'not-found', 'deleted'],
  ...['too-long', 'code-invalid', 'extension', 'too-costly', 'business-rule', 'conflict'],
  ...['transient', 'lock-error', 'no-store', 'exception', 'timeout', 'incomplete', 'throttled'],
  'informational',
]);

const MOST_ISSUES = 20;
const MOST_PLACES = 5;
const MOST_TEXT = 2_000;

/** Letters, dots and short indices only: no quoted value can pass. */
const PLACE =
  /^[A-Z][A-Za-z]{2,40}(?:\[\d{1,4}\])?(?:\.[a-z][A-Za-z]{1,40}(?:\[\d{1,4}\])?){0,12}$/;

/*
 * Phrases that servers use. The text around them repeats search URLs, and with them record
 * numbers, so nothing but the fact of a hit is kept.
 * Source: texts of open-source FHIR servers; common practice, no published list.
 */
const NAMES_PATIENT = /\bPatient[/?]/;
const SAYS_MISSING = [
  /no (?:resources? )?match|matched (?:0|no)\b|not (?:be )?found/i,
  /n['o]t exist|not resolve|unable to resolve|is deleted|referential integrity/i,
];
const SAYS_SEVERAL = [
  /multiple (?:resources|matches)|more than one/i,
  /matched (?:[2-9]|[1-9]\d{1,5})\b/i,
];

/**
 * Takes from what a server sent only what can hold no patient data: published issue codes,
 * plain element paths, and whether a known phrase occurs.
 *
 * @param body what came, of any shape; what is no OperationOutcome gives an empty result
 */
export function scrubOutcome(body: unknown): ScrubbedOutcome {
  if (textAt(body, 'resourceType') !== 'OperationOutcome') {
    return { codes: [], places: [], words: [] };
  }
  const issues = recordsAt(body, 'issue').slice(0, MOST_ISSUES);
  const codes = issues
    .map((issue) => textAt(issue, 'code') ?? '')
    .filter((code) => ISSUE_CODES.has(code));
  return {
    codes: [...new Set(codes)],
    places: [...new Set(issues.flatMap(places))].slice(0, MOST_PLACES),
    words: [...new Set(issues.flatMap(wordsOf))],
  };
}

/** @returns a clause such as `invariant at Bundle.entry[3].resource`, or the empty string */
export function outcomeClause(outcome: ScrubbedOutcome): string {
  const at = outcome.places.length === 0 ? '' : ` at ${outcome.places.join(', ')}`;
  const codes = outcome.codes.join(', ');
  return codes === '' && at === '' ? '' : `${codes === '' ? 'an issue' : codes}${at}`;
}

function wordsOf(issue: Readonly<Record<string, unknown>>): readonly OutcomeWord[] {
  const text = issueText(issue);
  const code = textAt(issue, 'code') ?? '';
  const patient = NAMES_PATIENT.test(text);
  const says = (patterns: readonly RegExp[]) => patterns.some((pattern) => pattern.test(text));
  if (code === 'multiple-matches' || says(SAYS_SEVERAL)) {
    return [patient ? 'several-patients' : 'several-matches'];
  }
  const missing = code === 'not-found' || code === 'deleted' || says(SAYS_MISSING);
  return patient && missing ? ['patient-missing'] : [];
}

function issueText(issue: Readonly<Record<string, unknown>>): string {
  const details = textAt(issue['details'], 'text') ?? '';
  const diagnostics = textAt(issue, 'diagnostics') ?? '';
  return `${details.slice(0, MOST_TEXT)}\n${diagnostics.slice(0, MOST_TEXT)}`;
}

function places(issue: Readonly<Record<string, unknown>>): readonly string[] {
  const expression = issue['expression'];
  if (!Array.isArray(expression)) return [];
  return expression
    .slice(0, MOST_PLACES)
    .filter((place): place is string => typeof place === 'string' && PLACE.test(place));
}
