import type { FollowUpRow, RecordStore } from '../../src/pipeline/index.js';
import { entry, state } from './samples.js';

/** A follow-up of an invented plan; the store reads nothing of its document. */
export function row(id: string, change: Partial<FollowUpRow> = {}): FollowUpRow {
  const window = { earliest: '2026-05-01', target: '2026-06-01', latest: '2026-07-01' };
  return {
    id,
    itemKey: `row.${id}`,
    kind: 'endoscopy',
    route: 'upper',
    itemState: 'open',
    window,
    calendar: { status: 'tentative', firstOn: window.earliest, lastOn: window.latest },
    document: `{"says":"${id}"}`,
    ...change,
  };
}

/** A whole row that somebody books; its calendar shows the day. */
export const booked = (id: string, on: string, change: Partial<FollowUpRow> = {}): FollowUpRow =>
  row(id, {
    bookedOn: on,
    calendar: { status: 'confirmed', firstOn: on, lastOn: on },
    document: `{"says":"${id} on ${on}"}`,
    ...change,
  });

/** What the pipeline does with a message that makes these follow-ups. */
export const save = (
  store: RecordStore,
  caseId: string,
  number: number,
  rows: readonly FollowUpRow[],
): Promise<void> =>
  store.inCase(caseId, async (journal) => {
    await journal.append(entry(caseId, number));
    const followUps = { patientKey: `p-${caseId}`, rows };
    await journal.saveState({ ...state(caseId, number), followUps });
  });

/** An id of our form, rising with the number. */
export const idOf = (n: number): string =>
  `00000000-0000-8000-8000-${n.toString(16).padStart(12, '0')}`;
