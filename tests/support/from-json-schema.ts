import fc from 'fast-check';

/** The part of JSON Schema draft 2020-12 that the published schemas use. */
export interface SchemaNode {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly string[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly required?: readonly string[];
  readonly items?: SchemaNode;
  readonly maxItems?: number;
  readonly uniqueItems?: boolean;
  readonly pattern?: string;
  readonly format?: string;
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
}

/** More entries in a list than this tell a test nothing new. */
const LONGEST_LIST = 4;

/** Values of the shape that a JSON Schema describes; every optional property half of the time. */
export function fromJsonSchema(node: SchemaNode): fc.Arbitrary<unknown> {
  if (node.const !== undefined) return fc.constant(node.const);
  if (node.enum !== undefined) return fc.constantFrom(...node.enum);
  switch (node.type) {
    case 'object':
      return objects(node);
    case 'array':
      return lists(node);
    case 'string':
      return texts(node);
    case 'integer':
      return fc.integer({ min: node.minimum ?? 0, max: node.maximum ?? 0 });
    case 'number':
      return numbers(node);
    case 'boolean':
      return fc.boolean();
    default:
      throw new Error(`the generator knows no type ${String(node.type)}`);
  }
}

function objects({ properties = {}, required = [] }: SchemaNode): fc.Arbitrary<unknown> {
  const fields = Object.entries(properties).map(([key, node]) => [key, fromJsonSchema(node)]);
  const model: Record<string, fc.Arbitrary<unknown>> = Object.fromEntries(fields);
  return fc.record(model, { requiredKeys: [...required], noNullPrototype: true });
}

function lists({ items = {}, maxItems = LONGEST_LIST, uniqueItems }: SchemaNode) {
  const maxLength = Math.min(maxItems, LONGEST_LIST);
  return uniqueItems === true
    ? fc.subarray([...(items.enum ?? [])], {
        maxLength: Math.min(maxLength, items.enum?.length ?? 0),
      })
    : fc.array(fromJsonSchema(items), { maxLength });
}

/** Tenths, as people write them; the ends of the range come up often. */
function numbers({ minimum, exclusiveMinimum, maximum = 1000 }: SchemaNode) {
  const least = exclusiveMinimum === undefined ? (minimum ?? 0) : exclusiveMinimum + 0.1;
  const tenths = { min: Math.ceil(least * 10), max: maximum * 10 };
  return fc.oneof(
    { weight: 8, arbitrary: fc.integer(tenths).map((n) => n / 10) },
    { weight: 1, arbitrary: fc.constantFrom(tenths.min / 10, maximum) },
  );
}

const DAY_MS = 86_400_000;
const days = fc
  .integer({ min: Date.UTC(1900, 0, 1) / DAY_MS, max: Date.UTC(2099, 11, 31) / DAY_MS })
  .map((day) => new Date(day * DAY_MS).toISOString().slice(0, 10));
const offsets = fc.constantFrom('Z', '+01:00', '+05:45', '-03:00', '+14:00', '-00:00');
const instants = fc
  .tuple(days, fc.integer({ min: 0, max: 86_399 }), fc.constantFrom('', '.5', '.123456'), offsets)
  .map(([day, second, fraction, offset]) => {
    const clock = new Date(second * 1000).toISOString().slice(11, 19);
    return `${day}T${clock}${fraction}${offset}`;
  });

/** Letters of several scripts, a combining mark, signs beyond the first plane. */
const KEY_SIGNS = [...'AZaz09-_./:#ßéŻ漢字אب', '\u0301', '😀', '𝔸'];
const keys = fc
  .array(fc.constantFrom(...KEY_SIGNS), { minLength: 1, maxLength: 60 })
  .map((signs) => signs.join(''));
const words = fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,20}$/);
const uris = fc.oneof(
  words.map((word) => `urn:example:${word}`),
  fc.integer({ min: 1, max: 999 }).map((n) => `urn:oid:2.999.${n}`),
  words.map((word) => `https://${word}.example/images?n=1#top`),
);

function texts({ format, pattern = '' }: SchemaNode): fc.Arbitrary<string> {
  if (format === 'date') return days;
  if (format === 'date-time') return instants;
  if (pattern.includes(String.raw`\p{L}`)) return keys;
  if (pattern.includes('{8}-')) return fc.uuid();
  if (pattern.includes('Appointment')) return words.map((word) => `Appointment/${word}`);
  return pattern.includes(':') ? uris : words;
}
