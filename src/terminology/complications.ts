import { setRefs } from './code-ref.js';

/**
 * Complications by our own code. T81.2 of ICD-10 says accidental puncture during a procedure and
 * T81.0 bleeding that complicates one; a stricture of the large bowel is an intestinal one.
 *
 * Source: concepts.csv, groups lesion and icd-10.
 */
export const COMPLICATIONS = setRefs('adverse-event', {
  perforation: { open: ['finding-perforation-gi', 'dx-t81-2'] },
  'intraprocedural-bleeding': { open: ['finding-gi-haemorrhage', 'dx-t81-0'] },
  'delayed-bleeding': { open: ['finding-delayed-bleeding', 'dx-t81-0'] },
  'stricture-large-bowel': { broader: ['finding-stricture-intestine'] },
  'aspiration-pneumonia': { open: ['finding-aspiration-pneumonia'] },
});
