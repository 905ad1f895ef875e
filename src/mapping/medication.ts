import type { CodeableConcept, MedicationAdministration, MedicationStatement } from 'fhir/r4.js';
import { INJECTED_MIXTURE, localRef, SUBSTANCES, WORD_CODES } from '../terminology/index.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { measured } from './values.js';

/** What was given during the procedure: the injected mixture, and drugs against a stricture. */
export function toDrugsGiven(context: MappingContext): readonly Draft<MedicationAdministration>[] {
  return [...injectate(context), ...stricturePrevention(context)];
}

/**
 * The mixture under the lesion as one dose; its text names the ingredients. Without a volume
 * there is no dose to speak of, and the Observation of the injection technique alone says it.
 */
function injectate(context: MappingContext): readonly Draft<MedicationAdministration>[] {
  const totalMl = context.fields.injection?.totalMl;
  if (totalMl === undefined) return [];
  const mixture = context.concept(INJECTED_MIXTURE);
  const ingredients = toIngredients(context).join(', ');
  const text = [mixture.text, ingredients].filter((part) => part !== '').join(': ');
  return [
    {
      key: 'injectate',
      resource: {
        ...given(context, 'injectate', 'dr-injectate'),
        medicationCodeableConcept: { ...mixture, text },
        effectivePeriod: procedurePeriod(context),
        dosage: { dose: measured(context, '/injection/totalMl', totalMl, 'ml') },
      },
    },
  ];
}

/** What was mixed, in words; each is coded in the Observation of the injection technique. */
function toIngredients(context: MappingContext): readonly string[] {
  const { fluids = [], dye = 'none', adrenaline = false } = context.fields.injection ?? {};
  return [
    ...fluids.map((fluid) => WORD_CODES.fluid[fluid].text),
    ...(dye === 'none' ? [] : [WORD_CODES.dye[dye].text]),
    ...(adrenaline ? [SUBSTANCES.adrenaline.text] : []),
  ].map((name) => name.toLowerCase());
}

/** A measure that was taken twice is two administrations, in the order in which it was told. */
function stricturePrevention(context: MappingContext): readonly Draft<MedicationAdministration>[] {
  const measures = context.fields.safety?.stricturePrevention ?? [];
  return measures.flatMap(({ measure, drug, doseMg, at }, i) => {
    if (measure === 'stent') return [];
    const before = measures.slice(0, i).filter((other) => other.measure === measure).length;
    const key = before === 0 ? measure : `${measure}.${before + 1}`;
    const pointer = `/safety/stricturePrevention/${i}/doseMg`;
    return [
      {
        key,
        resource: {
          ...given(context, key, 'dr-drug-given'),
          medicationCodeableConcept: steroid(context, measure, drug),
          ...(at === undefined
            ? { effectivePeriod: procedurePeriod(context) }
            : { effectiveDateTime: at }),
          ...(doseMg === undefined
            ? {}
            : { dosage: { dose: measured(context, pointer, doseMg, 'mg') } }),
        },
      },
    ];
  });
}

type Measure = NonNullable<
  NonNullable<MappingContext['fields']['safety']>['stricturePrevention']
>[number];

/** The drug where it is told, and in either case how it was given. */
function steroid(
  context: MappingContext,
  measure: Measure['measure'],
  drug: Measure['drug'],
): CodeableConcept {
  const way = context.concept(WORD_CODES.stricturePrevention[measure]);
  if (drug === undefined) return way;
  const named = context.concept(WORD_CODES.strictureDrug[drug]);
  return {
    coding: [...(named.coding ?? []), ...(way.coding ?? [])],
    text: `${named.text}: ${way.text}`,
  };
}

function given(context: MappingContext, key: string, profile: string) {
  return {
    resourceType: 'MedicationAdministration' as const,
    ...head(context, 'MedicationAdministration', key, profile),
    partOf: [context.procedure],
    status: 'completed' as const,
    subject: context.patient,
    ...(context.encounter === undefined ? {} : { context: context.encounter }),
  };
}

const procedurePeriod = ({ fields }: MappingContext) => ({
  start: fields.times.scopeInAt,
  end: fields.times.scopeOutAt,
});

/** Each antithrombotic, what was done with it, and when it is or was taken up again. */
export function toAntithrombotics(context: MappingContext): readonly Draft<MedicationStatement>[] {
  return (context.fields.before?.antithrombotics ?? []).flatMap((drug) => {
    const key = drug.agent ?? drug.class;
    const statement = {
      resourceType: 'MedicationStatement' as const,
      partOf: [context.procedure],
      medicationCodeableConcept: context.concept(
        drug.agent === undefined
          ? WORD_CODES.antithromboticClass[drug.class]
          : WORD_CODES.agent[drug.agent],
      ),
      subject: context.patient,
      ...(context.encounter === undefined ? {} : { context: context.encounter }),
      dateAsserted: context.fields.sentAt,
    };
    const restart = drug.restartedAt ?? drug.restartPlannedOn;
    return [
      {
        key,
        resource: {
          ...statement,
          ...head(context, 'MedicationStatement', key, 'dr-antithrombotic'),
          status: drug.decision === 'continued' ? ('active' as const) : ('on-hold' as const),
          statusReason: toStatusReasons(context, drug),
          ...(drug.decision === 'continued'
            ? { effectiveDateTime: drug.lastDoseAt ?? context.fields.times.scopeInAt }
            : drug.lastDoseAt === undefined
              ? {}
              : { effectivePeriod: { end: drug.lastDoseAt } }),
          ...toReasons(context, drug),
        },
      },
      ...(restart === undefined
        ? []
        : [
            {
              key: `${key}.restart`,
              resource: {
                ...statement,
                ...head(context, 'MedicationStatement', `${key}.restart`, 'dr-antithrombotic'),
                status:
                  drug.restartedAt === undefined ? ('intended' as const) : ('active' as const),
                effectivePeriod: { start: restart },
              },
            },
          ]),
    ];
  });
}

type Drug = NonNullable<NonNullable<MappingContext['fields']['before']>['antithrombotics']>[number];

function toStatusReasons(context: MappingContext, drug: Drug): CodeableConcept[] {
  return [
    context.concept(WORD_CODES.drugDecision[drug.decision]),
    ...(drug.replacedBy === undefined
      ? []
      : [context.concept(WORD_CODES.antithromboticClass[drug.replacedBy])]),
    ...(drug.bridged === undefined
      ? []
      : [
          context.concept(
            localRef({ set: 'drug-decision', code: drug.bridged ? 'bridged' : 'not-bridged' }),
          ),
        ]),
    ...(drug.advisedBy === undefined ? [] : [context.concept(WORD_CODES.adviser[drug.advisedBy])]),
  ];
}

function toReasons(context: MappingContext, drug: Drug): Pick<MedicationStatement, 'reasonCode'> {
  const reasons = [
    ...(drug.indication === undefined
      ? []
      : [context.concept(WORD_CODES.antithromboticIndication[drug.indication])]),
    ...(drug.thromboticRisk === undefined
      ? []
      : [context.concept(WORD_CODES.thromboticRisk[drug.thromboticRisk])]),
  ];
  return reasons.length === 0 ? {} : { reasonCode: reasons };
}
