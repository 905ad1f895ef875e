import type { Annotation } from 'fhir/r4.js';
import type { Shown } from '../assessment/index.js';
import { type Citation, invariant } from '../kernel/index.js';
import { type CodeRef, RULES } from '../terminology/index.js';
import { type MappingContext, toResource } from './context.js';
import type { ItemKey } from './finding-row.js';
import type { ObservationContent } from './observation.js';

/** A named rule, as a verdict or a score carries it. */
export interface NamedRule {
  readonly rule: string;
  readonly version: number;
}

const RULE_CODES: Readonly<Record<string, CodeRef>> = RULES;

/** What people call a rule; its id where the answer of the rule is never sent as a value. */
export const ruleName = (rule: string): string => RULE_CODES[rule]?.text ?? rule;

/**
 * The rule with its version, and the inputs that have an Observation in the case.
 *
 * @param inputs items that the rule asks for
 * @param present keys of the Observations of the case, so that no link dangles
 */
export function byRule(
  context: MappingContext,
  { rule, version }: NamedRule,
  inputs: readonly ItemKey[],
  present: ReadonlySet<string>,
): ObservationContent {
  const code = codeIn(RULE_CODES, rule);
  const { coding = [] } = context.concept(code);
  const derivedFrom = inputs
    .filter((item) => present.has(item))
    .map((item) => toResource(context, 'Observation', item));
  return {
    method: {
      coding: coding.map((one) => ({ ...one, version: String(version) })),
      text: `${code.text}, version ${version}`,
    },
    ...(derivedFrom.length === 0 ? {} : { derivedFrom }),
  };
}

/** The code of a word of the assessment; that every one has a code is held by the tests. */
export function codeIn(codes: Readonly<Record<string, CodeRef>>, word: string): CodeRef {
  const code = codes[word];
  invariant(code !== undefined, `there is a code for ${word}`);
  return code;
}

/** Notes of an Observation, a text each; no element where there is none. */
export function notes(texts: readonly string[]): { note?: Annotation[] } {
  return texts.length === 0 ? {} : { note: texts.map((text) => ({ text })) };
}

/** What is shown beside an answer, each with its source. */
export const shown = (remarks: readonly Shown[]): readonly string[] => remarks.map(sourced);

/** A sentence with where it stands and how well that is supported. */
export function sourced({
  says,
  cites,
}: {
  readonly says: string;
  readonly cites: readonly Citation[];
}): string {
  if (cites.length === 0) return says;
  return `${says} [${cites.map(({ work, place, basis }) => `${work}, ${place}: ${basis}`).join('; ')}]`;
}
