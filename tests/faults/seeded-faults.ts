import type { Edit } from './edit.js';

/**
 * Faults of every kind that validators are known to accept, planted one at a time in the sample
 * with an appointment (`appointedBundle`). A validator is only fast once it finds them.
 */
export interface SeededFault {
  readonly name: string;
  /** Type of the resource that holds the fault, for validators that see one resource alone. */
  readonly type: 'Procedure' | 'Observation' | 'Appointment';
  readonly edits: readonly Edit[];
  /** Rule by which the gate names it. */
  readonly rule: string;
  /** JSON Pointer, within the resource, where the gate names it. */
  readonly pointer: string;
}

const PROCEDURE = 'Procedure.esd';
const OBSERVATION = 'Observation.fibrosis';

export const SEEDED_FAULTS: readonly SeededFault[] = [
  {
    name: 'status of wrong primitive type',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/status`, set: 1 }],
    rule: 'r4-code',
    pointer: '/status',
  },
  {
    name: 'Procedure.status unknown code',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/status`, set: 'finished' }],
    rule: 'r4-code',
    pointer: '/status',
  },
  {
    name: 'Observation.status unknown code',
    type: 'Observation',
    edits: [{ at: `${OBSERVATION}/status`, set: 'done' }],
    rule: 'r4-code',
    pointer: '/status',
  },
  {
    name: 'unknown property',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/surgeon`, set: 'x' }],
    rule: 'r4-unknown-element',
    pointer: '/surgeon',
  },
  {
    name: 'month 13',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/performedPeriod/start`, set: '2026-13-02' }],
    rule: 'r4-form',
    pointer: '/performedPeriod/start',
  },
  {
    name: '30 February',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/performedPeriod/start`, set: '2026-02-30T09:00:00+01:00' }],
    rule: 'structure-date',
    pointer: '/performedPeriod/start',
  },
  {
    name: 'time of day without zone',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/performedPeriod/start`, set: '2026-03-02T09:00:00' }],
    rule: 'r4-form',
    pointer: '/performedPeriod/start',
  },
  {
    name: 'required complex missing (subject)',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/subject` }],
    rule: 'r4-required',
    pointer: '',
  },
  {
    name: 'required primitive missing (status)',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/status` }],
    rule: 'r4-required',
    pointer: '',
  },
  {
    name: 'string where Reference expected',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/subject`, set: 'Patient/1' }],
    rule: 'r4-type',
    pointer: '/subject',
  },
  {
    name: 'two value[x]',
    type: 'Observation',
    edits: [{ at: `${OBSERVATION}/valueString`, set: 'F1' }],
    rule: 'r4-choice',
    pointer: '',
  },
  {
    name: 'obs-6 value + dataAbsentReason',
    type: 'Observation',
    edits: [{ at: `${OBSERVATION}/dataAbsentReason`, set: { text: 'unknown' } }],
    rule: 'obs-6',
    pointer: '',
  },
  {
    name: 'Period end before start',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/performedPeriod/end`, set: '2026-03-02T08:59:59+01:00' }],
    rule: 'per-1',
    pointer: '/performedPeriod',
  },
  {
    name: 'Appointment start without end',
    type: 'Appointment',
    edits: [{ at: 'Appointment.first-check/start', set: '2026-06-02T09:00:00+02:00' }],
    rule: 'app-2',
    pointer: '',
  },
  {
    name: 'empty string',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/performedPeriod/id`, set: '' }],
    rule: 'r4-form',
    pointer: '/performedPeriod/id',
  },
  {
    name: 'empty array',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/note`, set: [] }],
    rule: 'r4-empty-list',
    pointer: '/note',
  },
  {
    name: 'null value',
    type: 'Procedure',
    edits: [{ at: `${PROCEDURE}/outcome`, set: null }],
    rule: 'r4-type',
    pointer: '/outcome',
  },
];
