import type { CrossCheck } from '../cross-check.js';
import { dayOfTime, type Occurrence, sentAfter } from '../occurrence.js';
import type { ReadableExamination } from './readable-examination.js';

export const occurrenceOf = (sent: ReadableExamination): Occurrence => ({
  on: sent.examinedOn,
  onAt: '/examinedOn',
  at: sent.examinedAt,
  atAt: '/examinedAt',
});

export const timeChecks: readonly CrossCheck<ReadableExamination>[] = [
  dayOfTime(occurrenceOf),
  sentAfter(occurrenceOf),
  {
    rule: 'next-before-examination',
    message: 'The next examination lies on or before the day of this one.',
    expected: 'next.on after examinedOn',
    broken: ({ examinedOn, next = {} }) =>
      next.on !== undefined && examinedOn !== undefined && next.on <= examinedOn
        ? ['/next/on']
        : [],
  },
];
