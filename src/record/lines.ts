import { compareInstants } from '../kernel/index.js';
import { MESSAGE_KINDS, naturalKeyOf, type RecordMessage } from './message.js';

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

const compareTexts = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);
