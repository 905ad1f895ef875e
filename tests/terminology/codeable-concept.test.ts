import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import {
  codeableConcept,
  ESD_PROCEDURE,
  ESD_RECTUM_BY_COLONOSCOPE,
  localCoding,
  localRef,
  SPECIMEN_TYPE,
  WORD_CODES,
} from '../../src/terminology/index.js';

const OFF = { snomedCt: false };
const ON = { snomedCt: true };
const SNOMED = 'http://snomed.info/sct';
const OWN = 'https://dissection-records.example/fhir/CodeSystem/';

const systemsOf = (...args: Parameters<typeof codeableConcept>): readonly (string | undefined)[] =>
  (codeableConcept(...args).coding ?? []).map(({ system }) => system);

describe('a concept in FHIR', () => {
  it('names codes of others before our own', () => {
    expect(systemsOf(WORD_CODES.site.caecum, OFF)).toEqual([
      SNOMED,
      'http://terminology.hl7.org/CodeSystem/icd-o-3',
      `${OWN}gi-subsite`,
    ]);
  });

  it('names our own first for the dissection itself', () => {
    expect(systemsOf(ESD_RECTUM_BY_COLONOSCOPE, ON)).toEqual([`${OWN}esd-procedure`, SNOMED]);
  });

  it('leaves licence-bound codes out while the switch is off', () => {
    expect(systemsOf(ESD_RECTUM_BY_COLONOSCOPE, OFF)).toEqual([`${OWN}esd-procedure`]);
    expect(systemsOf(ESD_PROCEDURE.stomach, OFF)).toEqual([`${OWN}esd-procedure`]);
  });

  it('lets a wider free code of the same system step in, and only then', () => {
    const codes = (licences: { snomedCt: boolean }) =>
      codeableConcept(WORD_CODES.site['stomach-antrum'], licences)
        .coding?.filter(({ system }) => system === SNOMED)
        .map(({ display }) => display);
    expect(codes(OFF)).toEqual(['Stomach structure (body structure)']);
    expect(codes(ON)).toEqual(['Pyloric antrum']);
  });

  it('always carries a text for people', () => {
    expect(codeableConcept(SPECIMEN_TYPE, OFF).text).toBe('Endoscopic resection specimen');
    expect(codeableConcept({ open: [], text: 'Plain words' }, OFF)).toEqual({
      text: 'Plain words',
    });
  });

  it('makes a Coding of a code of our own', () => {
    expect(localCoding('jnet', '2A')).toEqual({
      system: `${OWN}jnet`,
      code: '2A',
      display: 'JNET type 2A',
    });
  });

  it('does not compile, and throws, with a code that its set does not hold', () => {
    // @ts-expect-error: the Paris classification has no 0-IV
    expect(() => localCoding('paris', '0-IV')).toThrow(InvariantError);
    // @ts-expect-error: JNET types are not Paris types
    expect(() => localRef({ set: 'paris', code: '2A' })).toThrow(InvariantError);
    // @ts-expect-error: a code that was only remembered is no key
    expect(() => codeableConcept({ open: ['dx-z86-0'], text: 'History' }, ON)).toThrow();
  });
});
