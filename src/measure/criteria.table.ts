import type { IndicatorId } from '../outcomes/index.js';
import { type LocalCode, type LocalSet, localSystem } from '../terminology/index.js';
import type { PopulationName } from './codes.table.js';

/** Searches of R4 that say a population, without the days of the period. */
export type Searches = { readonly [P in PopulationName]?: string };

/** A token of one of our own code systems, or several with a comma: any of them. */
const token = <Set extends LocalSet>(set: Set, ...codes: readonly LocalCode<Set>[]): string =>
  codes.map((code) => `${localSystem(set)}|${code}`).join(',');

const ANY_ORGAN = token(
  'esd-procedure',
  'esd-oesophagus',
  'esd-stomach',
  'esd-duodenum',
  'esd-colon',
  'esd-rectum',
);

/** Every dissection of a unit, those that never began among them. */
const ALL = `Procedure?code=${ANY_ORGAN}`;
const BEGUN = 'status=completed,stopped';
const ATTEMPTED = `${ALL}&${BEGUN}`;
const LOWER = `Procedure?code=${token('esd-procedure', 'esd-colon', 'esd-rectum')}&${BEGUN}`;

const YES = token('answer', 'yes');
const RECURRENCE = `Observation?code=${token('esd-observation', 'local-recurrence')}`;
const bled = (rule: LocalCode<'rule'>): string =>
  `Observation?code=${token('esd-observation', 'delayed-bleeding')}&method=${token('rule', rule)}&value-concept=${YES}`;

/**
 * Populations that a search says exactly; a test runs each of them over Bundles and compares it
 * with the facts. What is absent no search of R4 can say: it asks for several resources of one
 * case at once, or for the course of days. There the criterion is about a row of the facts.
 */
export const SEARCHES: { readonly [Id in IndicatorId]: Searches } = {
  enBloc: { denominator: ATTEMPTED },
  r0: {
    numerator: `Observation?code=${token('esd-observation', 'resection-status')}&value-concept=${token('resection-status', 'r0')}&status=final`,
  },
  curative: {},
  intraproceduralPerforation: {
    denominator: ATTEMPTED,
    numerator: `Condition?code=${token('adverse-event', 'perforation')}`,
  },
  delayedPerforation: { denominator: ATTEMPTED },
  bleeding28d: { numerator: bled('bleed-28d') },
  bleeding6h30d: { denominator: LOWER, numerator: bled('bleed-6h-30d') },
  bleeding30dCsdb: { denominator: ATTEMPTED, numerator: bled('bleed-30d-csdb') },
  stricture: {},
  conversionToSurgery: { denominator: ATTEMPTED },
  death30d: { denominator: ATTEMPTED },
  readmission30d: { denominator: ATTEMPTED },
  adverseEvent30d: {
    denominator: ATTEMPTED,
    numerator: `Observation?code=${token('esd-observation', 'adverse-event-30d')}&value-concept=${YES}`,
  },
  residualOrRecurrence: {
    denominator: `${RECURRENCE}&value-concept=${token('answer', 'yes', 'no')}`,
    numerator: `${RECURRENCE}&value-concept=${YES}`,
  },
};

/** Every case of the period is in the initial population of every indicator. */
export const INITIAL_POPULATION = ALL;
