/**
 * The closed word lists of the event message. Kinds of adverse events: those that ESD series
 * report (common practice, no source); words that are published elsewhere name their source.
 */

/** What went wrong after the scope was out. */
export const ADVERSE_EVENTS = [
  'delayed-bleeding',
  'delayed-perforation',
  'stricture',
  'coagulation-syndrome',
  'fever',
  'infection',
  'aspiration-pneumonia',
  'thromboembolism',
  'cardiopulmonary',
  'pancreatitis',
  'other-adverse-event',
] as const;
export type AdverseEventKind = (typeof ADVERSE_EVENTS)[number];

/** Adverse events, and what else happens or is decided after a dissection. */
export const EVENT_KINDS = [
  ...ADVERSE_EVENTS,
  'readmission',
  'emergency-visit',
  'surgery',
  'dilatation',
  'meeting-decision',
  'death',
  'follow-up-declined',
  'lost-to-follow-up',
  'status-at-30-days',
] as const;
export type EventKind = (typeof EVENT_KINDS)[number];

/** Whether the event was caused by the dissection, as the unit judges. */
export const RELATIONS = ['yes', 'no', 'unknown'] as const;

export const BLEEDING_SIGNS = [
  'haematemesis',
  'melaena',
  'haematochezia',
  'syncope',
  'shock',
] as const;

/** From the least to the gravest. */
export const INTERVENTIONS = ['none', 'endoscopic', 'radiological', 'surgical'] as const;
export type Intervention = (typeof INTERVENTIONS)[number];

export const CRITICAL_CARES = ['none', 'single-organ', 'multi-organ'] as const;

/**
 * Grades of an adverse event, ascending.
 *
 * Source: AGREE, Nass KJ et al. Gastrointest Endosc 2022;95:1078-1085; Clavien-Dindo, Dindo D et
 * al. Ann Surg 2004;240:205-213.
 */
export const GRADES = ['none', 'I', 'II', 'IIIa', 'IIIb', 'IVa', 'IVb', 'V'] as const;
export type Grade = (typeof GRADES)[number];

/** How a hole in the wall came to light. */
export const PERFORATION_FINDERS = ['endoscopy', 'imaging', 'operation'] as const;

/** Emergency operation for an adverse event, or operation for the tumour. */
export const SURGERY_REASONS = ['adverse-event', 'oncological'] as const;
export const OPERATIONS = [
  'resection-with-nodes',
  'local-excision',
  'closure-or-drainage',
  'other',
] as const;
/** What was left at the place of the dissection. */
export const RESIDUES = ['none', 'dysplasia', 'carcinoma', 'not-assessable'] as const;

/** UICC TNM, 8th and 9th edition: categories that a digestive organ can have. From memory. */
export const PRIMARY_TUMOURS_AT_SURGERY = [
  'pT0',
  'pTis',
  'pT1',
  'pT1a',
  'pT1b',
  'pT2',
  'pT3',
  'pT4',
  'pT4a',
  'pT4b',
  'pTX',
] as const;
export const NODE_CATEGORIES = [
  'pN0',
  'pN1',
  'pN1a',
  'pN1b',
  'pN1c',
  'pN2',
  'pN2a',
  'pN2b',
  'pN3',
  'pN3a',
  'pN3b',
  'pNX',
] as const;
export type NodeCategory = (typeof NODE_CATEGORIES)[number];

export const MEETING_DECISIONS = [
  'no-surgery',
  'surgery',
  'further-endoscopic-treatment',
  'chemoradiotherapy',
  'best-supportive-care',
  'further-staging',
] as const;
/** Why the meeting decided against an operation. */
export const NO_SURGERY_REASONS = ['low-risk', 'comorbidity', 'age', 'patient-wish'] as const;

export const DILATORS = ['balloon', 'bougie', 'incision', 'stent'] as const;

export const DECLINE_REASONS = [
  'patient-wish',
  'comorbidity',
  'moved-away',
  'followed-elsewhere',
] as const;

/** Who or what said that nothing happened. */
export const STATUS_SOURCES = [
  'patient',
  'relative',
  'general-practitioner',
  'hospital-record',
] as const;
