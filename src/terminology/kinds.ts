import type { Organ } from '../contract/index.js';
import { type CodeRef, localRef, setRefs } from './code-ref.js';

/** Answers to a question of yes or no. */
export const ANSWERS = setRefs('answer');

/** Bands of the risk of a stricture. */
export const STRICTURE_FLAGS = setRefs('stricture-flag');

/** Rules by which a value was computed, for Observation.method. */
export const COMPUTATIONS = setRefs('computation');

/** What each member of the team did; others know the first and the second performer. */
export const TEAM_FUNCTIONS = setRefs('team-function', {
  operator: { open: ['participation-pprf'] },
  assistant: { open: ['participation-sprf'] },
});

/** The rectum is reached by either kind of endoscope, so its report is of any endoscopy. */
const ENDOSCOPY_REPORT = localRef(
  { set: 'report-kind', code: 'endoscopy-report' },
  { open: ['doc-endoscopy-study'] },
);
const COLONOSCOPY_REPORT = localRef(
  { set: 'report-kind', code: 'endoscopy-report' },
  { open: ['doc-colonoscopy-study'] },
);

/** Our reports. Source of the LOINC codes: shared/terminology/README.md, "Binding". */
export const REPORT_KINDS = {
  'endoscopy-report': {
    oesophagus: ENDOSCOPY_REPORT,
    stomach: ENDOSCOPY_REPORT,
    duodenum: ENDOSCOPY_REPORT,
    colon: COLONOSCOPY_REPORT,
    rectum: ENDOSCOPY_REPORT,
  } satisfies Record<Organ, CodeRef>,
  'follow-up-report': {
    upper: localRef(
      { set: 'report-kind', code: 'follow-up-report' },
      { open: ['doc-endoscopy-study'] },
    ),
    lower: localRef(
      { set: 'report-kind', code: 'follow-up-report' },
      { open: ['doc-colonoscopy-study'] },
    ),
  },
  'pathology-report': localRef(
    { set: 'report-kind', code: 'pathology-report' },
    { open: ['doc-surgical-pathology-study', 'doc-pathology-synoptic'] },
  ),
} as const;

/** Whether the findings of a report are those of the record. */
export const REPORT_STANDING = setRefs('report-standing');

/** Our requests; histopathology is asked for by the LOINC code of the report that answers it. */
export const REQUEST_KINDS = setRefs('request-kind', {
  'histopathology-esd': { open: ['doc-surgical-pathology-study'] },
  'upper-follow-up-endoscopy': { open: ['procedure-egd'] },
  'lower-follow-up-endoscopy': { open: ['procedure-colonoscopy'] },
});

/** The piece of tissue itself. */
export const SPECIMEN_TYPE = localRef(
  { set: 'specimen-type', code: 'endoscopic-resection' },
  { broader: ['specimen-tissue', 'specimen-v2-tiss'] },
);

/** The fluid injected beneath the lesion as a whole. */
export const INJECTED_MIXTURE = localRef({ set: 'injectate', code: 'mixture' });

/** What was done to the specimen. */
export const SPECIMEN_PROCESSING = setRefs('specimen-processing');
