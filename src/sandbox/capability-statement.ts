import type {
  CapabilityStatement,
  CapabilityStatementRest,
  CapabilityStatementRestResource,
} from 'fhir/r4.js';
import type { Supports } from './interaction.js';
import { parametersOf, RESOURCE_TYPES, type ResourceType } from './resource-types.js';
import { SEARCH_PARAMETERS } from './search-parameters.table.js';

/** Day on which what is said below last changed. */
const CHANGED_ON = '2026-01-05';

const DEMONSTRATION =
  'Demonstration server of dissection-records. Not for use with real patients: nothing here is ' +
  'secured, and it may be emptied at any time.';

/**
 * Says what this server can do, and no more.
 *
 * Source: HL7 FHIR R4, CapabilityStatement and RESTful API, "capabilities".
 */
export function capabilityStatement(base: string, supports: Supports): CapabilityStatement {
  return {
    resourceType: 'CapabilityStatement',
    name: 'DissectionRecordsSandbox',
    title: 'Sandbox of dissection-records (demonstration)',
    status: 'active',
    experimental: true,
    date: CHANGED_ON,
    description: DEMONSTRATION,
    kind: 'instance',
    software: { name: 'dissection-records sandbox' },
    implementation: { description: DEMONSTRATION, url: base },
    fhirVersion: '4.0.1',
    format: ['application/fhir+json', 'json'],
    rest: [rest(supports)],
  };
}

function rest(supports: Supports): CapabilityStatementRest {
  return {
    mode: 'server',
    documentation: [
      DEMONSTRATION,
      'Transactions are atomic and one at a time. References to other resources of this server ',
      `must resolve. Conditional references are ${supports.conditionalReference ? '' : 'not '}`,
      'resolved in transactions. Dates without a time zone are read as UTC.',
    ].join(' '),
    resource: RESOURCE_TYPES.map((type) => restResource(type, supports)),
    ...(supports.transaction ? { interaction: [{ code: 'transaction' }] } : {}),
  };
}

const INTERACTIONS = [
  'read',
  'vread',
  'update',
  'history-instance',
  'create',
  'search-type',
] as const;

function restResource(type: ResourceType, supports: Supports): CapabilityStatementRestResource {
  return {
    type,
    interaction: INTERACTIONS.map((code) => ({ code })),
    versioning: 'versioned-update',
    readHistory: true,
    updateCreate: supports.updateCreate,
    conditionalCreate: supports.conditionalCreate,
    conditionalRead: 'not-supported',
    conditionalUpdate: supports.conditionalUpdate,
    conditionalDelete: 'not-supported',
    referencePolicy: ['literal', 'logical', 'local', 'enforced'],
    searchInclude: referencesOf(type),
    searchRevInclude: RESOURCE_TYPES.flatMap(referencesOf),
    searchParam: parametersOf(type).map(({ code, kind, definition }) => ({
      name: code,
      definition: `http://hl7.org/fhir/SearchParameter/${definition}`,
      type: kind,
    })),
  };
}

const referencesOf = (type: ResourceType): string[] =>
  SEARCH_PARAMETERS[type]
    .filter(({ kind }) => kind === 'reference')
    .map(({ code }) => `${type}:${code}`);
