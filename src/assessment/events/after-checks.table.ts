import type { ChecksOn } from '../review/check.js';
import { PRACTICE } from '../review/practice.table.js';
import { LAST_DAY } from './kinds.table.js';
import { HB_DROP_G_PER_DL } from './late-bleeding.table.js';

/** What the checks of the time after the procedure look at. */
export interface AfterFacts {
  readonly days: number;
  readonly hbDropGPerDl: number | undefined;
  readonly bleedingTold: boolean;
}

/** Pointers lead into the event message. */
export const AFTER_CHECKS: ChecksOn<AfterFacts> = [
  {
    check: 'CC-10',
    severity: 'warning',
    title: 'haemoglobin fell, no bleeding told',
    fields: ['/haemoglobin/beforeGPerDl', '/haemoglobin/lowestGPerDl'],
    when: {
      days: { atMost: LAST_DAY },
      hbDropGPerDl: { atLeast: HB_DROP_G_PER_DL },
      bleedingTold: { is: [false] },
    },
    says:
      'The haemoglobin fell by {hbDropGPerDl} g/dL within 30 days, and no bleeding was told. ' +
      'Please look whether there was one.',
    cites: PRACTICE,
  },
];
