import type { Assessment } from '../../assessment/index.js';
import {
  type BookingFields,
  type CaseFields,
  type EventFields,
  type ExaminationFields,
  type PathologyFields,
  ROUTE_ORGANS,
  type WithdrawalFields,
} from '../../contract/index.js';
import { compareInstants } from '../../kernel/index.js';
import { planEvents } from './events-of-record.js';
import { examinationFacts } from './examination-facts.js';
import { pathologyFacts } from './pathology-facts.js';
import type { PlanFacts, PlanTumour, PlanVerdict } from './plan-facts.js';

/** What is known of a case, as a record holds it; every list may be in any order but reports. */
export interface KnownForPlan {
  readonly esdCase: { readonly fields: CaseFields };
  /** The one in force comes first. */
  readonly reports: readonly { readonly fields: PathologyFields }[];
  readonly events: readonly { readonly fields: EventFields }[];
  readonly examinations: readonly { readonly fields: ExaminationFields }[];
  readonly withdrawal?: { readonly fields: WithdrawalFields };
  readonly assessment: Assessment;
  /** What schedulers said, each with the key of its item, in the order in which they said it. */
  readonly bookings?: readonly {
    readonly fields: Omit<BookingFields, 'schema'> & { readonly item: string };
  }[];
  /** False of messages that may never have been the record. */
  readonly stood?: boolean;
}

/**
 * The facts that a plan rests on.
 *
 * Source: what the rules of the plan ask for.
 */
export function planFacts(known: KnownForPlan): PlanFacts {
  const { fields } = known.esdCase;
  const { lesion, patient, resection, specimen, times } = fields;
  const report = known.reports[0]?.fields;
  const tumour = tumourOf(fields, report);
  const sizeMm = report?.findings?.sizeMm ?? lesion.longAxisMm;
  const defect = known.assessment.defectCircumference;
  return {
    calculatedAt: lastSentAt(known),
    esdOn: times.scopeInAt.slice(0, 10),
    organ: lesion.organ,
    route: ROUTE_ORGANS.lower.some((organ) => organ === lesion.organ) ? 'lower' : 'upper',
    ...(tumour === undefined ? {} : { tumour }),
    outcome: resection.outcome,
    ...(specimen === undefined ? {} : { specimenRetrieved: specimen.retrieved }),
    sizeMm,
    ...(defect.kind === 'determined' ? { defectPercent: defect.value.percent } : {}),
    ...(patient.bornOn === undefined ? {} : { bornOn: patient.bornOn }),
    ...(patient.ageYears === undefined ? {} : { ageYears: patient.ageYears }),
    helicobacter: helicobacterOf(fields, known.reports),
    ...classesOf(known.assessment),
    ...(report === undefined ? {} : { pathology: pathologyFacts(fields, report) }),
    examinations: known.examinations.map((message) => examinationFacts(message.fields)),
    events: planEvents(known.events.map((message) => message.fields)),
    withdrawn: known.withdrawal !== undefined,
    ...bookedOf(known),
    ...(known.stood === false ? { supposed: true } : {}),
  };
}

function bookedOf({ bookings = [] }: KnownForPlan): Pick<PlanFacts, 'bookings'> {
  if (bookings.length === 0) return {};
  return {
    bookings: bookings.map(({ fields }) => {
      const { item, status, sentAt: toldAt, startsAt, endsAt, reason, appointment } = fields;
      return {
        ...{ item, status, toldAt },
        ...(startsAt === undefined ? {} : { startsAt }),
        ...(endsAt === undefined ? {} : { endsAt }),
        ...(reason === undefined ? {} : { reason }),
        ...(appointment === undefined ? {} : { appointment }),
      };
    }),
  };
}

/** What the pathologist says counts more; a lesion that nobody named is that of its organ. */
function tumourOf(
  { lesion }: CaseFields,
  report: PathologyFields | undefined,
): PlanTumour | undefined {
  const named = report?.findings?.tumour ?? lesion.tumour;
  if (lesion.organ === 'duodenum' || named === 'duodenal') return 'other';
  if (named !== undefined) return named;
  switch (lesion.organ) {
    case 'stomach':
      return 'gastric';
    case 'colon':
    case 'rectum':
      return 'colorectal';
    case 'oesophagus':
      return undefined;
  }
}

function classesOf({ curability: { verdict, others } }: Assessment): {
  readonly verdict: PlanVerdict;
  readonly classes: Readonly<Record<string, string>>;
} {
  const { rule, outcome } = verdict;
  const decided = [verdict, ...others].flatMap((each) =>
    each.outcome.kind === 'decided' ? [[each.rule, each.outcome.class] as const] : [],
  );
  return {
    verdict:
      outcome.kind === 'decided' ? { rule, class: outcome.class, group: outcome.group } : { rule },
    classes: Object.fromEntries(decided),
  };
}

/** What was found in tissue counts more than what was known before, if it says that it is there. */
function helicobacterOf(
  { before }: CaseFields,
  reports: KnownForPlan['reports'],
): PlanFacts['helicobacter'] {
  const found = reports.map(({ fields }) => fields.background?.helicobacterPylori);
  if (found.includes('positive')) return 'positive';
  const told = before?.helicobacterPylori ?? 'unknown';
  return told === 'unknown' && found.includes('negative') ? 'negative' : told;
}

function lastSentAt(known: KnownForPlan): string {
  const { esdCase, reports, events, examinations, withdrawal } = known;
  const sent = [...reports, ...events, ...examinations, ...(withdrawal ? [withdrawal] : [])].map(
    ({ fields }) => fields.sentAt,
  );
  const later = (a: string, b: string) => {
    const order = compareInstants(a, b);
    return order > 0 || (order === 0 && a > b) ? a : b;
  };
  return sent.reduce(later, esdCase.fields.sentAt);
}
