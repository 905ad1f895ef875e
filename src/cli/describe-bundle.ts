import type { Bundle } from 'fhir/r4.js';

/** What would be sent, counted by type of resource. */
export function describeBundle({ entry = [] }: Bundle): string {
  const types = entry.map(({ resource }) => resource?.resourceType ?? 'none').sort();
  const counted = [...new Set(types)].map(
    (type) => `${type} ${types.filter((other) => other === type).length}`,
  );
  return `  Would send ${entry.length} resources: ${counted.join(', ')}`;
}
