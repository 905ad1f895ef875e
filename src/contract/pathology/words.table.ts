/**
 * The closed word lists of the pathology message; words that a case uses too are those of a case.
 *
 * Source: elements of the endoscopic-resection datasets for oesophagus, stomach and colorectum
 * (ICCR); names of types: WHO classification of tumours of the digestive system, 5th edition.
 * Both from memory.
 */

/** `interim`: signed in part; `final`: all that the laboratory meant to say. */
export const REPORT_STATUSES = ['interim', 'final'] as const;

/** Why a final report was replaced by another: the first three add to it, the others correct it. */
export const AMENDMENT_REASONS = [
  'further-sections',
  'further-stains',
  'second-opinion',
  'transcription-error',
  'wrong-finding',
  'wrong-specimen',
] as const;

/** How the laboratory was told that the specimen was taken. */
export const SPECIMEN_PROCEDURES = ['esd', 'hybrid-esd', 'emr', 'polypectomy', 'other'] as const;

export const STAINS = [
  'elastic-fibres',
  'podoplanin',
  'cd31',
  'cd34',
  'desmin',
  'cytokeratin',
  'helicobacter',
] as const;

/** The most advanced part of the lesion. `none`: no dysplasia and no tumour. */
export const HISTOLOGIES = [
  'none',
  'indefinite',
  'low-grade-dysplasia',
  'high-grade-dysplasia',
  'carcinoma',
  'neuroendocrine-tumour',
  'other-tumour',
  'not-assessable',
] as const;
export type Histology = (typeof HISTOLOGIES)[number];

export const POLYP_TYPES = [
  'adenoma',
  'sessile-serrated',
  'traditional-serrated',
  'hyperplastic',
] as const;
export type PolypType = (typeof POLYP_TYPES)[number];

/** Grade of the predominant part. */
export const DIFFERENTIATIONS = ['well', 'moderate', 'poor', 'signet', 'mucinous'] as const;

/** Predominant type of a gastric carcinoma in the Japanese grouping. */
export const GASTRIC_TYPES = ['differentiated', 'undifferentiated'] as const;

/**
 * Deepest layer reached, outermost last. Squamous: epithelium, lamina propria, muscularis
 * mucosae, submucosa, muscle layer; all others: mucosa, submucosa, muscle layer. `X`: cannot be
 * assessed.
 */
export const DEPTHS = ['ep', 'lpm', 'mm', 'm', 'sm', 'mp', 'X'] as const;
export type Depth = (typeof DEPTHS)[number];

/** Layers of a mucosa whose muscularis is double; all are depth `m`. */
export const BARRETT_DEPTHS = ['m1', 'm2', 'm3', 'm4'] as const;

/** Absent, present, cannot be assessed: invasion of vessels or nerves, tumour at a margin. */
export const STATES = ['0', '1', 'X'] as const;
export type State = (typeof STATES)[number];

/** Grade of tumour budding. */
export const BUDDING_GRADES = ['1', '2', '3', 'X'] as const;

/** Ulcer or ulcer scar within the lesion. */
export const ULCERS = ['UL0', 'UL1'] as const;

export const PRIMARY_TUMOURS = ['pTis', 'pT1', 'pT1a', 'pT1b', 'pT2', 'pTX'] as const;
export type PrimaryTumour = (typeof PRIMARY_TUMOURS)[number];
export const TNM_EDITIONS = ['8', '9'] as const;
export const RESECTION_STATUSES = ['R0', 'R1', 'RX'] as const;

export const INTESTINAL_METAPLASIAS = ['none', 'complete', 'incomplete', 'type-not-told'] as const;
export const ATROPHIES = ['none', 'mild', 'moderate', 'severe'] as const;
/** Parts of the stomach in which atrophy or metaplasia was found. */
export const BACKGROUND_SITES = ['antrum', 'corpus'] as const;
/** Stage by OLGA (atrophy) or OLGIM (intestinal metaplasia). */
export const GASTRITIS_STAGES = ['0', 'I', 'II', 'III', 'IV'] as const;
export const HELICOBACTER_FINDINGS = ['positive', 'negative'] as const;

export const P53_PATTERNS = ['wild-type', 'overexpressed', 'lost', 'cytoplasmic'] as const;
export const MISMATCH_REPAIRS = ['proficient', 'deficient'] as const;
export const MICROSATELLITES = ['stable', 'unstable-low', 'unstable-high'] as const;
export const HER2_SCORES = ['0', '1+', '2+', '3+'] as const;
