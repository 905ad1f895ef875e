import type { CaseFields, Organ, PathologyFields } from '../../contract/index.js';
import type { ScoreRule, Told } from '../../rules/index.js';
import type { Shown } from '../assessment.js';
import { BEST_J } from './best-j.table.js';
import {
  AS_WARFARIN,
  CASE_FIELD,
  INTERRUPTED_AS_TOLD,
  OTHER_SCAR,
  REPORT_FIELD,
  SIZE_THROUGH_ENDOSCOPE,
} from './case-words.table.js';
import { COLORECTAL_DIFFICULTY_2021 } from './colorectal-difficulty-2021.table.js';
import { COLORECTAL_DIFFICULTY_2023 } from './colorectal-difficulty-2023.table.js';
import { COLORECTAL_DIFFICULTY_MATSUMOTO_2019 } from './colorectal-difficulty-matsumoto-2019.table.js';
import { ECURA } from './ecura.table.js';
import { KR_COLORECTAL_BLEEDING } from './kr-colorectal-bleeding.table.js';
import { LIMOGES } from './limoges.table.js';
import {
  bestJTold,
  difficulty2021Told,
  difficulty2023Told,
  krBleedingTold,
  limogesTold,
  matsumotoTold,
} from './told-of-case.js';

/** What the scores read of a pathology report. */
export type ScoredReport = Pick<PathologyFields, 'findings'>;

/** What is known of a case. */
export interface Known {
  readonly fields: CaseFields;
  readonly report: ScoredReport | undefined;
  /** Class by the Japanese rule set for the stomach, once it is known. */
  readonly gastricClass: string | undefined;
}

/** How a score is asked about a case. */
export interface RecordScore {
  readonly rule: ScoreRule;
  readonly organs: readonly Organ[];
  /** Whether there is anything to ask yet; without it there always is. */
  readonly concerns?: (known: Known) => boolean;
  /** Why the score was not made for this case, as a sentence. */
  readonly refused?: (known: Known) => string | undefined;
  /** What must be known before anybody can say that the score was made for the case. */
  readonly unknown?: (known: Known) => readonly string[];
  readonly told: (known: Known) => Told;
  /** Where the case tells each field of the score. */
  readonly places: Readonly<Record<string, string>>;
  readonly remarks: (known: Known) => readonly Shown[];
}

const COLORECTAL: readonly Organ[] = ['colon', 'rectum'];
const bySize = () => [SIZE_THROUGH_ENDOSCOPE];

const noWound = ({ fields }: Known): string | undefined =>
  fields.resection.outcome === 'not-started'
    ? 'The dissection was never started: there is no wound that could bleed.'
    : undefined;

const tumourOf = ({ fields, report }: Known) => report?.findings?.tumour ?? fields.lesion.tumour;

/** The scores of a record, in the order in which they are shown. */
export const RECORD_SCORES: readonly RecordScore[] = [
  {
    rule: ECURA,
    organs: ['stomach'],
    concerns: ({ report }) => report !== undefined,
    refused: notECuraC2,
    told: ecuraTold,
    places: REPORT_FIELD,
    remarks: () => [],
  },
  {
    rule: BEST_J,
    organs: ['stomach'],
    refused: (known) => noWound(known) ?? notGastric(known),
    unknown: (known) => (tumourOf(known) === undefined ? ['lesion.tumour'] : []),
    told: ({ fields }) => bestJTold(fields),
    places: CASE_FIELD,
    remarks: bestJRemarks,
  },
  {
    rule: LIMOGES,
    organs: COLORECTAL,
    refused: noWound,
    told: ({ fields }) => limogesTold(fields),
    places: CASE_FIELD,
    remarks: bySize,
  },
  {
    rule: KR_COLORECTAL_BLEEDING,
    organs: COLORECTAL,
    refused: noWound,
    told: ({ fields }) => krBleedingTold(fields),
    places: CASE_FIELD,
    remarks: bySize,
  },
  {
    rule: COLORECTAL_DIFFICULTY_2021,
    organs: COLORECTAL,
    told: ({ fields }) => difficulty2021Told(fields),
    places: CASE_FIELD,
    remarks: bySize,
  },
  {
    rule: COLORECTAL_DIFFICULTY_2023,
    organs: COLORECTAL,
    told: ({ fields }) => difficulty2023Told(fields),
    places: CASE_FIELD,
    remarks: bySize,
  },
  {
    rule: COLORECTAL_DIFFICULTY_MATSUMOTO_2019,
    organs: COLORECTAL,
    told: ({ fields }) => matsumotoTold(fields),
    places: CASE_FIELD,
    remarks: ({ fields }) => [
      SIZE_THROUGH_ENDOSCOPE,
      ...(hasOtherScar(fields) ? [OTHER_SCAR] : []),
    ],
  },
];

function notGastric(known: Known): string | undefined {
  const tumour = tumourOf(known);
  return tumour === undefined || tumour === 'gastric'
    ? undefined
    : 'The score was made for early gastric neoplasia; this tumour is of another kind.';
}

function notECuraC2({ gastricClass, report }: Known): string | undefined {
  if (gastricClass === undefined) {
    return 'The score is for eCuraC-2 only, and the class of this resection is not known.';
  }
  if (gastricClass !== 'eCuraC-2') {
    return 'The score is for eCuraC-2 only, and this resection is of another class.';
  }
  const { depth, histology } = report?.findings ?? {};
  if (depth === 'mp') {
    return 'The score was made for early cancer; this tumour is deeper than the submucosa.';
  }
  return histology === undefined || MAY_BE_CANCER.includes(histology)
    ? undefined
    : 'The score was made for cancer; the report names none.';
}

const MAY_BE_CANCER: readonly string[] = ['carcinoma', 'not-assessable'];

function ecuraTold({ report }: Known): Told {
  const { ly, v, vm, sizeMm, depth, smDepthUm } = report?.findings ?? {};
  return { ly, v, vm: vm?.state, sizeMm, smDepthUm: depth === 'm' ? 0 : smDepthUm };
}

function bestJRemarks({ fields }: Known): readonly Shown[] {
  const drugs = fields.before?.antithrombotics ?? [];
  const isInterrupted = drugs.some(
    ({ decision, bridged }) => decision !== 'continued' || bridged === true,
  );
  const asWarfarin = drugs.some(
    (drug) => drug.class === 'vitamin-k-antagonist' && drug.agent !== 'warfarin',
  );
  return [
    SIZE_THROUGH_ENDOSCOPE,
    ...(isInterrupted ? [INTERRUPTED_AS_TOLD] : []),
    ...(asWarfarin ? [AS_WARFARIN] : []),
  ];
}

/** Treatments of the lesion that leave a scar. */
const SCARS: readonly string[] = ['polypectomy', 'esd', 'ablation', 'surgery'];

function hasOtherScar({ before }: CaseFields): boolean {
  const kinds = (before?.earlierAttempts ?? []).map(({ kind }) => kind);
  return !kinds.includes('emr') && kinds.some((kind) => SCARS.includes(kind));
}
