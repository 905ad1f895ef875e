import type { CaseFields } from '../../contract/index.js';
import { DRUG_CLASS_NAMES } from './drug-names.table.js';
import { elementFacts, type RecordElement } from './elements.js';
import { CASE_ELEMENTS, DRUG_ELEMENTS } from './elements.table.js';
import { type Facts, holds } from './known.js';

/** An element that a complete record would hold and this one does not. */
export interface MissingElement {
  /** In plain words. */
  readonly element: string;
  readonly need: 'required' | 'conditional';
  /** JSON Pointers into the case; each one of them would do. */
  readonly pointers: readonly string[];
}

/**
 * Names each element of a complete record that the case does not tell, all at once. What later
 * messages bring is not asked for, and nothing of a step that never took place.
 *
 * Source: the table of elements; common practice, and the ESGE curriculum where a row says so.
 */
export function missingElements(fields: CaseFields): readonly MissingElement[] {
  const drugs = fields.before?.antithrombotics ?? [];
  return [
    ...missing(CASE_ELEMENTS, fields, { ...elementFacts(fields) }),
    ...drugs.flatMap((drug, i) => {
      const { class: drugClass, decision, thromboticRisk, agent } = drug;
      const name = agent ?? DRUG_CLASS_NAMES[drugClass];
      return missing(DRUG_ELEMENTS, fields, { class: drugClass, decision, thromboticRisk }, i).map(
        (found) => ({ ...found, element: found.element.replace('{drug}', name) }),
      );
    }),
  ];
}

/** Whether it is asked is decided by what is told: an unknown condition asks for nothing. */
function missing(
  elements: readonly RecordElement[],
  fields: CaseFields,
  facts: Facts,
  at?: number,
): readonly MissingElement[] {
  return elements.flatMap(({ element, need, pointers, word, askedWhen, unless = [] }) => {
    const asked = askedWhen === undefined || askedWhen.some((when) => holds(when, facts));
    if (!asked || unless.some((when) => holds(when, facts))) return [];
    const places = at === undefined ? pointers : pointers.map((p) => p.replace('*', String(at)));
    const told = places.some((place) => isTold(fields, place, word));
    return told ? [] : [{ element, need, pointers: places.map(toList) }];
  });
}

/** A place in a list that holds no such entry: the list itself. */
const toList = (pointer: string): string => pointer.replace(/\/\*.*$/, '');

function isTold(fields: CaseFields, pointer: string, word: string | undefined): boolean {
  const found = valuesAt(fields, pointer.split('/').slice(1));
  return found.some((value) => value !== undefined && (word === undefined || value === word));
}

function valuesAt(node: unknown, [first, ...rest]: readonly string[]): readonly unknown[] {
  if (first === undefined) return [node];
  if (node === null || typeof node !== 'object') return [];
  const next = first === '*' ? Object.values(node) : [Reflect.get(node, first)];
  return next.flatMap((value) => valuesAt(value, rest));
}
