import type { EventFields } from './event.js';
import { ADVERSE_EVENTS, type EventKind } from './words.table.js';

/** A part of the message that speaks of some kinds of events alone. */
export type EventPart =
  | 'course'
  | 'grades'
  | 'haemoglobin'
  | 'bleeding'
  | 'perforation'
  | 'inflammation'
  | 'stricture'
  | 'surgery'
  | 'meeting'
  | 'dilatation'
  | 'decline'
  | 'status';

interface PartRow {
  readonly part: EventPart & keyof EventFields;
  readonly kinds: readonly EventKind[];
  /** Whether an event of these kinds says nothing without the part. */
  readonly required: boolean;
}

const CONTACTS = ['readmission', 'emergency-visit'] as const;

/** Project definition. */
export const EVENT_PARTS: readonly PartRow[] = [
  { part: 'course', kinds: [...ADVERSE_EVENTS, ...CONTACTS], required: false },
  { part: 'grades', kinds: [...ADVERSE_EVENTS, ...CONTACTS, 'death'], required: false },
  {
    part: 'haemoglobin',
    kinds: [...ADVERSE_EVENTS, ...CONTACTS, 'status-at-30-days'],
    required: false,
  },
  { part: 'bleeding', kinds: ['delayed-bleeding'], required: false },
  { part: 'perforation', kinds: ['delayed-perforation'], required: false },
  { part: 'inflammation', kinds: ADVERSE_EVENTS, required: false },
  { part: 'stricture', kinds: ['stricture'], required: false },
  { part: 'surgery', kinds: ['surgery'], required: true },
  { part: 'meeting', kinds: ['meeting-decision'], required: true },
  { part: 'dilatation', kinds: ['dilatation'], required: false },
  { part: 'decline', kinds: ['follow-up-declined'], required: false },
  { part: 'status', kinds: ['status-at-30-days'], required: true },
];
