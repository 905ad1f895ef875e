import type {
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

/** A message of a case that passed the contract, as the fold sees it. */
export type RecordMessage =
  | CaseMessage
  | ReportMessage
  | EventMessage
  | ExaminationMessage
  | WithdrawalMessage;

export type MessageKind = RecordMessage['kind'];

/** Every kind of message, in the order in which a record lists them. */
export const MESSAGE_KINDS: readonly MessageKind[] = [
  'case',
  'pathology',
  'event',
  'examination',
  'withdrawal',
];

/**
 * The sender's key of a message within its case and kind. Messages that share it are revisions of
 * one another; it is empty where a case has one of the kind.
 */
export function naturalKeyOf(message: Pick<RecordMessage, 'kind' | 'fields'>): string {
  const { fields } = message;
  if ('accession' in fields) return textOf(fields.accession);
  if ('event' in fields) return textOf(fields.event);
  return 'examination' in fields ? textOf(fields.examination) : '';
}

const textOf = ({ system, value }: { readonly system: string; readonly value: string }): string =>
  `${system}|${value}`;
