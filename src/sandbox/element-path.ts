import { invariant } from '../kernel/index.js';
import { isList, isObject, type Json, type JsonObject, textOf } from './json.js';

/** Finds the values that a search parameter looks at. */
export type ElementPath = (resource: JsonObject) => readonly Json[];

/** Endings of the names of choice elements that the searched elements can have. */
const CHOICES = ['DateTime', 'Period', 'Timing', 'Instant', 'Date', 'CodeableConcept'] as const;
const MORE_CHOICES = ['Reference', 'String', 'Boolean', 'Quantity', 'Range', 'Age'] as const;
const ENDINGS = ['', ...CHOICES, ...MORE_CHOICES];

const CAST = /^\((\S+) as (\w+)\)(.*)$/;
const STEP = /\.(?:as\((\w+)\)|where\(resolve\(\) is (\w+)\)|(\w+))/y;

type Step =
  | { readonly kind: 'child'; readonly name: string; readonly as?: string }
  | { readonly kind: 'only-references-to'; readonly type: string };

/**
 * Reads the small part of FHIRPath in which HL7 FHIR R4 writes its search parameters: names, `as`,
 * `where(resolve() is Type)` and `|`.
 *
 * @throws InvariantError for any other expression: the table holds one that nobody reads
 */
export function elementPath(expression: string): ElementPath {
  const alternatives = expression.split(' | ').map(stepsOf);
  return (resource) => alternatives.flatMap((steps) => steps.reduce(walk, [resource]));
}

function stepsOf(expression: string): readonly Step[] {
  const cast = CAST.exec(expression);
  const plain = cast === null ? expression : `${cast[1]}.as(${cast[2]})${cast[3]}`;
  const steps: Step[] = [];
  STEP.lastIndex = plain.indexOf('.');
  while (STEP.lastIndex < plain.length) {
    const match = STEP.exec(plain);
    invariant(match !== null, `search expression is readable: ${expression}`);
    const [, as, type, name] = match;
    const last = steps.at(-1);
    if (name !== undefined) steps.push({ kind: 'child', name });
    else if (type !== undefined) steps.push({ kind: 'only-references-to', type });
    else if (as !== undefined && last?.kind === 'child') steps.splice(-1, 1, { ...last, as });
  }
  return steps;
}

function walk(values: readonly Json[], step: Step): readonly Json[] {
  switch (step.kind) {
    case 'only-references-to':
      return values.filter((value) => isObject(value) && pointsAt(value, step.type));
    case 'child':
      return values.flatMap((value) => (isObject(value) ? children(value, step) : []));
  }
}

function children(parent: JsonObject, step: { name: string; as?: string }): readonly Json[] {
  const endings = step.as === undefined ? ENDINGS : [capital(step.as)];
  return endings.flatMap((ending) => {
    const value = parent[`${step.name}${ending}`];
    if (value === undefined || value === null) return [];
    return isList(value) ? value : [value];
  });
}

const capital = (name: string) => name.slice(0, 1).toUpperCase() + name.slice(1);

function pointsAt(reference: JsonObject, type: string): boolean {
  const text = textOf(reference, 'reference') ?? '';
  return (
    textOf(reference, 'type') === type ||
    text.startsWith(`${type}?`) ||
    text.startsWith(`${type}/`) ||
    text.includes(`/${type}/`)
  );
}
