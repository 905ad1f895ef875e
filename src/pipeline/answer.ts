import { CAUTION } from '../kernel/index.js';
import type { RecordVersion } from '../record/index.js';
import type { Answer, WaitingAnswer } from './service.js';

/** What is said of a case to those who may know it. */
export function toAnswer({ state, assessment, change, setAside }: RecordVersion): Answer {
  return {
    state,
    assessment,
    ...(change === undefined ? {} : { change }),
    ...(setAside.length === 0 ? {} : { setAside }),
    caution: CAUTION,
  };
}

/** What is said while messages wait for the case that they are about. */
export const toWaiting = (state: number): WaitingAnswer => ({ state, waitingFor: 'case' });
