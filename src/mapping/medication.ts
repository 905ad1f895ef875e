import type { CodeableConcept, MedicationAdministration, MedicationStatement } from 'fhir/r4.js';
import { INJECTED_MIXTURE, localRef, SUBSTANCES, UNITS, WORD_CODES } from '../terminology/index.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { measured } from './values.js';

/** What was given during the procedure: the injected mixture, and drugs against a stricture. */
export function toDrugsGiven(context: MappingContext): readonly Draft<MedicationAdministration>[] {
  return [...injectate(context), ...stricturePrevention(context)];
}

/** The mixture under the lesion as one dose; its text names the ingredients. */
function injectate(context: MappingContext): readonly Draft<MedicationAdministration>[] {
  const { injection } = context.fields;
  const ingredients = toIngredients(context);
  if (injection === undefined || (ingredients.length === 0 && injection.totalMl === undefined)) {
    return [];
  }
  const mixture = context.concept(INJECTED_MIXTURE);
  const text = [mixture.text, ingredients.join(', ')].filter((part) => part !== '').join(': ');
  return [
    {
      key: 'injectate',
      resource: {
        ...given(context, 'injectate', 'dr-injectate'),
        medicationCodeableConcept: { ...mixture, text },
        effectivePeriod: procedurePeriod(context),
        ...(injection.totalMl === undefined
          ? { note: [{ text: 'The injected volume was not recorded.' }] }
          : { dosage: { dose: measured(context, '/injection/totalMl', injection.totalMl, 'ml') } }),
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

function stricturePrevention(context: MappingContext): readonly Draft<MedicationAdministration>[] {
  return (context.fields.safety?.stricturePrevention ?? [])
    .filter(({ measure }) => measure !== 'stent')
    .map(({ measure, doseMg, at }) => ({
      key: measure,
      resource: {
        ...given(context, measure, 'dr-drug-given'),
        medicationCodeableConcept: context.concept(WORD_CODES.stricturePrevention[measure]),
        ...(at === undefined
          ? { effectivePeriod: procedurePeriod(context) }
          : { effectiveDateTime: at }),
        ...(doseMg === undefined ? {} : { dosage: { dose: { value: doseMg, ...UNITS.mg } } }),
      },
    }));
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
