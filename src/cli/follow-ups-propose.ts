import { readSessions, type Session } from '../capacity/index.js';
import { toCsv } from '../kernel/index.js';
import type { PlacedVisit, Proposal, UnplacedVisit } from '../pipeline/index.js';
import { describeProblems } from './describe-problems.js';
import { describeProposal, whyText } from './describe-proposal.js';
import { type Form, readFollowUpsFlags } from './follow-ups-options.js';
import { readInput } from './read-input.js';
import { type ExitCode, UsageError, type Work, type World } from './world.js';

/** Days for open examinations, out of a file of sessions. Nothing is booked. */
export async function proposeDays(
  args: readonly string[],
  world: World,
  work: Work,
): Promise<ExitCode> {
  const { flags, names } = readFollowUpsFlags(args, ['sessions', 'from', 'json', 'csv']);
  if (names.length > 0) throw new UsageError('follow-ups propose takes options alone.');
  if (flags.sessions === undefined)
    throw new UsageError('follow-ups propose needs --sessions FILE.');
  const sessions = await sessionsIn(flags.sessions, world);
  if (typeof sessions === 'number') return sessions;
  return work.followUps(async (lists) => {
    const fromOn = flags.from ?? lists.today;
    const proposal = await lists.propose(sessions, fromOn);
    if (proposal === undefined) {
      world.err(`No session of the file has a place on ${fromOn} or later.\n`);
      return 1;
    }
    world.out(written(proposal, flags.form, world.colour));
    return 0;
  });
}

/** The sessions of a file, or how to end. */
async function sessionsIn(file: string, world: World): Promise<readonly Session[] | ExitCode> {
  const input = await readInput(file, world);
  if (!input.ok) {
    world.err(`${input.name}: ${input.reason}\n`);
    return 3;
  }
  const sessions = readSessions(new TextDecoder().decode(input.bytes));
  if (sessions.ok) return sessions.value;
  world.err(`${input.name}: these are no sessions\n${describeProblems(sessions.problems)}\n`);
  return 1;
}

function written(proposal: Proposal, form: Form, colour: boolean): string {
  const { joined, placed, unplaced } = proposal;
  switch (form) {
    case 'json':
      return `${JSON.stringify({
        ...proposal,
        joined: joined.map(toJson),
        placed: placed.map(toJson),
        unplaced: unplaced.map(toJson),
      })}\n`;
    case 'csv':
      return toCsv(COLUMNS, [...placed, ...unplaced].map(toRow));
    case 'text':
      return describeProposal(proposal, colour);
  }
}

type Visit = PlacedVisit | UnplacedVisit;

/** A visit with the names of what it answers, without what the plans say of it. */
const toJson = <T extends Pick<Visit, 'followUps'>>({ followUps, ...visit }: T) => ({
  ...visit,
  route: followUps[0]?.item.route,
  patient: followUps[0]?.patient,
  followUps: followUps.map(({ id, case: own }) => ({ id, case: own })),
});

const COLUMNS = [
  ...[
    'day',
    'session',
    'days_off',
    'why',
    'nearest',
    'route',
    'target',
    'earliest',
    'latest',
    'urgency',
  ],
  ...['overdue', 'patient_system', 'patient_value', 'follow_ups', 'cases'],
];

function toRow(visit: Visit): readonly (string | number | boolean | undefined)[] {
  const { followUps, targetOn, earliestOn, latestOn, urgency, overdue } = visit;
  const [first] = followUps;
  return [
    ...('on' in visit
      ? [visit.on, visit.session, visit.daysOff, undefined, undefined]
      : [undefined, undefined, undefined, whyText(visit), visit.nearest?.on]),
    ...[first?.item.route, targetOn, earliestOn, latestOn, urgency, overdue],
    ...[first?.patient.system, first?.patient.value],
    followUps.map(({ id }) => id).join(' '),
    followUps.map((one) => one.case.value).join(' '),
  ];
}
