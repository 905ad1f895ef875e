import { toCsv } from '../kernel/index.js';
import type { FollowUp } from '../pipeline/index.js';
import { whatText } from './describe-plan.js';
import { daysText, shortId, stateCell, windowOf } from './follow-up-words.js';
import { type FollowUpsFlags, readFollowUpsFlags } from './follow-ups-options.js';
import { tableOf } from './table.js';
import { type ExitCode, UsageError, type Work, type World } from './world.js';

const SCREENFUL = 50;

/** Those that match, as a table for people, or all of them for programs. */
export async function listFollowUps(
  args: readonly string[],
  world: World,
  work: Work,
): Promise<ExitCode> {
  const { flags, names } = readFollowUpsFlags(args, [
    ...(['from', 'to', 'state', 'route', 'overdue', 'unbooked-soon'] as const),
    ...(['limit', 'json', 'csv'] as const),
  ]);
  if (names.length > 0) throw new UsageError('follow-ups knows: why, propose, forecast.');
  const limit = flags.limit ?? (flags.form === 'text' ? SCREENFUL : Number.POSITIVE_INFINITY);
  return work.followUps(async ({ matching }) => {
    const shown: FollowUp[] = [];
    let more = 0;
    for await (const one of matching(flags.query)) {
      if (shown.length < limit) shown.push(one);
      else more += 1;
    }
    world.out(written(shown, more, flags, world.colour));
    return 0;
  });
}

function written(
  shown: readonly FollowUp[],
  more: number,
  { form, limit = SCREENFUL }: FollowUpsFlags,
  colour: boolean,
): string {
  switch (form) {
    case 'json':
      return `${JSON.stringify({ followUps: shown, more })}\n`;
    case 'csv':
      return toCsv(COLUMNS, shown.map(toRow));
    case 'text': {
      if (shown.length === 0) return 'No follow-up matches.\n';
      const rest = more === 0 ? '' : `${more} more: --limit ${limit + more} shows all.\n`;
      return `${table(shown, colour)}\n${rest}`;
    }
  }
}

const table = (shown: readonly FollowUp[], colour: boolean): string =>
  tableOf(
    ['target', 'window', 'what', 'state', 'id', 'case'],
    shown.map((one) => {
      const window = windowOf(one);
      return [
        window?.target ?? '-',
        window === undefined ? '-' : daysText(window.earliest, window.latest),
        whatText(one.item),
        stateCell(one, colour),
        shortId(one.id),
        shortId(one.caseId),
      ];
    }),
  );

const COLUMNS = [
  ...['id', 'case_system', 'case_value', 'patient_system', 'patient_value', 'kind', 'task'],
  ...['route', 'row', 'earliest', 'target', 'latest', 'state', 'urgency', 'overdue', 'booking'],
  ...['booked_on', 'visit_with'],
];

function toRow(one: FollowUp): readonly (string | boolean | undefined)[] {
  const { kind, task, route, row, state, urgency, booking } = one.item;
  const window = windowOf(one);
  return [
    ...[one.id, one.case.system, one.case.value, one.patient.system, one.patient.value],
    ...[kind, task, route, row, window?.earliest, window?.target, window?.latest],
    ...[state, urgency, one.overdue, booking?.status, booking?.on, one.visitWith.join(' ')],
  ];
}
