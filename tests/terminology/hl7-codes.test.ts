import type { CodeSystem, CodeSystemConcept } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { readDefinitions } from '../../scripts/profiles/definitions.js';
import { readConceptRows } from '../../scripts/terminology/read-csv.js';

const { codeSystems } = readDefinitions();

/** Displays by code of a code system that R4 lists in full. */
function displaysOf({ concept = [] }: CodeSystem): ReadonlyMap<string, string | undefined> {
  const flat = (concepts: readonly CodeSystemConcept[]): readonly CodeSystemConcept[] =>
    concepts.flatMap((each) => [each, ...flat(each.concept ?? [])]);
  return new Map(flat(concept).map(({ code, display }) => [code, display]));
}

/** Systems of HL7 that R4 keeps but does not list in full, with the place where they are listed. */
const ELSEWHERE: readonly string[] = ['http://terminology.hl7.org/CodeSystem/icd-o-3'];

const rows = readConceptRows().filter(
  ({ system, status }) =>
    /^http:\/\/(terminology\.)?hl7\.org\//.test(system) &&
    !system.endsWith('/sid/icd-10') &&
    !ELSEWHERE.includes(system) &&
    status.startsWith('verified'),
);

/** R4 itself prints a blank behind the display of service type 480. */
function displayInR4(system: string, code: string): string | undefined {
  const codeSystem = codeSystems.get(system);
  return codeSystem === undefined ? undefined : displaysOf(codeSystem).get(code)?.trim();
}

describe('codes of HL7, against the code systems of FHIR R4 4.0.1', () => {
  it('finds the rows of the table', () => {
    expect(rows.length).toBeGreaterThan(140);
  });

  it.each(rows)('$system has $code as $display', ({ system, code, display }) => {
    expect(displayInR4(system, code)).toBe(display);
  });

  it('would notice an unknown code, an unknown system and another display', () => {
    const actCode = 'http://terminology.hl7.org/CodeSystem/v3-ActCode';
    expect(displayInR4(actCode, 'AMBULANT')).toBeUndefined();
    expect(displayInR4('http://hl7.org/fhir/no-such-system', 'AMB')).toBeUndefined();
    expect(displayInR4(actCode, 'AMB')).not.toBe('Ambulatory');
  });
});
