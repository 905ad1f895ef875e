import type { EventFields } from '../../contract/index.js';
import { type IndicatorWord, WINDOW_DAYS } from '../../outcomes/index.js';
import type { Assessed } from '../view.js';
import { type AfterCourse, answerOf, wordInWindow } from './window.js';

const LAST_DAY = WINDOW_DAYS.others;

type Bleeding = 'bleed-28d' | 'bleed-6h-30d' | 'bleed-30d-csdb';

/** Delayed bleeding by one definition; not applicable in an organ of which it does not speak. */
export function bleedingWord(
  definition: Bleeding,
  { afterwards }: Pick<Assessed, 'afterwards'>,
  course: AfterCourse,
): IndicatorWord {
  const found = afterwards.delayedBleeding.find(({ rule }) => rule === definition);
  if (found === undefined) return 'not-applicable';
  const lastDay = definition === 'bleed-28d' ? WINDOW_DAYS.bleeding28d : LAST_DAY;
  return wordInWindow(answerOf(found.answer), course, lastDay);
}

export const adverseEventWord = (
  { afterwards }: Pick<Assessed, 'afterwards'>,
  course: AfterCourse,
): IndicatorWord => wordInWindow(answerOf(afterwards.adverseEvent30d), course, LAST_DAY);

/** Whether an event of this sort fell into the 30 days; silence is no "no". */
export function eventWord(
  { events }: Pick<Assessed, 'events'>,
  course: AfterCourse,
  isMeant: (event: EventFields) => boolean,
): IndicatorWord {
  const happened = events.some(
    ({ fields }) => isMeant(fields) && course.dayOf(fields.occurredOn) <= LAST_DAY,
  );
  return wordInWindow(happened || noneUnlessTold(course), course, LAST_DAY);
}

const noneUnlessTold = ({ toldToDay }: AfterCourse): false | undefined =>
  toldToDay >= LAST_DAY ? false : undefined;

/** Whoever was seen later did not die before, whether or not a status was told. */
export function deathWord(
  { events }: Pick<Assessed, 'events'>,
  course: AfterCourse,
): IndicatorWord {
  const deaths = events.filter(({ fields }) => fields.kind === 'death');
  const days = deaths.map(({ fields }) => course.dayOf(fields.occurredOn));
  if (days.some((day) => day <= LAST_DAY)) return wordInWindow(true, course, LAST_DAY);
  const isAlive = days.length > 0 || course.aliveToDay >= LAST_DAY;
  // A death that an event tells without its day may lie within.
  const isUntold = days.length === 0 && events.some(({ fields }) => fields.course?.died === true);
  return wordInWindow(isAlive && !isUntold ? false : undefined, course, LAST_DAY);
}

/**
 * An emergency operation, in the same session or after it. A conversion without its reason, or
 * for the tumour, is not one for an adverse event unless an event says so.
 */
export function surgeryWord(
  known: Pick<Assessed, 'esdCase' | 'events'>,
  course: AfterCourse,
): IndicatorWord {
  const { convertedTo, reason } = known.esdCase.fields.resection;
  if (convertedTo === 'surgery' && (reason === 'perforation' || reason === 'bleeding')) {
    return wordInWindow(true, course, LAST_DAY);
  }
  const word = eventWord(known, course, ({ surgery }) => surgery?.reason === 'adverse-event');
  return word === 'no' && convertedTo === 'surgery' && reason === undefined ? 'missing' : word;
}

export const isReadmission = ({ kind, course }: EventFields): boolean =>
  kind === 'readmission' || course?.readmitted === true;

export const isDelayedPerforation = ({ kind }: EventFields): boolean =>
  kind === 'delayed-perforation';
