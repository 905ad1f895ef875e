import { describe, expect, it } from 'vitest';
import { ASKED_BASE_INVARIANTS } from '../../src/conformance/base-checks.js';
import { OWN_INVARIANTS } from '../../src/conformance/own-invariants.js';
import { quickTest, runOn } from '../../src/conformance/quick/compile.js';
import { resourceNode } from '../../src/conformance/quick/node.js';
import { holdsByReference } from '../../src/conformance/reference.js';
import { schemaProblems } from '../../src/conformance/schema.js';
import { structureProblems } from '../../src/conformance/structure.js';
import { BASE_FAULTS } from '../faults/base-faults.js';
import { edited } from '../faults/edit.js';
import { OWN_FAULTS } from '../faults/own-faults.js';
import { SEEDED_FAULTS } from '../faults/seeded-faults.js';
import { appointedBundle, SAMPLES } from './sample-variants.js';

/** Samples, and samples with every fault that the stages before the invariants let through. */
const BUNDLES = [
  ...Object.values(SAMPLES).map((sample) => sample()),
  ...OWN_FAULTS.map(({ sample, fault }) =>
    typeof fault === 'function' ? fault(SAMPLES[sample]()) : edited(SAMPLES[sample](), fault),
  ),
  ...SEEDED_FAULTS.map(({ edits }) => edited(appointedBundle(), edits)),
].filter((bundle) => schemaProblems(bundle).length + structureProblems(bundle).length === 0);

interface Typed {
  readonly resourceType?: unknown;
}

/** The distinct resources of these Bundles. */
const RESOURCES: readonly Typed[] = [
  ...new Map(
    BUNDLES.flatMap(({ entry = [] }) =>
      entry.flatMap(({ resource: r }) => (r === undefined ? [] : [[JSON.stringify(r), r]])),
    ),
  ).values(),
];

const rules = [...OWN_INVARIANTS.values()].flat();
const DISTINCT = [...new Map(rules.map((rule) => [rule.expression, rule])).values()];

const quickly = (expression: string, resource: unknown): boolean =>
  quickTest(expression, { atRoot: true })(resourceNode(resource), runOn(resource));

const typeOf = ({ resourceType }: Typed): unknown => resourceType;

describe('the quick evaluator, against FHIRPath itself', () => {
  it('is compared on many Bundles, most of them with a fault', () => {
    expect(BUNDLES.length).toBeGreaterThan(OWN_FAULTS.length);
    expect(RESOURCES.length).toBeGreaterThan(100);
  });

  it.each(DISTINCT.filter(({ context }) => context === 'Bundle'))(
    '$key: says yes to a Bundle exactly where FHIRPath does',
    ({ expression }) => {
      for (const bundle of BUNDLES) {
        const expected = holdsByReference(expression, structuredClone(bundle));
        expect(quickly(expression, bundle)).toBe(expected);
      }
    },
  );

  it.each(DISTINCT.filter(({ context }) => context !== 'Bundle'))(
    '$key: says yes to a $context exactly where FHIRPath does',
    ({ expression, context }) => {
      const resources = RESOURCES.filter((resource) => typeOf(resource) === context);
      expect(resources.length).toBeGreaterThan(0);
      for (const resource of resources) {
        const expected = holdsByReference(expression, structuredClone(resource));
        expect(quickly(expression, resource)).toBe(expected);
      }
    },
  );

  it.each(ASKED_BASE_INVARIANTS.filter(({ context }) => !context.includes('.')))(
    '$key of $context: never says yes where FHIRPath does not',
    ({ expression, context }) => {
      const faulty = BASE_FAULTS.flatMap(({ broken, right }) => [broken, right]);
      const all: readonly Typed[] = [...BUNDLES, ...RESOURCES, ...faulty];
      const resources = all.filter((resource) => typeOf(resource) === context);
      for (const resource of resources) {
        if (!quickly(expression, resource)) continue;
        expect(holdsByReference(expression, structuredClone(resource))).toBe(true);
      }
    },
  );

  // FHIRPath 2.0, mod: the remainder of the truncated division.
  it.each([
    ['7 mod 2 = 1', true],
    ['7 mod 2 = 0', false],
    ['6 mod 1 = 0', true],
    ['0 mod 3 = 0', true],
    ['(identifier mod 2).empty()', true],
  ])('takes the remainder of whole numbers by itself: %s', (expression, expected) => {
    const resource = { resourceType: 'Observation', status: 'final' };
    expect(quickly(expression, resource)).toBe(expected);
    expect(holdsByReference(expression, resource)).toBe(expected);
  });

  it.each([
    ['two values where one is expected', "identifier.value = 'a'"],
    ['times of different precision', 'issued < @2026-03-02'],
    ['a function it does not know', 'identifier.tail().empty()'],
    ['a name with a type', 'Observation.status.exists()'],
    ['equality of objects', 'code = code'],
    ['a remainder of half a point', '2.5 mod 1 = 0.5'],
    ['a remainder of several', 'identifier.value.count().combine(1) mod 1 = 0'],
  ])('leaves to FHIRPath: %s', (_name, expression) => {
    const resource = {
      resourceType: 'Observation',
      status: 'final',
      identifier: [{ value: 'a' }, { value: 'a' }],
      issued: '2026-03-02T09:00:00Z',
      code: { text: 'x' },
    };
    expect(quickly(expression, resource)).toBe(false);
  });
});
