import type { Json, JsonObject } from '../../../src/sandbox/json.js';
import type { PublishedElement } from './published.js';

/** One value of each data type that a search parameter of ours looks at. */
const VALUES: Readonly<Record<string, Json>> = {
  CodeableConcept: { coding: [{ system: 'urn:example', code: 'a' }], text: 'a text' },
  Coding: { system: 'urn:example', code: 'b' },
  Identifier: { system: 'urn:example', value: '1' },
  Period: { start: '2026-01-02', end: '2026-01-03' },
  Timing: { event: ['2026-01-02'] },
  HumanName: { family: 'Example', given: ['Ada'] },
  Reference: { reference: 'Group/elsewhere' },
  boolean: true,
  canonical: 'http://example.org/canonical',
  code: 'a-code',
  date: '2026-01-02',
  dateTime: '2026-01-02T03:04:05Z',
  'http://hl7.org/fhirpath/System.String': 'a-url',
  instant: '2026-01-02T03:04:05Z',
  markdown: 'a text',
  string: 'a string',
  uri: 'http://example.org/uri',
};

/**
 * Makes resources in which the element at the path holds something: one for each data type that
 * the published definition lets it have.
 *
 * @param path as Observation.effective, without [x]
 * @param type the data type of a choice, where the expression names one
 * @param referredTo type that a reference points at
 */
export function madeUp(
  elements: ReadonlyMap<string, PublishedElement>,
  path: string,
  type: string | undefined,
  referredTo: string | undefined,
): readonly JsonObject[] {
  const [resourceType = '', ...names] = path.split('.');
  return inside(elements, resourceType, names, type, referredTo).map((content) => ({
    resourceType,
    ...content,
  }));
}

function inside(
  elements: ReadonlyMap<string, PublishedElement>,
  parent: string,
  [name = '', ...names]: readonly string[],
  wanted: string | undefined,
  referredTo: string | undefined,
): readonly JsonObject[] {
  const plain = elements.get(`${parent}.${name}`);
  const element = plain ?? elements.get(`${parent}.${name}[x]`);
  if (element === undefined) throw new Error(`R4 has no element ${parent}.${name}`);
  const types = (element.type ?? []).map(({ code }) => code);
  const searchable = types.filter((code) => code in VALUES || names.length > 0);
  return searchable
    .filter((code) => plain !== undefined || wanted === undefined || code === wanted)
    .flatMap((code) => {
      const key =
        plain === undefined ? name + code.slice(0, 1).toUpperCase() + code.slice(1) : name;
      const holder = /^(?:BackboneElement|Element)$/.test(code) ? `${parent}.${name}` : code;
      const values =
        names.length === 0
          ? [sampleOf(code, referredTo)]
          : inside(elements, holder, names, wanted, referredTo);
      return values.map((value) => ({ [key]: element.max === '1' ? value : [value] }));
    });
}

const sampleOf = (code: string, referredTo: string | undefined) =>
  code === 'Reference' && referredTo !== undefined
    ? { reference: `${referredTo}/1` }
    : (VALUES[code] ?? null);
