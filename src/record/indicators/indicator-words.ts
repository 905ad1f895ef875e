import type { IndicatorId, IndicatorWord, IndicatorWords } from '../../outcomes/index.js';
import type { Assessed } from '../view.js';
import {
  adverseEventWord,
  bleedingWord,
  deathWord,
  eventWord,
  isDelayedPerforation,
  isReadmission,
  surgeryWord,
} from './event-words.js';
import { curativeWord, enBlocWord, isAttempted, r0Word } from './resection-words.js';
import { recurrenceWord, strictureWord } from './scar-words.js';
import { courseOf, wordOf } from './window.js';

/**
 * What a record says of every indicator; time passes through its as-of messages alone.
 *
 * Source: each definition in the table of indicators.
 */
export function indicatorWords(known: Assessed): IndicatorWords {
  const { fields } = known.esdCase;
  if (!isAttempted(fields)) return NOT_APPLICABLE;
  const course = courseOf(known);
  return {
    enBloc: enBlocWord(fields),
    r0: r0Word(known),
    curative: curativeWord(known),
    intraproceduralPerforation: wordOf(fields.safety?.perforation?.occurred),
    delayedPerforation: eventWord(known, course, isDelayedPerforation),
    bleeding28d: bleedingWord('bleed-28d', known, course),
    bleeding6h30d: bleedingWord('bleed-6h-30d', known, course),
    bleeding30dCsdb: bleedingWord('bleed-30d-csdb', known, course),
    stricture: strictureWord(known, course),
    conversionToSurgery: surgeryWord(known, course),
    death30d: deathWord(known, course),
    readmission30d: eventWord(known, course, isReadmission),
    adverseEvent30d: adverseEventWord(known, course),
    residualOrRecurrence: recurrenceWord(known),
  };
}

/** A dissection that never began is in no denominator. */
const NOT_APPLICABLE: { readonly [Id in IndicatorId]: IndicatorWord } = {
  enBloc: 'not-applicable',
  r0: 'not-applicable',
  curative: 'not-applicable',
  intraproceduralPerforation: 'not-applicable',
  delayedPerforation: 'not-applicable',
  bleeding28d: 'not-applicable',
  bleeding6h30d: 'not-applicable',
  bleeding30dCsdb: 'not-applicable',
  stricture: 'not-applicable',
  conversionToSurgery: 'not-applicable',
  death30d: 'not-applicable',
  readmission30d: 'not-applicable',
  adverseEvent30d: 'not-applicable',
  residualOrRecurrence: 'not-applicable',
};
