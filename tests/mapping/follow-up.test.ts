import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import type { Draft } from '../support/consistent-case.js';
import { bundleOfLater, later, laterDocument } from './later.js';
import { find, keyOf, resourcesOf } from './records.js';
import { bundleOfDocuments } from './reported.js';

const codeOf = (concept: Draft): string => concept?.coding?.at(-1)?.code;
const only = (bundle: ReturnType<typeof bundleOfLater>, type: string, start: string): Draft => {
  const found = resourcesOf(bundle).filter(
    (r) => r.resourceType === type && keyOf(r).startsWith(start),
  );
  if (found.length !== 1) throw new Error(`${found.length} resources ${type} ${start}`);
  return found[0];
};

describe('a follow-up endoscopy', () => {
  const bundle = bundleOfLater('examinations/colon-recurrence', 'alone');
  const procedure = only(bundle, 'Procedure', 'follow-up.');
  const report = only(bundle, 'DiagnosticReport', 'follow-up.');
  const urlOf = (resource: Draft) =>
    bundle.entry?.find((entry) => entry.resource === resource)?.fullUrl;

  it('is a Procedure of its own that answers a request, by its endoscopist', () => {
    expect(codeOf(procedure.code)).toBe('lower-follow-up-endoscopy');
    expect(procedure.basedOn).toEqual([
      {
        type: 'ServiceRequest',
        identifier: { system: 'urn:oid:2.999.1.14', value: 'EX-Q-2026-009' },
      },
    ]);
    expect(procedure.performer[0].actor.identifier.value).toBe('EX-D-02');
    expect(procedure.partOf).toBeUndefined();
    expect(procedure.report[0].reference).toBe(urlOf(report));
  });

  it('has findings that are part of it and of no other Procedure', () => {
    const findings = resourcesOf(bundle).filter((r) =>
      r.meta.profile[0].endsWith('dr-follow-up-finding'),
    );
    expect(findings.length).toBeGreaterThan(5);
    for (const { partOf } of findings) {
      expect(partOf).toEqual([{ reference: urlOf(procedure), type: 'Procedure' }]);
    }
  });

  it('leaves the report of the dissection as it was', () => {
    const { result } = find(bundle, 'DiagnosticReport', 'endoscopy');
    const listed = new Set(result.map(({ reference }: Draft) => reference));
    expect(report.result.some(({ reference }: Draft) => listed.has(reference))).toBe(false);
    expect(find(bundle, 'Procedure', '').report).not.toContainEqual(
      expect.objectContaining({ reference: urlOf(report) }),
    );
  });
});

describe('neoplasia at the scar', () => {
  const revised = bundleOfDocuments([
    JSON.parse(later('examinations/colon-recurrence').esdCase),
    laterDocument('examinations/colon-recurrence'),
    laterDocument('examinations/colon-recurrence-revised'),
  ]);

  it('is preliminary while its tissue waits, and so is the report', () => {
    const bundle = bundleOfLater('examinations/colon-recurrence', 'alone');
    const found = only(bundle, 'Observation', 'local-recurrence.');
    expect([codeOf(found.valueCodeableConcept), found.status]).toEqual(['yes', 'preliminary']);
    expect(only(bundle, 'DiagnosticReport', 'follow-up.').status).toBe('preliminary');
  });

  it('is final with its tissue, and no correction of what was preliminary', () => {
    const bundle = revised;
    const found = only(bundle, 'Observation', 'local-recurrence.');
    expect([codeOf(found.valueCodeableConcept), found.status]).toEqual(['yes', 'final']);
    expect(only(bundle, 'DiagnosticReport', 'follow-up.').status).toBe('final');
  });

  it('makes the lesion a recurrence (FHIR R4, condition-clinical)', () => {
    expect(codeOf(find(revised, 'Condition', 'lesion').clinicalStatus)).toBe('recurrence');
  });

  it.each([
    ['stomach-first', 'no'],
    ['oesophagus-scar', 'no'],
    ['oesophagus-barrett', undefined],
  ])('%s: %s, the lesion as it was', (name, answer) => {
    const bundle = bundleOfLater(`examinations/${name}`, 'alone');
    expect(codeOf(only(bundle, 'Observation', 'local-recurrence.').valueCodeableConcept)).toBe(
      answer,
    );
    expect(codeOf(find(bundle, 'Condition', 'lesion').clinicalStatus)).toBe('active');
  });

  it('is not told by a scar that was not seen', () => {
    const unseen = { ...laterDocument('examinations/stomach-first'), scar: { seen: false } };
    const bundle = bundleOfDocuments([
      JSON.parse(later('examinations/stomach-first').esdCase),
      unseen,
    ]);
    const found = only(bundle, 'Observation', 'local-recurrence.');
    expect(found.dataAbsentReason.coding[0].code).toBe('not-performed');
    expect(checkBundle(bundle)).toMatchObject({ ok: true });
  });

  it('that a later examination no longer finds leaves the lesion as it was', () => {
    const first = laterDocument('examinations/colon-recurrence-revised');
    const clean = {
      ...first,
      revision: 1,
      examination: { ...first.examination, value: 'EX-X-later' },
      ...{ examinedOn: '2026-11-10', sentAt: '2026-11-10T16:00:00+01:00' },
      scar: { seen: true, finding: 'none', biopsy: 'not-taken' },
    };
    delete clean.examinedAt;
    delete clean.next;
    const bundle = bundleOfDocuments([
      JSON.parse(later('examinations/colon-recurrence').esdCase),
      laterDocument('examinations/colon-recurrence'),
      first,
      clean,
    ]);
    expect(codeOf(find(bundle, 'Condition', 'lesion').clinicalStatus)).toBe('active');
    expect(checkBundle(bundle)).toMatchObject({ ok: true });
  });
});
