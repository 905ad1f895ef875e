import { _, type CodeKeywordDefinition, type KeywordCxt } from 'ajv';

/** One choice element: its properties in JSON, of which at most one may stand. */
export interface Choice {
  /** Element name as the standard writes it, such as `value[x]`. */
  readonly element: string;
  readonly properties: readonly string[];
  /** Whether the standard asks for one of them. */
  readonly required: boolean;
}

/**
 * The keyword `choices`: at most one property of each choice element, and exactly one of those
 * that are required. JSON Schema itself can only say this with one clause a pair of types, and
 * Extension.value[x] alone has 50 types.
 */
export const choicesKeyword: CodeKeywordDefinition = {
  keyword: 'choices',
  type: 'object',
  schemaType: 'array',
  error: { message: 'must have one type for each choice element' },
  code(context: KeywordCxt) {
    const { gen, data } = context;
    const choices: readonly Choice[] = context.schema;
    for (const { properties, required } of choices) {
      const count = gen.let('count', 0);
      for (const property of properties) {
        gen.if(_`${data}[${property}] !== undefined`, () => gen.code(_`${count}++`));
      }
      context.fail(required ? _`${count} !== 1` : _`${count} > 1`);
    }
  },
};
