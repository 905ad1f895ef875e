import { describe, expect, it } from 'vitest';
import {
  ASKED_BASE_INVARIANTS,
  BASE_NOT_ASKED,
  brokenInBase,
  lifted,
} from '../../src/conformance/base-checks.js';
import { BASE_INVARIANTS } from '../../src/conformance/base-invariants.generated.js';
import { holdsByReference } from '../../src/conformance/reference.js';
import { subjectOf } from '../../src/conformance/resource-check.js';
import { BASE_FAULTS } from '../faults/base-faults.js';
import { SAMPLES } from './sample-variants.js';

const nameOf = ({ key, context }: { key: string; context: string }) => `${context} ${key}`;

const keysIn = (resource: unknown) => brokenInBase(subjectOf(resource, '')).map((b) => b.rule.key);

/** Each resource of each sample, the Bundle itself among them. */
const RESOURCES = Object.values(SAMPLES).flatMap((sample) => {
  const bundle = sample();
  return [bundle, ...(bundle.entry ?? []).flatMap(({ resource }) => (resource ? [resource] : []))];
});

describe('the constraints of FHIR R4 on what we send', () => {
  it('are all asked, or left out with a reason', () => {
    const left = BASE_INVARIANTS.filter(({ key }) => Object.hasOwn(BASE_NOT_ASKED, key));
    expect(left.map(nameOf)).toEqual(['DomainResource dom-6']);
    expect(left.every(({ severity }) => severity === 'warning')).toBe(true);
    expect(ASKED_BASE_INVARIANTS.length + left.length).toBe(BASE_INVARIANTS.length);
  });

  it('each have a planted fault', () => {
    const planted = BASE_FAULTS.map(({ rule, context }) => `${context} ${rule}`);
    expect(planted.sort()).toEqual(ASKED_BASE_INVARIANTS.map(nameOf).sort());
  });

  it.each(ASKED_BASE_INVARIANTS)(
    '$context $key: holds in every sample, by FHIRPath itself',
    (r) => {
      for (const resource of RESOURCES) {
        const copy = structuredClone(resource);
        const expression = lifted(r, resource.resourceType);
        if (r.context.includes('.') || typeApplies(r.context, resource.resourceType)) {
          expect(holdsByReference(expression, copy)).toBe(true);
        }
      }
    },
  );

  it.each(BASE_FAULTS)('$context $rule: names its fault', ({ rule, broken }) => {
    expect(keysIn(broken)).toContain(rule);
  });

  it.each(BASE_FAULTS)('$context $rule: is silent once the fault is put right', (fault) => {
    expect(keysIn(fault.right)).not.toContain(fault.rule);
  });
});

/** Constraints of another resource type say nothing about this one. */
function typeApplies(context: string, type: string): boolean {
  const resources = ['Bundle', 'Condition', 'Observation', 'ServiceRequest', 'Appointment', 'Task'];
  return resources.includes(context) ? context === type : type !== 'Bundle';
}
