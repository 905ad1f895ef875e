import type { Problem } from '../kernel/index.js';
import { validateBundle as generated } from './r4-schema.generated.js';

/** One error as the generated code reports it. */
interface SchemaError {
  readonly instancePath: string;
  readonly schemaPath: string;
  readonly keyword: string;
  readonly params: Readonly<Record<string, unknown>>;
}

/** The generated code is not typed: this is what it offers. */
const validateBundle: {
  (value: unknown): boolean;
  readonly errors?: readonly SchemaError[] | null;
} = generated;

type Sentence = Pick<Problem, 'rule' | 'message' | 'expected'>;

/**
 * Checks a value against the JSON schema of FHIR R4, cut to what we send.
 *
 * @returns every problem at once; none for a Bundle that the schema accepts
 */
export function schemaProblems(value: unknown): readonly Problem[] {
  if (validateBundle(value)) return [];
  const errors = validateBundle.errors ?? [];
  // What no item of a list satisfied is said once, for the list.
  const outermost = errors.filter(({ schemaPath }) => !schemaPath.includes('/contains/'));
  return outermost.map((error) => ({ pointer: pointerOf(error), ...sentenceOf(error) }));
}

function pointerOf({ instancePath, params }: SchemaError): string {
  const name = params['additionalProperty'];
  if (typeof name !== 'string') return instancePath;
  return `${instancePath}/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`;
}

function sentenceOf({ keyword, params }: SchemaError): Sentence {
  switch (keyword) {
    case 'required':
      return {
        rule: 'r4-required',
        message: `The required element ${params['missingProperty']} is missing.`,
        expected: `an element ${params['missingProperty']}`,
      };
    case 'additionalProperties':
      return {
        rule: 'r4-unknown-element',
        message: 'The standard has no element of this name here.',
        expected: 'only elements that R4 gives this type',
      };
    case 'enum':
      return {
        rule: 'r4-code',
        message: 'The code is not in the value set that the standard requires.',
        expected: listed(params['allowedValues']),
      };
    case 'contains':
      return {
        rule: 'r4-code',
        message: 'No coding is of the value set that the standard requires.',
        expected: 'a coding of the bound value set',
      };
    case 'choices':
      return {
        rule: 'r4-choice',
        message: 'A choice element has several types, or a required one has none.',
        expected: 'one type for each choice element',
      };
    case 'minItems':
      return {
        rule: 'r4-empty-list',
        message: 'A list is empty.',
        expected: 'at least one item, or no list',
      };
    case 'discriminator':
      return {
        rule: 'r4-resource-type',
        message: 'The resource has no type, or one that is not sent.',
        expected: 'a resource of a type that is sent',
      };
    case 'pattern':
      return {
        rule: 'r4-form',
        message: 'The text has not the form of its data type.',
        expected: `text that matches ${params['pattern']}`,
      };
    default:
      return {
        rule: `r4-${keyword.toLowerCase()}`,
        message: 'The value is not of its data type.',
        expected: Object.values(params).join(' ') || 'a value of the type of the element',
      };
  }
}

const listed = (codes: unknown): string =>
  Array.isArray(codes) ? `one of ${codes.join(', ')}` : 'a code of the value set';
