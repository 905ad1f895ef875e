/** A rule of the contract that JSON Schema has no words for, and what it asks. */
export interface BeyondJsonSchema {
  readonly rule: string;
  /** `bytes`: lost before a schema sees the value; `fields`: a rule across fields. */
  readonly kind: 'bytes' | 'fields';
  readonly asks: string;
}

/**
 * All that the service refuses although the JSON Schema of a case accepts it, given a validator
 * that asserts `format`. Whatever the JSON Schema refuses, the service refuses too.
 */
export const WHAT_JSON_SCHEMA_CANNOT_SAY: readonly BeyondJsonSchema[] = [
  { rule: 'not-utf-8', kind: 'bytes', asks: 'The body is UTF-8.' },
  { rule: 'byte-order-mark', kind: 'bytes', asks: 'The body has no byte order mark.' },
  { rule: 'repeated-key', kind: 'bytes', asks: 'No object holds a key twice.' },
  {
    rule: 'number-out-of-range',
    kind: 'bytes',
    asks: 'A number is one that a double holds: 15 significant digits, 20 decimals.',
  },
  { rule: 'CC-01', kind: 'fields', asks: 'Times stand in the order in which things happen.' },
  { rule: 'sent-before-end', kind: 'fields', asks: 'A case is sent after the scope is out.' },
  { rule: 'born-after-procedure', kind: 'fields', asks: 'The patient was born before.' },
  { rule: 'axes-order', kind: 'fields', asks: 'A short axis is at most the long axis.' },
  { rule: 'area-limit', kind: 'fields', asks: 'The ellipse of a specimen is at most 400 cm2.' },
  { rule: 'CC-03', kind: 'fields', asks: 'En bloc, the specimen holds the whole lesion.' },
  { rule: 'CC-07', kind: 'fields', asks: 'Prague C is at most Prague M.' },
  {
    rule: 'PC-12',
    kind: 'fields',
    asks: 'Injection through the knife needs a knife with a channel.',
  },
  {
    rule: 'PC-15',
    kind: 'fields',
    asks: 'Knives and accessories fit the channel of the endoscope, unless it was exchanged.',
  },
  { rule: 'CC-02', kind: 'fields', asks: 'The number of pieces fits the outcome.' },
  { rule: 'outcome-complete', kind: 'fields', asks: 'Who gave up has left something to see.' },
  { rule: 'not-started-cut', kind: 'fields', asks: 'Never started: no incision, no specimen.' },
  {
    rule: 'specimen-not-retrieved',
    kind: 'fields',
    asks: 'A specimen that was not retrieved has neither size nor container nor time.',
  },
  { rule: 'CC-09', kind: 'fields', asks: 'Muscle injury IV or V is a perforation.' },
  { rule: 'CC-12', kind: 'fields', asks: 'The site is part of the organ.' },
  { rule: 'agent-class', kind: 'fields', asks: 'An agent belongs to the class of its drug.' },
  { rule: 'repeated-drug', kind: 'fields', asks: 'A drug is listed once.' },
];

/** A rule across the fields of a pathology report, or between it and its case. */
export interface BeyondPathologySchema {
  readonly rule: string;
  readonly kind: 'fields' | 'case';
  readonly asks: string;
}

/** All that the service refuses of a report although the JSON Schema accepts it; bytes as above. */
export const WHAT_PATHOLOGY_SCHEMA_CANNOT_SAY: readonly BeyondPathologySchema[] = [
  { rule: 'final-undated', kind: 'fields', asks: 'A final report has a date.' },
  {
    rule: 'final-without-histology',
    kind: 'fields',
    asks: 'A final report says what was found, if only that nothing can be said.',
  },
  {
    rule: 'amendment-reason',
    kind: 'fields',
    asks: 'A version above 1 gives a reason; version 1, interim reports included, has none.',
  },
  { rule: 'reported-before-received', kind: 'fields', asks: 'A report follows the specimen.' },
  { rule: 'sent-before-report', kind: 'fields', asks: 'A message follows the report.' },
  { rule: 'axes-order', kind: 'fields', asks: 'A short axis is at most the long axis.' },
  { rule: 'area-limit', kind: 'fields', asks: 'The ellipse of a specimen is at most 400 cm2.' },
  { rule: 'CC-02', kind: 'fields', asks: 'No more pieces are described than were received.' },
  { rule: 'CC-03', kind: 'fields', asks: 'The only piece holds the whole tumour.' },
  { rule: 'piece-beyond-whole', kind: 'fields', asks: 'No piece is worse than the whole lesion.' },
  {
    rule: 'tumour-of-another-organ',
    kind: 'fields',
    asks: 'The tumour arises at the site; a squamous one of the anal canal is `other`.',
  },
  {
    rule: 'depth-of-another-tumour',
    kind: 'fields',
    asks: 'Depth of squamous tumours: ep, lpm, mm, sm, mp; of others: m, sm, mp; of all: X.',
  },
  { rule: 'barrett-depth', kind: 'fields', asks: 'm1 to m4 are told of Barrett, with depth m.' },
  { rule: 'gastric-type', kind: 'fields', asks: 'The gastric type is told of gastric tumours.' },
  {
    rule: 'histology-of-another-tumour',
    kind: 'fields',
    asks: 'A neuroendocrine tumour and one of the wall have the tumour `other`.',
  },
  {
    rule: 'histological-type',
    kind: 'fields',
    asks: 'The histological type is one of the tumour and of the histology.',
  },
  { rule: 'polyp-type', kind: 'fields', asks: 'The type of polyp is that of the histology.' },
  { rule: 'CC-04', kind: 'fields', asks: 'Submucosal invasion is measured with depth sm alone.' },
  { rule: 'CC-05', kind: 'fields', asks: 'The pT fits the depth, by the TNM for the organ.' },
  {
    rule: 'dysplasia-invades',
    kind: 'fields',
    asks: 'Without carcinoma nothing invades layers, vessels or nerves or lies at a margin.',
  },
  { rule: 'budding-grade', kind: 'fields', asks: 'The grade of budding fits the count.' },
  { rule: 'CC-06', kind: 'fields', asks: 'R0 is stated of one piece with free margins.' },
  { rule: 'margin-parts', kind: 'fields', asks: 'A margin is as bad as its worst part.' },
  {
    rule: 'margin-distance',
    kind: 'fields',
    asks: 'A distance is above 0 from free margins alone.',
  },
  { rule: 'background-none', kind: 'fields', asks: 'What is denied has no place and no stage.' },

  { rule: 'patient-differs', kind: 'case', asks: 'The patient is that of the case.' },
  { rule: 'CC-14', kind: 'case', asks: 'Specimen and report follow the procedure.' },
  { rule: 'no-specimen', kind: 'case', asks: 'The specimen was retrieved.' },
  { rule: 'tumour-of-another-organ', kind: 'case', asks: 'The tumour arises in the organ.' },
  { rule: 'CC-12', kind: 'case', asks: 'The site is part of the organ or at its border.' },
  { rule: 'CC-02', kind: 'case', asks: 'En bloc, one piece is received.' },
  { rule: 'CC-03', kind: 'case', asks: 'En bloc, the specimen of the case holds the tumour.' },
  { rule: 'CC-06', kind: 'case', asks: 'R0 is stated of a complete resection en bloc.' },
];
