import type { CrossCheck } from '../cross-check.js';
import type { ReadableExamination } from './readable-examination.js';

export const nextChecks: readonly CrossCheck<ReadableExamination>[] = [
  {
    rule: 'stop-reason',
    message: 'Who stops examinations says why, and nobody else does.',
    expected: 'next.reason with the step stop, and only then',
    broken: ({ next: { step, reason } = {} }) =>
      step !== undefined && (step === 'stop') !== (reason !== undefined) ? ['/next/reason'] : [],
  },
  {
    rule: 'next-day',
    message: 'Only an examination that is to be sooner has a day here.',
    expected: 'next.on with the step sooner alone',
    broken: ({ next: { step, on } = {} }) =>
      step !== undefined && step !== 'sooner' && on !== undefined ? ['/next/on'] : [],
  },
];
