/** Words of a class that is none of a rule set's own. */
export const WITHOUT_CLASS = ['incomplete', 'no-rule', 'indeterminate'] as const;
/** What `null` of the class means: the pathology report is not back. */
export const NOT_BACK = 'not-back';

export const organ = {
  type: 'word',
  says: 'organ of the lesion',
  words: ['oesophagus', 'stomach', 'colon', 'rectum'],
} as const;
export const tumour = {
  type: 'word',
  says: 'kind of tumour',
  words: ['squamous', 'barrett', 'gastric', 'colorectal', 'other'],
} as const;
export type Organ = (typeof organ.words)[number];
export type Tumour = (typeof tumour.words)[number];
