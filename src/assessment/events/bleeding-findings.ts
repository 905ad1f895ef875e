import type { CaseFields, EventFields } from '../../contract/index.js';
import { determined, type Finding, indeterminate, roundTo } from '../../kernel/index.js';
import { askClass, type Told } from '../../rules/index.js';
import type { Reason } from '../assessment.js';
import { interventionFor, isTransfused } from './adverse-event-question.js';
import { daysAfter, hoursAfter } from './after-days.js';
import type { BleedingFinding } from './afterwards.js';
import {
  BLEEDING_DEFINITIONS,
  type BleedingDefinition,
  FIRST_HOUR,
} from './late-bleeding.table.js';

/** Where the facts of a definition stand in an event. */
const PLACES: Readonly<Record<string, readonly string[]>> = {
  hours: ['occurredAt'],
  clinicalSigns: ['bleeding.signs'],
  haematochezia: ['bleeding.signs'],
  bleedingSpotSeen: ['bleeding.confirmedAtEndoscopy'],
  transfusion: ['course.transfusionUnits'],
  emergencyVisit: ['course.emergencyVisit'],
  readmission: ['course.readmitted'],
  haemostasis: ['course.intervention', 'bleeding.haemostasis'],
  hbDropGPerDl: ['haemoglobin.beforeGPerDl', 'haemoglobin.lowestGPerDl'],
};

/** Beyond this binary fractions would decide. */
const DECIMALS = 6;

/** Events of a case as the definitions read them. */
export interface Course {
  readonly events: readonly EventFields[];
  /** Events that name an event as their cause. */
  causedBy(event: EventFields): readonly EventFields[];
  /** Last day after the procedure of which is known that nothing else happened. */
  readonly knownToDay: number;
}

/**
 * Delayed bleeding by each definition that speaks of the organ.
 *
 * Source: the definitions' own.
 * Indeterminate: without a fact that decides, and as long as nobody has said that nothing else
 * happened in the time of the definition.
 */
export function findBleeding(
  { lesion, times }: CaseFields,
  course: Course,
): readonly BleedingFinding[] {
  return BLEEDING_DEFINITIONS.filter(
    ({ organs }) => organs === undefined || organs.includes(lesion.organ),
  ).map((definition) => findingBy(definition, times.scopeOutAt, course));
}

function findingBy(
  { rule, lastDay }: BleedingDefinition,
  scopeOutAt: string,
  { events, causedBy, knownToDay }: Course,
): BleedingFinding {
  const decisions = events
    .filter(({ kind }) => kind === 'delayed-bleeding')
    .map((event) => askClass(rule, toQuestion(event, causedBy(event), scopeOutAt)).decision);
  const reasons = decisions.flatMap((decision): readonly Reason[] =>
    decision.kind === 'decided' && decision.class === 'yes'
      ? decision.rows.map(({ row, says, cites }) => ({ row, says, cites }))
      : [],
  );
  const missing = decisions.flatMap((decision) =>
    decision.kind === 'indeterminate' ? placesOf(decision.missing) : [],
  );
  const silent = knownToDay < lastDay ? ['status.untilOn'] : [];
  return {
    rule: rule.id,
    version: rule.version,
    title: rule.title,
    answer: answerOf(reasons, [...new Set([...missing, ...silent])], rule.cites),
    reasons,
  };
}

function answerOf(
  reasons: readonly Reason[],
  missing: readonly string[],
  cites: BleedingDefinition['rule']['cites'],
): Finding<'yes' | 'no'> {
  if (reasons.length > 0) return determined('yes', cites);
  return missing.length > 0 ? indeterminate(missing) : determined('no', cites);
}

const placesOf = (fields: readonly string[]): readonly string[] =>
  fields.flatMap((field) => PLACES[field] ?? [field]);

/** A bleeding as the definitions ask about it; what was not told is not known. */
function toQuestion(event: EventFields, caused: readonly EventFields[], scopeOutAt: string): Told {
  const { occurredOn, occurredAt, course, bleeding } = event;
  const intervention = interventionFor(event, caused);
  const signs: readonly string[] | undefined = bleeding?.signs;
  return {
    days: daysAfter(scopeOutAt, occurredOn),
    hours: hoursTold(hoursAfter(scopeOutAt, occurredOn, occurredAt)),
    clinicalSigns: signs === undefined ? null : signs.length > 0,
    haematochezia: signs?.includes('haematochezia') ?? null,
    bleedingSpotSeen: bleeding?.confirmedAtEndoscopy ?? null,
    transfusion: isTransfused(event) ?? null,
    emergencyVisit: course?.emergencyVisit ?? null,
    readmission: course?.readmitted ?? null,
    haemostasis: intervention === undefined ? null : intervention !== 'none',
    hbDropGPerDl: hbDropGPerDl(event) ?? null,
  };
}

/** Where only the day is known, an hour stands for it if the border lies on one side of the day. */
function hoursTold([first, last]: readonly [number, number]): number | null {
  return first >= FIRST_HOUR || last < FIRST_HOUR || first === last ? first : null;
}

/**
 * Fall of the haemoglobin.
 *
 * Source: arithmetic; the limit stands in the table of definitions.
 *
 * @returns g/dL; undefined without one of both values
 */
export function hbDropGPerDl({ haemoglobin }: EventFields): number | undefined {
  const { beforeGPerDl, lowestGPerDl } = haemoglobin ?? {};
  if (beforeGPerDl === undefined || lowestGPerDl === undefined) return undefined;
  return roundTo(beforeGPerDl - lowestGPerDl, DECIMALS);
}
