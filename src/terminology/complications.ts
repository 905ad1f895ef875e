import type { AdverseEventKind, Organ } from '../contract/index.js';
import { type CodeRef, setRefs } from './code-ref.js';

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
  'delayed-perforation': { open: ['finding-perforation-gi'] },
  'stricture-large-bowel': { broader: ['finding-stricture-intestine'] },
  'aspiration-pneumonia': { open: ['finding-aspiration-pneumonia'] },
});

const UPPER: CodeRef = COMPLICATIONS['stricture-upper-tract'];

/** A stricture by organ; ICD-10 has none for the stomach that says where its scar lies. */
const STRICTURES: Readonly<Record<Organ, CodeRef>> = {
  oesophagus: { ...UPPER, open: ['finding-stricture-oesophagus', 'dx-k22-2'] },
  stomach: UPPER,
  duodenum: { ...UPPER, open: ['dx-k31-5'] },
  colon: COMPLICATIONS['stricture-large-bowel'],
  rectum: { ...COMPLICATIONS['stricture-large-bowel'], open: ['dx-k62-4'] },
};

/** The code of an adverse event after a dissection of an organ. */
export function adverseEventCode(kind: AdverseEventKind, organ: Organ): CodeRef {
  return kind === 'stricture' ? STRICTURES[organ] : COMPLICATIONS[kind];
}
