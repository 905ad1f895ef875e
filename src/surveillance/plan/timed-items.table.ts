import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { PlanTask } from './follow-up-plan.js';

/** Days after the day it counts from. */
export interface Days {
  readonly earliest: number;
  readonly target: number;
  readonly latest: number;
}

/** A task, or a timed examination outside the series, with its window in days. */
export interface TimedItem {
  readonly days: Days;
  readonly look: string;
  readonly cites: readonly Citation[];
}

const days = (earliest: number, target: number, latest: number): Days => ({
  earliest,
  target,
  latest,
});
const SOON = cite('esdPractice', 'within four weeks, as a meeting', 'derived');

/** Of every task; one without an entry has no day. */
export const TASK_DAYS: Readonly<Record<Exclude<PlanTask, 'return-to-screening'>, TimedItem>> = {
  'await-pathology': {
    days: days(14, 14, 28),
    look: 'Ask for the report: it is not there 14 days after the dissection.',
    cites: [cite('esdPractice', 'no report 14 days after the dissection', 'practice')],
  },
  'multidisciplinary-meeting': {
    days: days(14, 14, 28),
    look: 'A meeting weighs staging and further treatment; follow-up starts after its decision.',
    cites: [cite('esdPractice', 'meeting after 2 to 4 weeks', 'practice')],
  },
  'clinician-decision': {
    days: days(0, 14, 28),
    look: 'A clinician decides what follows.',
    cites: [SOON],
  },
  'expert-centre': {
    days: days(0, 14, 28),
    look: 'Refer to an expert centre.',
    cites: [SOON],
  },
  'surgery-referral': {
    days: days(0, 14, 28),
    look: 'Refer for the operation that the meeting decided on.',
    cites: [SOON],
  },
  'additional-treatment': {
    days: days(0, 14, 28),
    look: 'Arrange the treatment that the meeting decided on.',
    cites: [SOON],
  },
  'recurrence-treatment': {
    days: days(0, 14, 28),
    look: 'Treat the neoplasia at the scar.',
    cites: [SOON],
  },
  'booking-check': {
    days: days(0, 0, 0),
    look:
      'Look at the appointment: the plan does not ask for it on that day. Move it or cancel it; ' +
      'where the patient is late already, leave it and take an earlier place if there is one.',
    cites: [cite('esdPractice', 'an appointment is settled before its day', 'practice')],
  },
  'stricture-call': {
    days: days(7, 7, 14),
    look: 'Call: does the patient swallow solid food?',
    cites: [cite('esdPractice', 'call at 1 to 2 weeks', 'practice')],
  },
  'helicobacter-test': {
    days: days(0, 14, 28),
    look: 'Test for Helicobacter pylori.',
    cites: [
      cite('helicobacterConsensus', 'abstract: after resection of early cancer', 'published'),
      cite('esdPractice', 'test in every gastric case; within four weeks', 'derived'),
    ],
  },
  'helicobacter-treatment': {
    days: days(0, 14, 28),
    look: 'Treat Helicobacter pylori.',
    cites: [
      cite('helicobacterConsensus', 'abstract: after resection of early cancer', 'published'),
      cite('esdPractice', 'within four weeks', 'derived'),
    ],
  },
  'helicobacter-confirmation': {
    days: days(28, 42, 84),
    look: 'Confirm the eradication: 4 weeks after treatment, 2 weeks off acid suppression.',
    cites: [
      cite('esdPractice', '4 weeks after treatment, 2 weeks off; from memory', 'recalled'),
      cite('esdPractice', 'treatment soon after the dissection', 'derived'),
    ],
  },
};

/** Row of the tasks that look at an appointment; their days go by its day. */
export const BOOKING_CHECK_ROW = 'booking-check';
/** So many days before its day an appointment is best given back: common practice, no source. */
export const SETTLED_DAYS_BEFORE = 14;

export const STRICTURE_CHECK: TimedItem = {
  days: days(14, 14, 28),
  look: 'Look at the scar for a stricture; sooner at the first trouble with swallowing.',
  cites: [
    cite('esdPractice', 'endoscopy at 2 to 4 weeks, or at first dysphagia', 'practice'),
    cite('kim2014', 'abstract: more than 3/4 of the circumference', 'published'),
  ],
};

export const DILATATION: TimedItem = {
  days: days(7, 7, 14),
  look: 'Look again and dilate where needed.',
  cites: [cite('esdPractice', 'every 1 to 2 weeks while dilating', 'practice')],
};

export const COLONOSCOPY_ONCE: Pick<TimedItem, 'look' | 'cites'> = {
  look: 'Colonoscopy, once, if it was never done.',
  cites: [cite('esgeDuodenum2021', 'colonoscopy after a duodenal adenoma', 'published')],
};

/** Shares of the circumference from which a stricture is looked for, by the reading of the unit. */
export const WIDE_DEFECT_PERCENT = 75;

/**
 * By this share of the waiting time an examination may come early and still counts, and lie to
 * either side of a day where a rule names one: project rule.
 */
export const TOLERATED_SHARE = 0.1;

export const SECOND_LOOK = {
  note: 'second-look',
  says: 'No second endoscopy as a routine; one is a choice where the risk of bleeding is high.',
  cites: [
    cite(
      'secondLook',
      '3 trials, 854 patients: odds ratio 0.69 without (0.38 to 1.26)',
      'published',
    ),
  ],
};

export const STAGE_UNKNOWN = {
  note: 'gastritis-stage-unknown',
  says: 'The stage of atrophy or metaplasia (OLGA, OLGIM) is not known: take it once.',
  cites: [cite('esgeEsd2022', 'stage once if unknown; from memory', 'recalled')],
};
