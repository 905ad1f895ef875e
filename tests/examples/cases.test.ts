import { readdirSync, readFileSync } from 'node:fs';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type CaseFields, caseSchema, parseCase } from '../../src/contract/index.js';
import { minutesBetween } from '../../src/kernel/index.js';
import type { SchemaNode } from '../support/from-json-schema.js';
import { namesIn, namesOf } from './schema-names.js';

const FOLDER = 'examples/cases';
const files = readdirSync(FOLDER).sort();
const readme = readFileSync('examples/README.md', 'utf8');
const cases = files.map((file) => ({ file, sent: readCase(file) }));

/** Cases that replace one that was withdrawn: they are sent when the mistake has been seen. */
const anew: readonly string[] = readdirSync('examples/withdrawals').map(
  (file) =>
    JSON.parse(readFileSync(`examples/withdrawals/${file}`, 'utf8')).replacedBy?.value ?? '',
);

/** At once; a revision within the day, a case sent anew within two. */
function sentWithinMin({ case: { value }, revision }: CaseFields): number {
  if (anew.includes(value)) return 2880;
  return revision === 1 ? 75 : 720;
}

function readCase(file: string): CaseFields {
  const checked = parseCase(readFileSync(`${FOLDER}/${file}`));
  if (!checked.ok) throw new Error(`${file}: ${JSON.stringify(checked.problems)}`);
  return checked.value.fields;
}

describe('the example cases', () => {
  it.each(cases)('$file has its story, and holds nothing that is not marked as invented', (one) => {
    expect(readme).toContain(`\`${one.file}\``);
    const text = JSON.stringify(one.sent);
    const systems = text.match(/"system":"[^"]*"/g) ?? [];
    const values = text.match(/"value":"[^"]*"/g) ?? [];
    expect(systems.length).toBeGreaterThan(2);
    expect(systems.filter((found) => !found.startsWith('"system":"urn:oid:2.999.'))).toEqual([]);
    expect(values.filter((found) => !found.startsWith('"value":"EX-'))).toEqual([]);
    const urls = one.sent.lesion.images?.map(({ url }) => new URL(url).hostname) ?? [];
    expect(urls.filter((host) => !host.endsWith('.example'))).toEqual([]); // RFC 2606
  });

  it('are different cases, each lesion once', () => {
    const ids = cases.map(({ sent }) => sent.case.value);
    expect(new Set(ids).size).toBe(files.length);
    expect(files.length).toBeGreaterThanOrEqual(14);
  });

  it('use every field of the contract between them', () => {
    const schema: SchemaNode = JSON.parse(
      JSON.stringify(z.toJSONSchema(caseSchema, { io: 'input' })),
    );
    const used = new Set(cases.flatMap(({ sent }) => namesIn(sent)));
    expect(namesOf(schema).filter((name) => !used.has(name))).toEqual([]);
    expect(namesOf(schema)).toContain('/before/antithrombotics/*/inr');
  });

  it('show each organ, each outcome, and a dissection in each kind of tumour', () => {
    const organs = new Set(cases.map(({ sent }) => sent.lesion.organ));
    const outcomes = new Set(cases.map(({ sent }) => sent.resection.outcome));
    const tumours = new Set(cases.map(({ sent }) => sent.lesion.tumour));
    expect(organs).toEqual(new Set(['oesophagus', 'stomach', 'duodenum', 'colon', 'rectum']));
    expect(outcomes).toEqual(new Set(['en-bloc', 'piecemeal', 'abandoned', 'not-started']));
    expect(tumours.size).toBe(6); // five tumours, and none told in the least case
  });
});

// Common practice, no source, unless a work is named: what an expert would find odd.
describe('the example cases, as an endoscopist reads them', () => {
  it.each(cases)('$file: age, times and speed are plausible', ({ sent }) => {
    const { patient, times, specimen } = sent;
    const day = Temporal.PlainDate.from(times.scopeInAt.slice(0, 10));
    if (patient.bornOn !== undefined) {
      const lived = Temporal.PlainDate.from(patient.bornOn).until(day, { largestUnit: 'years' });
      expect(patient.ageYears).toBe(lived.years);
    }
    const sentAfterMin = minutesBetween(times.scopeOutAt, sent.sentAt);
    expect(sentAfterMin).toBeLessThanOrEqual(sentWithinMin(sent));
    const { firstIncisionAt, dissectionEndAt } = times;
    const { longAxisMm, shortAxisMm } = specimen ?? {};
    if (firstIncisionAt === undefined || dissectionEndAt === undefined) return;
    if (longAxisMm === undefined || shortAxisMm === undefined) return;
    const areaCm2 = (Math.PI / 4) * (longAxisMm / 10) * (shortAxisMm / 10);
    const cm2PerHour = (areaCm2 * 60) / minutesBetween(firstIncisionAt, dissectionEndAt);
    expect(cm2PerHour).toBeGreaterThan(2); // CC-13 asks for 0.5 to 60
    expect(cm2PerHour).toBeLessThan(15);
  });

  it.each(cases)('$file: marks, inspection, specimen and wound fit each other', ({ sent }) => {
    const { markers, safety, specimen, lesion, defect, resection } = sent;
    if (markers?.placed === true) {
      expect(markers.distanceMm).toBeGreaterThanOrEqual(2); // PC-01
      expect(markers.distanceMm).toBeLessThanOrEqual(5);
    }
    const inspectedAt = safety?.siteInspection?.inspectedAt;
    if (inspectedAt !== undefined && specimen?.retrievedAt !== undefined) {
      expect(minutesBetween(inspectedAt, specimen.retrievedAt)).toBeGreaterThan(0); // PC-40
    }
    if (resection.outcome !== 'en-bloc' || specimen?.longAxisMm === undefined) return;
    expect(specimen.longAxisMm).toBeGreaterThan(lesion.longAxisMm);
    expect(defect?.longAxisMm).toBeGreaterThan(specimen.longAxisMm);
    expect(specimen.pinned).toBe(true); // PC-42
  });

  it('the change of the clocks: 68 minutes of dissection, 128 on the wall (2000/84/EC)', () => {
    const { times } = readCase('rectum-clock-change.json');
    const { firstIncisionAt = '', dissectionEndAt = '' } = times;
    expect(minutesBetween(firstIncisionAt, dissectionEndAt)).toBe(68);
    const wall = [firstIncisionAt, dissectionEndAt].map((at) => `${at.slice(0, 19)}Z`);
    expect(minutesBetween(wall[0] ?? '', wall[1] ?? '')).toBe(128);
    for (const at of [firstIncisionAt, dissectionEndAt]) {
      const zoned = Temporal.Instant.from(at).toZonedDateTimeISO('Europe/Berlin');
      expect(zoned.offset).toBe(at.slice(19));
    }
  });

  it('two lesions of one session: one patient and one session, one after the other', () => {
    const first = readCase('stomach-two-lesions-first.json');
    const second = readCase('stomach-two-lesions-second.json');
    expect(second.session).toEqual(first.session);
    expect(second.encounter).toEqual(first.encounter);
    expect(second.patient).toEqual(first.patient);
    expect(second.case).not.toEqual(first.case);
    expect([first.lesionsInSession, second.lesionsInSession]).toEqual([2, 2]);
    expect(minutesBetween(first.times.scopeOutAt, second.times.scopeInAt)).toBeGreaterThan(0);
  });
});

describe('the example patients', () => {
  const bundle = JSON.parse(readFileSync('examples/patients.json', 'utf8'));
  const patients: readonly Patient[] = bundle.entry.map(
    (entry: { resource: Patient }) => entry.resource,
  );

  it.each(cases)('hold the patient of $file, born on the same day', ({ sent }) => {
    const { system, value, bornOn, sex } = sent.patient;
    const found = patients.filter(({ identifier }) => identifier[0]?.value === value);
    expect(found).toHaveLength(1);
    expect(found[0]?.identifier[0]?.system).toBe(system);
    if (bornOn !== undefined) expect(found[0]).toMatchObject({ birthDate: bornOn, gender: sex });
  });

  // HTEST "test health data": HL7 v3-ActReason, named by FHIR R4 as the label of test data.
  it('are labelled as test data, and nobody could take a name for a real one', () => {
    for (const { resourceType, meta, name } of patients) {
      expect(resourceType).toBe('Patient');
      expect(meta.security).toMatchObject([{ code: 'HTEST', display: 'test health data' }]);
      expect(name[0]?.family).toMatch(/^Example-/);
      expect(name[0]?.given[0]).toMatch(/^Invented-/);
    }
    expect(new Set(patients.map(({ name }) => name[0]?.family)).size).toBe(patients.length);
  });

  it('come as a transaction that can be sent twice without doubling anybody', () => {
    expect(bundle).toMatchObject({ resourceType: 'Bundle', type: 'transaction' });
    for (const { request, resource } of bundle.entry) {
      const { system, value } = resource.identifier[0];
      expect(request).toEqual({ method: 'PUT', url: `Patient?identifier=${system}%7C${value}` });
    }
  });
});

interface Patient {
  readonly resourceType: string;
  readonly meta: { readonly security: readonly object[] };
  readonly identifier: readonly { readonly system: string; readonly value: string }[];
  readonly name: readonly { readonly family: string; readonly given: readonly string[] }[];
}
