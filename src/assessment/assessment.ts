import type { Citation, Finding } from '../kernel/index.js';
import type { Figure, Rate } from '../rules/index.js';
import type { DefectCircumference } from './defect-circumference.js';
import type { ResectionStatus } from './resection-status.table.js';
import type { MissingElement } from './review/missing-elements.js';
import type { StrictureRisk } from './stricture-risk.js';
import type { VesselInvasion } from './vessel-invasion.js';

/** What a case means; plain JSON, numbers unrounded. */
export interface Assessment {
  readonly rulesVersion: string;
  readonly procedureMin: Finding<number>;
  readonly dissectionMin: Finding<number>;
  readonly specimenAreaCm2: Finding<number>;
  readonly speedCm2PerH: Finding<number>;
  readonly defectCircumference: Finding<DefectCircumference>;
  /** Absent for an organ without a published threshold. */
  readonly strictureRisk?: Finding<StrictureRisk>;
  /** What the report on the specimen means; absent while there is none. */
  readonly specimen?: {
    readonly resectionStatus: Finding<ResectionStatus>;
    readonly vesselInvasion: Finding<VesselInvasion>;
  };
  readonly curability: Curability;
  /** The published scores that concern the organ; empty for an organ without one. */
  readonly scores: readonly ScoreFinding[];
  /** What a colleague would ask about the case; it changes nothing. */
  readonly review: readonly ReviewRemark[];
  /** What a complete record would hold and this case does not tell. */
  readonly missingElements: readonly MissingElement[];
}

/** Whether a patient is cured by the resection, by the unit's rule set and by others. */
export interface Curability {
  readonly verdict: Verdict;
  /** Verdicts of other sets for the same organ, where they are of another group or class. */
  readonly others: readonly Verdict[];
}

/** The coarse group that a class belongs to. */
export type CurabilityGroup = 'curative' | 'local-risk' | 'non-curative' | 'open';

/** The answer of one rule set. */
export interface Verdict {
  readonly rule: string;
  readonly version: number;
  /** Why a unit cannot choose this set; it is shown for comparison only. */
  readonly unconfirmed?: string;
  readonly outcome: VerdictOutcome;
  /** What usually follows, in our words; empty without a class. */
  readonly usually: string;
  readonly remarks: readonly Shown[];
}

export type VerdictOutcome =
  | {
      readonly kind: 'decided';
      /** As the rule set names it, also `no-rule` and `incomplete`. */
      readonly class: string;
      readonly group: CurabilityGroup;
      readonly reasons: readonly Reason[];
    }
  | {
      readonly kind: 'indeterminate';
      /** Fields of the question to the rule set, in the order of its table. */
      readonly missing: readonly string[];
      /** Present while the case has no final pathology report. */
      readonly awaits?: 'pathology';
    };

/** A row of the table that decided. */
export interface Reason {
  readonly row: string;
  /** One word that several rows may share; absent where the row is no reason by itself. */
  readonly reason?: string;
  readonly says: string;
  readonly cites: readonly Citation[];
}

/** Something that is shown beside an answer and does not change it. */
export interface Shown {
  readonly remark: string;
  readonly says: string;
  readonly cites: readonly Citation[];
}

/** A published score of the case. */
export interface ScoreFinding {
  readonly rule: string;
  readonly version: number;
  readonly title: string;
  /** For whom it was made. */
  readonly population: string;
  readonly outcome: ScoreOutcome;
  readonly remarks: readonly Shown[];
}

export type ScoreOutcome =
  | {
      readonly kind: 'total';
      readonly total: number;
      /** Absent where no groups were published. */
      readonly group?: string;
      readonly rate?: Rate;
      /** Further published numbers of the group, as its survival or speed. */
      readonly figures?: readonly Figure[];
      readonly counted: readonly CountedItem[];
    }
  | {
      readonly kind: 'indeterminate';
      readonly missing: readonly string[];
      readonly lowest: number;
      readonly highest: number;
    }
  /** The score was not made for such a case; a sentence says why. */
  | { readonly kind: 'refused'; readonly because: string };

export interface CountedItem {
  readonly item: string;
  readonly points: number;
  readonly says: string;
  readonly cites: readonly Citation[];
}

/** What a practice check says of the case. */
export interface ReviewRemark {
  /** Id of the check, as PC-01. */
  readonly check: string;
  readonly severity: 'warning' | 'note';
  /** JSON Pointers of the fields that it looked at. */
  readonly pointers: readonly string[];
  readonly says: string;
  readonly cites: readonly Citation[];
}
