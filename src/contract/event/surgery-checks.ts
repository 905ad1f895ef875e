import { isLess } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import type { ReadableEvent } from './readable-event.js';
import type { NodeCategory } from './words.table.js';

/** Categories that nodes alone do not give: deposits beside the bowel (pN1c), and no answer. */
const WITHOUT_NODES: readonly NodeCategory[] = ['pN0', 'pN1c', 'pNX'];

/** What the specimen of an operation cannot show together. */
export const surgeryChecks: readonly CrossCheck<ReadableEvent>[] = [
  {
    rule: 'nodes-positive',
    message: 'More lymph nodes hold metastases than were examined.',
    expected: 'surgery.nodesPositive of at most surgery.nodesExamined',
    broken: ({ surgery = {} }) =>
      isLess(surgery.nodesExamined, surgery.nodesPositive) ? ['/surgery/nodesPositive'] : [],
  },
  {
    rule: 'node-category',
    message: 'The pN contradicts the number of lymph nodes with metastases.',
    expected: 'pN0 or pN1c without such nodes, pN1 to pN3 with them',
    broken: ({ surgery: { pN, nodesPositive } = {} }) => {
      if (pN === undefined || nodesPositive === undefined || pN === 'pNX') return [];
      return WITHOUT_NODES.includes(pN) === (nodesPositive === 0) ? [] : ['/surgery/pN'];
    },
  },
  {
    rule: 'residue-category',
    message: 'Carcinoma was left, yet the pT says that there is no tumour.',
    expected: 'a pT other than pT0 where surgery.residualTumour is carcinoma',
    broken: ({ surgery = {} }) =>
      surgery.residualTumour === 'carcinoma' && surgery.pT === 'pT0' ? ['/surgery/pT'] : [],
  },
  {
    rule: 'decision-reason',
    message: 'A reason against surgery is given for another decision.',
    expected: 'meeting.reason with the decision no-surgery alone',
    broken: ({ meeting: { decision, reason } = {} }) =>
      decision !== undefined && decision !== 'no-surgery' && reason !== undefined
        ? ['/meeting/reason']
        : [],
  },
];
