import type { Problem } from '../kernel/index.js';

/** That a booking was kept for a follow-up. */
export interface KeptBooking {
  readonly followUpId: string;
  readonly kind: 'accepted' | 'repeated';
  readonly revision: number;
  /** SHA-256 of the bytes, hexadecimal. */
  readonly sha256: string;
  /** UTC instant at which it came first. */
  readonly receivedAt: string;
  /** False where the plan does not ask for it, or not on that day: a person must look. */
  readonly fits: boolean;
}

export type BookingReceipt =
  /** `repeated` where it had come before for every follow-up; that of the address comes first. */
  | { readonly kind: 'accepted' | 'repeated'; readonly kept: readonly KeptBooking[] }
  /** The document cannot be read as JSON at all, or breaks rules of the contract. */
  | { readonly kind: 'unreadable' | 'invalid'; readonly problems: readonly Problem[] }
  /** Contradicts what is stored. A stale booking is kept in the journal and never applied. */
  | { readonly kind: 'conflict'; readonly problem: Problem }
  | { readonly kind: 'not-found' };
