import type { Bundle } from 'fhir/r4.js';
import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import {
  brokenInBundle,
  brokenInResource,
  OWN_INVARIANTS,
} from '../../src/conformance/own-invariants.js';
import { subjectOf } from '../../src/conformance/resource-check.js';
import { type Edit, edited } from '../faults/edit.js';
import { OWN_FAULTS, type OwnFault } from '../faults/own-faults.js';
import { sampleFindings } from './sample-findings.js';
import { coded, local } from './sample-parts.js';
import { SAMPLES } from './sample-variants.js';

const PUBLISHED = new Set([...OWN_INVARIANTS.values()].flat().map(({ key }) => key));

/** Rules that a schema of the standard enforces before ours are asked. */
const REFUSED_EARLIER: Readonly<Record<string, string>> = {
  'dr-gen-6': 'the R4 form of dateTime demands a zone: the gate says r4-form',
};

/** The sample with the fault in it. */
const planted = ({ sample, fault }: OwnFault): Bundle =>
  typeof fault === 'function' ? fault(SAMPLES[sample]()) : edited(SAMPLES[sample](), fault);

/** Keys of our own rules that a Bundle breaks, errors and warnings alike. */
function ownKeys(bundle: Bundle): readonly string[] {
  const found = [
    ...brokenInBundle(subjectOf(bundle, '')),
    ...(bundle.entry ?? []).flatMap(({ resource }) => brokenInResource(subjectOf(resource, ''))),
  ];
  return [...new Set(found.map(({ rule }) => rule.key))].sort();
}

describe.each(Object.entries(SAMPLES))('the sample "%s"', (_name, sample) => {
  it('passes the gate without a problem or a warning', () => {
    expect(checkBundle(sample())).toMatchObject({ ok: true, warnings: [] });
  });
});

describe('the published rules of our own', () => {
  it('each have a planted fault, and no fault is about a rule that is gone', () => {
    expect(OWN_FAULTS.map(({ rule }) => rule).sort()).toEqual([...PUBLISHED].sort());
  });

  it.each(OWN_FAULTS)('$rule: holds in a sample that has its subject', (fault) => {
    const sample = SAMPLES[fault.sample]();
    const subject = fhirpath.evaluate(sample, fault.subject, {}, r4, { async: false });
    expect(subject).not.toHaveLength(0);
    expect(ownKeys(SAMPLES[fault.sample]())).toEqual([]);
  });

  it.each(OWN_FAULTS)('$rule: is broken by its fault, and no other rule of ours is', (fault) => {
    expect(ownKeys(planted(fault))).toEqual([fault.rule, ...(fault.also ?? [])].sort());
  });

  it.each(OWN_FAULTS)('$rule: is named by the gate', (fault) => {
    const result = checkBundle(planted(fault));
    const said = [...result.warnings, ...(result.ok ? [] : result.problems)];
    const named = Object.hasOwn(REFUSED_EARLIER, fault.rule) ? 'r4-form' : fault.rule;
    expect(said.map(({ rule }) => rule)).toContain(named);
  });
});

/** @returns keys of our own rules that the sample breaks once it is changed */
const keysAfter = (sample: keyof typeof SAMPLES, ...edits: readonly Edit[]): readonly string[] =>
  ownKeys(edited(SAMPLES[sample](), edits));

describe('a final class of curability', () => {
  const classes = 'Observation.curability/valueCodeableConcept/coding';
  const inPathology: readonly Edit[] = [
    { at: 'DiagnosticReport.pathology/status', set: 'partial' },
    { at: 'Condition.lesion/verificationStatus/coding/0/code', set: 'provisional' },
  ];

  it.each(['no-rule', 'incomplete'])('needs no pathology report where it is %s', (code) => {
    const other: Edit = { at: `${classes}/0/code`, set: code };
    const group: Edit = { at: `${classes}/1/code`, set: 'open' };
    const concluded: Edit = {
      at: 'DiagnosticReport.endoscopy/conclusionCode/0/coding/0/code',
      set: code,
    };
    expect(keysAfter('reported', ...inPathology, other, group, concluded)).toEqual([]);
    expect(keysAfter('reported', ...inPathology)).toEqual(['dr-cli-4']);
  });

  it('may rest on a report of the laboratory, which is not ours', () => {
    const theirs: Edit = {
      at: 'Procedure.esd/report/-',
      set: { reference: 'DiagnosticReport/of-the-laboratory' },
    };
    expect(keysAfter('reported', ...inPathology, theirs)).toEqual([]);
  });

  const derived: readonly Edit[] = [
    {
      at: 'Observation.resection-status/valueCodeableConcept',
      set: local('resection-status', 'rx'),
    },
    { at: 'Procedure.esd/outcome', set: local('resection-status', 'rx') },
  ];

  it.each([
    ['a lateral margin that is not free', 'Observation.lateral-margin', 'margin-status', 'hmx'],
    ['a vertical margin that is not free', 'Observation.vertical-margin', 'margin-status', 'vmx'],
    ['several pieces', 'Observation.en-bloc', 'resection-integrity', 'piecemeal'],
  ])('is not curative with %s', (_name, finding, set, code) => {
    const edit: Edit = { at: `${finding}/valueCodeableConcept`, set: local(set, code) };
    expect(keysAfter('reported', edit)).toEqual(['dr-cli-1']);
    expect(keysAfter('reported', edit, ...derived)).toEqual(['dr-cli-2']);
    expect(keysAfter('non-curative', edit, ...derived)).toEqual([]);
  });

  it('of a lesion within the epithelium needs no answer for its vessels', () => {
    const vessels = 'Observation.lymphovascular-invasion';
    const gone: Edit = { at: `${vessels}/valueCodeableConcept` };
    const because = (code: string): Edit => ({
      at: `${vessels}/dataAbsentReason`,
      set: coded('http://terminology.hl7.org/CodeSystem/data-absent-reason', code, code),
    });
    expect(keysAfter('reported', gone, because('not-applicable'))).toEqual([]);
    expect(keysAfter('reported', gone, because('unknown'))).toEqual(['dr-cli-3']);
  });

  it('is never the word indeterminate', () => {
    const edit: Edit = { at: `${classes}/0/code`, set: 'indeterminate' };
    expect(keysAfter('incomplete', edit)).toContain('dr-r-cur-1');
  });
});

describe('a preliminary verdict', () => {
  const signed: Edit = { at: 'DiagnosticReport.endoscopy/status', set: 'final' };
  const last = sampleFindings().length - 1;
  const leftOut: Edit = { at: `DiagnosticReport.endoscopy/result/${last}` };

  it('may stand outside of a report that was signed at once, and must not stand within it', () => {
    expect(keysAfter('pending', signed, leftOut)).toEqual(['dr-dr-6']);
    expect(keysAfter('pending', signed)).toEqual(['dr-dr-3', 'dr-dr-6']);
  });

  it('must not stand outside of a report that is still preliminary itself', () => {
    expect(keysAfter('pending', leftOut)).toEqual(['dr-dr-4']);
  });
});

describe('the onset of a complication after the procedure', () => {
  const onset = (set: string): Edit => ({ at: 'Condition.delayed-bleeding/onsetDateTime', set });

  it.each([
    ['2026-03-02T10:30:00+01:00', []],
    ['2026-03-02T09:30:00Z', []],
    ['2026-03-02T09:29:59Z', ['dr-con-1']],
    ['2026-03-02', []],
    ['2026-03-01', ['dr-con-1']],
    ['2026-04-30', []],
  ])('%s: %j', (at, keys) => {
    expect(keysAfter('pending', onset(at))).toEqual(keys);
  });
});

describe('a withdrawn case', () => {
  it.each([
    ['Condition.lesion/verificationStatus/coding/0/code', 'confirmed'],
    ['Media.bed/status', 'completed'],
    ['DiagnosticReport.endoscopy/status', 'preliminary'],
  ])('leaves nothing valid: %s', (at, set) => {
    expect(keysAfter('withdrawn', { at, set })).toContain('dr-wdr-1');
  });

  it.each([
    ['Appointment.first-check/status', 'proposed'],
    ['Task.check/code/coding/0/code', 'surgery-referral'],
  ])('leaves what is booked, nothing proposed and no other task: %s', (at, set) => {
    expect(keysAfter('withdrawn and booked', { at, set })).toContain('dr-wdr-1');
  });

  it('is alone nullified', () => {
    const nullified: Edit = { at: 'Provenance.state-1/activity/coding/0/code', set: 'NULLIFY' };
    expect(keysAfter('pending', nullified)).toEqual(['dr-wdr-2']);
  });
});

describe('a rule of severity warning', () => {
  it.each(['dr-bdl-15', 'dr-gen-8', 'dr-med-2'])('%s does not hold a Bundle back', (key) => {
    const fault = OWN_FAULTS.find(({ rule }) => rule === key);
    expect(fault).toBeDefined();
    if (fault === undefined) return;
    const result = checkBundle(planted(fault));
    expect(result.ok).toBe(true);
    expect(result.warnings.map(({ rule }) => rule)).toEqual([key]);
  });
});
