import type { ItemKey } from './finding-row.js';

/** What an answer of a rule rests on, among the Observations of the case. */
type Inputs = readonly ItemKey[];

/** Kind of tumour and facts of the resection, which every rule set of curability asks for. */
export const VERDICT_INPUTS: Inputs = ['lesion-description', 'en-bloc', 'resection-completeness'];

/** Of which item the points of a score are, and what it asks for. */
export interface ScoreRow {
  readonly item: Extract<ItemKey, 'bleeding-risk-score' | 'node-risk' | 'difficulty-score'>;
  readonly inputs: Inputs;
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
  // All that it asks for is pathology.
  ecura: { item: 'node-risk', inputs: [] },
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
