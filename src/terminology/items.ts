import { type LocalCode, setRefs } from './code-ref.js';

/** What an Observation or one of its components is about. */
export type ItemKey = LocalCode<'esd-observation'>;

/**
 * Every item by our own code, with a LOINC code where one says the same.
 *
 * - Size of a lesion: as in mCODE (Tumor Size), where 21889-1 is the panel, 33728-7 the largest
 *   extent and 33729-5 a further one, seen through the endoscope or measured on the specimen.
 *   21889-1 stands only at the panel that holds nothing but lengths.
 * - ASA class: 97816-3 names the scale. Helicobacter: 111844-7 names the state of infection, not
 *   one test. Grade of an adverse event: 111923-9 names the degree.
 *
 * Left without on purpose: INR (the specimen is not told, and LOINC asks for it), bowel preparation
 * (111880-1 is not the Boston scale), macroscopic type (81174-5 is of gastric cancer only), distance
 * from the anal verge (DICOM 112233 is from the anus), procedure time (DICOM 122106 says neither
 * scope in nor out), lateral margin (33760-0 is of any mucosal margin).
 */
export const ITEMS = setRefs('esd-observation', {
  'lesion-length': { open: ['obs-lesion-greatest-dimension'] },
  'lesion-width': { open: ['obs-lesion-additional-dimension'] },
  'specimen-lesion-dimensions': { open: ['obs-tumour-size'] },
  'specimen-lesion-length': { open: ['obs-lesion-greatest-dimension'] },
  'specimen-lesion-width': { open: ['obs-lesion-additional-dimension'] },
  'asa-class': { open: ['obs-asa-class'] },
  'helicobacter-status': { open: ['obs-h-pylori-state'] },
  'ae-severity': { open: ['obs-adverse-event-degree'] },
});
