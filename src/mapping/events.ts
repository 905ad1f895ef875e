import type { Observation, Reference } from 'fhir/r4.js';
import type { EventMessage } from '../record/index.js';
import { ANSWERS } from '../terminology/index.js';
import { logical, type MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { EVENT_FORMS, EVENT_PANELS, EVENT_VALUES } from './event-forms.table.js';
import { toGrades } from './event-grades.js';
import {
  causeOf,
  eventKey,
  laterKey,
  timeOf,
  toEventResource,
  withSender,
} from './event-naming.js';
import { toComplication, toLaterProcedure } from './event-resources.js';
import { toLaterObservation } from './later-observation.js';
import { toTreatment } from './later-treatment.js';
import type { ObservationContent } from './observation.js';
import { contentOf } from './row-content.js';

/** Every event after the dissection, with what was found and done. */
export function toEvents(context: MappingContext): readonly Draft[] {
  return context.known.events.flatMap((event) => {
    const panels = toPanels(context, event);
    return [
      ...toMain(context, event),
      ...toTreatment(context, event),
      ...panels,
      ...toGrades(context, event, panels),
    ];
  });
}

function toMain(context: MappingContext, event: EventMessage): readonly Draft[] {
  const form = EVENT_FORMS[event.fields.kind];
  switch (form.as) {
    case 'Condition':
      return [toComplication(context, event, form.complication)];
    case 'Procedure':
      return [toLaterProcedure(context, event)];
    case 'Observation':
      return [toEventObservation(context, event)];
  }
}

/** A contact, a decision or a statement. */
function toEventObservation(context: MappingContext, event: EventMessage): Draft<Observation> {
  const { fields } = event;
  const form = EVENT_FORMS[fields.kind];
  const item = form.as === 'Observation' ? form.item : 'event-course';
  const { key, resource } = toLaterObservation(context, {
    item,
    key: eventKey(context, event),
    profile: 'dr-later-finding',
    category: EVENT_VALUES.find((row) => row.item === item)?.category ?? 'procedure',
    on: timeOf(event),
    issued: fields.sentAt,
    partOf: context.procedure,
    focus: focusOf(context, event),
    content: eventValue(context, event),
  });
  const identifier = withSender(resource.identifier ?? [], fields.event);
  return { key, resource: { ...resource, identifier } };
}

/** What led to it, and the request that the patient declines. */
function focusOf(context: MappingContext, event: EventMessage): readonly Reference[] {
  const cause = causeOf(context, event);
  const request = event.fields.decline?.request;
  return [
    ...(cause === undefined ? [] : [cause]),
    ...(request === undefined ? [] : [logical('ServiceRequest', request)]),
  ];
}

function eventValue(context: MappingContext, event: EventMessage): ObservationContent {
  const { fields, decimals } = event;
  if (fields.kind === 'death') return { valueDateTime: timeOf(event) };
  const form = EVENT_FORMS[fields.kind];
  const row = EVENT_VALUES.find(({ item }) => form.as === 'Observation' && form.item === item);
  const told = { concept: context.concept, fields, decimals };
  const content = row === undefined ? {} : (contentOf(told, row) ?? {});
  const hasValue =
    content.valueCodeableConcept !== undefined || content.valueDateTime !== undefined;
  return hasValue ? content : { valueCodeableConcept: context.concept(ANSWERS.yes), ...content };
}

/** What is told of an event; about the Condition or the Procedure that it is. */
function toPanels(context: MappingContext, event: EventMessage): readonly Draft<Observation>[] {
  const { fields, decimals } = event;
  const { as } = EVENT_FORMS[fields.kind];
  const main = toEventResource(context, event);
  return EVENT_PANELS.flatMap((row) => {
    const content = contentOf({ concept: context.concept, fields, decimals }, row);
    if (content === undefined) return [];
    return [
      toLaterObservation(context, {
        item: row.item,
        key: `${row.item}.${laterKey(context, fields.event)}`,
        profile: 'dr-later-finding',
        category: row.category,
        on: timeOf(event),
        issued: fields.sentAt,
        partOf: as === 'Procedure' ? main : context.procedure,
        focus: as === 'Condition' ? [main] : [],
        content: { ...content, ...(as === 'Observation' ? { derivedFrom: [main] } : {}) },
      }),
    ];
  });
}
