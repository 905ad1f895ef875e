import { BIOPSY_RESULTS, ORGANS, SITE_ORGAN, SITES } from '../../src/contract/index.js';
import { HISTOLOGIES } from '../../src/contract/pathology/words.table.js';
import type { CodeRef } from '../../src/terminology/index.js';
import * as terminology from '../../src/terminology/index.js';

/** Every concept that the program can send, by where it stands. */
export function allRefs(): readonly (readonly [string, CodeRef])[] {
  return [...refsIn('', terminology), ...lesionRefs(), ...readLesionRefs()];
}

/** The objects of a kind within exported tables, however deep, each with its path. */
export function objectsIn<T extends object>(
  path: string,
  value: unknown,
  is: (value: object) => value is T,
): readonly (readonly [string, T])[] {
  if (value === null || typeof value !== 'object') return [];
  if (is(value)) return [[path, value]];
  return Object.entries(value).flatMap(([key, inner]) => objectsIn(`${path}/${key}`, inner, is));
}

function refsIn(path: string, value: object): readonly (readonly [string, CodeRef])[] {
  return objectsIn(path, value, isCodeRef);
}

function isCodeRef(value: object): value is CodeRef {
  return 'open' in value && 'text' in value;
}

/** Lesions after their specimen was read, in situ and not. */
function readLesionRefs(): readonly (readonly [string, CodeRef])[] {
  return SITES.flatMap((site) =>
    HISTOLOGIES.flatMap((histology) =>
      (['pTis', 'pT1'] as const).map((pT): readonly [string, CodeRef] => [
        `/lesionByHistology/${site}/${histology}/${pT}`,
        terminology.lesionByHistology(SITE_ORGAN[site], { histology, pT }, site),
      ]),
    ),
  );
}

function lesionRefs(): readonly (readonly [string, CodeRef])[] {
  const organs = ORGANS.map((organ) => [organ, undefined] as const);
  const sites = SITES.map((site) => [SITE_ORGAN[site], site] as const);
  return [...organs, ...sites].flatMap(([organ, site]) =>
    [undefined, ...BIOPSY_RESULTS].map((result): readonly [string, CodeRef] => [
      `/lesionCondition/${site ?? organ}/${result ?? 'no biopsy'}`,
      terminology.lesionCondition(organ, result, site),
    ]),
  );
}
