import type { Bundle, BundleEntry } from 'fhir/r4.js';
import { FHIR_ID } from './fhir-id.js';
import { isRecord, recordsAt, textAt } from './json.js';
import { outcomeClause, scrubOutcome } from './outcome.js';
import { LASTING_ENTRY_STATUSES, REFERENCE_STATUSES } from './status.table.js';

/** What a body that came with a 2xx status says about the transaction that was sent. */
export type TransactionReading =
  | {
      readonly kind: 'done';
      readonly created: number;
      readonly updated: number;
      /**
       * `Type/id` or `Type/id/_history/version`, in the order sent. An entry that was updated
       * by its identifier, and whose id the server did not say, has none.
       */
      readonly locations: readonly string[];
    }
  | { readonly kind: 'patient-missing'; readonly reason: string }
  | { readonly kind: 'entry-refused'; readonly status: number; readonly reason: string }
  | { readonly kind: 'not-conformant'; readonly fault: string; readonly reason: string };

/**
 * Whether everything that was sent is now on the server. A 200 alone proves nothing: a server
 * may answer a transaction with the semantics of a batch and still say 200.
 *
 * Done means: a Bundle of type transaction-response with as many entries as were sent, in
 * their order, each with a status of 2xx, and a location with each 201. A location after an
 * update is optional, since an update only has to give one when it creates.
 *
 * Source: FHIR R4 (4.0.1), http, transaction response, create and update.
 */
export function readTransactionResponse(body: unknown, sent: Bundle): TransactionReading {
  const type = textAt(body, 'type');
  const isBundle = textAt(body, 'resourceType') === 'Bundle';
  if (!isBundle) return strange('no-bundle', 'The FHIR server said 2xx without a Bundle.');

  const entries = recordsAt(body, 'entry');
  const requests = sent.entry ?? [];
  const refused = firstRefused(entries, requests);
  if (refused !== undefined) return refused;
  if (type !== 'transaction-response') {
    return strange(
      'not-a-transaction',
      'The answer of the FHIR server is no transaction-response.',
    );
  }
  if (entries.length !== requests.length) {
    const counts = `${entries.length} entries for ${requests.length}`;
    return strange('entry-count', `The FHIR server answered with ${counts}.`);
  }
  return readEntries(entries, requests);
}

/** A base if any, then what `ResourceName/id` and the version need. */
const BASE = String.raw`(?:https?://[^\s?#]{1,500}/|/)?`;
const PLACE = `[A-Z][A-Za-z]{2,40}/${FHIR_ID}(?:/_history/${FHIR_ID})?`;
const LOCATION = new RegExp(`^${BASE}(${PLACE})$`);

/** @returns the status code at the head of `201 Created`, or 0 when there is none */
function statusOf(entry: Readonly<Record<string, unknown>>): number {
  const text = textAt(entry['response'], 'status') ?? '';
  return Number(/^\d{3}(?=\D|$)/.exec(text)?.[0] ?? 0);
}

function firstRefused(
  entries: readonly Readonly<Record<string, unknown>>[],
  requests: readonly BundleEntry[],
): TransactionReading | undefined {
  const index = entries.findIndex((entry) => statusOf(entry) < 200 || statusOf(entry) > 299);
  const entry = entries[index];
  if (entry === undefined) return undefined;

  const status = statusOf(entry);
  const response = entry['response'];
  const outcome = scrubOutcome(isRecord(response) ? response['outcome'] : undefined);
  const type = requests[index]?.resource?.resourceType ?? 'unknown type';
  const clause = outcomeClause(outcome);
  const reason =
    `The FHIR server refused entry ${index} (${type}) with ${status}` +
    `${clause === '' ? '' : `: ${clause}`}. It did not treat the transaction as a whole.`;
  if (REFERENCE_STATUSES.includes(status) && outcome.words.includes('patient-missing')) {
    return { kind: 'patient-missing', reason };
  }
  return LASTING_ENTRY_STATUSES.includes(status)
    ? { kind: 'entry-refused', status, reason }
    : { kind: 'not-conformant', fault: `entry-${status}`, reason };
}

function readEntries(
  entries: readonly Readonly<Record<string, unknown>>[],
  requests: readonly BundleEntry[],
): TransactionReading {
  const locations: string[] = [];
  let created = 0;
  for (const [index, entry] of entries.entries()) {
    const request = requests[index];
    const expected = request?.resource?.resourceType ?? '';
    const url = request?.request?.url ?? '';
    const found = LOCATION.exec(textAt(entry['response'], 'location') ?? '')?.[1];
    if (statusOf(entry) === 201) {
      created += 1;
      if (found === undefined) {
        return strange('no-location', `The FHIR server gave no location for entry ${index}.`);
      }
    }
    const ownId = url.includes('/') && !url.includes('?') ? url : undefined;
    const belongs = ownId ?? `${expected}/`;
    if (found !== undefined && !found.startsWith(belongs)) {
      return strange('entry-order', `The location of entry ${index} is that of another entry.`);
    }
    const location = found ?? ownId;
    if (location !== undefined) locations.push(location);
  }
  return { kind: 'done', created, updated: entries.length - created, locations };
}

const strange = (fault: string, reason: string): TransactionReading => ({
  kind: 'not-conformant',
  fault,
  reason,
});
