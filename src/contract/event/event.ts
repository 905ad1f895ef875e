import { z } from 'zod';
import { revision, source } from '../envelope.js';
import type { DeepReadonly } from '../read-only.js';
import { date, identifier, instant, oneOf } from '../scalars.js';
import { decline, dilatation, meeting, status, surgery } from './after-events.js';
import {
  bleeding,
  course,
  grades,
  haemoglobin,
  inflammation,
  perforation,
  stricture,
} from './course.js';
import * as words from './words.table.js';

/**
 * What happened or was decided after a dissection, natural key case + event. One message says one
 * thing; which parts belong to which kind stands in `parts.table.ts`. Times carry their offset;
 * haemoglobin is in g/dL alone; a list that is absent was not told, an empty list says "none".
 */
export const eventSchema = z.strictObject({
  schema: z.literal('event/1'),
  source,
  case: identifier.describe('the dissection that this followed'),
  patient: identifier,
  event: identifier.describe('number of this event in the note system'),
  revision: revision.describe('of this message, for one case and event'),
  sentAt: instant,
  kind: oneOf(words.EVENT_KINDS),
  occurredOn: date.describe(
    'onset of an adverse event; day of a treatment, decision or death; day a status was learnt',
  ),
  occurredAt: instant.optional().describe('the same with its time, where that is known'),
  related: oneOf(words.RELATIONS)
    .optional()
    .describe('caused by the dissection, as the unit judges'),
  causedBy: identifier.optional().describe('the event of the same case that led to this one'),
  course: course.optional(),
  grades: grades.optional(),
  haemoglobin: haemoglobin.optional(),
  bleeding: bleeding.optional(),
  perforation: perforation.optional(),
  inflammation: inflammation.optional(),
  stricture: stricture.optional(),
  surgery: surgery.optional(),
  meeting: meeting.optional(),
  dilatation: dilatation.optional(),
  decline: decline.optional(),
  status: status.optional(),
});

export type EventFields = DeepReadonly<z.infer<typeof eventSchema>>;
