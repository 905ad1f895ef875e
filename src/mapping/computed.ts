import type { Observation } from 'fhir/r4.js';
import type { Finding } from '../kernel/index.js';
import { type COMPUTATIONS, STRICTURE_FLAGS, STRUCTURE } from '../terminology/index.js';
import { basis } from './basis.js';
import type { MappingContext } from './context.js';
import type { Draft } from './draft.js';
import type { ItemKey } from './finding-row.js';
import { type ObservationContent, specimenReference, toObservation } from './observation.js';
import { cannotHaveSpecimen } from './specimen.js';
import { computed, measured, type Unit } from './values.js';

/** A computed number: how it is rounded, by which rule, from which other Observations. */
interface NumberRow {
  readonly item: ItemKey;
  readonly finding: Finding<number>;
  readonly decimals: number;
  readonly unit: Unit;
  readonly computation: keyof typeof COMPUTATIONS;
  readonly from: readonly ItemKey[];
  readonly about: 'lesion' | 'session';
  readonly onSpecimen?: true;
}

/**
 * Everything computed of the case, as Observations that name their rule and their inputs.
 *
 * @param present items for which the case has an Observation, so that no link dangles
 */
export function toComputed(
  context: MappingContext,
  present: ReadonlySet<string>,
): readonly Draft<Observation>[] {
  const { resection } = context.fields;
  const numbers = numberRows(context)
    .filter(({ item }) => resection.outcome !== 'not-started' || item === 'procedure-duration')
    .map((row) => toNumber(context, row, present));
  return [...numbers, ...toCircumference(context, present), ...toStrictureRisk(context)];
}

function numberRows({ known: { assessment } }: MappingContext): readonly NumberRow[] {
  return [
    {
      item: 'procedure-duration',
      finding: assessment.procedureMin,
      decimals: 1,
      unit: 'min',
      computation: 'duration-by-instants',
      from: [],
      about: 'session',
    },
    {
      item: 'dissection-duration',
      finding: assessment.dissectionMin,
      decimals: 1,
      unit: 'min',
      computation: 'duration-by-instants',
      from: ['procedure-times'],
      about: 'lesion',
    },
    {
      item: 'specimen-area',
      finding: assessment.specimenAreaCm2,
      decimals: 3,
      unit: 'cm2',
      computation: 'specimen-area-ellipse',
      from: ['specimen-dimensions'],
      about: 'lesion',
      onSpecimen: true,
    },
    {
      item: 'dissection-speed',
      finding: assessment.speedCm2PerH,
      decimals: 3,
      unit: 'cm2PerH',
      computation: 'area-by-dissection-time',
      from: ['specimen-dimensions', 'procedure-times'],
      about: 'lesion',
    },
  ];
}

function toNumber(
  context: MappingContext,
  row: NumberRow,
  present: ReadonlySet<string>,
): Draft<Observation> {
  const { item, about, finding } = row;
  const specimen = row.onSpecimen ? specimenReference(context) : undefined;
  return toObservation(context, {
    item,
    about,
    category: 'procedure',
    profile: 'dr-computed',
    ...(specimen === undefined ? {} : { specimen }),
    content: {
      ...(finding.kind === 'determined'
        ? { valueQuantity: computed(finding.value, row.decimals, row.unit) }
        : absence(context, finding.missing)),
      ...basis(context, row.computation, row.from, present),
    },
  });
}

/** The share of the circumference: as the operator states it, or computed with its rule. */
function toCircumference(
  context: MappingContext,
  present: ReadonlySet<string>,
): readonly Draft<Observation>[] {
  const finding = context.known.assessment.defectCircumference;
  if (finding.kind === 'indeterminate') return [];
  const isStated = finding.value.from === 'operator';
  return [
    toObservation(context, {
      item: 'defect-circumference',
      about: 'lesion',
      category: 'procedure',
      profile: isStated ? 'dr-endoscopy-finding' : 'dr-computed',
      content: {
        valueQuantity: isStated
          ? measured(context, '/defect/circumferencePercent', finding.value.percent, 'percent')
          : computed(finding.value.percent, 1, 'percent'),
        ...(isStated
          ? {}
          : basis(context, 'circumference-by-width', ['defect-dimensions'], present)),
      },
    }),
  ];
}

function toStrictureRisk(context: MappingContext): readonly Draft<Observation>[] {
  const { strictureRisk, defectCircumference } = context.known.assessment;
  if (strictureRisk === undefined || context.fields.resection.outcome === 'not-started') return [];
  const present = new Set(
    defectCircumference.kind === 'determined' ? ['defect-circumference'] : [],
  );
  return [
    toObservation(context, {
      item: 'stricture-risk',
      about: 'lesion',
      category: 'procedure',
      profile: 'dr-computed',
      content: {
        ...(strictureRisk.kind === 'determined'
          ? {
              valueCodeableConcept: context.concept(STRICTURE_FLAGS[strictureRisk.value.flag]),
              ...factorNote(strictureRisk.value.factors),
            }
          : absence(context, strictureRisk.missing)),
        ...basis(context, 'stricture-flag', ['defect-circumference'], present),
      },
    }),
  ];
}

/** Published factors that do not change the flag, in words. */
const FACTOR_TEXT = {
  'long-defect': 'the defect is longer than 30 mm',
  'upper-oesophagus': 'it lies in the upper oesophagus',
  'three-quarters-exactly': 'at exactly three quarters published thresholds differ',
} as const;

function factorNote(factors: readonly (keyof typeof FACTOR_TEXT)[]): ObservationContent {
  if (factors.length === 0) return {};
  return { note: [{ text: `Also: ${factors.map((name) => FACTOR_TEXT[name]).join('; ')}.` }] };
}

/** What cannot be computed is said to be absent, with the fields that would be needed. */
function absence(context: MappingContext, missing: readonly string[]): ObservationContent {
  return {
    dataAbsentReason: cannotHaveSpecimen(context)
      ? STRUCTURE.absent.notPerformed
      : STRUCTURE.absent.unknown,
    note: [{ text: `Not computed, because not recorded: ${missing.join(', ')}.` }],
  };
}
