import { readFollowing } from '../capacity/index.js';
import type { FollowUp } from '../pipeline/index.js';
import { paint, RED, YELLOW } from './paint.js';
import type { TableCell } from './table.js';

type Window = NonNullable<FollowUp['item']['due']>;

/** As much of an opaque id as a person needs to tell two of them apart. */
export const shortId = (id: string): string => id.slice(0, 8);

/** On open days, else as due. */
export const windowOf = ({ item }: FollowUp): Window | undefined => item.proposed ?? item.due;

/** The first and last day, without what nobody needs to read twice. */
export const daysText = (firstOn: string, lastOn: string): string =>
  firstOn === lastOn ? firstOn : `${firstOn}..${lastOn}`;

/** State, appointment and haste in a few words; what presses is coloured. */
export function stateCell(followUp: FollowUp, colour: boolean): TableCell {
  const { overdue, item } = followUp;
  const words = [
    bookingWords(followUp) ?? item.state.replace('-', ' '),
    ...(overdue ? ['overdue'] : []),
    ...(item.urgency === 'urgent' ? ['urgent'] : []),
  ];
  const text = (overdue && words[0] === 'open' ? words.slice(1) : words).join(', ');
  if (overdue) return { text, paint: (padded) => paint(colour, RED, padded) };
  if (item.urgency === 'routine') return text;
  return { text, paint: (padded) => paint(colour, YELLOW, padded) };
}

/** Of an appointment that holds or was missed; one that was cancelled leaves the item as it was. */
function bookingWords({ item: { booking, state } }: FollowUp): string | undefined {
  if (state === 'done' || booking === undefined) return undefined;
  switch (booking.status) {
    case 'booked':
      return `booked ${booking.on}`;
    case 'did-not-attend':
      return `missed ${booking.on}`;
    case 'cancelled':
      return undefined;
  }
}

/** `6,12*` as a sentence without its end: `6 months later, then every 12 months`. */
export function followsText({ follows, anchorOn }: FollowUp['item']): string {
  const parts = readFollowing(follows).map((part) => {
    if ('word' in part) return WORDS[part.word] ?? part.word.replaceAll('-', ' ');
    if ('on' in part) return `on ${part.on}`;
    if ('after' in part) return `${months(part.after)} later`;
    const until = part.until === undefined ? '' : ` until ${months(part.until)} after ${anchorOn}`;
    return `every ${months(part.every)}${until}`;
  });
  return parts.length === 0 ? 'nothing is planned' : parts.join(', then ');
}

const months = (count: number): string => `${count} ${count === 1 ? 'month' : 'months'}`;

const WORDS: Readonly<Record<string, string>> = {
  'by-findings': 'by what was found',
  screening: 'back to screening',
};
