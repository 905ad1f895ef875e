import type { PlacedVisit, Proposal, UnplacedVisit } from '../pipeline/index.js';
import { daysText, shortId } from './follow-up-words.js';
import { paint, RED, YELLOW } from './paint.js';
import { type TableCell, tableOf } from './table.js';

type Visit = PlacedVisit | UnplacedVisit;

/** Who gets which day, who gets none and why, and what lacks by month; for people. */
export function describeProposal(proposal: Proposal, colour: boolean): string {
  const { joined, placed, unplaced, shortfall } = proposal;
  const parts = [
    summary(proposal),
    ...(placed.length === 0 ? [] : [placedTable(placed, colour)]),
    ...(joined.length === 0 ? [] : [`Answered by visits that are booked:\n${joinedTable(joined)}`]),
    ...(unplaced.length === 0 ? [] : [`Without a day:\n${unplacedTable(unplaced, colour)}`]),
    ...(shortfall.length === 0 ? [] : [`Places that lack:\n${shortfallTable(shortfall)}`]),
  ];
  return `${parts.join('\n\n')}\n`;
}

function summary({ fromOn, untilOn, placed, unplaced, later, unsure }: Proposal): string {
  const answered = placed.reduce((sum, { followUps }) => sum + followUps.length, 0);
  return [
    `Sessions from ${fromOn} to ${untilOn}; nothing is booked by this.`,
    `visits with a day: ${placed.length} (follow-ups: ${answered}); without: ${unplaced.length}; ` +
      `due after the last session: ${later}.`,
    ...(unsure === 0 ? [] : [`Left out, provisional or to be confirmed first: ${unsure}.`]),
  ].join('\n');
}

const placedTable = (placed: readonly PlacedVisit[], colour: boolean): string =>
  tableOf(
    ['day', 'session', 'target', 'off', 'may be on', 'patient', 'follow-ups', ''],
    placed.map((visit) => [
      ...[visit.on, visit.session, visit.targetOn, offText(visit.daysOff)],
      ...[daysText(visit.earliestOn, visit.latestOn), patientOf(visit), idsOf(visit)],
      pressing(visit, colour),
    ]),
    [3],
  );

const joinedTable = (joined: Proposal['joined']): string =>
  tableOf(
    ['day', 'patient', 'follow-ups'],
    joined.map((visit) => [visit.on, patientOf(visit), idsOf(visit)]),
  );

const unplacedTable = (unplaced: readonly UnplacedVisit[], colour: boolean): string =>
  tableOf(
    ['target', 'route', 'may be on', 'patient', 'follow-ups', 'why', 'nearest', ''],
    unplaced.map((visit) => [
      ...[visit.targetOn, routeOf(visit), daysText(visit.earliestOn, visit.latestOn)],
      ...[patientOf(visit), idsOf(visit), whyText(visit), nearestText(visit)],
      pressing(visit, colour),
    ]),
  );

const shortfallTable = (shortfall: Proposal['shortfall']): string =>
  tableOf(
    ['month', 'route', 'places'],
    shortfall.map(({ month, route, places }) => [month, route, String(places)]),
    [2],
  );

/** Days beside the target with their sign. */
const offText = (days: number): string => (days > 0 ? `+${days}` : String(days));

/** Why a visit has no day, in a few words. */
export function whyText({ why, runsOn }: UnplacedVisit): string {
  const what = why === 'no-session' ? 'no session' : 'all places taken';
  return runsOn ? `${what}; goes on` : what;
}

/** Of a place outside of the window, how far outside. */
const nearestText = ({ nearest }: UnplacedVisit): string =>
  nearest === undefined ? 'none' : `${nearest.on} (${offText(nearest.daysOutside)})`;

function pressing({ overdue, urgency }: Visit, colour: boolean): TableCell {
  if (overdue) return { text: 'overdue', paint: (text) => paint(colour, RED, text) };
  if (urgency === 'routine') return '';
  return { text: urgency, paint: (text) => paint(colour, YELLOW, text) };
}

type Answering = Pick<Visit, 'followUps'>;
const patientOf = ({ followUps: [first] }: Answering): string => first?.patient.value ?? '';
const routeOf = ({ followUps: [first] }: Visit): string => first?.item.route ?? '';
const idsOf = ({ followUps }: Answering): string =>
  followUps.map(({ id }) => shortId(id)).join(' ');
