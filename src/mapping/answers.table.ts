import type { ItemKey } from './findings.table.js';

/** What an answer of a rule rests on, among the Observations of the case. */
type Inputs = readonly ItemKey[];

/** Facts of the resection and the tumour that every rule set of curability asks for. */
export const VERDICT_INPUTS: Inputs = [
  'lesion-description',
  'en-bloc',
  'resection-completeness',
  'specimen-lesion-dimensions',
];

/** Of which item the points of a score are, and what it asks for. */
export interface ScoreRow {
  readonly item: Extract<ItemKey, 'bleeding-risk-score' | 'node-risk' | 'difficulty-score'>;
  readonly inputs: Inputs;
}

const SIZE: Inputs = ['lesion-description', 'specimen-lesion-dimensions'];

/** Every score that is sent, by its id. */
export const SCORES: Readonly<Record<string, ScoreRow>> = {
  'best-j': {
    item: 'bleeding-risk-score',
    inputs: ['antithrombotics-taken', 'haemodialysis', 'lesions-in-session', ...SIZE],
  },
  limoges: {
    item: 'bleeding-risk-score',
    inputs: ['antithrombotics-taken', 'asa-class', ...SIZE],
  },
  'kr-colorectal-bleeding': {
    item: 'bleeding-risk-score',
    inputs: ['antithrombotics-taken', ...SIZE],
  },
  ecura: { item: 'node-risk', inputs: SIZE },
  'colorectal-difficulty-2021': {
    item: 'difficulty-score',
    inputs: ['lesion-description', 'lesion-circumference'],
  },
  'colorectal-difficulty-2023': {
    item: 'difficulty-score',
    inputs: ['lesion-description', 'lesion-circumference', 'biopsy-result'],
  },
  'colorectal-difficulty-matsumoto-2019': {
    item: 'difficulty-score',
    inputs: ['lesion-description', 'earlier-treatment'],
  },
};
