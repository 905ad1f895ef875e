import type { Identifier, Reference } from 'fhir/r4.js';
import { keyedUuid } from '../kernel/index.js';
import type { EventMessage, ExaminationMessage } from '../record/index.js';
import { type MappingContext, toResource } from './context.js';
import { EVENT_FORMS } from './event-forms.table.js';

type SentIdentifier = EventMessage['fields']['event'];

/** A stable key of a number of the sender, from which it cannot be guessed. */
export const laterKey = ({ settings }: MappingContext, { system, value }: SentIdentifier): string =>
  keyedUuid(settings.secret, system, value);

/** The key of the resource that an event is itself; another kind is another resource. */
export const eventKey = (context: MappingContext, { fields }: EventMessage): string =>
  `${fields.kind}.${laterKey(context, fields.event)}`;

/** The resource that an event is. */
export const toEventResource = (context: MappingContext, event: EventMessage): Reference =>
  toResource(context, EVENT_FORMS[event.fields.kind].as, eventKey(context, event));

/** The key of the Procedure of an examination, and of its report. */
export const examinationKey = (context: MappingContext, { fields }: ExaminationMessage): string =>
  `follow-up.${laterKey(context, fields.examination)}`;

/** Our identifier and that of the sender. */
export const withSender = (
  own: readonly Identifier[],
  { system, value }: SentIdentifier,
): Identifier[] => [...own, { system, value }];

/**
 * The event that led to another one: its resource, or, where it has not come or does not fit the
 * case, its number alone.
 */
export function causeOf(context: MappingContext, event: EventMessage): Reference | undefined {
  const { causedBy } = event.fields;
  if (causedBy === undefined) return undefined;
  const cause = context.known.events.find(({ fields }) => isSame(fields.event, causedBy));
  if (cause !== undefined) return toEventResource(context, cause);
  return { identifier: { system: causedBy.system, value: causedBy.value } };
}

/** Events that an event led to. */
export const ledTo = (
  { known }: MappingContext,
  { fields }: EventMessage,
): readonly EventMessage[] =>
  known.events.filter(({ fields: { causedBy } }) => isSame(causedBy, fields.event));

export const isSame = (a: SentIdentifier | undefined, b: SentIdentifier): boolean =>
  a !== undefined && a.system === b.system && a.value === b.value;

/** When an event happened: the instant where it is told, else the day. */
export const timeOf = ({ fields }: EventMessage): string => fields.occurredAt ?? fields.occurredOn;
