import { z } from 'zod';
import { type Checked, passed } from '../kernel/index.js';
import { readDocument } from './read-document.js';
import { type Identifier, identifier, oneOf, wholeIn } from './scalars.js';

/** Where a case can stand on its way, as a search names it. */
const DELIVERY_NAMES = [
  'queued',
  'sending',
  'delivered',
  'waiting-patient',
  'waiting-case',
  'dead-letter',
] as const;

/** What a case can wait for, as a search names it. */
const AWAITED = ['pathology'] as const;

/** A question for cases; all that is named must match, and nothing named finds every case. */
const caseSearchSchema = z.strictObject({
  case: identifier.optional(),
  patient: identifier.optional(),
  session: identifier.optional(),
  delivery: oneOf(DELIVERY_NAMES).optional(),
  awaiting: oneOf(AWAITED).optional().describe('cases whose specimen waits for its final report'),
  limit: wholeIn({ from: 1, to: 200 }).optional().describe('cases in one answer; 50 if absent'),
  after: z
    .string()
    .regex(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/)
    .meta({ title: 'the value of `next` of an answer' })
    .optional()
    .describe('where the page before ended'),
});

export interface CaseSearchFields {
  readonly case?: Identifier;
  readonly patient?: Identifier;
  readonly session?: Identifier;
  readonly delivery?: (typeof DELIVERY_NAMES)[number];
  readonly awaiting?: (typeof AWAITED)[number];
  /** 1 to 200. */
  readonly limit: number;
  readonly after?: string;
}

const DEFAULT_LIMIT = 50;

/** @returns the search, or every problem at once */
export function parseCaseSearch(bytes: Uint8Array): Checked<CaseSearchFields> {
  const read = readDocument(caseSearchSchema, bytes);
  if (!read.ok) return read;
  const { limit = DEFAULT_LIMIT, ...named } = read.value;
  return passed({ limit, ...present(named) });
}

/** The same without the keys that hold `undefined`. */
function present<T extends object>(fields: T): Present<T> {
  const told = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(told) as Present<T>;
}

type Present<T> = { readonly [K in keyof T]?: Exclude<T[K], undefined> };
