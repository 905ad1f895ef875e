import type { FollowUp } from '../../src/pipeline/index.js';

type Item = FollowUp['item'];

/** Days of a window: earliest, target, latest. */
export type Days = readonly [earliest: string, target: string, latest: string];

/** What a made follow-up differs in from an open examination of the upper tract. */
export interface Different {
  readonly patient?: string;
  readonly item?: Partial<Item>;
  readonly followUp?: Partial<FollowUp>;
}

/** A follow-up that no plan has made, of an invented patient. */
export function madeFollowUp(id: string, [earliest, target, latest]: Days, more: Different = {}) {
  const item: Item = {
    key: 'GAS-1.1',
    kind: 'endoscopy',
    row: 'GAS-1',
    sequence: 1,
    first: true,
    rule: 'esge-esd-2022-follow-up',
    version: 1,
    ruleSet: 'esge-esd-2022',
    route: 'upper',
    look: 'The whole stomach.',
    says: ['gastric, curative'],
    cites: [{ work: 'esgeEsd2022', place: 'follow-up', basis: 'recalled' }],
    basis: 'recalled',
    inputs: { organ: 'stomach', enBloc: true, ulcer: null },
    anchorOn: '2026-06-02',
    countsFrom: '2026-06-02',
    due: { earliest, target, latest },
    follows: '12*',
    urgency: 'routine',
    state: 'open',
    reasons: [],
    overlaps: [],
    ...more.item,
  };
  const followUp: FollowUp = {
    id,
    caseId: `0c${id}`,
    case: { system: 'urn:oid:2.999.1.2', value: `EX-C-${id}` },
    patient: { system: 'urn:oid:2.999.1.1', value: more.patient ?? `EX-P-${id}` },
    state: 2,
    changedAt: '2026-06-20T08:00:00.000Z',
    item,
    overdue: false,
    visitWith: [],
    ...more.followUp,
  };
  return followUp;
}

/** An appointment that a scheduler told us of. */
export const madeBooking = (
  on: string,
  status: 'booked' | 'cancelled' | 'did-not-attend' = 'booked',
): NonNullable<Item['booking']> => ({
  ...{ status, on, startsAt: `${on}T09:00:00+02:00`, endsAt: `${on}T09:30:00+02:00` },
  ...{ moved: false, toldAt: '2026-06-20T10:00:00+02:00', heldBy: 'service' },
});
