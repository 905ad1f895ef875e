import type { CaseFields, UnitSettings } from '../../contract/index.js';
import { type ClosingFacts, closingFacts } from './closing-facts.js';
import { type CourseFacts, courseFacts } from './course-facts.js';
import { completedYears } from './spans.js';

/** What the review reads of a pathology report. */
export interface ReviewedPathology {
  readonly findings?:
    | {
        readonly depth?: string | undefined;
        readonly smDepthUm?: number | undefined;
        readonly vm?: { readonly state: string } | undefined;
      }
    | undefined;
}

/** What is known beside the case message; absent = not known yet. */
export interface ReviewContext {
  readonly pathology?: ReviewedPathology | undefined;
  readonly speedCm2PerH?: number | undefined;
  /** Share of the circumference that the wound takes, computed where it was not stated. */
  readonly defectPercent?: number | undefined;
  /** Weeks to the first planned look, or that none is planned. */
  readonly firstLookWeeks?: number | 'none' | undefined;
}

type Lesion = CaseFields['lesion'];

/** What the checks of a whole case look at; lengths in mm unless the name says cm. */
export interface ReviewFacts extends CourseFacts, ClosingFacts {
  readonly organ: Lesion['organ'];
  readonly outcome: CaseFields['resection']['outcome'];
  readonly tumour: Lesion['tumour'];
  readonly lesionLongAxisMm: number;
  readonly distanceFromIncisorsCm: number | undefined;
  readonly distanceFromAnalVergeCm: number | undefined;
  readonly stainingUsed: boolean | undefined;
  readonly iodineUsed: boolean | undefined;
  /** False also where nothing is told: the check of iodine speaks unless an allergy is known. */
  readonly iodineAllergyRecorded: boolean;
  readonly bowelPreparationTold: boolean;
  readonly helicobacterPylori: NonNullable<CaseFields['before']>['helicobacterPylori'];
  /** Years between the age as told and the one by date of birth. */
  readonly ageOffYears: number | undefined;
  readonly speedCm2PerH: number | undefined;
  readonly defectPercent: number | undefined;
  readonly prophylaxisReading: UnitSettings['strictureProphylaxis'];
  readonly firstLook: 'planned' | 'none' | undefined;
  readonly firstLookWeeks: number | undefined;
  readonly invadesSubmucosa: boolean | undefined;
  readonly smDepthTold: boolean;
  readonly verticalMargin: string;
}

/**
 * Flattens a case, and what is known beside it, into what the checks look at.
 *
 * Source: the fields of the case, and arithmetic.
 */
export function reviewFacts(
  fields: CaseFields,
  context: ReviewContext,
  unit: UnitSettings,
): ReviewFacts {
  const { lesion, before, resection, defect } = fields;
  const { chromoendoscopy } = lesion;
  const { firstLookWeeks: look } = context;
  return {
    ...courseFacts(fields),
    ...closingFacts(fields),
    organ: lesion.organ,
    outcome: resection.outcome,
    tumour: lesion.tumour,
    lesionLongAxisMm: lesion.longAxisMm,
    distanceFromIncisorsCm: lesion.distanceFromIncisorsCm,
    distanceFromAnalVergeCm: lesion.distanceFromAnalVergeCm,
    stainingUsed: chromoendoscopy === undefined ? undefined : chromoendoscopy.length > 0,
    iodineUsed: chromoendoscopy?.includes('iodine'),
    iodineAllergyRecorded: before?.iodineAllergy === true,
    bowelPreparationTold: Object.values(before?.bowelPreparation ?? {}).some(isTold),
    helicobacterPylori: before?.helicobacterPylori,
    ageOffYears: ageOffYears(fields),
    speedCm2PerH: context.speedCm2PerH,
    defectPercent: context.defectPercent ?? defect?.circumferencePercent,
    prophylaxisReading: unit.strictureProphylaxis,
    firstLook: look === undefined || look === 'none' ? look : 'planned',
    firstLookWeeks: look === 'none' ? undefined : look,
    ...pathologyFacts(context.pathology),
  };
}

function pathologyFacts({ findings }: ReviewedPathology = {}) {
  const { depth, smDepthUm, vm } = findings ?? {};
  return {
    invadesSubmucosa: depth === undefined ? undefined : depth === 'sm',
    smDepthTold: smDepthUm !== undefined,
    verticalMargin: vm?.state ?? 'not known',
  };
}

function ageOffYears({ patient, times }: CaseFields): number | undefined {
  const { bornOn, ageYears } = patient;
  if (bornOn === undefined || ageYears === undefined) return undefined;
  return Math.abs(ageYears - completedYears(bornOn, times.scopeInAt.slice(0, 10)));
}

const isTold = (value: unknown): boolean => value !== undefined;
