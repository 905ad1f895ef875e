import type { PathologyFields } from '../contract/index.js';

type Findings = NonNullable<PathologyFields['findings']>;

/**
 * Lesions that stay within the epithelium: their report need not speak of vessels.
 *
 * Source: a pure dysplasia states no vessel invasion, as the questions of curability take it; that
 * it goes for lesions without a tumour as well is derived.
 */
export const WITHIN_EPITHELIUM: readonly Findings['histology'][] = [
  'none',
  'indefinite',
  'low-grade-dysplasia',
  'high-grade-dysplasia',
];
