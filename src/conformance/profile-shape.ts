import type { Profile, ProfileElement } from './profiles.js';
import type { Rule } from './rule.js';

/** Under this key the gate reports an element that occurs too seldom, too often or otherwise. */
const KEY = 'profile-shape';

/**
 * What a profile demands of its elements beside its constraints: how often they occur and which
 * code they have, as rules of the same kind, so that nothing is published that is not checked.
 * Types, targets and bindings are left to the schema of R4 and to the tables of codes.
 */
export function shapeRules({ type, differential }: Profile): readonly Rule[] {
  const { element } = differential;
  return element
    .flatMap((one) => demand(one, element))
    .map(({ expression, human }) => ({
      key: KEY,
      severity: 'error',
      human,
      expression,
      context: type,
    }));
}

interface Demand {
  readonly expression: string;
  readonly human: string;
}

function demand(one: ProfileElement, all: readonly ProfileElement[]): readonly Demand[] {
  const [, ...steps] = one.path.split('.');
  const name = steps.pop()?.replace('[x]', '');
  // Within a slice only its discriminator is fixed, and that tells the slice apart.
  if (name === undefined || /:.*\./.test(one.id)) return [];
  const items = one.sliceName === undefined ? name : `${name}.where(${sliceTest(one, all)})`;
  const { min, max, patternCode } = one;
  const demands: readonly (readonly [string, string])[] = [
    ...(min === undefined ? [] : [[atLeast(items, min), `at least ${min}`] as const]),
    ...(max === undefined || max === '*'
      ? []
      : [[`${items}.count() <= ${max}`, `at most ${max}`] as const]),
    ...(patternCode === undefined ? [] : [[`${items} = '${patternCode}'`, patternCode] as const]),
  ];
  return demands.map(([expression, wanted]) => ({
    expression: steps.length === 0 ? expression : `${steps.join('.')}.all(${expression})`,
    human: `${one.id}: ${wanted}`,
  }));
}

const atLeast = (items: string, min: number): string =>
  min === 1 ? `${items}.exists()` : `${items}.count() >= ${min}`;

/** By what a slice is told apart here: the system of a coding, the URL of an extension. */
function sliceTest(slice: ProfileElement, all: readonly ProfileElement[]): string {
  const system = all.find(({ id }) => id === `${slice.id}.system`)?.patternUri;
  if (system !== undefined) return `system = '${system}'`;
  const url = slice.type?.[0]?.profile?.[0];
  return `url = '${url}'`;
}
