import type { Organ } from '../words.table.js';

/** The closed word lists of the examination message. */

/** Organs that an endoscope sees on its way. */
export const ROUTE_ORGANS = {
  upper: ['oesophagus', 'stomach', 'duodenum'],
  lower: ['colon', 'rectum'],
} as const satisfies Record<string, readonly Organ[]>;
export type Route = keyof typeof ROUTE_ORGANS;
export const ROUTES = Object.keys(ROUTE_ORGANS) as [Route, ...Route[]];

/** How much of the mucosa of the upper tract was free of mucus and food. */
export const MUCOSA_VIEWS = ['clear', 'partly-covered', 'poor'] as const;

/** What the scar looked like. */
export const SCAR_FINDINGS = [
  'none',
  'inflammation',
  'uncertain',
  'residual-or-recurrent-neoplasia',
] as const;

/** What was found in tissue, or that there is no answer yet. */
export const TISSUE_RESULTS = [
  'not-taken',
  'pending',
  'no-neoplasia',
  'serrated-without-dysplasia',
  'indefinite',
  'low-grade-dysplasia',
  'high-grade-dysplasia',
  'carcinoma',
  'not-assessable',
] as const;
export type TissueResult = (typeof TISSUE_RESULTS)[number];

export const SCAR_TREATMENTS = ['avulsion', 'ablation', 'emr', 'esd', 'surgery-referral'] as const;

export const NEXT_STEPS = ['as-planned', 'sooner', 'stop'] as const;
export const STOP_REASONS = ['age', 'life-expectancy', 'patient-wish'] as const;
