import { compareInstants } from '../kernel/index.js';
import { lineOf } from './lines.js';
import type { MessageKind, RecordMessage } from './message.js';

type Messages = readonly RecordMessage[];
/** The first so many revisions of a line; none of them: the line has not begun. */
type Beginnings = readonly Messages[];

/** Messages that may have been the record before. */
export interface EarlierSet {
  readonly messages: Messages;
  /** Whether this was the record at some time, had the messages come as they were sent. */
  readonly stood: boolean;
}

/** What a resource of the record may rest on together: a verdict on the case and its reports. */
const TOGETHER: readonly MessageKind[] = ['case', 'pathology', 'withdrawal'];

/**
 * Every set of messages that may have been the record of this case at an earlier time and had a
 * resource that the present one lacks. Messages come in any order and only the newest state is
 * sent, so two lines may have moved between what was sent and now: case, reports and withdrawal
 * are cut back together in every way, each other line together with the case. Of messages that came
 * as they were sent every earlier record is there, so that what followed it still shows. Bookings
 * are never cut: no resource goes away because one more is told, and all that any of them said
 * shows in the present plan.
 *
 * @param messages in the order of a record
 * @returns the present set is not among them; the order depends on the messages alone
 */
export function earlierSets(messages: Messages): readonly EarlierSet[] {
  const bookings = messages.filter(isBooking);
  const lines = linesOf(messages.filter((message) => !isBooking(message)));
  const together = lines.filter(([first]) => first !== undefined && isTogether(first));
  const others = lines.filter(([first]) => first !== undefined && !isTogether(first));
  const cases = lines.filter(([first]) => first?.kind === 'case');
  const rest = (line: readonly Messages[]) => lines.filter((other) => !line.includes(other)).flat();
  const sets = [
    ...combined(together).map((set) => [...set, ...others.flat(), ...bookings]),
    ...others.flatMap((line) => {
      const cut = [...cases, line];
      return combined(cut).map((set) => [...set, ...rest(cut), ...bookings]);
    }),
  ];
  const smaller = [
    ...sets.map((set) => ({ messages: set, stood: false })),
    ...asSent(messages).map((set) => ({ messages: set, stood: true })),
  ].filter((set) => set.messages.length < messages.length);
  return [...new Map(smaller.map((set) => [nameOf(set.messages, messages), set])).values()];
}

const isBooking = ({ kind }: RecordMessage): boolean => kind === 'booking';

const isTogether = ({ kind }: RecordMessage): boolean => TOGETHER.includes(kind);

function linesOf(messages: Messages): readonly Messages[] {
  const lines = new Map<string, Messages>();
  for (const message of messages) {
    const line = lineOf(message);
    lines.set(line, [...(lines.get(line) ?? []), message]);
  }
  return [...lines.values()];
}

/** Every way of taking a beginning of each line. */
function combined(lines: readonly Messages[]): readonly Messages[] {
  return lines.reduce<Beginnings>(
    (sets, line) => sets.flatMap((set) => beginningsOf(line).map((part) => [...set, ...part])),
    [[]],
  );
}

const beginningsOf = (line: Messages): Beginnings => [
  [],
  ...line.map((_, i) => line.slice(0, i + 1)),
];

/** The records that stood one after the other where the messages came in the order of sending. */
function asSent(messages: Messages): readonly Messages[] {
  const inTime = [...messages].sort((a, b) => compareInstants(a.fields.sentAt, b.fields.sentAt));
  return inTime.flatMap((next, i) => {
    if (isBooking(next)) return [];
    const come = new Set(inTime.slice(0, i));
    return [messages.filter((message) => come.has(message))];
  });
}

const nameOf = (set: Messages, all: Messages): string => {
  const present = new Set(set);
  return all.map((message) => (present.has(message) ? '1' : '0')).join('');
};
