import { type Border, bordersOf, type Condition, type Test, type Value } from './condition.js';
import type { Field, Fields } from './field.js';
import { wordText } from './word-text.js';

/**
 * A condition in words: "depth sm and sm depth over 500 um". Fields go by their names, split into
 * words and without the unit at their end.
 */
export function describeCondition(condition: Condition, fields: Fields): string {
  const tests = Object.entries(condition).flatMap(([name, test]) =>
    test === undefined ? [] : [describeTest(name, fields[name], test)],
  );
  if (tests.length === 0) return 'always';
  return tests.join(tests.some((test) => test.includes(' or ')) ? ', and ' : ' and ');
}

/** What a field may hold: "0, 1 or X (X counts as not known)". */
export function describeValues(field: Field): string {
  switch (field.type) {
    case 'flag':
      return 'true or false';
    case 'date':
      return 'a day, YYYY-MM-DD';
    case 'number':
      return `${field.whole ? 'whole number' : 'number'}, ${field.from} to ${field.to} ${field.unit}`;
    case 'word': {
      const unknown = field.unknown ?? [];
      const note = unknown.length > 0 ? ` (${either(unknown)} counts as not known)` : '';
      return `${either(field.words.map(wordText))}${note}`;
    }
  }
}

/** When a field is asked for and what its absence means, one sentence each; none when always. */
export function describeAsking(field: Field, fields: Fields): readonly string[] {
  const { assumed = [], askedWhen, only = [] } = field;
  const words = (when: Condition) => describeCondition(when, fields);
  return [
    ...only.map((each) => `Where ${words(each.when)}: ${either(each.words.map(wordText))} alone.`),
    ...(askedWhen === undefined ? [] : [askedText(askedWhen.map(words))]),
    ...assumed.map(({ when, value }) => {
      const where = Object.keys(when).length === 0 ? '' : ` where ${words(when)}`;
      return `Absent${where}: taken as ${typeof value === 'string' ? `"${value}"` : value}.`;
    }),
  ];
}

/** The name of a field in words, without the unit at its end: `smDepthUm` -> `sm depth` */
export function labelOf(name: string, unit = ''): string {
  const end = UNIT_ENDS[unit];
  const bare = end !== undefined && name.endsWith(end) ? name.slice(0, -end.length) : name;
  return bare.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

const askedText = (conditions: readonly string[]): string =>
  conditions.length === 0 ? 'Never asked for.' : `Asked for where ${conditions.join('; or ')}.`;

/** Ends of names that say a unit. */
const UNIT_ENDS: Readonly<Record<string, string>> = {
  um: 'Um',
  mm: 'Mm',
  cm: 'Cm',
  mm2: 'Mm2',
  h: 'Hours',
  '%': 'Percent',
};

function describeTest(name: string, field: Field | undefined, test: Test): string {
  const unit = field?.type === 'number' ? field.unit : undefined;
  const label = labelOf(name, unit);
  if (!('is' in test)) return `${label} ${bordersText(bordersOf(test))} ${unit}`;
  if (field?.type !== 'flag') return [label, either(test.is), unit].filter(Boolean).join(' ');
  if (test.is.length > 1) return `${label} known`;
  return test.is[0] === true ? label : `not ${label}`;
}

function bordersText(borders: readonly Border[]): string {
  const [one, other] = borders.flatMap((border) => Object.values(border));
  const closed = borders.every((border) => 'atLeast' in border || 'atMost' in border);
  if (closed && one === other) return `exactly ${one}`;
  return borders.map(borderText).join(' and ');
}

function borderText(border: Border): string {
  if ('above' in border) return `over ${border.above}`;
  if ('atLeast' in border) return `at least ${border.atLeast}`;
  if ('below' in border) return `under ${border.below}`;
  return `at most ${border.atMost}`;
}

/** `a`, `a or b`, `a, b or c` */
function either(values: readonly Value[]): string {
  const last = values.at(-1);
  if (last === undefined || values.length === 1) return String(last ?? '');
  return `${values.slice(0, -1).join(', ')} or ${last}`;
}
