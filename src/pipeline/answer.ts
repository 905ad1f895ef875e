import { CAUTION } from '../kernel/index.js';
import { passedDeadlines, presentOf, type RecordVersion } from '../record/index.js';
import type { Answer, WaitingAnswer } from './service.js';

/** What is said of a case to those who may know it. */
export function toAnswer(version: RecordVersion): Answer {
  const { state, assessment, plan, change, setAside } = version;
  const known = presentOf(version);
  const isFollowed = known.events.length + known.examinations.length > 0;
  const isOverdue = passedDeadlines(known).some(({ what }) => what === 'pathology-overdue');
  return {
    state,
    assessment,
    plan,
    ...(isFollowed ? { afterwards: known.afterwards } : {}),
    ...(known.withdrawal === undefined ? {} : { withdrawn: known.withdrawal.fields.reason }),
    ...(isOverdue ? { pathologyOverdue: true } : {}),
    ...(change === undefined ? {} : { change }),
    ...(setAside.length === 0 ? {} : { setAside }),
    caution: CAUTION,
  };
}

/** What is said while messages wait for the case that they are about. */
export const toWaiting = (state: number): WaitingAnswer => ({ state, waitingFor: 'case' });
