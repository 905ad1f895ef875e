import type { Bundle, CodeableConcept, FhirResource } from 'fhir/r4.js';

/** What a token parameter looks at. Source: FHIR R4 (4.0.1), search-parameters. */
function searched(resource: FhirResource, parameter: string): CodeableConcept | string | undefined {
  switch (resource.resourceType) {
    case 'Procedure':
      if (parameter === 'code' || parameter === 'status') return resource[parameter];
      break;
    case 'Condition':
      if (parameter === 'code') return resource.code;
      break;
    case 'Observation':
      if (parameter === 'value-concept') return resource.valueCodeableConcept;
      if (parameter === 'code' || parameter === 'method' || parameter === 'status') {
        return resource[parameter];
      }
      break;
  }
  throw new Error(`${resource.resourceType} has no search parameter ${parameter} here`);
}

/**
 * Resources of a Bundle that a search finds: parameters are joined by "and", values by "or", a
 * value is a code or a system with its code. Source: FHIR R4 (4.0.1), search, token.
 */
export function found(bundle: Bundle<FhirResource>, search: string): readonly FhirResource[] {
  const [type = '', query = ''] = search.split('?');
  const parameters = [...new URLSearchParams(query)];
  return (bundle.entry ?? []).flatMap(({ resource }) =>
    resource?.resourceType === type &&
    parameters.every(([name, values]) => {
      const tokens = tokensOf(searched(resource, name));
      return values.split(',').some((value) => tokens.includes(value));
    })
      ? [resource]
      : [],
  );
}

function tokensOf(value: CodeableConcept | string | undefined): readonly string[] {
  if (typeof value === 'string') return [value];
  return (value?.coding ?? []).map(({ system, code }) => `${system}|${code}`);
}
