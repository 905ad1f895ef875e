import type {
  AsOfFields,
  BookingFields,
  CaseFields,
  EventFields,
  ExaminationFields,
  PathologyFields,
  WithdrawalFields,
} from '../contract/index.js';

interface Kept<Kind, Fields> {
  readonly kind: Kind;
  readonly fields: Fields;
  /** JSON Pointer of a number sent with trailing zeros -> decimals that were sent. */
  readonly decimals: Readonly<Record<string, number>>;
  /** SHA-256 of the bytes that came, hexadecimal. */
  readonly sha256: string;
}

export type CaseMessage = Kept<'case', CaseFields>;
export type ReportMessage = Kept<'pathology', PathologyFields>;
export type EventMessage = Kept<'event', EventFields>;
export type ExaminationMessage = Kept<'examination', ExaminationFields>;
export type WithdrawalMessage = Kept<'withdrawal', WithdrawalFields>;
/** The service's own word of how late it is; nobody sends it. */
export type AsOfMessage = Kept<'as-of', AsOfFields>;

/**
 * What a scheduler says of the appointment for one item of the plan. It names neither its sender
 * nor the item: the journal does.
 */
export type BookingMessage = Kept<
  'booking',
  BookingFields & { readonly source: string /** Key of the item. */; readonly item: string }
>;

/** A message of a case that passed the contract, as the fold sees it. */
export type RecordMessage =
  | CaseMessage
  | ReportMessage
  | EventMessage
  | ExaminationMessage
  | WithdrawalMessage
  | BookingMessage
  | AsOfMessage;

export type MessageKind = RecordMessage['kind'];

/** The kinds that note systems send; each names its case. */
export type SentKind = Exclude<MessageKind, 'booking' | 'as-of'>;

/** A message of a note system. */
export type SentMessage = Extract<RecordMessage, { readonly kind: SentKind }>;

export const SENT_KINDS = [
  'case',
  'pathology',
  'event',
  'examination',
  'withdrawal',
] as const satisfies readonly SentKind[];

/** Every kind of message, in the order in which a record lists them. */
export const MESSAGE_KINDS = [
  ...SENT_KINDS,
  'booking',
  'as-of',
] as const satisfies readonly MessageKind[];

interface Identifier {
  readonly system: string;
  readonly value: string;
}

/**
 * The sender's identifier of a message within its case and kind. Messages of a source that share
 * it are revisions of one another; absent where a case has one of the kind.
 */
export function keyOf({ fields }: Pick<RecordMessage, 'fields'>): Identifier | undefined {
  if ('accession' in fields) return fields.accession;
  if ('event' in fields) return fields.event;
  return 'examination' in fields ? fields.examination : undefined;
}

/** The same as one text, empty without it; of a booking the key of its item. */
export function naturalKeyOf(message: Pick<RecordMessage, 'fields'>): string {
  if ('item' in message.fields) return message.fields.item;
  const key = keyOf(message);
  return key === undefined ? '' : `${key.system}|${key.value}`;
}
