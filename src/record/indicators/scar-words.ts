import type { CaseFields, EventFields, ExaminationFields } from '../../contract/index.js';
import { type IndicatorWord, WINDOW_DAYS } from '../../outcomes/index.js';
import type { Assessed } from '../view.js';
import { type AfterCourse, wordInWindow } from './window.js';

/**
 * Share of the circumference from which a wound of the rectum is near-circular, in percent.
 * Derived from the limit in the oesophagus: common practice, no source.
 */
const NEAR_CIRCULAR_PERCENT = 75;

/** Neoplasia at the scar, over the lesions of which at least one check saw it. */
export function recurrenceWord({ afterwards }: Pick<Assessed, 'afterwards'>): IndicatorWord {
  const checks = afterwards.recurrences.filter(({ answer }) => answer.kind === 'determined');
  const answers = checks.map(({ answer }) => (answer.kind === 'determined' ? answer.value : 'no'));
  if (answers.includes('yes')) return 'yes';
  if (checks.length === 0) return 'not-applicable';
  const isPending = checks.some((check) => check.isPending);
  return isPending || !answers.includes('no') ? 'missing' : 'no';
}

/**
 * A stricture at any time; "no" needs that somebody looked or told from day 30 on.
 *
 * Source: definition from memory; what answers "no" is common practice.
 */
export function strictureWord(
  known: Pick<Assessed, 'esdCase' | 'events' | 'examinations' | 'assessment'>,
  course: AfterCourse,
): IndicatorWord {
  if (!canNarrow(known)) return 'not-applicable';
  const lastDay = WINDOW_DAYS.others;
  const looks = known.examinations.map(({ fields }) => fields);
  if (known.events.some(({ fields }) => tellsStricture(fields)) || looks.some(showsStricture)) {
    return wordInWindow(true, course, lastDay);
  }
  const isPassed = looks.some(
    ({ passage, examinedOn }) =>
      passage?.endoscopePasses === true && course.dayOf(examinedOn) >= lastDay,
  );
  const isTold = isPassed || course.toldToDay >= lastDay;
  return wordInWindow(isTold ? false : undefined, course, lastDay);
}

/** A narrow place through which a standard gastroscope passes is none by the definition. */
const tellsStricture = ({ kind, stricture, course }: EventFields): boolean =>
  kind === 'dilatation' ||
  (kind === 'stricture' &&
    (stricture?.gastroscopePasses !== true || course?.intervention === 'endoscopic'));

const showsStricture = ({ passage }: ExaminationFields): boolean =>
  passage !== undefined && (!passage.endoscopePasses || passage.dilated === true);

/** Whether the wound lies where a scar can narrow the way. */
function canNarrow({ esdCase, assessment }: Pick<Assessed, 'esdCase' | 'assessment'>): boolean {
  const { organ, site }: CaseFields['lesion'] = esdCase.fields.lesion;
  const { defectCircumference: wound } = assessment;
  switch (organ) {
    case 'oesophagus':
      return true;
    case 'stomach':
      return site === 'stomach-cardia' || site === 'stomach-pylorus';
    case 'rectum':
      return wound.kind === 'determined' && wound.value.percent >= NEAR_CIRCULAR_PERCENT;
    case 'duodenum':
    case 'colon':
      return false;
  }
}
