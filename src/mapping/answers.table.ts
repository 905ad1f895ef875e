import type { ItemKey } from './finding-row.js';

/** What an answer of a rule rests on, among the Observations of the case. */
type Inputs = readonly ItemKey[];

/**
 * Kind of tumour, facts of the resection and findings in the specimen, which the rule sets of
 * curability ask for.
 */
export const VERDICT_INPUTS: Inputs = [
  'lesion-description',
  'en-bloc',
  'resection-completeness',
  'specimen-tumour-kind',
  'histology',
  'invasion-depth',
  'differentiation',
  'gastric-type',
  'tumour-dimensions',
  'ulceration',
  'lymphatic-invasion',
  'venous-invasion',
  'lateral-margin',
  'vertical-margin',
  'tumour-budding',
];

/** Of which item the points of a score are, and what it asks for. */
export interface ScoreRow {
  readonly item: Extract<ItemKey, 'bleeding-risk-score' | 'node-risk' | 'difficulty-score'>;
  readonly inputs: Inputs;
  /** It asks for the report on the specimen, and is preliminary until that is final. */
  readonly ofReport?: true;
}

/**
 * Every score that is sent, by its id. Drugs and when they were stopped stand in statements, from
 * which R4 lets no Observation derive; that any was taken stands in an Observation.
 */
export const SCORES: Readonly<Record<string, ScoreRow>> = {
  'best-j': {
    item: 'bleeding-risk-score',
    inputs: ['antithrombotics-taken', 'haemodialysis', 'lesions-in-session', 'lesion-description'],
  },
  limoges: {
    item: 'bleeding-risk-score',
    inputs: ['antithrombotics-taken', 'asa-class', 'lesion-description'],
  },
  'kr-colorectal-bleeding': {
    item: 'bleeding-risk-score',
    inputs: ['antithrombotics-taken', 'lesion-description'],
  },
  ecura: {
    item: 'node-risk',
    inputs: [
      'tumour-dimensions',
      'invasion-depth',
      'lymphatic-invasion',
      'venous-invasion',
      'vertical-margin',
    ],
    ofReport: true,
  },
  'colorectal-difficulty-2021': {
    item: 'difficulty-score',
    inputs: ['lesion-description', 'lesion-circumference'],
  },
  'colorectal-difficulty-2023': {
    item: 'difficulty-score',
    inputs: ['lesion-description', 'lesion-circumference', 'biopsy-result', 'earlier-treatment'],
  },
  'colorectal-difficulty-matsumoto-2019': {
    item: 'difficulty-score',
    inputs: ['lesion-description', 'earlier-treatment'],
  },
};
