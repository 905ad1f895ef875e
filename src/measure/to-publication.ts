import type { Bundle, BundleEntry, Identifier, Measure, MeasureReport } from 'fhir/r4.js';
import { invariant, keyedUuid } from '../kernel/index.js';
import { MEASURE_URL } from './codes.table.js';
import { toMeasure } from './to-measure.js';

/**
 * The Measure and a report by it as one transaction, in the form that no target server shapes yet:
 * each under a stable urn:uuid, PUT by its identifier, without an id.
 *
 * The id of the report is made with the secret of the site, as those of cases are. The id of the
 * Measure is made of public names alone: units that share a server share their Measure.
 *
 * Source: FHIR R4 (4.0.1), http, transaction and conditional update.
 *
 * @param secret the site secret
 */
export function toPublication(report: MeasureReport, secret: string): Bundle {
  const { id: _, ...measure } = toMeasure();
  return {
    resourceType: 'Bundle',
    type: 'transaction',
    entry: [toEntry(measure, MEASURE_URL), toEntry(report, secret)],
  };
}

function toEntry(resource: Measure | MeasureReport, key: string): BundleEntry {
  const { system, value } = identifierOf(resource);
  return {
    fullUrl: `urn:uuid:${keyedUuid(key, system, value)}`,
    resource,
    request: {
      method: 'PUT',
      url: `${resource.resourceType}?identifier=${encodeURIComponent(`${system}|${value}`)}`,
    },
  };
}

function identifierOf({ identifier }: Measure | MeasureReport) {
  const { system, value }: Identifier = identifier?.[0] ?? {};
  invariant(system !== undefined && value !== undefined, 'what is published has an identifier');
  return { system, value };
}
