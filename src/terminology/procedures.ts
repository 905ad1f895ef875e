import type { Organ } from '../contract/index.js';
import { type CodeRef, localRef, setRefs } from './code-ref.js';

/**
 * The dissection by organ. The SNOMED CT concepts of others say submucosal resection, which is
 * not dissection, so they only follow ours. Source: shared/terminology/README.md, "Warnings".
 */
const dissection = setRefs('esd-procedure', {
  'esd-oesophagus': { broader: ['procedure-endoscopic-submucosal-resection-oesophagus'] },
  'esd-stomach': { broader: ['procedure-endoscopic-submucosal-resection-stomach'] },
  'esd-colon': { broader: ['procedure-endoscopic-submucosal-resection-colon'] },
});

export const ESD_PROCEDURE: Readonly<Record<Organ, CodeRef>> = {
  oesophagus: dissection['esd-oesophagus'],
  stomach: dissection['esd-stomach'],
  duodenum: dissection['esd-duodenum'],
  colon: dissection['esd-colon'],
  rectum: dissection['esd-rectum'],
};

/** Rectal dissection done through a colonoscope, which SNOMED CT has by that instrument only. */
export const ESD_RECTUM_BY_COLONOSCOPE: CodeRef = localRef(
  { set: 'esd-procedure', code: 'esd-rectum' },
  { open: ['procedure-esd-rectum'] },
);

/** Dissection finished with a snare, organ not stated. */
export const HYBRID_ESD: CodeRef = dissection['esd-hybrid'];

/** What was done after the dissection, as a procedure of its own. */
export const LATER_PROCEDURES = setRefs('later-procedure', {
  'upper-follow-up-endoscopy': { open: ['procedure-egd'] },
  'lower-follow-up-endoscopy': { open: ['procedure-colonoscopy'] },
});

const DILATATION: CodeRef = LATER_PROCEDURES.dilatation;

/** Dilatation of a stricture by organ, in which others name it. */
export const DILATATION_OF: Readonly<Record<Organ, CodeRef>> = {
  oesophagus: { ...DILATATION, open: ['procedure-dilatation-oesophagus'] },
  stomach: DILATATION,
  duodenum: DILATATION,
  colon: { ...DILATATION, open: ['procedure-dilatation-colon'] },
  rectum: { ...DILATATION, open: ['procedure-dilatation-rectum'] },
};
