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
