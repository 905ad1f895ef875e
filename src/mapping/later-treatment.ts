import type { Procedure } from 'fhir/r4.js';
import type { EventMessage } from '../record/index.js';
import { type CodeRef, LATER_PROCEDURES } from '../terminology/index.js';
import { toBodySite } from './condition.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { EVENT_FORMS } from './event-forms.table.js';
import { laterKey, ledTo, toEventResource } from './event-naming.js';

/**
 * The intervention for a complication, after the dissection and not a part of it. One that is told
 * as an event of its own, an operation or a dilatation, is said there alone.
 */
export function toTreatment(
  context: MappingContext,
  event: EventMessage,
): readonly Draft<Procedure>[] {
  const { fields } = event;
  const code = codeOf(event);
  const isComplication = EVENT_FORMS[fields.kind].as === 'Condition';
  if (code === undefined || !isComplication || isToldElsewhere(context, event)) return [];
  const key = `treatment.${laterKey(context, fields.event)}`;
  const at = fields.course?.intervenedAt;
  return [
    {
      key,
      resource: {
        resourceType: 'Procedure',
        ...head(context, 'Procedure', key, 'dr-sub-procedure'),
        status: 'completed',
        code: context.concept(code),
        subject: context.patient,
        ...(at === undefined ? {} : { performedDateTime: at }),
        reasonReference: [toEventResource(context, event)],
        bodySite: toBodySite(context),
      },
    },
  ];
}

/** Undefined where no intervention is told. */
function codeOf({ fields: { kind, course, bleeding } }: EventMessage): CodeRef | undefined {
  const isStopped = bleeding?.haemostasis !== undefined && bleeding.haemostasis.length > 0;
  switch (course?.intervention ?? (isStopped ? 'endoscopic' : 'none')) {
    case 'none':
      return undefined;
    case 'endoscopic':
      return kind === 'delayed-bleeding'
        ? LATER_PROCEDURES.haemostasis
        : LATER_PROCEDURES['endoscopic-treatment'];
    case 'radiological':
      return LATER_PROCEDURES['radiological-treatment'];
    case 'surgical':
      return LATER_PROCEDURES.operation;
  }
}

function isToldElsewhere(context: MappingContext, event: EventMessage): boolean {
  const isSurgical = event.fields.course?.intervention === 'surgical';
  return ledTo(context, event).some(({ fields: { kind } }) =>
    isSurgical ? kind === 'surgery' : kind === 'dilatation',
  );
}
