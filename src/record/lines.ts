import { compareInstants, compareTexts } from '../kernel/index.js';
import { type BookingMessage, MESSAGE_KINDS, naturalKeyOf, type RecordMessage } from './message.js';

/** Name of the line of revisions that a message belongs to; no two sources share a line. */
export const lineOf = (message: RecordMessage): string =>
  `${message.kind}|${message.fields.source}|${naturalKeyOf(message)}`;

/** Whether two messages are revisions of one another. */
export const isOfLine = (one: RecordMessage, other: RecordMessage): boolean =>
  lineOf(one) === lineOf(other);

/** Messages in the one order that a record knows: by kind, key, source and revision. */
export function inOrder<M extends RecordMessage>(messages: readonly M[]): readonly M[] {
  return [...messages].sort(
    (a, b) =>
      MESSAGE_KINDS.indexOf(a.kind) - MESSAGE_KINDS.indexOf(b.kind) ||
      compareTexts(naturalKeyOf(a), naturalKeyOf(b)) ||
      compareTexts(a.fields.source, b.fields.source) ||
      a.fields.revision - b.fields.revision,
  );
}

/** The highest revision of each line. */
export function newestOf(messages: readonly RecordMessage[]): readonly RecordMessage[] {
  const newest = new Map(inOrder(messages).map((message) => [lineOf(message), message] as const));
  return [...newest.values()];
}

/** The message that was sent last; of one instant, the last in the order of the record. */
export function latestOf(messages: readonly RecordMessage[]): RecordMessage | undefined {
  const [latest] = [...inOrder(messages)]
    .reverse()
    .sort((a, b) => compareInstants(b.fields.sentAt, a.fields.sentAt));
  return latest;
}

/**
 * Bookings in the order in which they were said: by their line, and those of several lines by time.
 * A revision is never said before a lower one of its line, whatever its clock says.
 */
export function inOrderOfSaying(bookings: readonly BookingMessage[]): readonly BookingMessage[] {
  const said: Said[] = [];
  for (const booking of inOrder(bookings)) {
    const before = said.at(-1);
    const { sentAt } = booking.fields;
    const isLater = before !== undefined && isOfLine(before.booking, booking);
    const isEarly = isLater && compareInstants(before.at, sentAt) > 0;
    said.push({ booking, at: isEarly ? before.at : sentAt });
  }
  // Of one instant the order of the record stays: sorting is stable.
  return said.sort((a, b) => compareInstants(a.at, b.at)).map(({ booking }) => booking);
}

interface Said {
  readonly booking: BookingMessage;
  readonly at: string;
}
