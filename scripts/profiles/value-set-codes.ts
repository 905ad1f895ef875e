import type { CodeSystemConcept, ValueSetComposeInclude } from 'fhir/r4.js';
import type { Definitions } from './definitions.js';

/** The codes of one code system that a value set lets in. */
export interface AllowedCodes {
  readonly system: string;
  readonly codes: readonly string[];
}

/**
 * Value sets of required bindings that no list can hold, because they are grammars of their own:
 * media types (BCP 13), languages (BCP 47), UCUM units.
 */
export const OPEN_VALUE_SETS: readonly string[] = [
  'http://hl7.org/fhir/ValueSet/mimetypes',
  'http://hl7.org/fhir/ValueSet/all-languages',
  'http://hl7.org/fhir/ValueSet/ucum-units',
  'http://hl7.org/fhir/ValueSet/currencies',
];

/**
 * Lists the codes of an enumerable value set.
 *
 * @returns undefined for a value set that stands in OPEN_VALUE_SETS
 * @throws Error when a value set can neither be listed nor is known to be open
 */
export function codesOf(
  definitions: Definitions,
  canonical: string,
): readonly AllowedCodes[] | undefined {
  const url = canonical.split('|')[0] ?? canonical;
  if (OPEN_VALUE_SETS.includes(url)) return undefined;
  const valueSet = definitions.valueSets.get(url);
  const includes = valueSet?.compose?.include;
  if (includes === undefined) throw new Error(`no listing of value set ${url}`);
  if (valueSet?.compose?.exclude !== undefined) throw new Error(`${url} excludes: not supported`);
  return includes.flatMap((include) => included(definitions, url, include));
}

function included(
  definitions: Definitions,
  url: string,
  include: ValueSetComposeInclude,
): readonly AllowedCodes[] {
  if (include.valueSet !== undefined) {
    return include.valueSet.flatMap((inner) => codesOf(definitions, inner) ?? []);
  }
  if (include.system === undefined) throw new Error(`${url} includes no system`);
  if (include.filter !== undefined) throw new Error(`${url} filters: not supported`);
  if (include.concept !== undefined) {
    return [{ system: include.system, codes: include.concept.map(({ code }) => code) }];
  }
  const concepts = definitions.codeSystems.get(include.system)?.concept;
  if (concepts === undefined) throw new Error(`${url}: no concepts of ${include.system}`);
  return [{ system: include.system, codes: flat(concepts) }];
}

function flat(concepts: readonly CodeSystemConcept[]): readonly string[] {
  return concepts.flatMap(({ code, concept }) => [code, ...flat(concept ?? [])]);
}
