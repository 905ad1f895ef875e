import type { CaseFields, PathologyFields } from '../../contract/index.js';
import type { Told } from '../../rules/index.js';
import { type CurabilityQuestion, DEPTHS } from './question.js';

type Sent = { readonly [F in keyof CurabilityQuestion]?: CurabilityQuestion[F] | null | undefined };
type Findings = NonNullable<PathologyFields['findings']>;

/**
 * The question of curability that a record asks. What was seen through the endoscope says whether
 * the lesion was resected whole; size, depth, margins and vessels come from the pathologist alone.
 *
 * Source: the inputs of each rule set.
 *
 * @returns fields of a `CurabilityQuestion`; absent = not told, null = told to be not assessable
 */
export function toCurabilityQuestion(
  fields: CaseFields,
  pathology: PathologyFields | undefined,
): Told {
  const findings = pathology?.findings ?? {};
  const tumour = tumourOf(fields, findings);
  const { sizeMm, ulcer, ly, v, hm, vm, budding } = findings;
  const { smDepthUm, differentiation, gastricType, undiffLengthMm, undiffInSm } = findings;
  return {
    tumour,
    histology: histologyOf(findings),
    depth: depthOf(tumour, findings),
    smDepthUm,
    differentiation,
    gastricType,
    undiffLengthMm,
    undiffInSm,
    sizeMm,
    ulcer,
    ly,
    v,
    hm: hm?.state,
    vm: vm?.state,
    enBloc: isEnBloc(fields),
    endoscopicallyComplete: isComplete(fields),
    budding: budding?.grade === undefined ? undefined : GRADES[budding.grade],
  } satisfies Sent;
}

const GRADES = { '1': 1, '2': 2, '3': 3, X: 'X' } as const;

/** Lesions that no table of curability speaks of, whatever their lineage. */
const OTHER_KINDS: readonly (string | undefined)[] = [
  'none',
  'neuroendocrine-tumour',
  'other-tumour',
];

/** The pathologist's word counts more; no table speaks of the duodenum. */
function tumourOf({ lesion }: CaseFields, { tumour, histology }: Findings): Sent['tumour'] {
  const named = tumour ?? lesion.tumour;
  if (lesion.organ === 'duodenum' || named === 'duodenal') return 'other';
  return OTHER_KINDS.includes(histology) ? 'other' : named;
}

function histologyOf({ histology }: Findings): Sent['histology'] {
  switch (histology) {
    case 'low-grade-dysplasia':
    case 'high-grade-dysplasia':
    case 'carcinoma':
      return histology;
    case undefined:
      return undefined;
    case 'none':
    case 'indefinite':
    case 'neuroendocrine-tumour':
    case 'other-tumour':
    case 'not-assessable':
      return null;
  }
}

/** A layer that the wall of the tumour's organ does not have answers nothing. */
function depthOf(tumour: Sent['tumour'], { depth, histology }: Findings): Sent['depth'] {
  if (depth === undefined) return withinMucosa(tumour, histology);
  const layers: readonly Sent['depth'][] =
    tumour === 'squamous' ? DEPTHS.squamous : DEPTHS.glandular;
  return depth === 'X' || (tumour !== undefined && !layers.includes(depth)) ? null : depth;
}

function isEnBloc({ resection }: CaseFields): Sent['enBloc'] {
  return resection.outcome === 'en-bloc';
}

/** One piece says that nothing was left, unless the endoscopist says otherwise. */
function isComplete({ resection: { outcome, complete } }: CaseFields) {
  switch (outcome) {
    case 'en-bloc':
      return complete ?? true;
    case 'piecemeal':
      return complete;
    case 'abandoned':
    case 'not-started':
      return false;
  }
}

/** A pure dysplasia lies within the epithelium by definition: no depth needs to be told. */
function withinMucosa(tumour: Sent['tumour'], histology: Findings['histology']): Sent['depth'] {
  const isDysplasia = histology === 'low-grade-dysplasia' || histology === 'high-grade-dysplasia';
  if (!isDysplasia || tumour === undefined) return undefined;
  return tumour === 'squamous' ? 'ep' : 'm';
}
