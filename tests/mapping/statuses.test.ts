import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import type { Draft } from '../support/consistent-case.js';
import { bundleOf, example, find, keyOf, resourcesOf } from './records.js';

const bundleOfExample = (name: string) => bundleOf(JSON.stringify(example(name)));
const types = (name: string): readonly string[] =>
  resourcesOf(bundleOfExample(name)).map(({ resourceType }) => resourceType);

/**
 * Life cycle of a case without pathology. Source: FHIR R4 value sets event-status,
 * diagnostic-report-status ("preliminary: verified early results are available, but not all
 * results are final"), specimen-status and request-status.
 */
describe('statuses of a case that is pushed without pathology', () => {
  const bundle = bundleOfExample('complete');

  it('the dissection is completed, its lesion provisional, its findings final', () => {
    expect(find(bundle, 'Procedure', '').status).toBe('completed');
    const lesion = find(bundle, 'Condition', 'lesion');
    expect(lesion.verificationStatus.coding[0].code).toBe('provisional');
    expect(lesion.clinicalStatus.coding[0].code).toBe('active');
    const findings = resourcesOf(bundle).filter((r) => r.resourceType === 'Observation');
    expect(findings.length).toBeGreaterThan(30);
    const awaited = findings.filter(({ status }) => status !== 'final');
    expect(awaited.map((finding) => [keyOf(finding), finding.status])).toEqual([
      ['curability', 'preliminary'],
    ]);
  });

  it('the specimen is available, its request active, the report preliminary', () => {
    expect(find(bundle, 'Specimen', 'specimen').status).toBe('available');
    expect(find(bundle, 'ServiceRequest', 'pathology').status).toBe('active');
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').status).toBe('preliminary');
    expect(find(bundle, 'Provenance', '').activity.coding[0].code).toBe('CREATE');
  });
});

describe('statuses of a case that left no specimen', () => {
  it.each([
    ['stomach-abandoned', 'stopped'],
    ['colon-never-started', 'not-done'],
    ['colon-specimen-not-retrieved', 'completed'],
  ])('%s: the Procedure is %s, the report final, nothing is asked of pathology', (name, status) => {
    const bundle = bundleOfExample(name);
    const procedure = find(bundle, 'Procedure', '');
    expect(procedure.status).toBe(status);
    expect(procedure.statusReason !== undefined).toBe(status !== 'completed');
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').status).toBe('final');
    const orders = resourcesOf(bundle).filter(({ intent }) => intent === 'order');
    expect(orders).toEqual([]);
    expect(types(name)).not.toContain('Specimen');
  });

  it.each(['stomach-abandoned', 'colon-specimen-not-retrieved'])(
    '%s: what needs the specimen says why it is absent',
    (name) => {
      const area = find(bundleOfExample(name), 'Observation', 'specimen-area');
      expect(area.dataAbsentReason.coding[0].code).toBe('not-performed');
      expect(area.valueQuantity).toBeUndefined();
    },
  );

  it('a dissection that never began has no speed, not even an absent one', () => {
    const keys = resourcesOf(bundleOfExample('colon-never-started')).map((r) =>
      JSON.stringify(r.identifier ?? ''),
    );
    expect(keys.some((key) => key.includes('dissection-speed'))).toBe(false);
    expect(keys.some((key) => key.includes('procedure-duration'))).toBe(true);
  });
});

/** FHIR R4, Observation, constraint obs-6. */
const OBS_6 = 'dataAbsentReason.empty() or value.empty()';
const holds = (resource: object) => fhirpath.evaluate(resource, OBS_6, {}, r4, { async: false });

describe('an answer that was not told is said to be absent (FHIR R4, obs-6)', () => {
  const minimal = bundleOfExample('minimal');

  it.each([
    'fibrosis',
    'intraprocedural-bleeding',
    'muscle-injury',
    'perforation',
    'specimen-retrieved',
    'specimen-area',
    'dissection-speed',
  ])('%s', (item) => {
    const observation = find(minimal, 'Observation', item);
    expect(observation.dataAbsentReason.coding[0].code).toBe('unknown');
    expect(holds(observation)).toEqual([true]);
    expect(holds({ ...observation, valueString: 'none' })).toEqual([false]);
  });
});

describe('a unit that signs its report when the scope has left', () => {
  const text = JSON.stringify(example('complete'));

  it('has a final report while the specimen waits', () => {
    const bundle = bundleOf(text, { endoscopyReport: 'sign-at-once' });
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').status).toBe('final');
    expect(find(bundle, 'Specimen', 'specimen').status).toBe('available');
  });

  it('leaves out of it the verdict alone, which is still preliminary', () => {
    const bundle = bundleOf(text, { endoscopyReport: 'sign-at-once' });
    const listed = find(bundle, 'DiagnosticReport', 'endoscopy').result.map(
      ({ reference }: Draft) => reference,
    );
    const left = (bundle.entry ?? []).filter(
      ({ fullUrl, resource }) =>
        resource?.resourceType === 'Observation' && !listed.includes(fullUrl),
    );
    expect(left.map(({ resource }) => keyOf(resource))).toEqual(['curability']);
    expect(find(bundle, 'Observation', 'curability').status).toBe('preliminary');
  });

  it('differs from one that waits in nothing else', () => {
    const [waits, signs] = (['wait', 'sign-at-once'] as const).map((endoscopyReport) => {
      const bundle = structuredClone(bundleOf(text, { endoscopyReport }));
      const report = find(bundle, 'DiagnosticReport', 'endoscopy');
      return {
        ...report,
        result: undefined,
        rest: resourcesOf(bundle).filter((r) => r !== report),
      };
    });
    expect({ ...waits, status: 'final' }).toEqual(signs);
  });

  it('passes the gate but for the rule that the policy switches off', () => {
    const bundle = bundleOf(text, { endoscopyReport: 'sign-at-once' });
    expect(checkBundle(bundle, ['dr-dr-6'])).toMatchObject({ ok: true });
    expect(checkBundle(bundle)).toMatchObject({ ok: false, problems: [{ rule: 'dr-dr-6' }] });
  });
});

describe('the verdict in the report', () => {
  const reportOf = (name: string): Draft =>
    find(bundleOfExample(name), 'DiagnosticReport', 'endoscopy');

  it('is its coded conclusion where there is a class, and so for both codes of it', () => {
    const { conclusionCode, conclusion } = reportOf('stomach-abandoned');
    const verdict = find(bundleOfExample('stomach-abandoned'), 'Observation', 'curability');
    expect(verdict.status).toBe('final');
    expect(verdict.valueCodeableConcept.coding.map(({ code }: Draft) => code)).toEqual([
      'incomplete',
      'open',
    ]);
    expect(conclusionCode).toEqual([verdict.valueCodeableConcept]);
    expect(conclusion).toContain('Curability by ESGE 2022: Endoscopically incomplete.');
  });

  it.each([
    ['complete', 'Curability: open until pathology is back.'],
    ['colon-specimen-not-retrieved', 'Curability: no class, because there is no specimen.'],
  ])('is none in %s, and the conclusion says why', (name, sentence) => {
    const { conclusionCode, conclusion } = reportOf(name);
    expect(conclusionCode).toBeUndefined();
    expect(conclusion).toContain(sentence);
  });

  it('is followed by the scores and, at the end, the caution', () => {
    expect(reportOf('rectum').conclusion).toMatch(
      /Curability: open until pathology is back\. Scores: Limoges: 7 \(high\); .* Decision support, not a verdict\. [^.]*\.$/,
    );
  });
});
