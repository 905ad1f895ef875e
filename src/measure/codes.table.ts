import type { CodeableConcept } from 'fhir/r4.js';
import type { Dimension, IndicatorId } from '../outcomes/index.js';
import { BASE, type LocalCode, localCoding, STRUCTURE } from '../terminology/index.js';

export const MEASURE_NAME = 'dr-outcomes';

/** Canonical of the Measure, without its version. */
export const MEASURE_URL = `${BASE}/Measure/${MEASURE_NAME}`;

/**
 * Version of the Measure. It rises when a definition changes, and not with the program: reports of
 * one version can be compared. A test holds the definitions against it.
 */
export const MEASURE_VERSION = '1.0.0';

/**
 * Business identifier of this version: versions stand beside each other on a server, as the reports
 * of each name theirs.
 */
export const MEASURE_IDENTIFIER = {
  system: `${BASE}/measure`,
  value: `${MEASURE_NAME}/${MEASURE_VERSION}`,
} as const;

/** What a report names. */
export const MEASURE = `${MEASURE_URL}|${MEASURE_VERSION}`;

/** Profile of the MeasureReports. */
export const REPORT_PROFILE = `${BASE}/StructureDefinition/dr-outcome-report`;

/** Extensions of the MeasureReport; the last one is of the standard. */
export const EXTENSION = {
  interval: `${BASE}/StructureDefinition/dr-rate-interval`,
  notCounted: `${BASE}/StructureDefinition/dr-not-counted`,
  absent: 'http://hl7.org/fhir/StructureDefinition/data-absent-reason',
} as const;

/** Code of each indicator in our own code system. */
export const INDICATOR_CODES: { readonly [Id in IndicatorId]: LocalCode<'outcome-indicator'> } = {
  enBloc: 'en-bloc',
  r0: 'r0',
  curative: 'curative',
  intraproceduralPerforation: 'intraprocedural-perforation',
  delayedPerforation: 'delayed-perforation',
  bleeding28d: 'bleeding-28d',
  bleeding6h30d: 'bleeding-6h-30d',
  bleeding30dCsdb: 'bleeding-30d-csdb',
  stricture: 'stricture',
  conversionToSurgery: 'conversion-to-surgery',
  death30d: 'death-30d',
  readmission30d: 'readmission-30d',
  adverseEvent30d: 'adverse-event-30d',
  residualOrRecurrence: 'residual-or-recurrence',
};

const DIMENSION_CODES: { readonly [D in Dimension]: LocalCode<'outcome-stratifier'> } = {
  organ: 'organ',
  ruleSet: 'rule-set',
  sizeBand: 'size-band',
  fibrosis: 'fibrosis',
  technique: 'technique',
  operator: 'operator',
  traineeBand: 'trainee-band',
};

/** The four populations of a rate, in the order in which they are written. */
export const POPULATIONS = {
  'initial-population': STRUCTURE.population.initial,
  denominator: STRUCTURE.population.denominator,
  'denominator-exclusion': STRUCTURE.population.exclusion,
  numerator: STRUCTURE.population.numerator,
} as const;
export type PopulationName = keyof typeof POPULATIONS;

export const indicatorConcept = (id: IndicatorId): CodeableConcept =>
  withText(localCoding('outcome-indicator', INDICATOR_CODES[id]));

export const dimensionConcept = (dimension: Dimension): CodeableConcept =>
  withText(localCoding('outcome-stratifier', DIMENSION_CODES[dimension]));

const withText = (coding: ReturnType<typeof localCoding>): CodeableConcept => ({
  coding: [coding],
  ...(coding.display === undefined ? {} : { text: coding.display }),
});
