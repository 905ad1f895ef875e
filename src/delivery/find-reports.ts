import type { CheckedBundle } from '../conformance/index.js';
import { classifyReading } from './classify.js';
import type { Clock } from './clock.js';
import type { FhirClient } from './fhir-client.js';
import { accessionsOf, readReportSearch, reportCriteria } from './laboratory-report.js';
import type { Failure } from './verdict.js';

/**
 * Reports of the laboratory that the server holds on the specimens of the record. A server that
 * cannot be asked for them gets the record without; one that is away is asked again later.
 */
export async function findReports(
  { client, clock }: { readonly client: FhirClient; readonly clock: Clock },
  bundle: CheckedBundle,
  signal: AbortSignal,
): Promise<readonly string[] | Failure> {
  const found: string[] = [];
  for (const accession of accessionsOf(bundle)) {
    const criteria = reportCriteria(accession);
    const answer = await client.search('DiagnosticReport', criteria, signal);
    if (answer.kind === 'answered' && answer.status === 200 && answer.body.kind === 'json') {
      found.push(...readReportSearch(answer.body.resource, accession));
      continue;
    }
    const failure = classifyReading(answer, clock.now());
    if (failure.failureClass === 'destination') return failure;
  }
  return [...new Set(found)];
}
