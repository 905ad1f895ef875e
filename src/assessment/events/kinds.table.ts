import { ADVERSE_EVENTS, type EventKind } from '../../contract/index.js';

const ADVERSE = [...ADVERSE_EVENTS] as const;

/**
 * Kinds of events that are graded. AGREE counts a contact with an emergency ward and an admission
 * of their own; Clavien-Dindo does so as a deviation from the normal course.
 */
export const GRADED_KINDS: readonly EventKind[] = [
  ...ADVERSE,
  'readmission',
  'emergency-visit',
  'death',
];

/**
 * Kinds that answer "adverse event within 30 days" with yes, however likely a link is (agree2022,
 * window). A dilatation tells of a stricture (common practice, no source).
 */
export const UNTOWARD_KINDS: readonly EventKind[] = [...GRADED_KINDS, 'dilatation'];

/** Last day of the 30 days, counted from the day of the procedure. */
export const LAST_DAY = 30;
