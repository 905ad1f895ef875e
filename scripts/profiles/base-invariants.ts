import type { ElementDefinition } from 'fhir/r4.js';
import { type Definitions, readDefinitions, structureOf } from './definitions.js';
import { r4Schema } from './r4-schema.js';
import { SENT_TYPES } from './sent-types.js';

export const BASE_INVARIANTS_PATH = 'src/conformance/base-invariants.generated.ts';

/**
 * Constraints of the standard that are held elsewhere: an element without value or children
 * (ele-1) is refused by the structural walk.
 */
const HELD_ELSEWHERE = ['ele-1'];

const HEAD =
  '// Made by `npm run generated` of the StructureDefinitions of FHIR R4 (4.0.1); do not edit.';

interface Row {
  readonly key: string;
  readonly severity: string;
  readonly human: string;
  readonly expression: string;
  readonly context: string;
}

/** @returns the constraints of FHIR R4 on Bundle, the types we send and their data types */
export async function generateBaseInvariants(): Promise<ReadonlyMap<string, string>> {
  const definitions = readDefinitions();
  const dataTypes = Object.keys(r4Schema(definitions).definitions ?? {}).filter(
    (name) =>
      definitions.structures.get(`http://hl7.org/fhir/StructureDefinition/${name}`)?.kind ===
      'complex-type',
  );
  const types = ['Bundle', 'DomainResource', ...SENT_TYPES, ...dataTypes];
  const rows = types.flatMap((type) => rowsOf(definitions, type));
  return new Map([[BASE_INVARIANTS_PATH, table(rows)]]);
}

/** Constraints that this type adds to those of its base and of its elements' own types. */
function rowsOf(definitions: Definitions, type: string): readonly Row[] {
  const { snapshot, baseDefinition = '' } = structureOf(definitions, type);
  return (snapshot?.element ?? []).flatMap((element) => {
    const types = (element.type ?? []).map(({ code }) => code);
    const ofItsType = new Set(
      (element.path === type ? [baseDefinition] : types).flatMap((t) => keysOf(definitions, t)),
    );
    return (element.constraint ?? []).flatMap(({ key, severity, human, expression }) =>
      expression === undefined || ofItsType.has(key) || HELD_ELSEWHERE.includes(key)
        ? []
        : [{ key, severity, human, expression, context: element.path }],
    );
  });
}

/** Keys of the constraints that every element of this type has by its type. */
function keysOf(definitions: Definitions, type: string): readonly string[] {
  const url = type.startsWith('http') ? type : `http://hl7.org/fhir/StructureDefinition/${type}`;
  const root: ElementDefinition | undefined = definitions.structures.get(url)?.snapshot?.element[0];
  return (root?.constraint ?? []).map(({ key }) => key);
}

function table(rows: readonly Row[]): string {
  const written = rows.map(
    (row) =>
      `  {\n${Object.entries(row)
        .map(([name, value]) => propertyLine(name, value))
        .join('')}  },\n`,
  );
  return `${HEAD}
import type { Rule } from './rule.js';

export const BASE_INVARIANTS: readonly Rule[] = [
${written.join('')}];
`;
}

/** One property as the formatter of this repository writes it. */
function propertyLine(name: string, value: string): string {
  const line = `    ${name}: ${literal(value)},`;
  return line.length <= 100 ? `${line}\n` : `    ${name}:\n      ${literal(value)},\n`;
}

function literal(text: string): string {
  const quote = text.split("'").length > text.split('"').length ? '"' : "'";
  const escaped = text.replace(/\\/g, '\\\\').replace(/\r/g, '\\r').replace(/\n/g, '\\n');
  return quote + escaped.replaceAll(quote, `\\${quote}`) + quote;
}
