import type { Expression, Measure, MeasureGroup, MeasureGroupPopulation } from 'fhir/r4.js';
import { type Definition, INDICATORS, NOT_ADJUSTED } from '../outcomes/index.js';
import { STRUCTURE } from '../terminology/index.js';
import {
  dimensionConcept,
  indicatorConcept,
  MEASURE_IDENTIFIER,
  MEASURE_NAME,
  MEASURE_URL,
  MEASURE_VERSION,
  POPULATIONS,
  type PopulationName,
} from './codes.table.js';
import { INITIAL_POPULATION, SEARCHES } from './criteria.table.js';

/**
 * The definitions of all indicators as one published Measure, one group each. A criterion is a
 * search of R4 where one says it exactly, else FHIRPath over one row of the
 * export, which holds no case that was withdrawn.
 *
 * Source: FHIR R4 (4.0.1), Measure; the definitions, see the table of indicators.
 */
export const toMeasure = (): Measure => ({
  resourceType: 'Measure',
  id: MEASURE_NAME,
  url: MEASURE_URL,
  identifier: [MEASURE_IDENTIFIER],
  version: MEASURE_VERSION,
  name: 'DissectionOutcomes',
  title: 'Outcomes of endoscopic submucosal dissection',
  status: 'active',
  experimental: false,
  description:
    'Rates over the dissections of a unit. An outcome that nobody told is excluded and never ' +
    'counted as "no"; so is one whose days are not over.',
  disclaimer: NOT_ADJUSTED,
  scoring: STRUCTURE.proportion,
  type: [STRUCTURE.outcomeMeasure],
  rateAggregation:
    'Numerators, denominators and exclusions of units are added before a rate is made.',
  guidance:
    'Count cases: Procedures that a search finds, or that what it finds belongs to, each once. ' +
    'To a search add the days of the period: to Procedure and Observation as date, both ends ' +
    'included. Conditions have no such parameter: take those of Procedures of the period. FHIRPath ' +
    'is asked of each row of the export, where resected_on is the day.',
  group: INDICATORS.map(toGroup),
});

function toGroup(definition: Definition): MeasureGroup {
  const { title, good } = definition;
  return {
    code: indicatorConcept(definition.id),
    description: `${title}. A ${good === 'high' ? 'higher' : 'lower'} rate is better.`,
    population: populationsOf(definition),
    stratifier: [
      {
        code: dimensionConcept('organ'),
        criteria: byFact('organ', 'the organ of the lesion'),
      },
      {
        code: dimensionConcept('sizeBand'),
        criteria: byFact(columnOf('sizeBand'), 'band of the longest axis of the lesion'),
      },
      {
        code: dimensionConcept('operator'),
        criteria: byFact('operator', 'pseudonym of the operator, made for outcomes alone'),
      },
    ],
  };
}

function populationsOf({
  id,
  numerator,
  denominator,
  exclusions,
}: Definition): MeasureGroupPopulation[] {
  const word = columnOf(id);
  const facts: { readonly [P in PopulationName]: string } = {
    'initial-population': 'true',
    denominator: `${word} != 'not-applicable'`,
    'denominator-exclusion': `${word} = 'missing' or ${word} = 'window-open'`,
    numerator: `${word} = 'yes'`,
  };
  const searches = { ...SEARCHES[id], 'initial-population': INITIAL_POPULATION };
  const described: { readonly [P in PopulationName]: string } = {
    'initial-population': 'every dissection of the period that was not withdrawn',
    denominator,
    'denominator-exclusion': `outcomes that nobody told, and days that are not over. Outside of the denominator: ${exclusions.join('; ')}`,
    numerator: `${numerator}; of what is excluded nothing counts`,
  };
  return POPULATION_NAMES.map((name) => {
    const search = searches[name];
    return {
      code: POPULATIONS[name],
      description: described[name],
      criteria: search === undefined ? byFact(facts[name]) : bySearch(search),
    };
  });
}

/** Name of a column of the export: `enBloc` is `en_bloc`. */
const columnOf = (name: string): string =>
  name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

const POPULATION_NAMES = [
  'initial-population',
  'denominator',
  'denominator-exclusion',
  'numerator',
] as const satisfies readonly PopulationName[];

/** Source of the codes of languages: FHIR R4, expression-language. */
const bySearch = (expression: string): Expression => ({
  language: 'application/x-fhir-query',
  expression,
});

const byFact = (expression: string, description?: string): Expression => ({
  ...(description === undefined ? {} : { description }),
  language: 'text/fhirpath',
  expression,
});
