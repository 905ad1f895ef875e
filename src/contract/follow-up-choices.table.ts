/**
 * Rule sets of follow-up that a unit may choose, by organ; the first is the default. A set that
 * does not speak of a lesion leaves it to the default one. Barrett mucosa has a set of its own.
 */
export const FOLLOW_UP_RULE_SETS = {
  oesophagus: ['esge-esd-2022-follow-up', 'jges-jes-2020-follow-up'],
  stomach: ['esge-esd-2022-follow-up', 'jges-jgca-2021-follow-up', 'gastric-adenoma-practice'],
  duodenum: ['esge-duodenum-2021'],
  colon: [
    'esge-esd-2022-follow-up',
    'esge-pps-2020',
    'bsg-2019',
    'usmstf-2020',
    'jges-colorectal-2020',
  ],
  rectum: [
    'esge-esd-2022-follow-up',
    'esge-pps-2020',
    'bsg-2019',
    'usmstf-2020',
    'jges-colorectal-2020',
  ],
} as const;

/** In the order of ISO 8601, where Monday is the first day. */
export const WEEKDAYS = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
] as const;
export type Weekday = (typeof WEEKDAYS)[number];
