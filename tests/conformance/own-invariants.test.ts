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
import { edited } from '../faults/edit.js';
import { OWN_FAULTS, type OwnFault } from '../faults/own-faults.js';
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
