import { type CodeRef, setRefs } from './code-ref.js';

const CLASSES = setRefs('curability');

/** Rules whose answers are sent, for Observation.method. */
export const RULES = setRefs('rule');

/** The coarse groups of the classes. */
export const CURABILITY_GROUPS = setRefs('curability-group');

/** Why a rule set gave a class. */
export const CURABILITY_REASONS = setRefs('curability-reason');

/** Published groups of the scores. */
export const SCORE_GROUPS = setRefs('score-group');

/** Answers that every rule set may give. */
const SHARED: Readonly<Record<string, CodeRef>> = {
  'no-rule': CLASSES['no-rule'],
  incomplete: CLASSES.incomplete,
};

/** Classes of the rule sets that a unit may choose, each as its rule set names it. */
export const CURABILITY_CLASSES: Readonly<Record<string, Readonly<Record<string, CodeRef>>>> = {
  'esge-esd-2022': {
    ...SHARED,
    'very-low-risk': CLASSES['esge-very-low-risk'],
    'low-risk': CLASSES['esge-low-risk'],
    'local-risk': CLASSES['esge-local-risk'],
    'high-risk': CLASSES['esge-high-risk'],
  },
  'jges-jgca-2021': {
    ...SHARED,
    eCuraA: CLASSES['ecura-a'],
    eCuraB: CLASSES['ecura-b'],
    'eCuraC-1': CLASSES['ecura-c1'],
    'eCuraC-2': CLASSES['ecura-c2'],
  },
  'jsccr-2019': {
    ...SHARED,
    'follow-up': CLASSES['jsccr-follow-up'],
    'consider-surgery': CLASSES['jsccr-consider-surgery'],
    surgery: CLASSES['jsccr-surgery'],
  },
  'jges-jes-2020': {
    ...SHARED,
    curative: CLASSES['jes-curative'],
    undetermined: CLASSES['jes-undetermined'],
    'additional-treatment': CLASSES['jes-additional-treatment'],
  },
  'kr-2020': {
    ...SHARED,
    'no-further-treatment': CLASSES['kr-no-further-treatment'],
    'close-follow-up': CLASSES['kr-close-follow-up'],
    undetermined: CLASSES['kr-undetermined'],
    'additional-treatment': CLASSES['kr-additional-treatment'],
  },
};
