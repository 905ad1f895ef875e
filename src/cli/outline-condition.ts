import {
  type Border,
  bordersOf,
  type Condition,
  type Fields,
  labelOf,
  type Test,
} from '../rules/index.js';

/**
 * A condition in as few words as can be: "tumour barrett/colorectal, depth sm, sm depth > 500 um".
 * All parts between commas must hold; of words with a stroke between them one is enough.
 */
export function outlineCondition(condition: Condition, fields: Fields): string {
  const parts = Object.entries(condition).flatMap(([name, test]) =>
    test === undefined ? [] : [outlineTest(name, test, fields)],
  );
  return parts.length === 0 ? 'always' : parts.join(', ');
}

function outlineTest(name: string, test: Test, fields: Fields): string {
  const field = fields[name];
  const unit = field?.type === 'number' ? field.unit : '';
  const label = labelOf(name, unit);
  if (!('is' in test)) return `${label} ${outlineBorders(bordersOf(test))} ${unit}`;
  if (field?.type !== 'flag') return `${label} ${test.is.join('/')} ${unit}`.trimEnd();
  if (test.is.length > 1) return `${label} known`;
  return test.is[0] === true ? label : `not ${label}`;
}

function outlineBorders(borders: readonly Border[]): string {
  const [one, other] = borders.flatMap((border) => Object.values(border));
  const isClosed = borders.every((border) => 'atLeast' in border || 'atMost' in border);
  if (isClosed && one === other) return `= ${one}`;
  return borders.map(outlineBorder).join(' and ');
}

function outlineBorder(border: Border): string {
  if ('above' in border) return `> ${border.above}`;
  if ('atLeast' in border) return `>= ${border.atLeast}`;
  if ('below' in border) return `< ${border.below}`;
  return `<= ${border.atMost}`;
}
