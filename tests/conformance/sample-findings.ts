import type { BundleEntry, CodeableConcept, Observation } from 'fhir/r4.js';
import { BASE, coded, local, observation, quantity, to } from './sample-parts.js';

const ABSENT = 'http://terminology.hl7.org/CodeSystem/data-absent-reason';

const endoscopy = (item: string, rest: Partial<Observation>) =>
  observation('dr-endoscopy-finding', item, rest);

const chosen = (item: string, set: string, code: string) =>
  endoscopy(item, { valueCodeableConcept: local(set, code) });

/** A computed answer: it names its rule, and its inputs where these are Observations. */
const computed = (item: string, method: string, rest: Partial<Observation>) =>
  observation('dr-computed', item, { method: local('computation', method), ...rest });

/** The first version of a rule of this package. */
const byRule = (code: string): CodeableConcept => ({
  coding: [{ system: `${BASE}/CodeSystem/rule`, version: '1', code }],
});

const rate = (item: string, percent: number) => ({
  code: local('esd-observation', item),
  valueQuantity: quantity(percent, '%'),
});

/** What was seen, measured and computed in the sample case. */
export function sampleFindings(): readonly BundleEntry[] {
  return [
    endoscopy('lesion-description', {
      component: [
        { code: local('esd-observation', 'lesion-length'), valueQuantity: quantity(22, 'mm') },
        {
          code: local('esd-observation', 'paris-type'),
          valueCodeableConcept: local('paris', '0-IIa'),
        },
        {
          code: local('esd-observation', 'lesion-circumference'),
          dataAbsentReason: coded(ABSENT, 'unknown', 'Unknown'),
        },
      ],
    }),
    chosen('en-bloc', 'resection-integrity', 'en-bloc'),
    chosen('resection-completeness', 'resection-integrity', 'complete'),
    chosen('lifting-sign', 'lifting-sign', 'lifted'),
    chosen('fibrosis', 'fibrosis-grade', 'F1'),
    chosen('ulceration', 'ulceration', 'UL0'),
    chosen('intraprocedural-bleeding', 'bleeding-intensity', 'oozing'),
    chosen('muscle-injury', 'muscle-injury', 'I'),
    endoscopy('piece-count', { valueQuantity: quantity(1, '1') }),
    endoscopy('specimen-length', {
      specimen: to('Specimen', 'A'),
      valueQuantity: quantity(34, 'mm'),
    }),
    endoscopy('specimen-width', {
      specimen: to('Specimen', 'A'),
      valueQuantity: quantity(28, 'mm'),
    }),
    endoscopy('specimen-dimensions', {
      hasMember: [to('Observation', 'specimen-length'), to('Observation', 'specimen-width')],
    }),
    computed('specimen-area', 'specimen-area-ellipse', {
      specimen: to('Specimen', 'A'),
      derivedFrom: [to('Observation', 'specimen-length'), to('Observation', 'specimen-width')],
      valueQuantity: quantity(7.48, 'cm2'),
    }),
    computed('procedure-duration', 'duration-by-instants', { valueQuantity: quantity(90, 'min') }),
    computed('dissection-duration', 'duration-by-instants', { valueQuantity: quantity(55, 'min') }),
    computed('dissection-speed', 'area-by-dissection-time', {
      derivedFrom: [to('Observation', 'specimen-area'), to('Observation', 'dissection-duration')],
      valueQuantity: quantity(8.16, 'cm2/h'),
    }),
    observation('dr-score', 'bleeding-risk-score', {
      method: byRule('best-j'),
      valueQuantity: quantity(2, '{score}'),
      interpretation: [local('score-group', 'intermediate')],
      component: [
        rate('published-rate', 6.1),
        rate('published-rate-lower', 4.8),
        rate('published-rate-upper', 7.8),
      ],
    }),
    observation('dr-curability', 'curability', {
      method: byRule('esge-esd-2022'),
      status: 'preliminary',
      dataAbsentReason: coded(ABSENT, 'temp-unknown', 'Temporarily Unknown'),
    }),
  ];
}
