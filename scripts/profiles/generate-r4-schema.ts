import { Ajv } from 'ajv';
import standalone from 'ajv/dist/standalone/index.js';
import { choicesKeyword } from './choice-keyword.js';
import { readDefinitions } from './definitions.js';
import { r4Schema } from './r4-schema.js';

export const R4_SCHEMA_PATH = 'src/conformance/r4-schema.generated.ts';

const HEADER = `// @ts-nocheck
// Made by \`npm run generated\` of the FHIR R4 (4.0.1) JSON schema; do not edit.
`;

/** @returns the checker of Bundles as code without imports, by its path in the repository */
export async function generateR4Schema(): Promise<ReadonlyMap<string, string>> {
  const ajv = new Ajv({
    allErrors: true,
    messages: false,
    loopEnum: Number.POSITIVE_INFINITY,
    discriminator: true,
    inlineRefs: false,
    strict: true,
    strictTypes: false,
    strictRequired: false,
    code: { source: true, esm: true, lines: true },
    keywords: [choicesKeyword],
  });
  const validate = ajv.compile(r4Schema(readDefinitions()));
  const code = standalone.default(ajv, validate);
  if (code.includes('require(')) throw new Error('the generated code needs a package at run time');
  const named = code
    .replace(/^"use strict";/, '')
    .replace(/export default \w+;/, '')
    .replace(/export const validate =/, 'export const validateBundle =');
  return new Map([[R4_SCHEMA_PATH, `${HEADER}${named.trim()}\n`]]);
}
