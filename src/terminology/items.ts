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
 * - Pathology: 33739-4 and 33740-2 split the vessels, 59544-7 takes them together; 33732-9 is the
 *   grade of a cancer, which is what differentiation tells; 21899-0 the T category after resection;
 *   85296-2 names budding, whose grade ours says.
 *
 * Left without on purpose: type of a tumour (59847-4 is of cancer only, and its answers are ICD-O-3),
 * Helicobacter in sections (87953-6 is of a culture), distance to a margin (81175-2 is macroscopic),
 * INR (the specimen is not told, and LOINC asks for it), bowel preparation
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
  'tumour-dimensions': { open: ['obs-tumour-size'] },
  'tumour-length': { open: ['obs-lesion-greatest-dimension'] },
  'tumour-width': { open: ['obs-lesion-additional-dimension'] },
  'histologic-type': { open: ['obs-histologic-type'] },
  differentiation: { open: ['obs-histologic-grade'] },
  'lymphatic-invasion': { open: ['obs-lymphatic-invasion'] },
  'venous-invasion': { open: ['obs-venous-invasion'] },
  'lymphovascular-invasion': { open: ['obs-lymphovascular-invasion'] },
  'perineural-invasion': { open: ['obs-perineural-invasion'] },
  'tumour-budding': { open: ['obs-tumour-budding'] },
  'resection-status': { open: ['obs-residual-tumour-status'] },
  'stated-resection-status': { open: ['obs-residual-tumour-status'] },
  'pathological-t': { open: ['obs-pt-category'] },
  'asa-class': { open: ['obs-asa-class'] },
  'helicobacter-status': { open: ['obs-h-pylori-state'] },
  'ae-severity': { open: ['obs-adverse-event-degree'] },
  'haemoglobin-before': { open: ['obs-haemoglobin'] },
  'haemoglobin-lowest': { open: ['obs-haemoglobin'] },
});
