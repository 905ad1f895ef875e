import type { Bundle, Resource } from 'fhir/r4.js';

type Kept = ReadonlyMap<string, Resource>;

/** What was sent, or of a later step what it added, changed and took back. */
export function sentWords(now: Bundle, before?: Bundle): string {
  const kept = resourcesOf(now);
  if (before === undefined) return `${kept.size} resources: ${counted(now)}`;
  const was = resourcesOf(before);
  const of = (test: (resource: Resource, earlier: Resource | undefined) => boolean) =>
    [...kept].filter(([url, resource]) => test(resource, was.get(url))).length;
  const added = of((_, earlier) => earlier === undefined);
  const takenBack = of((resource, earlier) => isTakenBack(resource) && !isTakenBack(earlier));
  const changed = of(
    (resource, earlier) =>
      earlier !== undefined &&
      !(isTakenBack(resource) && !isTakenBack(earlier)) &&
      saidIn(resource) !== saidIn(earlier),
  );
  const parts = [`${added} new`, `${changed} changed`, `${takenBack} taken back`];
  const told = parts.filter((part) => !part.startsWith('0 ')).join(', ');
  return `${kept.size} resources: ${told === '' ? 'as before' : told}`;
}

/** How many of each type, the most frequent first. */
export function counted({ entry = [] }: Bundle): string {
  const types = entry.flatMap(({ resource }) => (resource ? [resource.resourceType] : []));
  const counts = [...new Set(types)].map((type) => ({
    type,
    count: types.filter((other) => other === type).length,
  }));
  return counts
    .sort((a, b) => b.count - a.count)
    .map(({ type, count }) => `${count} ${type}`)
    .join(', ');
}

/** Without its envelope, which changes with every state of the record. */
const saidIn = ({ meta: _, ...said }: Resource): string => JSON.stringify(said);

function resourcesOf({ entry = [] }: Bundle): Kept {
  return new Map(
    entry.flatMap(({ fullUrl = '', resource }) =>
      resource === undefined ? [] : [[fullUrl, resource] as const],
    ),
  );
}

/** Entered in error: FHIR R4 has no other word for what should never have been said. */
const isTakenBack = (resource: Resource | undefined): boolean =>
  resource !== undefined &&
  (('status' in resource && resource.status === 'entered-in-error') ||
    ('verificationStatus' in resource &&
      JSON.stringify(resource.verificationStatus).includes('"entered-in-error"')));
