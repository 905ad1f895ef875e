import type { Identifier } from '../contract/index.js';
import type { RecordVersion } from '../record/index.js';
import type { PlanItem } from '../surveillance/index.js';
import type { CalendarShare, FollowUpRow, FollowUpsToStore } from './follow-up-ports.js';
import { followUpIdOf, patientKeyOf } from './naming.js';

/** What the document of a stored follow-up says. */
export interface FollowUpDocument {
  readonly case: Identifier;
  readonly patient: Identifier;
  readonly item: PlanItem;
}

/**
 * The items of the plan of a record version, as the list of follow-ups keeps them.
 *
 * @param told the identifiers of case and patient
 * @param secret the site secret
 */
export function rowsOfFollowUps(
  { caseId, plan }: Pick<RecordVersion, 'caseId' | 'plan'>,
  told: Omit<FollowUpDocument, 'item'>,
  secret: string,
): FollowUpsToStore {
  const own = { case: plainOf(told.case), patient: plainOf(told.patient) };
  return {
    patientKey: patientKeyOf(secret, told.patient),
    rows: plan.items.map((item) => rowOf(item, own, followUpIdOf(secret, caseId, item.key))),
  };
}

/** Reads back what `rowsOfFollowUps` wrote: our own writing, not parsed again. */
export const readFollowUpDocument = (text: string): FollowUpDocument =>
  JSON.parse(text) as FollowUpDocument;

function rowOf(item: PlanItem, own: Omit<FollowUpDocument, 'item'>, id: string): FollowUpRow {
  const { key, kind, route, state, booking } = item;
  const window = item.proposed ?? item.due;
  const calendar = calendarOf(item);
  return {
    id,
    itemKey: key,
    kind,
    route,
    itemState: state,
    ...(window === undefined ? {} : { window }),
    ...(booking?.status === 'booked' ? { bookedOn: booking.on } : {}),
    ...(calendar === undefined ? {} : { calendar }),
    document: JSON.stringify({ ...own, item } satisfies FollowUpDocument),
  };
}

/**
 * A booked day stays in the calendar whatever the plan says, until its booking is cancelled. Of
 * the others those are shown that may be booked; what waits for pathology is not booked yet.
 */
function calendarOf({ kind, state, booking, proposed, due }: PlanItem): CalendarShare | undefined {
  if (kind !== 'endoscopy') return undefined;
  if (booking?.status === 'booked') {
    return { status: 'confirmed', firstOn: booking.on, lastOn: booking.on };
  }
  const window = proposed ?? due;
  if (window === undefined || (state !== 'open' && state !== 'to-confirm')) return undefined;
  return { status: 'tentative', firstOn: window.earliest, lastOn: window.latest };
}

const plainOf = ({ system, value }: Identifier): Identifier => ({ system, value });
