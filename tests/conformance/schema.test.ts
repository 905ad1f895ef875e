import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { schemaProblems } from '../../src/conformance/schema.js';
import { structureProblems } from '../../src/conformance/structure.js';
import { type Edit, edited } from '../faults/edit.js';
import { sampleBundle } from './sample-bundle.js';
import { SAMPLES } from './sample-variants.js';

const schemaRules = (...edits: readonly Edit[]) =>
  schemaProblems(edited(sampleBundle(), edits)).map(({ rule, pointer }) => [
    rule,
    pointer.replace(/^\/entry\/\d+\/resource/, ''),
  ]);

describe('the R4 schema', () => {
  it.each(Object.entries(SAMPLES))('accepts the sample "%s"', (_name, sample) => {
    expect(schemaProblems(sample())).toEqual([]);
  });

  it.each([undefined, null, 1, 'x', [], {}, { resourceType: 'Patient' }])(
    'refuses %j as a Bundle',
    (value) => {
      expect(schemaProblems(value)).not.toEqual([]);
      expect(checkBundle(value).ok).toBe(false);
    },
  );

  // Required bindings: FHIR R4 (4.0.1), Condition.clinicalStatus, DiagnosticReport.status,
  // Bundle.entry.request.method.
  it.each([
    ['Condition.lesion/clinicalStatus/coding/0/code', 'ill', '/clinicalStatus/coding'],
    ['Condition.lesion/verificationStatus/coding/0/system', 'urn:x', '/verificationStatus/coding'],
    ['DiagnosticReport.endoscopy/status', 'done', '/status'],
    ['Media.bed/status', 'final', '/status'],
  ])('demands a code of the required value set at %s', (at, set, pointer) => {
    expect(schemaRules({ at, set })).toEqual([['r4-code', pointer]]);
  });

  it('says one fault once, and every fault at once', () => {
    const found = schemaRules(
      { at: 'Procedure.esd/status' },
      { at: 'Media.bed/content' },
      { at: 'Device.knife/udi', set: 'x' },
    );
    expect(found).toEqual([
      ['r4-required', ''],
      ['r4-unknown-element', '/udi'],
      ['r4-required', ''],
    ]);
  });

  it('demands one type of a required choice', () => {
    const at = 'MedicationAdministration.sedation/effectivePeriod';
    expect(schemaRules({ at })).toEqual([['r4-choice', '']]);
  });

  it('refuses a resource of a type that is not sent', () => {
    const at = 'entry:Media.bed/resource';
    const [problem] = schemaProblems(
      edited(sampleBundle(), [{ at, set: { resourceType: 'Patient' } }]),
    );
    expect(problem?.rule).toBe('r4-resource-type');
    expect(problem?.pointer).toMatch(/^\/entry\/\d+\/resource$/);
  });

  it('refuses a number that is not whole where the standard wants a whole one', () => {
    const at = 'MedicationStatement.antithrombotic/dosage/0/timing/repeat/frequency';
    const pointer = '/dosage/0/timing/repeat/frequency';
    expect(schemaRules({ at, set: 1.5 })).toEqual([['r4-type', pointer]]);
    expect(schemaRules({ at, set: 0 })).toEqual([['r4-minimum', pointer]]);
  });
});

describe('the structural walk', () => {
  const place = 'Procedure.esd/note';
  const found = (set: unknown) =>
    structureProblems(edited(sampleBundle(), [{ at: place, set }])).map(({ rule, pointer }) => [
      rule,
      pointer.replace(/^\/entry\/\d+\/resource\/note/, ''),
    ]);

  it.each(Object.entries(SAMPLES))('accepts the sample "%s"', (_name, sample) => {
    expect(structureProblems(sample())).toEqual([]);
  });

  // FHIR R4 (4.0.1), JSON: no empty objects, no empty arrays, no null; string: no blank value.
  it.each([
    ['structure-null', [null], '/0'],
    ['structure-empty-object', [{}], '/0'],
    ['structure-empty-list', [], ''],
    ['structure-blank', [{ text: ' \n\t' }], '/0/text'],
    ['structure-blank', [{ text: '' }], '/0/text'],
    ['structure-blank', [{ text: '\u00a0' }], '/0/text'],
    ['structure-unicode', [{ text: 'a \ud800 b' }], '/0/text'],
    ['structure-control', [{ text: 'a \u0000 b' }], '/0/text'],
    ['structure-control', [{ text: 'a \u001b b' }], '/0/text'],
  ])('says %s', (rule, set, pointer) => {
    expect(found(set)).toEqual([[rule, pointer]]);
  });

  it.each(['a\tb', 'a\r\nb', '\u{1f600}', '東京', 'a\u0085b'])('accepts the text %j', (text) => {
    expect(found([{ text }])).toEqual([]);
  });

  // The Gregorian calendar: months of 30 days, leap years, centuries.
  it.each([
    '2026-02-29',
    '2024-02-30',
    '1900-02-29',
    '2100-02-29T09:00:00Z',
    '2026-04-31',
    '2026-11-31T23:59:59+14:00',
  ])('says structure-date for %s', (time) => {
    expect(found([{ text: 'x', time }])).toEqual([['structure-date', '/0/time']]);
  });

  it.each(['2024-02-29', '2000-02-29', '2026-12-31T23:59:60Z', '2026-02', '2026', '2026-03-31'])(
    'accepts the date %s',
    (time) => {
      expect(found([{ text: 'x', time }])).toEqual([]);
    },
  );

  it('takes a text that only looks like a date for a text', () => {
    expect(found([{ text: '2026-02-30' }])).toEqual([]);
  });
});

describe('the gate', () => {
  it('asks later questions only of what the earlier stages accept', () => {
    const unsound: readonly Edit[] = [{ at: '/type', set: 'batch' }];
    const blank: readonly Edit[] = [{ at: 'Procedure.esd/note', set: [{ text: ' ' }] }];
    const malformed: readonly Edit[] = [{ at: 'Media.bed/content' }];
    const rules = (...edits: readonly (readonly Edit[])[]) => {
      const result = checkBundle(edited(sampleBundle(), edits.flat()));
      return result.ok ? [] : result.problems.map(({ rule }) => rule);
    };
    expect(rules(unsound)).toEqual(['dr-bdl-1']);
    expect(rules(unsound, blank)).toEqual(['structure-blank']);
    expect(rules(unsound, blank, malformed)).toEqual(['r4-required']);
  });

  it('changes nothing of what it checks', () => {
    for (const sample of Object.values(SAMPLES)) {
      const bundle = sample();
      checkBundle(bundle);
      expect(bundle).toEqual(sample());
      expect(JSON.stringify(bundle)).toBe(JSON.stringify(sample()));
    }
    const faulty = edited(sampleBundle(), [{ at: 'Procedure.esd/performer' }]);
    const before = structuredClone(faulty);
    checkBundle(faulty);
    expect(Reflect.ownKeys(faulty.entry?.[0]?.resource ?? {})).toEqual(
      Reflect.ownKeys(before.entry?.[0]?.resource ?? {}),
    );
  });

  it('leaves out dr-dr-6 where the unit signs its reports at once, and nothing else', () => {
    const signed = edited(sampleBundle(), [
      { at: 'DiagnosticReport.endoscopy/status', set: 'final' },
      { at: 'Observation.curability/status', set: 'final' },
      { at: 'Observation.curability/dataAbsentReason', set: { text: 'not known' } },
    ]);
    expect(checkBundle(signed).ok).toBe(false);
    expect(checkBundle(signed, ['dr-dr-6']).ok).toBe(true);
  });
});
