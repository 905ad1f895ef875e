import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import type { Draft } from '../support/consistent-case.js';
import { graphFaults } from './graph.js';
import { bundleAsOf, bundleOfLater, later, laterDocument } from './later.js';
import { find, keyOf, resourcesOf } from './records.js';
import { bundleOfDocuments, next, reported } from './reported.js';

const codeOf = (concept: Draft): string => concept?.coding?.at(-1)?.code;
const starting = (bundle: Bundle, type: string, start: string): readonly Draft[] =>
  resourcesOf(bundle).filter((r) => r.resourceType === type && keyOf(r).startsWith(start));
function only(bundle: Bundle, type: string, start: string): Draft {
  const found = starting(bundle, type, start);
  if (found.length !== 1) throw new Error(`${found.length} resources ${type} ${start}`);
  return found[0];
}
const urlOf = (bundle: Bundle, resource: Draft): string | undefined =>
  bundle.entry?.find((entry) => entry.resource === resource)?.fullUrl;
const isSound = (bundle: Bundle): void => {
  expect(graphFaults(bundle)).toEqual([]);
  expect(checkBundle(bundle)).toMatchObject({ ok: true });
};
/** The case of an example and documents about it. */
const record = (name: string, ...documents: readonly Draft[]): Bundle =>
  bundleOfDocuments([JSON.parse(later(name).esdCase), ...documents]);

describe('a delayed bleeding (FHIR R4, Condition and Procedure.complicationDetail)', () => {
  const bundle = bundleOfLater('events/stomach-bleeding', 'alone');
  const bleeding = only(bundle, 'Condition', 'delayed-bleeding.');

  it('is a Condition that is over, of its severity, part of the dissection', () => {
    expect(codeOf(bleeding.code)).toBe('delayed-bleeding');
    expect(bleeding.onsetDateTime).toBe('2026-05-10T02:40:00+02:00');
    expect(bleeding.clinicalStatus.coding[0].code).toBe('resolved');
    expect(bleeding.abatementDateTime).toBe('2026-05-13');
    expect(codeOf(bleeding.severity)).toBe('agree-iiia');
    const dissection = find(bundle, 'Procedure', '');
    expect(dissection.complicationDetail).toEqual([
      { reference: urlOf(bundle, bleeding), type: 'Condition' },
    ]);
    expect(dissection.complication).toEqual([bleeding.code]);
  });

  it('was treated by a Procedure of its own, which is no part of the dissection', () => {
    const treatment = only(bundle, 'Procedure', 'treatment.');
    expect(codeOf(treatment.code)).toBe('haemostasis');
    expect(treatment.performedDateTime).toBe('2026-05-10T04:25:00+02:00');
    expect(treatment.partOf).toBeUndefined();
    expect(treatment.reasonReference[0].reference).toBe(urlOf(bundle, bleeding));
  });

  it('has both grades by its facts, and the stated ones beside them', () => {
    const grades = starting(bundle, 'Observation', 'ae-severity.');
    expect(grades.map((r) => [codeOf(r.method), codeOf(r.valueCodeableConcept)])).toEqual([
      ['agree', 'agree-iiia'],
      ['clavien-dindo', 'clavien-dindo-iiia'],
    ]);
    for (const grade of grades) {
      expect(codeOf(grade.component[0].code)).toBe('stated-grade');
      expect(grade.component[0].valueCodeableConcept).toEqual(grade.valueCodeableConcept);
      expect(grade.focus[0].reference).toBe(urlOf(bundle, bleeding));
    }
  });

  it('answers each definition that speaks of the stomach, and the 30 days', () => {
    const answers = starting(bundle, 'Observation', 'delayed-bleeding.');
    expect(answers.map((r) => [codeOf(r.method), codeOf(r.valueCodeableConcept)])).toEqual([
      ['bleed-28d', 'yes'],
      ['bleed-30d-csdb', 'yes'],
    ]);
    const within = find(bundle, 'Observation', 'adverse-event-30d');
    expect(codeOf(within.valueCodeableConcept)).toBe('yes');
  });

  it('is told to people', () => {
    const { conclusion } = find(bundle, 'DiagnosticReport', 'endoscopy');
    expect(conclusion).toContain('Delayed bleeding, 2026-05-10: AGREE IIIa, Clavien-Dindo IIIa.');
  });
});

describe('no "no" before its time', () => {
  const keysOf = (bundle: Bundle): readonly string[] =>
    resourcesOf(bundle)
      .map(keyOf)
      .filter((key) => /^(delayed-bleeding|adverse-event-30d)/.test(key));
  const esdCase = JSON.parse(later('events/stomach-status').esdCase);

  it('nothing is said of bleeding or events on the day of the dissection', () => {
    expect(keysOf(bundleOfDocuments([esdCase]))).toEqual([]);
  });

  it('a decision of a meeting says nothing of them within the time', () => {
    const meeting = { ...laterDocument('events/stomach-meeting'), occurredOn: '2026-05-10' };
    expect(keysOf(record('events/stomach-meeting', meeting))).toEqual([]);
  });

  it('somebody who was asked after the time says no', () => {
    const bundle = bundleOfLater('events/stomach-status', 'alone');
    const within = find(bundle, 'Observation', 'adverse-event-30d');
    expect(codeOf(within.valueCodeableConcept)).toBe('no');
    expect(
      codeOf(find(bundle, 'Observation', 'delayed-bleeding.bleed-28d').valueCodeableConcept),
    ).toBe('no');
  });

  it('the end of the time alone says unknown', () => {
    const bundle = bundleAsOf([esdCase], '2026-07-01T00:00:00Z');
    const within = find(bundle, 'Observation', 'adverse-event-30d');
    expect(within.valueCodeableConcept).toBeUndefined();
    expect(within.dataAbsentReason.coding[0].code).toBe('unknown');
    isSound(bundle);
  });

  it('and what is told then is no correction of a final no', () => {
    const told = laterDocument('events/stomach-status');
    // The end of the time was known before the status was sent.
    const bundle = bundleAsOf([esdCase, told], '2026-03-06T00:00:00Z');
    expect(find(bundle, 'Observation', 'adverse-event-30d').status).toBe('amended');
    isSound(bundle);
  });
});

describe('treatments and what led to them', () => {
  it('an operation for a perforation is said once, with the perforation as its reason', () => {
    const bundle = bundleOfLater('events/duodenum-emergency-operation');
    const perforation = only(bundle, 'Condition', 'delayed-perforation.');
    const operation = only(bundle, 'Procedure', 'surgery.');
    expect(operation.reasonReference.map(({ reference }: Draft) => reference)).toEqual([
      urlOf(bundle, perforation),
    ]);
    const treatment = only(bundle, 'Procedure', 'treatment.');
    expect(treatment.status).toBe('entered-in-error');
  });

  it('without its own message it is the treatment of the perforation', () => {
    const bundle = bundleOfLater('events/duodenum-delayed-perforation', 'alone');
    expect(codeOf(only(bundle, 'Procedure', 'treatment.').code)).toBe('operation');
  });

  it('an operation by decision of a meeting names the decision and the lesion', () => {
    const bundle = bundleOfLater('events/stomach-surgery');
    const meeting = only(bundle, 'Observation', 'meeting-decision.');
    const operation = only(bundle, 'Procedure', 'surgery.');
    expect(operation.reasonReference.map(({ reference }: Draft) => reference)).toEqual([
      urlOf(bundle, meeting),
      urlOf(bundle, find(bundle, 'Condition', 'lesion')),
    ]);
    const findings = only(bundle, 'Observation', 'surgery-findings.');
    expect(findings.partOf[0].reference).toBe(urlOf(bundle, operation));
  });

  it('a cause that has not come is named by its number', () => {
    const bundle = bundleOfLater('events/oesophagus-dilatation', 'alone');
    const { reasonReference } = only(bundle, 'Procedure', 'dilatation.');
    expect(reasonReference).toEqual([
      { identifier: { system: 'urn:oid:2.999.1.12', value: 'EX-V-2026-004' } },
    ]);
  });

  it.each(['emergency-visit', 'death'])('a %s may follow a dilatation', (kind) => {
    const dilatation = laterDocument('events/oesophagus-dilatation');
    const { event } = dilatation;
    const after = {
      ...dilatation,
      ...{ kind, event: { ...event, value: 'EX-V-other' }, causedBy: event },
    };
    delete after.dilatation;
    const bundle = record('events/oesophagus-dilatation', dilatation, after);
    expect(only(bundle, 'Observation', `${kind}.`).focus[0].reference).toBe(
      urlOf(bundle, only(bundle, 'Procedure', 'dilatation.')),
    );
    isSound(bundle);
  });

  it('a complication may follow another one', () => {
    const stricture = laterDocument('events/oesophagus-stricture');
    const { event } = stricture;
    const fever = {
      ...stricture,
      kind: 'fever',
      event: { ...event, value: 'EX-V-other' },
      causedBy: event,
    };
    delete fever.stricture;
    const bundle = record('events/oesophagus-stricture', stricture, fever);
    const { extension } = only(bundle, 'Condition', 'fever.');
    expect(extension[1]).toEqual({
      url: 'http://hl7.org/fhir/StructureDefinition/condition-dueTo',
      valueReference: {
        reference: urlOf(bundle, only(bundle, 'Condition', 'stricture.')),
        type: 'Condition',
      },
    });
    isSound(bundle);
  });
});

describe('an event whose revision says something else', () => {
  const first = laterDocument('events/stomach-bleeding');

  it('of another kind is another resource, the first one entered in error', () => {
    const other = next(first, (revised) => {
      revised.kind = 'readmission';
      delete revised.bleeding;
    });
    const bundle = record('events/stomach-bleeding', first, other);
    const gone = only(bundle, 'Condition', 'delayed-bleeding.');
    expect(gone.verificationStatus.coding[0].code).toBe('entered-in-error');
    expect(gone.clinicalStatus).toBeUndefined();
    expect(find(bundle, 'Procedure', '').complicationDetail).toBeUndefined();
    expect(only(bundle, 'Observation', 'readmission.').status).toBe('final');
    expect(only(bundle, 'Observation', 'late-bleeding-findings.').status).toBe('entered-in-error');
    isSound(bundle);
  });

  it('with another fact corrects the grade that rests on it', () => {
    const other = next(first, (revised) => {
      revised.course.criticalCare = 'single-organ';
      delete revised.grades;
    });
    const bundle = record('events/stomach-bleeding', first, other);
    const agree = only(bundle, 'Observation', 'ae-severity.agree.');
    expect(codeOf(agree.valueCodeableConcept)).toBe('agree-iva');
    expect(agree.status).toBe('corrected');
    isSound(bundle);
  });

  it('gives the same bytes in any order of arrival', () => {
    const other = next(first, (revised) => (revised.kind = 'readmission'));
    delete other.bleeding;
    const [a, b] = [
      record('events/stomach-bleeding', first, other),
      record('events/stomach-bleeding', other, first),
    ];
    expect(JSON.stringify(a)).toBe(JSON.stringify(b));
  });
});

describe('the report of the dissection after an event (FHIR R4, diagnostic-report-status)', () => {
  const read = [...reported('stomach-high-risk'), laterDocument('events/stomach-bleeding')];

  it('is appended once it was final', () => {
    const bundle = bundleOfDocuments(read);
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').status).toBe('appended');
    isSound(bundle);
  });

  it('is amended where what came too late to be told had been unknown', () => {
    const late = read.with(-1, { ...read.at(-1), sentAt: '2026-07-02T08:00:00Z' });
    const bundle = bundleAsOf(late, '2026-07-01T00:00:00Z');
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').status).toBe('amended');
    isSound(bundle);
  });

  it('stays preliminary as long as the specimen waits', () => {
    const bundle = bundleOfLater('events/stomach-bleeding', 'alone');
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').status).toBe('preliminary');
  });
});
