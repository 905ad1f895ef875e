import type { Value } from '../../src/rules/condition.js';
import type { Field, Fields } from '../../src/rules/field.js';
import type { ClassRule, ScoreRule } from '../../src/rules/rule.js';
import { changesOfCondition, replaced, wordsOf } from './changes.js';

/** A rule in which the absence of one field means something else. */
export interface PlantedField {
  readonly name: string;
  readonly field: string;
  readonly rule: ClassRule | ScoreRule;
}

/** Every single-point change of what it means that a field is absent. */
export function plantedInFields(rule: ClassRule | ScoreRule): readonly PlantedField[] {
  return Object.entries(rule.fields).flatMap(([name, field]) =>
    changesOfField(rule.fields, field, rule.samples[name] ?? []).map((change) => ({
      name: `${name}: ${change.name}`,
      field: name,
      rule: { ...rule, fields: { ...rule.fields, [name]: change.to } },
    })),
  );
}

interface ChangedField {
  readonly name: string;
  readonly to: Field;
}

function changesOfField(fields: Fields, field: Field, numbers: readonly number[]): ChangedField[] {
  return [
    ...changesOfAssumed(fields, field, numbers),
    ...changesOfAsked(fields, field),
    ...(field.assumed === undefined && field.type !== 'date' && field.type !== 'number'
      ? wordsOf(field).map((value) => ({
          name: `assumed ${value}`,
          to: { ...field, assumed: [{ when: {}, value }] },
        }))
      : []),
  ];
}

function changesOfAssumed(
  fields: Fields,
  field: Field,
  numbers: readonly number[],
): ChangedField[] {
  const { assumed = [] } = field;
  return assumed.flatMap(({ when, value }, i) => {
    const others = [...wordsOf(field), ...numbers].filter((other) => other !== value);
    const withEntries = (...by: { when: typeof when; value: Value }[]): Field => ({
      ...field,
      assumed: replaced(assumed, i, ...by),
    });
    return [
      ...others.map((other) => ({
        name: `assumed ${value} as ${other}`,
        to: withEntries({ when, value: other }),
      })),
      { name: `not assumed ${value}`, to: withEntries() },
      ...changesOfCondition(fields, when).map((change) => ({
        name: `assumed ${value} when ${change.name}`,
        to: withEntries({ when: change.to, value }),
      })),
    ];
  });
}

function changesOfAsked(fields: Fields, field: Field): ChangedField[] {
  const { askedWhen, ...always } = field;
  if (askedWhen === undefined) return [{ name: 'never asked', to: { ...field, askedWhen: [] } }];
  return [
    { name: 'always asked', to: always },
    ...askedWhen.flatMap((when, i) => [
      { name: `not asked there (${i + 1})`, to: { ...field, askedWhen: replaced(askedWhen, i) } },
      ...changesOfCondition(fields, when).map((change) => ({
        name: `asked when ${change.name}`,
        to: { ...field, askedWhen: replaced(askedWhen, i, change.to) },
      })),
    ]),
  ];
}
