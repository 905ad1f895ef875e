import {
  type Checked,
  type Finding,
  failed,
  fixedText,
  invariant,
  passed,
} from '../kernel/index.js';
import { type Fields, numberTold, type Told } from '../rules/index.js';
import type { Counts, Interval } from './counts.js';

/** Far more than a unit ever has; the intervals are tested up to here. */
const MOST = 1_000_000;
/** Decimals of proportions and parameters in an answer. */
export const DECIMALS = 4;

const whole = { type: 'number', whole: true, to: MOST } as const;
/** Ends of an open range from 0 to 1. */
const within = { type: 'number', unit: 'shares of 1', from: 0.000_001, to: 0.999_999 } as const;

export const COUNT_FIELDS = {
  x: { ...whole, from: 0, unit: 'events', says: 'events' },
  n: { ...whole, from: 1, unit: 'observations', says: 'observations' },
} satisfies Fields;

export const LEVEL = { ...within, says: 'level of confidence' };

/** A share between 0 and 1, ends excluded. */
export const shareField = (says: string) => ({ ...within, says });

/** @returns the counts, unless there are more events than observations */
export function countsTold(told: Told): Checked<Counts> {
  const counts = { events: numberTold(told, 'x'), of: numberTold(told, 'n') };
  return counts.events <= counts.of
    ? passed(counts)
    : failed([
        {
          rule: 'more-events-than-observations',
          pointer: '/x',
          message: 'There are more events than observations.',
          expected: 'x at most n',
        },
      ]);
}

/** @throws InvariantError for counts without an observation, which the fields keep out */
export function known<T>(finding: Finding<T>): T {
  invariant(finding.kind === 'determined', 'a rate has at least one observation');
  return finding.value;
}

export const intervalText = ({ lower, upper }: Interval): string =>
  `${fixedText(lower, DECIMALS)};${fixedText(upper, DECIMALS)}`;
