import type { Bundle } from 'fhir/r4.js';
import type { Draft } from '../support/consistent-case.js';
import { resourcesOf } from './records.js';

/**
 * What a case may have several of that are alike: pieces, instruments, vessels and images are
 * things, told one by one, and each has its identifier alone to tell it from the next.
 */
const THINGS = new Set(['Specimen', 'Device', 'Procedure', 'Media', 'MedicationAdministration']);

/**
 * What is wrong with the graph of a Bundle, in plain words; nothing where it is sound.
 *
 * Source: FHIR R4, Bundle, "Resolving references in Bundles", rules bdl-7 and ele-1. That a case
 * has one patient and no two statements alike is common practice, no source.
 */
export function graphFaults(bundle: Bundle): readonly string[] {
  const resources = resourcesOf(bundle);
  const urls = (bundle.entry ?? []).map(({ fullUrl }) => fullUrl ?? '');
  const known = new Set(urls);
  const subjects = resources.flatMap((r) => ('subject' in r ? [JSON.stringify(r.subject)] : []));
  const identifiers = resources.flatMap(({ identifier = [] }) =>
    identifier.slice(0, 1).map((own: unknown) => JSON.stringify(own)),
  );
  const statements = resources
    .filter(({ resourceType }) => !THINGS.has(resourceType))
    .map((r) => JSON.stringify({ ...r, identifier: undefined }));
  return [
    ...(new Set(subjects).size === 1 ? [] : ['not one patient']),
    ...repeated(urls).map((url) => `fullUrl twice: ${url}`),
    ...repeated(identifiers).map((identifier) => `identifier twice: ${identifier}`),
    ...repeated(statements).map((statement) => `twins: ${statement}`),
    ...resources.flatMap((resource) => hollow(resource, resource.resourceType)),
    ...resources
      .flatMap((resource) => [...referencesOf(resource)])
      .filter((reference) => !known.has(reference))
      .map((reference) => `leads nowhere: ${reference}`),
  ];
}

function repeated(list: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  return list.filter((item) => (seen.has(item) ? true : !seen.add(item)));
}

function* referencesOf(node: Draft): Generator<string> {
  if (node === null || typeof node !== 'object') return;
  if (typeof node.reference === 'string') yield node.reference;
  for (const child of Object.values(node)) yield* referencesOf(child);
}

function hollow(node: unknown, path: string): readonly string[] {
  if (node === undefined || node === null || node === '') return [`empty: ${path}`];
  if (typeof node !== 'object') return [];
  const children = Object.entries(node);
  if (children.length === 0) return [`empty: ${path}`];
  return children.flatMap(([key, child]) => hollow(child, `${path}/${key}`));
}
