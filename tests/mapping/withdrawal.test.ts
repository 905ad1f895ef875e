import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import type { Draft } from '../support/consistent-case.js';
import { graphFaults } from './graph.js';
import { later, laterDocument } from './later.js';
import { find, resourcesOf } from './records.js';
import { bundleOfDocuments, next, reported } from './reported.js';

const withdrawal = laterDocument('withdrawals/minimal-wrong-patient');
const esdCase: Draft = JSON.parse(later('withdrawals/minimal-wrong-patient').esdCase);

/** The withdrawal of another case of the examples. */
const of = (document: Draft, reason = 'entered-in-error'): Draft => {
  const { system, value } = document.patient;
  const { replacedBy: _none, ...rest } = withdrawal;
  return {
    ...rest,
    ...{ case: document.case, patient: { system, value }, reason },
    sentAt: '2027-01-10T08:00:00+01:00',
  };
};

const standing = (bundle: Bundle): readonly string[] =>
  resourcesOf(bundle)
    .filter(({ resourceType }) => resourceType !== 'Provenance')
    .filter((r) => (r.status ?? r.verificationStatus?.coding[0].code) !== 'entered-in-error')
    .map(({ resourceType }) => resourceType);

const isSound = (bundle: Bundle): void => {
  expect(graphFaults(bundle)).toEqual([]);
  expect(checkBundle(bundle)).toMatchObject({ ok: true });
};

/** Source: FHIR R4, status codes entered-in-error; v3 DataOperation NULLIFY. */
describe('a case that was written under the wrong patient', () => {
  const bundle = bundleOfDocuments([esdCase, withdrawal]);

  it('leaves nothing that is valid', () => {
    expect(standing(bundle)).toEqual([]);
    expect(standing(bundleOfDocuments([esdCase]))).not.toEqual([]);
    isSound(bundle);
  });

  it('says so to people, and which case stands instead', () => {
    const words =
      'Withdrawn, not to be used: Wrong patient. Case EX-C-2026-020 of urn:oid:2.999.1.2 stands instead.';
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').conclusion).toBe(words);
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').text.div).toContain('Withdrawn');
    expect(find(bundle, 'Procedure', '').note).toEqual([{ text: words }]);
    expect(find(bundle, 'Procedure', '').text.div).not.toContain('Scope in');
  });

  it('is nullified for its reason by who took it back', () => {
    const provenance = find(bundle, 'Provenance', '');
    expect(provenance.activity.coding[0].code).toBe('NULLIFY');
    expect(provenance.reason[0].coding[0].code).toBe('wrong-patient');
    const who = provenance.agent.at(-1);
    expect(who.type.coding[0].code).toBe('performer');
    expect(who.who.identifier.value).toBe('EX-D-02');
  });

  it('stays withdrawn whatever comes later', () => {
    const revised = next({ ...esdCase, sentAt: '2026-07-01T10:00:00+02:00' }, () => {});
    const later = bundleOfDocuments([esdCase, withdrawal, revised]);
    expect(standing(later)).toEqual([]);
    isSound(later);
  });

  it('is the same where the withdrawal came before the case', () => {
    const [a, b] = [
      bundleOfDocuments([withdrawal, esdCase]),
      bundleOfDocuments([esdCase, withdrawal]),
    ];
    expect(JSON.stringify(a)).toBe(JSON.stringify(b));
  });
});

describe('a withdrawal after pathology and events', () => {
  const documents = reported('stomach-high-risk');
  const events = ['stomach-bleeding', 'stomach-meeting', 'stomach-surgery'].map((name) =>
    laterDocument(`events/${name}`),
  );
  const [first] = documents;
  const all = [...documents, ...events, of(first)];
  const bundle = bundleOfDocuments(all);

  it('takes back all that is ours', () => {
    expect(standing(bundle)).toEqual([]);
    isSound(bundle);
    const types = new Set(resourcesOf(bundle).map(({ resourceType }) => resourceType));
    expect([...types]).toEqual(expect.arrayContaining(['Specimen', 'Condition', 'Observation']));
  });

  it('says so in each report of ours', () => {
    const reports = resourcesOf(bundle).filter((r) => r.resourceType === 'DiagnosticReport');
    expect(reports).toHaveLength(2);
    for (const { conclusion, conclusionCode } of reports) {
      expect(conclusion).toBe('Withdrawn, not to be used: Entered in error.');
      expect(conclusionCode).toBeUndefined();
    }
  });

  it('takes back what a revision had dropped before', () => {
    const revised = next(events[0] ?? {}, (event) => {
      event.kind = 'readmission';
      delete event.bleeding;
    });
    const changed = bundleOfDocuments([...all, revised]);
    expect(standing(changed)).toEqual([]);
    isSound(changed);
  });
});
