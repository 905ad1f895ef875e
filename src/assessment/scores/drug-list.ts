import { type Checked, failed, type Problem, passed } from '../../kernel/index.js';
import { type Fields, readTold, type Told } from '../../rules/index.js';

/** Kinds of drugs that have points, in the order of the score. */
const KINDS_WITH_POINTS = ['warfarin', 'doac', 'p2y12', 'aspirin', 'cilostazol'] as const;
export type DrugKind = (typeof KINDS_WITH_POINTS)[number] | 'other';
const KINDS: readonly unknown[] = [...KINDS_WITH_POINTS, 'other'];

/** A drug that was taken; `null` or absent: not known whether it was interrupted. */
export interface Drug {
  readonly kind: DrugKind;
  readonly interrupted?: boolean | null | undefined;
}

const LIST = 'drugs';
const DRUG_FIELDS: readonly string[] = KINDS_WITH_POINTS.flatMap((kind) => [kind, flagOf(kind)]);

/**
 * The flags of a list of drugs. Several drugs of one kind count once, as the score counts kinds,
 * and the kind as interrupted only when each of them was.
 *
 * Source: bestJCalculator, use of the items; several drugs of one kind by derivation.
 *
 * @param drugs undefined: not known what was taken
 */
export function drugFlags(drugs: readonly Drug[] | undefined): Told {
  if (drugs === undefined) return {};
  return Object.fromEntries(
    KINDS_WITH_POINTS.flatMap((kind) => {
      const taken = drugs.filter((drug) => drug.kind === kind);
      if (taken.length === 0) return [[kind, false]];
      return [
        [kind, true],
        [flagOf(kind), allOf(taken.map(({ interrupted }) => interrupted))],
      ];
    }),
  );
}

/** The list is what people send and miss; its flags are only how the score counts. */
export const nameInDocument = (field: string): string =>
  DRUG_FIELDS.includes(field) ? LIST : field;

/**
 * Turns the list of drugs of a document into flags.
 *
 * Source: bestJCalculator, use of the items.
 *
 * @param fields of the score, flags included
 * @returns the flat fields, or every problem of the document at once
 */
export function unfoldDrugs(fields: Fields, document: unknown): Checked<unknown> {
  if (typeof document !== 'object' || document === null || Array.isArray(document)) {
    return passed(document);
  }
  const { [LIST]: list, ...others } = document as Readonly<Record<string, unknown>>;
  const known = Object.keys(fields).filter((name) => !DRUG_FIELDS.includes(name));
  const problems = [...unknownNames(others, known), ...listProblems(list)];
  const kept = Object.fromEntries(Object.entries(others).filter(([name]) => known.includes(name)));
  if (problems.length > 0) {
    const rest = readTold(fields, [], kept);
    return failed([...problems, ...(rest.ok ? [] : rest.problems)]);
  }
  return passed({ ...kept, ...drugFlags(Array.isArray(list) ? list : undefined) });
}

function flagOf(kind: (typeof KINDS_WITH_POINTS)[number]): string {
  return `${kind}Interrupted`;
}

/** @returns null where one value that matters is not known */
function allOf(values: readonly (boolean | null | undefined)[]): boolean | null {
  if (values.includes(false)) return false;
  return values.every((value) => value === true) ? true : null;
}

function unknownNames(others: object, known: readonly string[]): readonly Problem[] {
  return Object.keys(others)
    .filter((name) => !known.includes(name))
    .map((name) => ({
      rule: 'unknown-field',
      message: 'There is no field of this name.',
      pointer: `/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`,
      expected: `only the fields: ${[LIST, ...known].join(', ')}`,
    }));
}

const WRONG_TYPE = { rule: 'wrong-type', message: 'This value has the wrong type.' };
const DRUG = 'an object with kind, and interrupted where it is known';

function listProblems(list: unknown): readonly Problem[] {
  if (list === undefined || list === null) return [];
  if (!Array.isArray(list)) {
    return [{ ...WRONG_TYPE, pointer: `/${LIST}`, expected: 'a list of drugs, or null' }];
  }
  return list.flatMap((drug: unknown, i) => drugProblems(drug, `/${LIST}/${i}`));
}

function drugProblems(drug: unknown, pointer: string): readonly Problem[] {
  if (typeof drug !== 'object' || drug === null || Array.isArray(drug)) {
    return [{ ...WRONG_TYPE, pointer, expected: DRUG }];
  }
  const { kind, interrupted, ...others } = drug as Readonly<Record<string, unknown>>;
  return [
    ...(KINDS.includes(kind)
      ? []
      : [
          {
            rule: 'not-in-list',
            message: 'This value is not one of the allowed words.',
            pointer: `${pointer}/kind`,
            expected: `one of: ${KINDS.join(', ')}`,
          },
        ]),
    ...(interrupted === undefined || interrupted === null || typeof interrupted === 'boolean'
      ? []
      : [{ ...WRONG_TYPE, pointer: `${pointer}/interrupted`, expected: 'true, false or null' }]),
    ...(Object.keys(others).length === 0
      ? []
      : [
          {
            rule: 'unknown-field',
            message: 'There is a field that a drug does not have.',
            pointer,
            expected: 'only the fields: kind, interrupted',
          },
        ]),
  ];
}
