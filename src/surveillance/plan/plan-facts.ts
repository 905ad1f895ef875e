import type {
  BookingFields,
  Identifier,
  Organ,
  ResectionOutcome,
  Route,
} from '../../contract/index.js';

/** What a plan rests on. Days are YYYY-MM-DD; what was not told is absent. */
export interface PlanFacts {
  /** Greatest `sentAt` of the messages. */
  readonly calculatedAt: string;
  /** Day of the dissection, by the clock of the unit. */
  readonly esdOn: string;
  readonly organ: Organ;
  readonly route: Route;
  readonly tumour?: PlanTumour;
  readonly outcome: ResectionOutcome;
  readonly specimenRetrieved?: boolean;
  readonly sizeMm?: number;
  /** Share of the circumference that the defect takes. */
  readonly defectPercent?: number;
  readonly bornOn?: string;
  /** At the dissection. */
  readonly ageYears?: number;
  readonly helicobacter: 'positive' | 'negative' | 'eradicated' | 'unknown';
  readonly verdict: PlanVerdict;
  /** Class by each rule set of curability that gives one. */
  readonly classes: Readonly<Record<string, string>>;
  readonly pathology?: PathologyFacts;
  readonly examinations: readonly ExaminationFacts[];
  readonly events: PlanEvents;
  /** Whether the whole case was taken back. */
  readonly withdrawn: boolean;
  /** What schedulers said, in the order in which they said it; absent: nothing. */
  readonly bookings?: readonly BookingWord[];
  /** These facts may never have been the record: what they lack was no less there. */
  readonly supposed?: true;
}

/** What a scheduler said once of the appointment for an item. */
export interface BookingWord
  extends Pick<BookingFields, 'status' | 'startsAt' | 'endsAt' | 'reason' | 'appointment'> {
  /** Key of the item. */
  readonly item: string;
  /** Instant of saying so. */
  readonly toldAt: string;
}

export type PlanTumour = 'squamous' | 'barrett' | 'gastric' | 'colorectal' | 'other';

/** The class by the rule set that the unit has chosen. */
export interface PlanVerdict {
  readonly rule: string;
  /** Absent while it is indeterminate. */
  readonly class?: string;
  readonly group?: 'curative' | 'local-risk' | 'non-curative' | 'open';
}

/** The report in force. */
export interface PathologyFacts {
  /** Its accession. */
  readonly id: Identifier;
  readonly status: 'interim' | 'final';
  readonly reportedOn: string;
  readonly histology?: string;
  readonly depth?: string;
  readonly polypType?: string;
  /** En bloc with both margins free. */
  readonly r0: boolean;
  readonly background?: BackgroundFacts;
}

export interface BackgroundFacts {
  readonly gastritisStage: '0' | 'I' | 'II' | 'III' | 'IV';
  readonly extent: 'none' | 'one-site' | 'antrum-and-corpus';
  readonly metaplasia: 'none' | 'complete' | 'incomplete';
  readonly helicobacterGastritis: boolean;
  /** Whether a stage of either kind was told. */
  readonly staged: boolean;
}

export interface ExaminationFacts {
  readonly id: Identifier;
  readonly on: string;
  /** Value of the request that it answers, as its sender names it. */
  readonly answers?: string;
  readonly route: Route;
  /** `open`: biopsies pending or in doubt. */
  readonly recurrence: 'none' | 'found' | 'open' | 'not-told';
  readonly carcinoma: boolean;
  readonly treated: boolean;
  readonly toSurgery: boolean;
  /** New lesions of the bowel, by the surveillance that they need. */
  readonly findings: 'none' | 'needing-surveillance' | 'open' | 'not-told';
  /** A new lesion that is no matter of surveillance alone. */
  readonly newNeoplasia: boolean;
  readonly barrettLeft?: boolean;
  /** Said to be incomplete, or the scar was not seen. */
  readonly incomplete: boolean;
  readonly passage?: { readonly passes: boolean; readonly dilated: boolean };
  readonly next?: { readonly step: 'as-planned' | 'sooner' | 'stop'; readonly on?: string };
}

interface Happened {
  readonly id: Identifier;
  readonly on: string;
}

export interface PlanEvents {
  readonly meetings: readonly (Happened & { readonly decision: MeetingDecision })[];
  readonly surgeries: readonly (Happened & { readonly kind: 'resection' | 'excision' })[];
  readonly deaths: readonly Happened[];
  /** `request` is the value of the request that was declined; absent: all. */
  readonly declines: readonly (Happened & { readonly request?: string })[];
  readonly losses: readonly Happened[];
  readonly dilatations: readonly Happened[];
  readonly strictures: readonly Happened[];
  readonly statuses: readonly Happened[];
}

export type MeetingDecision =
  | 'no-surgery'
  | 'surgery'
  | 'further-endoscopic-treatment'
  | 'chemoradiotherapy'
  | 'best-supportive-care'
  | 'further-staging';
