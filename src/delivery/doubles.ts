import type { Bundle } from 'fhir/r4.js';
import type { FhirClient } from './fhir-client.js';
import { isFhirId } from './fhir-id.js';
import { recordsAt, textAt } from './json.js';

/**
 * After a failed precondition: whether the target holds several resources with an identifier
 * that this transaction writes by. Looks through the entries in order and stops at the first.
 *
 * @param sent a transaction with conditional URLs
 * @returns the sentence for a person who must choose, with the ids; undefined when none is found
 */
export async function findDoubles(
  client: FhirClient,
  sent: Bundle,
  signal: AbortSignal,
): Promise<string | undefined> {
  for (const { request } of sent.entry ?? []) {
    const [type, criteria] = (request?.url ?? '').split('?');
    if (type === undefined || criteria === undefined) continue;
    const answer = await client.search(type, `${criteria}&_count=2`, signal);
    if (answer.kind !== 'answered' || answer.body.kind !== 'json') return undefined;
    const ids = distinctIds(answer.body.resource, type);
    if (ids.length > 1) {
      const names = ids.map((id) => `${type}/${id}`).join(' and ');
      return `The FHIR server has ${names} with the same identifier; a person must choose.`;
    }
  }
  return undefined;
}

function distinctIds(searchset: unknown, type: string): readonly string[] {
  const ids = recordsAt(searchset, 'entry')
    .map((entry) => entry['resource'])
    .filter((resource) => textAt(resource, 'resourceType') === type)
    .map((resource) => textAt(resource, 'id') ?? '')
    .filter(isFhirId);
  return [...new Set(ids)];
}
