import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import type { Draft } from '../support/consistent-case.js';
import { codesOf } from './answers.js';
import { graphFaults } from './graph.js';
import { find, keyOf, resourcesOf } from './records.js';
import { bundleOfDocuments, next, reported } from './reported.js';

const POLICIES = ['wait', 'sign-at-once'] as const;
type Policy = (typeof POLICIES)[number];

const bundleUnder = (policy: Policy, ...documents: readonly Draft[]): Bundle => {
  const bundle = bundleOfDocuments(documents, { endoscopyReport: policy });
  expect(graphFaults(bundle)).toEqual([]);
  expect(checkBundle(bundle, policy === 'wait' ? [] : ['dr-dr-6'])).toMatchObject({ ok: true });
  return bundle;
};

const pathologyReports = (bundle: Bundle): readonly Draft[] =>
  resourcesOf(bundle).filter(
    (r) => r.resourceType === 'DiagnosticReport' && keyOf(r).startsWith('pathology.'),
  );

/** Where a case stands, by the elements that a reader asks. */
function standing(bundle: Bundle) {
  const of = (type: string, key: string): Draft => find(bundle, type, key);
  return {
    specimen: of('Specimen', 'specimen').status,
    request: of('ServiceRequest', 'pathology').status,
    endoscopy: of('DiagnosticReport', 'endoscopy').status,
    pathology: pathologyReports(bundle).map(({ status }) => status),
    verdict: of('Observation', 'curability').status,
    lesion: of('Condition', 'lesion').verificationStatus.coding[0].code,
    outcome: codesOf(of('Procedure', '').outcome, 'resection-status'),
  };
}

const statusOf = (bundle: Bundle, key: string) => find(bundle, 'Observation', key).status;
const statusesOf = (bundle: Bundle, profile: string): readonly string[] => {
  const claimed = resourcesOf(bundle).filter(({ meta }) => meta.profile[0].endsWith(`/${profile}`));
  return [...new Set(claimed.map(({ status }) => String(status)))].sort();
};

/**
 * Source: FHIR R4, code systems diagnostic-report-status, observation-status, specimen-status and
 * request-status: preliminary, final, then amended, corrected or appended.
 */
describe('from no report to the interim and the final one', () => {
  const [esd = {}, interim = {}, final = {}] = reported('rectum-final');
  const waiting = {
    specimen: 'available',
    request: 'active',
    verdict: 'preliminary',
    lesion: 'provisional',
    outcome: [],
  };

  it.each<[Policy, string]>([
    ['wait', 'preliminary'],
    ['sign-at-once', 'final'],
  ])('%s: the specimen waits while the report is awaited or interim', (policy, endoscopy) => {
    const before = bundleUnder(policy, esd);
    expect(standing(before)).toEqual({ ...waiting, endoscopy, pathology: [] });
    const bundle = bundleUnder(policy, esd, interim);
    expect(standing(bundle)).toEqual({ ...waiting, endoscopy, pathology: ['preliminary'] });
    expect(statusesOf(bundle, 'dr-pathology-finding')).toEqual(['preliminary']);
    const absent = find(bundle, 'Observation', 'vertical-margin').dataAbsentReason;
    expect(absent.coding[0].code).toBe('temp-unknown');
  });

  it.each<[Policy, string]>([
    ['wait', 'final'],
    ['sign-at-once', 'appended'],
  ])('%s: all is final with the final one, and the endoscopy report is %s', (policy, endoscopy) => {
    for (const documents of [
      [esd, interim, final],
      [esd, final],
    ]) {
      const bundle = bundleUnder(policy, ...documents);
      expect(standing(bundle)).toEqual({
        specimen: 'unavailable',
        request: 'completed',
        endoscopy,
        pathology: ['final'],
        verdict: 'final',
        lesion: 'confirmed',
        outcome: ['r0'],
      });
      expect(statusesOf(bundle, 'dr-pathology-finding')).toEqual(['final']);
    }
  });

  it('the verdict is the coded conclusion once it is final, and not before', () => {
    const conclusion = (...documents: readonly Draft[]) =>
      find(bundleUnder('wait', ...documents), 'DiagnosticReport', 'endoscopy').conclusionCode;
    expect(conclusion(esd, interim)).toBeUndefined();
    const [code] = conclusion(esd, interim, final);
    expect(codesOf(code, 'curability')).toEqual(['esge-high-risk']);
  });

  it('a class that is known with the interim report is preliminary', () => {
    const invaded = structuredClone(interim);
    invaded.findings.v = '1';
    const bundle = bundleUnder('wait', esd, invaded);
    const verdict = find(bundle, 'Observation', 'curability');
    expect(codesOf(verdict.valueCodeableConcept, 'curability')).toEqual(['esge-high-risk']);
    expect(verdict.status).toBe('preliminary');
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').conclusionCode).toBeUndefined();
  });
});

describe('an amendment of a final report', () => {
  const [esd = {}, first = {}, amended = {}] = reported('colon-perforation-closed-amended');

  it.each(POLICIES)(
    '%s: what further sections changed is amended, report and verdict',
    (policy) => {
      const bundle = bundleUnder(policy, esd, first, amended);
      expect(standing(bundle)).toMatchObject({
        endoscopy: 'amended',
        pathology: ['amended'],
        verdict: 'amended',
        specimen: 'unavailable',
      });
      expect(statusOf(bundle, 'invasion-depth')).toBe('amended');
      expect(statusOf(bundle, 'specimen-site')).toBe('final');
      expect(statusOf(bundle, 'differentiation')).toBe('final');
      expect(statusOf(bundle, 'fibrosis')).toBe('final');
    },
  );

  it('is told in the Provenance: the reason, and the verdict before and after', () => {
    const { reason, entity } = find(bundleUnder('wait', esd, first, amended), 'Provenance', '');
    expect(codesOf(reason[0], 'amendment-reason')).toEqual(['further-sections']);
    expect(reason[1].text).toContain('Verdict from very-low-risk (esge-esd-2022) to low-risk');
    expect(entity.map((one: Draft) => one.what.identifier.value)).toEqual([
      expect.stringMatching(/\.case\.1\.sha256-[0-9a-f]{64}$/),
      expect.stringMatching(/\.pathology\.2\.sha256-[0-9a-f]{64}$/),
    ]);
  });

  it('is no amendment where we never had the final report before', () => {
    const bundle = bundleUnder('wait', esd, amended);
    expect(standing(bundle)).toMatchObject({
      endoscopy: 'final',
      pathology: ['final'],
      verdict: 'final',
    });
    expect(statusOf(bundle, 'invasion-depth')).toBe('final');
  });

  it.each([
    ['wrong-finding', 'corrected'],
    ['transcription-error', 'corrected'],
    ['wrong-specimen', 'corrected'],
    ['second-opinion', 'amended'],
    ['further-stains', 'amended'],
  ])('for %s is %s', (reason, status) => {
    const bundle = bundleUnder(
      'wait',
      esd,
      first,
      next(first, (n) => {
        Object.assign(n.report, { version: 2, amendmentReason: reason });
        n.findings.hm = { state: 'X' };
        n.findings.resectionStatus = 'RX';
      }),
    );
    expect(pathologyReports(bundle).map((r) => r.status)).toEqual([status]);
    expect(statusOf(bundle, 'lateral-margin')).toBe(status);
    expect(statusOf(bundle, 'resection-status')).toBe(status);
    expect(statusOf(bundle, 'curability')).toBe(status);
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').status).toBe(status);
  });

  it('that only adds is appended, and corrects nothing', () => {
    const bundle = bundleUnder(
      'wait',
      esd,
      first,
      next(first, (n) => {
        Object.assign(n.report, { version: 2, amendmentReason: 'further-stains' });
        n.ancillary = { ...n.ancillary, ki67Percent: 20 };
      }),
    );
    expect(standing(bundle)).toMatchObject({ endoscopy: 'final', pathology: ['appended'] });
    expect(statusOf(bundle, 'ki-67-share')).toBe('final');
    expect(statusesOf(bundle, 'dr-pathology-finding')).toEqual(['final']);
  });

  it('without a reason is a correction of our transcription', () => {
    const bundle = bundleUnder(
      'wait',
      esd,
      first,
      next(first, (n) => (n.findings.sizeMm = 26)),
    );
    expect(standing(bundle).pathology).toEqual(['corrected']);
    expect(statusOf(bundle, 'tumour-dimensions')).toBe('corrected');
  });

  it('is none where the same was sent again', () => {
    const bundle = bundleUnder(
      'wait',
      esd,
      first,
      next(first, () => {}),
    );
    expect(standing(bundle)).toMatchObject({ endoscopy: 'final', pathology: ['final'] });
    expect(statusesOf(bundle, 'dr-pathology-finding')).toEqual(['final']);
  });

  it('to an interim report leaves the report amended, and the verdict waiting', () => {
    const bundle = bundleUnder(
      'wait',
      esd,
      first,
      next(first, (n) => {
        n.report.status = 'interim';
        n.findings.v = undefined;
        n.findings.histology = 'carcinoma';
        n.findings.depth = 'sm';
        n.findings.pT = undefined;
        n.findings.polypType = undefined;
        n.findings.histologicalType = undefined;
      }),
    );
    expect(standing(bundle)).toMatchObject({ pathology: ['amended'], verdict: 'preliminary' });
    expect(statusOf(bundle, 'histology')).toBe('corrected');
  });
});

describe('what an amended report no longer says', () => {
  const [esd = {}, first = {}] = reported('colon-perforation-closed');
  const dropped = next(first, (n) => {
    Object.assign(n.report, { version: 2, amendmentReason: 'wrong-finding' });
    n.findings.polypType = undefined;
    n.findings.vm = undefined;
    n.findings.resectionStatus = undefined;
  });

  it('is entered in error; what is counted says why it is absent', () => {
    const bundle = bundleUnder('wait', esd, first, dropped);
    const gone = resourcesOf(bundle).filter(({ status }) => status === 'entered-in-error');
    expect(gone.map(keyOf).sort()).toEqual(['polyp-type', 'stated-resection-status']);
    const margin = find(bundle, 'Observation', 'vertical-margin');
    expect(margin).toMatchObject({ status: 'corrected' });
    expect(margin.dataAbsentReason.coding[0].code).toBe('unknown');
    const listed = pathologyReports(bundle)[0].result.length;
    expect(listed).toBe(
      resourcesOf(bundle).filter(
        ({ meta, status }) =>
          meta.profile[0].endsWith('/dr-pathology-finding') && status !== 'entered-in-error',
      ).length,
    );
  });

  it('and all of it where the case now contradicts it; the report lets go of nothing valid', () => {
    const lost = next(esd, (n) => (n.specimen = { retrieved: false }));
    const bundle = bundleUnder('wait', esd, lost, first);
    expect(statusesOf(bundle, 'dr-pathology-finding')).toEqual(['entered-in-error']);
    expect(pathologyReports(bundle).map((r) => r.status)).toEqual(['entered-in-error']);
    expect(find(bundle, 'Procedure', '').report).toHaveLength(1);
    expect(find(bundle, 'Condition', 'lesion').verificationStatus.coding[0].code).toBe(
      'provisional',
    );
  });
});

describe('two accessions of one specimen', () => {
  const [esd = {}, first = {}] = reported('colon-perforation-closed');
  const second = next(first, (n) => {
    n.revision = 1;
    n.accession = { ...n.accession, value: 'EX-A-2026-0999' };
    n.report.reportedAt = '2026-05-20T10:00:00+02:00';
    n.sentAt = '2026-05-20T11:00:00+02:00';
    n.findings.hm = { state: '1', dysplasia: '1' };
    n.findings.resectionStatus = 'R1';
  });

  it('have a report each; only the one in force is counted', () => {
    const bundle = bundleUnder('wait', esd, first, second);
    const [inForce, other] = pathologyReports(bundle);
    expect(inForce.identifier[1].value).toBe('EX-A-2026-0999');
    expect(inForce.result.length).toBeGreaterThan(10);
    expect(other.identifier[1].value).toBe(first.accession.value);
    expect(other.result).toHaveLength(1);
    expect(other.conclusion).toContain('HM0');
    const margins = resourcesOf(bundle).filter((r) => keyOf(r) === 'lateral-margin');
    expect(margins.map((r) => codesOf(r.valueCodeableConcept, 'margin-status'))).toEqual([['hm1']]);
    expect(margins[0]?.status).toBe('amended');
    const numbers = resourcesOf(bundle).map((r) => JSON.stringify(r.identifier?.[0] ?? ''));
    expect(numbers.filter((one) => one.includes('EX-A-'))).toEqual([]);
  });

  it('of which one is set aside: its report is taken back without what stands', () => {
    const larger = structuredClone(second);
    larger.findings.sizeMm = 30;
    larger.specimen.longAxisMm = 32;
    const remeasured = next(esd, (n) => (n.specimen.longAxisMm = 29));
    const reports = (...documents: readonly Draft[]) =>
      pathologyReports(bundleUnder('wait', ...documents)).map((r) => [
        r.identifier[1].value === first.accession.value ? 'first' : 'second',
        r.status,
        (r.result ?? []).length > 0,
      ]);
    expect(reports(esd, first, larger)).toEqual([
      ['second', 'final', true],
      ['first', 'final', true],
    ]);
    expect(reports(esd, remeasured, first, larger)).toEqual([
      ['first', 'final', true],
      ['second', 'entered-in-error', false],
    ]);
  });
});
