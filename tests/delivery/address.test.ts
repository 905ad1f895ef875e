import fc from 'fast-check';
import type { Bundle } from 'fhir/r4.js';
import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';
import { describe, expect, it } from 'vitest';
import { addressBundle, type IdentityMode } from '../../src/delivery/address.js';
import { InvariantError } from '../../src/kernel/index.js';
import { checked, PATIENT, RECORD_NUMBER, SID, sampleBundle } from './support/sample-bundle.js';

/** Rules for the Bundle, project definition; each must be exactly [true]. */
const RULES: Readonly<Record<string, string>> = {
  'dr-bdl-2':
    "entry.fullUrl.all(matches('^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$'))",
  'dr-bdl-3': 'entry.fullUrl.isDistinct()',
  'dr-bdl-4':
    "entry.resource.descendants().reference.where($this.startsWith('urn:uuid:')).distinct().all($this in %resource.entry.fullUrl)",
  'dr-bdl-5': "entry.request.all(method = 'PUT' or (method = 'POST' and ifNoneExist.exists()))",
  'dr-bdl-6': "entry.request.where(method = 'PUT').url.isDistinct()",
  'dr-bdl-7':
    "entry.request.where(method = 'PUT' and url.contains('?')).url.all(matches('^[A-Z][A-Za-z]+\\\\?identifier=[^|&= ]+%7C[^|&= ]+$'))",
  'dr-bdl-8':
    "entry.where(request.url.contains('?identifier=')).all(resource.identifier.value.exists() and request.url.endsWith(resource.identifier.value.first()))",
  'dr-bdl-9': "entry.where(request.url.contains('?')).resource.id.empty()",
  'dr-bdl-11':
    'entry.resource.select(subject | patient | for).select(iif(reference.exists(), reference, identifier.value)).distinct().count() = 1',
  'dr-bdl-12':
    "entry.resource.descendants().reference.where($this.contains('?')).all(matches('^(Patient|Encounter|Practitioner|PractitionerRole|Organization|Location)\\\\?identifier='))",
};

const holds = (bundle: object, rule: string) =>
  fhirpath.evaluate(structuredClone(bundle), RULES[rule] ?? '', { resource: bundle }, r4, {
    async: false,
  });

const MODES: readonly IdentityMode[] = ['client-id', 'conditional'];
const LINKS = [{ kind: 'logical' }, { kind: 'literal', reference: 'Patient/p-1' }] as const;
const EVERY_FORM = MODES.flatMap((mode) => LINKS.map((link) => ({ mode, link, kind: link.kind })));

describe('the rules for the Bundle, after addressing', () => {
  it.each(EVERY_FORM)('all hold: $mode, $kind patient', ({ mode, link }) => {
    const addressed = addressBundle(sampleBundle(), mode, link);
    for (const rule of Object.keys(RULES))
      expect([rule, holds(addressed, rule)]).toEqual([rule, [true]]);
  });

  const entries = sampleBundle().entry ?? [];
  const change = (by: object) => ({
    resourceType: 'Bundle',
    entry: entries.map((entry, index) => (index === 0 ? { ...entry, ...by } : entry)),
  });
  const first = entries[0]?.resource;
  const conditional = { method: 'PUT', url: `Procedure?identifier=${SID}%7Ccase-1.esd` };
  it.each([
    ['dr-bdl-2', change({ fullUrl: 'urn:uuid:0' })],
    ['dr-bdl-3', { resourceType: 'Bundle', entry: [...entries, ...entries] }],
    ['dr-bdl-4', change({ fullUrl: 'urn:uuid:0' })],
    ['dr-bdl-5', change({ request: { method: 'POST', url: 'Procedure' } })],
    ['dr-bdl-6', { resourceType: 'Bundle', entry: [...entries, ...entries] }],
    ['dr-bdl-7', change({ request: { method: 'PUT', url: 'Procedure?code=1' } })],
    ['dr-bdl-8', change({ request: { ...conditional, url: `${conditional.url}.x` } })],
    ['dr-bdl-9', change({ request: conditional, resource: { ...first, id: 'x' } })],
    ['dr-bdl-11', change({ resource: { ...first, subject: { reference: 'Patient/other' } } })],
    [
      'dr-bdl-12',
      change({ resource: { ...first, subject: { reference: 'Device?identifier=a' } } }),
    ],
  ])('%s would be caught if broken', (rule, broken) => {
    expect(holds(broken, rule)).toEqual([false]);
  });
});

/** Every literal reference in a document, in the order of the document. */
function references(value: unknown): readonly unknown[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = 'reference' in value ? [value.reference] : [];
  return [...own, ...Object.values(value).flatMap(references)];
}

const resolvable = (bundle: Bundle) => {
  const fullUrls = (bundle.entry ?? []).map(({ fullUrl }): unknown => fullUrl);
  return references(bundle)
    .filter((reference) => String(reference).startsWith('urn:uuid:'))
    .every((reference) => fullUrls.includes(reference));
};

describe('addressing', () => {
  it('keeps every resource and leaves every reference resolvable, in each mode', () => {
    const value = fc.string({ minLength: 1 });
    const identifiers = fc.record({ system: fc.webUrl(), value });
    fc.assert(
      fc.property(
        fc.nat({ max: 12 }),
        identifiers,
        fc.constantFrom(...EVERY_FORM),
        (observations, identifier, { mode, link }) => {
          const patient = { type: 'Patient', identifier };
          const before = sampleBundle(observations, patient);
          const untouched = structuredClone(before);
          const after = addressBundle(before, mode, link);
          expect(before).toEqual(untouched);
          expect(resolvable(after)).toBe(true);

          const withoutAddress = JSON.parse(JSON.stringify(after), (key, part) => {
            if (part?.type === 'Patient' && link.kind === 'literal') {
              expect(part.reference).toBe(link.reference);
              return { type: part.type, identifier: part.identifier };
            }
            return key === 'id' || key === 'request' ? undefined : part;
          });
          const expected = JSON.parse(JSON.stringify(before), (key, part) =>
            key === 'request' ? undefined : part,
          );
          expect(withoutAddress).toEqual(expected);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('would be caught if it lost a resource', () => {
    const [, ...rest] = sampleBundle().entry ?? [];
    expect(resolvable({ resourceType: 'Bundle', type: 'transaction', entry: rest })).toBe(false);
  });

  it('by client id puts each resource at the UUID of its fullUrl, the Provenance too', () => {
    const { entry = [] } = addressBundle(sampleBundle(), 'client-id', { kind: 'logical' });
    for (const { fullUrl, resource, request } of entry) {
      expect(fullUrl).toBe(`urn:uuid:${resource?.id}`);
      const url = `${resource?.resourceType}/${resource?.id}`;
      expect(request).toEqual({ method: 'PUT', url });
    }
    expect(entry.at(-1)?.resource?.resourceType).toBe('Provenance');
  });

  it('conditionally, without a literal patient, changes nothing at all', () => {
    const bundle = sampleBundle();
    expect(addressBundle(bundle, 'conditional', { kind: 'logical' })).toBe(bundle);
  });

  it('adds the literal patient beside the identifier, and to no other actor', () => {
    const link = { kind: 'literal', reference: 'Patient/p-1' } as const;
    const text = JSON.stringify(addressBundle(sampleBundle(), 'conditional', link));
    const literal = JSON.stringify({ reference: 'Patient/p-1', ...PATIENT });
    expect(text.split(literal)).toHaveLength(5);
    expect(text.split('"Patient/p-1"')).toHaveLength(5);
    expect(text.split(RECORD_NUMBER)).toHaveLength(5);
  });

  it('is byte-identical when repeated', () => {
    const text = () => JSON.stringify(addressBundle(sampleBundle(), 'client-id', LINKS[1]));
    expect(text()).toBe(text());
  });

  it('refuses an entry that checking should have refused', () => {
    const broken = checked([{ resource: { resourceType: 'Condition', subject: PATIENT } }]);
    const act = () => addressBundle(broken, 'client-id', { kind: 'logical' });
    expect(act).toThrow(InvariantError);
  });
});
