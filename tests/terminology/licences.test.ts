import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { codeableConcept } from '../../src/terminology/index.js';
import { allRefs } from './all-refs.js';

const README = new URL('../../shared/terminology/README.md', import.meta.url);

/** The rows of the table of licences: URI and terms of each code system. */
const licences = readFileSync(README, 'utf8')
  .split('## Licences')[1]
  ?.split('\n')
  .filter((line) => line.startsWith('|'))
  .join('\n');

const isNamed = (system: string): boolean => licences?.includes(`\`${system}\``) ?? false;

const sent = new Set(
  allRefs().flatMap(([, ref]) =>
    (codeableConcept(ref, { snomedCt: true }).coding ?? []).map(({ system = '' }) => system),
  ),
);

describe('the licences in shared/terminology/README.md', () => {
  it('name every code system that is sent, but for our own and those of HL7', () => {
    const others = [...sent].filter(
      (system) =>
        !system.startsWith('https://dissection-records.example/') &&
        !/hl7\.org\/CodeSystem\/v[23]-|hl7\.org\/fhir\/administrative-gender/.test(system),
    );
    expect(others.length).toBeGreaterThan(3);
    expect(others.filter((system) => !isNamed(system))).toEqual([]);
    expect(isNamed('http://fhir.de/CodeSystem/bfarm/ops')).toBe(false);
  });

  it('say truly that no DICOM, NCI or national code is sent', () => {
    const unsent = /dicom|EVS|opcs-4|cms\.gov|bfarm/;
    expect([...sent].filter((system) => unsent.test(system))).toEqual([]);
    expect('http://fhir.de/CodeSystem/bfarm/ops').toMatch(unsent);
  });
});
