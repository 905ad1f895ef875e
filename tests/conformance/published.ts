import { readdirSync, readFileSync } from 'node:fs';
import type { Bundle, CodeSystem, StructureDefinition } from 'fhir/r4.js';
import { BASE } from './sample-parts.js';

const FOLDER = new URL('../../profiles/', import.meta.url);

/** Names of the published files, such as `CodeSystem-paris.json`. */
export const publishedFiles = (): readonly string[] =>
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.json'))
    .sort();

/** Published profiles by canonical URL. */
export const publishedProfiles = (): ReadonlyMap<string, StructureDefinition> =>
  new Map(
    read<StructureDefinition>('StructureDefinition').map((profile) => [profile.url, profile]),
  );

/** Codes of our own systems by canonical URL; systems that list no codes are left out. */
export const publishedCodes = (): ReadonlyMap<string, ReadonlySet<string>> =>
  new Map(
    read<CodeSystem>('CodeSystem').flatMap(({ url = '', concept }) =>
      concept === undefined ? [] : [[url, new Set(concept.map(({ code }) => code))]],
    ),
  );

/** Codings of our own systems, as `system|code`, that no published CodeSystem has. */
export function unpublishedCodings(bundle: Bundle): readonly string[] {
  const published = publishedCodes();
  const open = new Set(['dr-revision', 'dr-provenance'].map((id) => `${BASE}/CodeSystem/${id}`));
  const found = codings(bundle).filter(({ system, code }) => {
    const own = system.startsWith(`${BASE}/CodeSystem/`) && !open.has(system);
    return own && published.get(system)?.has(code) !== true;
  });
  return [...new Set(found.map(({ system, code }) => `${system}|${code}`))];
}

interface Coded {
  readonly system: string;
  readonly code: string;
}

function codings(value: unknown): readonly Coded[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(codings);
  const { system, code }: { system?: unknown; code?: unknown } = value;
  return typeof system === 'string' && typeof code === 'string'
    ? [...inner, { system, code }]
    : inner;
}

function read<T>(type: string): readonly T[] {
  return publishedFiles()
    .filter((name) => name.startsWith(`${type}-`))
    .map((name): T => JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')));
}
