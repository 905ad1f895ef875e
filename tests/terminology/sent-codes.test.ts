import type { Coding } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { readConceptRows, readLocalCodeRows } from '../../scripts/terminology/read-csv.js';
import * as terminology from '../../src/terminology/index.js';
import { codeableConcept, type Licences, localCoding } from '../../src/terminology/index.js';
import { allRefs, objectsIn } from './all-refs.js';

const concepts = readConceptRows();
const localCodes = readLocalCodeRows();
const OWN = 'https://dissection-records.example/fhir/CodeSystem/';
const OFF: Licences = { snomedCt: false };
const ON: Licences = { snomedCt: true };

/** Code systems of one country; no site has asked for them, and their terms differ. */
const NATIONAL = /opcs-4|cms\.gov|bfarm/;

/**
 * Why a coding must not leave the house; the tables of shared/terminology are the oracle.
 * A SNOMED CT row is licence-bound unless it says "yes" to the Global Patient Set of 2020-09 or
 * to the IPS free set of 2022-07, the two releases under CC BY 4.0.
 */
function faultOf({ system = '', code, display }: Coding, { snomedCt }: Licences): string {
  if (system.startsWith(OWN)) {
    const own = localCodes.find((row) => OWN + row.set === system && row.code === code);
    if (own === undefined) return 'unlisted';
    return own.display === display ? '' : 'other display';
  }
  const rows = concepts.filter((row) => row.system === system && row.code === code);
  if (rows.length === 0) return 'unlisted';
  if (!rows.some((row) => row.status.startsWith('verified-'))) return 'not verified';
  if (!rows.some((row) => row.display === display)) return 'other display';
  if (NATIONAL.test(system)) return 'national';
  const isSnomed = system === 'http://snomed.info/sct';
  const isFree = rows.every((row) => row.version_note.includes(': yes'));
  return isSnomed && !isFree && !snomedCt ? 'licence-bound' : '';
}

const faults = (licences: Licences): readonly string[] =>
  allRefs().flatMap(([path, ref]) =>
    (codeableConcept(ref, licences).coding ?? []).flatMap((coding) => {
      const fault = faultOf(coding, licences);
      return fault === '' ? [] : [`${path} ${coding.code}: ${fault}`];
    }),
  );

describe('every code that is sent, against shared/terminology', () => {
  it('sees the concepts of all tables', () => {
    expect(allRefs().length).toBeGreaterThan(800);
  });

  it.each([
    ['off', OFF],
    ['on', ON],
  ])('is listed, verified and licensed with the SNOMED CT switch %s', (_switch, licences) => {
    expect(faults(licences)).toEqual([]);
  });

  it('is so in the structural codes as well', () => {
    const codings = objectsIn(
      '',
      terminology.STRUCTURE,
      (value): value is Coding & object => 'system' in value,
    );
    expect(codings.length).toBeGreaterThan(30);
    expect(codings.filter(([, coding]) => faultOf(coding, OFF) !== '')).toEqual([]);
  });

  it.each(Object.entries(terminology.UNITS))('is so in the unit %s', (_name, unit) => {
    expect(faultOf({ ...unit, display: unit.unit }, OFF)).toBe('');
  });
});

describe('the check of sent codes rejects', () => {
  const snomed = (code: string, display: string): Coding => ({
    system: 'http://snomed.info/sct',
    code,
    display,
  });

  it('a code that the tables do not hold', () => {
    expect(faultOf(snomed('138875005', 'SNOMED CT Concept'), ON)).toBe('unlisted');
    expect(faultOf({ system: `${OWN}paris`, code: '0-IV' }, ON)).toBe('unlisted');
  });

  it('a code that was only remembered', () => {
    const row = concepts.find(({ status }) => status === 'memory-only');
    expect(row).toBeDefined();
    expect(faultOf({ ...row }, ON)).toBe('not verified');
  });

  it('a licence-bound code while the switch is off, and lets it pass while it is on', () => {
    const name = 'Endoscopic submucosal dissection of rectum using colonoscope (procedure)';
    expect(faultOf(snomed('713154003', name), OFF)).toBe('licence-bound');
    expect(faultOf(snomed('713154003', name), ON)).toBe('');
  });

  it('a national code', () => {
    const row = concepts.find(({ code }) => code === 'G42.1');
    expect(faultOf({ ...row }, ON)).toBe('national');
  });

  it('a right code under a wrong name', () => {
    expect(faultOf(snomed('69695003', 'Esophageal structure (body structure)'), ON)).toBe(
      'other display',
    );
    expect(faultOf({ ...localCoding('paris', '0-Is'), display: 'Paris 0-Ip' }, ON)).toBe(
      'other display',
    );
  });
});
