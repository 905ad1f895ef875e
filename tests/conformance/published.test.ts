import { readdirSync, readFileSync } from 'node:fs';
import fhirpath from 'fhirpath';
import { describe, expect, it } from 'vitest';
import {
  publishedCodes,
  publishedFiles,
  publishedProfiles,
  unpublishedCodings,
} from './published.js';
import { BASE } from './sample-parts.js';
import { SAMPLES } from './sample-variants.js';

const ROOT = new URL('../../', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, ROOT), 'utf8');

const SHORTHAND = readdirSync(new URL('profiles/input/fsh/', ROOT), {
  recursive: true,
  encoding: 'utf8',
})
  .filter((name) => name.endsWith('.fsh'))
  .map((name) => read(`profiles/input/fsh/${name}`))
  .join('\n');

const SETS = [
  ...new Set(
    read('shared/terminology/local-codes.csv')
      .split('\n')
      .slice(1)
      .flatMap((line) => line.match(/^[a-z][a-z0-9-]*(?=,)/) ?? []),
  ),
];

describe('the published package', () => {
  it('is what its sources name: nothing is missing and nothing is left over', () => {
    const profiles = [...SHORTHAND.matchAll(/^Id: (.+)$/gm)].map(([, id]) => id);
    const expected = [
      ...profiles.map((id) => `StructureDefinition-${id}.json`),
      ...[...SETS, 'dr-revision', 'dr-provenance'].map((set) => `CodeSystem-${set}.json`),
      ...SETS.map((set) => `ValueSet-${set}.json`),
      'Measure-dr-outcomes.json',
    ];
    expect(publishedFiles()).toEqual(expected.sort());
  });

  it('says of every profile what guides ask for', () => {
    for (const [url, profile] of publishedProfiles()) {
      expect(profile).toMatchObject({
        status: 'active',
        experimental: false,
        fhirVersion: '4.0.1',
        derivation: 'constraint',
        url: `${BASE}/StructureDefinition/${profile.id}`,
      });
      expect(profile.name).toMatch(/^[A-Z][A-Za-z0-9]+$/);
      expect(profile.snapshot?.element.length, url).toBeGreaterThan(10);
      expect(profile.differential?.element.length, url).toBeGreaterThan(1);
      expect(profile).not.toHaveProperty('date');
    }
  });

  it('holds every rule of the sources word for word', () => {
    const written = [...SHORTHAND.matchAll(/^Expression: "(.*)"$/gm)].map(([, text = '']) =>
      text.replace(/\\(.)/g, '$1'),
    );
    const published = [...publishedProfiles().values()].flatMap(({ differential }) =>
      (differential?.element ?? []).flatMap(({ constraint = [] }) =>
        constraint.map(({ expression }) => expression),
      ),
    );
    expect(written.length).toBeGreaterThan(60);
    expect(new Set(published)).toEqual(new Set(written));
  });

  it('binds only to value sets that it publishes', () => {
    const bound = [...publishedProfiles().values()].flatMap(({ differential }) =>
      (differential?.element ?? []).flatMap(({ binding }) => binding?.valueSet ?? []),
    );
    const own = bound.filter((url) => url.startsWith(BASE));
    expect(own.length).toBeGreaterThan(0);
    for (const url of own)
      expect(publishedFiles()).toContain(`ValueSet-${url.split('/').at(-1)}.json`);
  });

  it('says every code once', () => {
    for (const codes of publishedCodes().values()) expect(codes.size).toBeGreaterThan(0);
    for (const name of publishedFiles().filter((file) => file.startsWith('CodeSystem-'))) {
      const distinct = 'concept.code.isDistinct()';
      const system = JSON.parse(read(`profiles/${name}`));
      expect(fhirpath.evaluate(system, distinct, {}, undefined, { async: false })).toEqual([true]);
    }
  });
});

describe('codes of our own in the samples', () => {
  it.each(Object.entries(SAMPLES))('are published, in "%s"', (_name, sample) => {
    expect(unpublishedCodings(sample())).toEqual([]);
  });

  it('would be missed', () => {
    const text = JSON.stringify(SAMPLES.pending()).replace('"code":"F1"', '"code":"F9"');
    const unknown = [`${BASE}/CodeSystem/fibrosis-grade|F9`];
    expect(unpublishedCodings(JSON.parse(text))).toEqual(unknown);
  });
});
