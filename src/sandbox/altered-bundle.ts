import type { Alteration } from './faults.js';
import { isList, isObject, type Json, type JsonObject } from './json.js';

/** The answer to a transaction as a server that does not keep to the standard might give it. */
export function alteredBundle(bundle: JsonObject, how: Alteration): JsonObject {
  const entry = isList(bundle['entry']) ? bundle['entry'] : [];
  switch (how) {
    case 'batch-response':
      return { ...bundle, type: 'batch-response' };
    case 'entry-missing':
      return { ...bundle, entry: entry.slice(0, -1) };
    case 'entry-extra':
      return { ...bundle, entry: [...entry, ...entry.slice(-1)] };
    case 'entries-reordered':
      return { ...bundle, entry: [...entry].reverse() };
    case 'entry-refused':
      return { ...bundle, entry: [...entry.slice(0, -1), REFUSED] };
    case 'without-location':
      return { ...bundle, entry: entry.map(withoutLocation) };
  }
}

const REFUSED: JsonObject = {
  response: {
    status: '422 Unprocessable Entity',
    outcome: {
      resourceType: 'OperationOutcome',
      issue: [{ severity: 'error', code: 'processing' }],
    },
  },
};

function withoutLocation(entry: Json): Json {
  if (!isObject(entry) || !isObject(entry['response'])) return entry;
  const { location: _location, etag: _etag, ...response } = entry['response'];
  return { ...entry, response };
}
