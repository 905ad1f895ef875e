import { readdir, readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { checkBundle } from '../../src/conformance/index.js';
import { brokenShape } from '../../src/conformance/own-invariants.js';
import { shapeRules } from '../../src/conformance/profile-shape.js';
import { PROFILES } from '../../src/conformance/profiles.js';
import { subjectOf } from '../../src/conformance/resource-check.js';
import { type Edit, edited } from '../faults/edit.js';
import { BASE, local, to } from './sample-parts.js';
import { SAMPLES } from './sample-variants.js';

const said = (...edits: readonly Edit[]) => {
  const bundle = edited(SAMPLES.pending(), edits);
  const parts = (bundle.entry ?? []).map(({ resource }) => subjectOf(resource, PLACE));
  return [subjectOf(bundle, ''), ...parts]
    .flatMap(brokenShape)
    .map(({ problem: { rule, pointer, expected } }) => [rule, pointer, expected]);
};

const PLACE = '/entry/0/resource';

const PROFILE_FILE = 'StructureDefinition-dr-';
/** Of extensions, and of the outcomes of a unit. */
const NOT_OF_A_CASE: readonly string[] = ['Extension', 'MeasureReport'];

describe('what the published profiles demand of elements', () => {
  it.each<[string, Edit, string]>([
    ['a missing element', { at: 'Specimen.A/subject' }, 'Specimen.subject: at least 1'],
    [
      'a missing element of an element',
      { at: 'Specimen.A/collection/bodySite' },
      'Specimen.collection.bodySite: at least 1',
    ],
    [
      'a missing choice',
      { at: 'Observation.fibrosis/effectivePeriod' },
      'Observation.effective[x]: at least 1',
    ],
    [
      'an element too many',
      { at: 'Procedure.esd/reasonReference/-', set: to('Condition', 'delayed-bleeding') },
      'Procedure.reasonReference: at most 1',
    ],
    [
      'another code',
      { at: 'ServiceRequest.pathology/intent', set: 'plan' },
      'ServiceRequest.intent: order',
    ],
    [
      'no coding of our own',
      { at: 'ServiceRequest.pathology/code', set: { coding: [{ system: 'urn:x', code: 'x' }] } },
      'ServiceRequest.code.coding:local: at least 1',
    ],
    [
      'two codings of our own',
      {
        at: 'ServiceRequest.pathology/code/coding/-',
        set: local('request-kind', 'follow-up-endoscopy').coding?.[0],
      },
      'ServiceRequest.code.coding:local: at most 1',
    ],
    [
      'a prohibited element',
      { at: 'Media.bed/content/data', set: 'AAAA' },
      'Media.content.data: at most 0',
    ],
  ])('is checked: %s', (_name, edit, expected) => {
    expect(said(edit)).toEqual([['profile-shape', PLACE, expected]]);
  });

  it('is checked for extensions by their URL', () => {
    const at = 'Condition.delayed-bleeding/extension/0/url';
    const url = 'http://hl7.org/fhir/StructureDefinition/event-statusReason';
    const expected = 'Condition.extension:partOf: at least 1';
    expect(said({ at, set: url })).toEqual([['profile-shape', PLACE, expected]]);
  });

  it('is told by the gate where no constraint says it already', () => {
    const result = checkBundle(edited(SAMPLES.pending(), [{ at: 'Specimen.A/subject' }]));
    const problems = result.ok ? [] : result.problems;
    expect(problems.map(({ rule }) => rule)).toEqual(['profile-shape']);
  });

  it('is asked of every published profile that a resource of a case can claim', async () => {
    const folder = new URL('../../profiles/', import.meta.url);
    const published = (await readdir(folder)).filter((name) => name.startsWith(PROFILE_FILE));
    const claimable = await Promise.all(
      published.map(async (name) => {
        const definition: unknown = JSON.parse(await readFile(new URL(name, folder), 'utf8'));
        const { url, type } = z.object({ url: z.string(), type: z.string() }).parse(definition);
        return NOT_OF_A_CASE.includes(type) ? [] : [url];
      }),
    );
    expect(PROFILES.map(({ url }) => url).sort()).toEqual(claimable.flat().sort());
  });

  it('is asked for every profile, and never of elements within a slice', () => {
    for (const profile of PROFILES) {
      const rules = shapeRules(profile);
      expect(rules.length, profile.url).toBeGreaterThan(0);
      expect(rules.every(({ human }) => !/:.*\./.test(human))).toBe(true);
      expect(profile.url.startsWith(`${BASE}/StructureDefinition/dr-`)).toBe(true);
    }
  });
});
