import { daysFor, type VisitItem, visitsOf } from '../surveillance/index.js';
import { bookedFrom, daysOfVisit } from './days-of-visit.js';
import type { FollowUpStore, StoredFollowUp } from './follow-up-ports.js';
import type { FollowUp } from './follow-ups.js';
import { type FollowUpDocument, readFollowUpDocument } from './rows-of-follow-ups.js';

/** A stored follow-up with what its document says. */
interface Opened extends StoredFollowUp, FollowUpDocument {}

/**
 * Stored follow-ups as they are shown, each with those that one visit answers with it.
 *
 * @param store asked for the other examinations of the same patients
 * @param today YYYY-MM-DD
 */
export async function toFollowUps(
  stored: readonly StoredFollowUp[],
  store: Pick<FollowUpStore, 'toCome'>,
  today: string,
): Promise<readonly FollowUp[]> {
  const shown = stored.map(opened);
  const patients = shown.filter(mayBeVisited).map(({ patientKey }) => patientKey);
  const others = (await store.toCome([...new Set(patients)])).map(opened).filter(mayBeVisited);
  const visits = visitsOf(others.flatMap((each) => visitItem(each, today)));
  const together = new Map(visits.flatMap(({ ids }) => ids.map((id) => [id, ids] as const)));
  return shown.map((each) => ({
    id: each.id,
    caseId: each.caseId,
    case: each.case,
    patient: each.patient,
    state: each.state,
    changedAt: each.changedAt,
    item: each.item,
    overdue: isOverdue(each, today),
    visitWith: (together.get(each.id) ?? []).filter((id) => id !== each.id),
  }));
}

/** Where an item that no plan has any more is superseded, the row says so and not its document. */
function opened(stored: StoredFollowUp): Opened {
  const document = readFollowUpDocument(stored.document);
  return { ...stored, ...document, item: { ...document.item, state: stored.itemState } };
}

const mayBeVisited = (each: Opened): boolean =>
  each.item.kind === 'endoscopy' && each.itemState === 'open' && daysFor(each.item) !== undefined;

function visitItem({ id, patient, item }: Opened, today: string): readonly VisitItem[] {
  const window = daysOfVisit(item, today);
  if (window === undefined) return [];
  return [{ id, patient, route: item.route, window, urgency: item.urgency }];
}

function isOverdue(each: Opened, today: string): boolean {
  const latest = (each.item.proposed ?? each.item.due)?.latest;
  const isToCome = ['open', 'provisional', 'to-confirm'].includes(each.itemState);
  return (
    isToCome && latest !== undefined && latest < today && bookedFrom(each.item, today) === undefined
  );
}
