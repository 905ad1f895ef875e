import type { EventFields } from '../../contract/index.js';
import type { Told } from '../../rules/index.js';
import type { AdverseEvent } from '../classifications/adverse-event-fields.table.js';

type Intervention = AdverseEvent['intervention'];

/** From the least to the gravest. */
const INTERVENTIONS: readonly Intervention[] = ['none', 'endoscopic', 'radiological', 'surgical'];

/** Where the fields of the question stand in an event. */
export const PLACES: Readonly<Record<string, string>> = {
  intervention: 'course.intervention',
  generalAnaesthesia: 'course.underGeneralAnaesthesia',
  transfusion: 'course.transfusionUnits',
  drugsBeyondGradeI: 'course.drugsBeyondGradeI',
  emergencyVisit: 'course.emergencyVisit',
  death: 'course.died',
  admissionHours: 'course.admissionHours',
  observationHours: 'course.observationHours',
  criticalCare: 'course.criticalCare',
};

/**
 * An event as a grading asks about it. What was not told is not known and never read as "no".
 *
 * Source: the questions of AGREE and Clavien-Dindo, see their tables.
 *
 * @param caused events of the case that name this one as their cause
 */
export function toGradeQuestion(event: EventFields, caused: readonly EventFields[]): Told {
  const { course = {}, kind } = event;
  return {
    intervention: interventionFor(event, caused) ?? null,
    generalAnaesthesia: course.underGeneralAnaesthesia ?? null,
    transfusion: isTransfused(event) ?? null,
    drugsBeyondGradeI: course.drugsBeyondGradeI ?? null,
    emergencyVisit: kind === 'emergency-visit' ? true : (course.emergencyVisit ?? null),
    death: isDeadOf(event, caused) ?? null,
    admissionHours: course.admissionHours ?? null,
    observationHours: course.observationHours ?? null,
    criticalCare: course.criticalCare ?? null,
  };
}

/**
 * The same with everything unknown taken as the least: no grade below that can be right.
 *
 * Source: the questions of AGREE and Clavien-Dindo, see their tables.
 */
export function toLeastQuestion(told: Told, { kind, course }: EventFields): Told {
  const known = Object.entries(told).filter(([, value]) => value !== null);
  const isAdmitted = kind === 'readmission' || course?.readmitted === true;
  return {
    generalAnaesthesia: false,
    // However short the admission was.
    ...(isAdmitted ? { admissionHours: 1 } : {}),
    ...Object.fromEntries(known),
  };
}

export const isTransfused = ({ course }: EventFields): boolean | undefined =>
  course?.transfusionUnits === undefined ? undefined : course.transfusionUnits > 0;

/**
 * The gravest intervention that is told, here or as an event that this one led to.
 *
 * Source: the questions of AGREE and Clavien-Dindo, see their tables.
 */
export function interventionFor(
  { course, bleeding }: EventFields,
  caused: readonly EventFields[],
): Intervention | undefined {
  const told: readonly (Intervention | undefined)[] = [
    course?.intervention,
    bleeding?.haemostasis !== undefined && bleeding.haemostasis.length > 0
      ? 'endoscopic'
      : undefined,
    caused.some(({ kind }) => kind === 'dilatation') ? 'endoscopic' : undefined,
    caused.some(({ surgery }) => surgery?.reason === 'adverse-event') ? 'surgical' : undefined,
  ];
  return INTERVENTIONS.findLast((intervention) => told.includes(intervention));
}

/** Who is over an event did not die of it. */
function isDeadOf(
  { kind, course }: EventFields,
  caused: readonly EventFields[],
): boolean | undefined {
  if (kind === 'death' || course?.died === true) return true;
  if (caused.some((event) => event.kind === 'death')) return true;
  return course?.resolvedOn === undefined ? course?.died : false;
}
