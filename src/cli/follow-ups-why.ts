import type { FollowUp } from '../pipeline/index.js';
import { whatText } from './describe-plan.js';
import { followsText, shortId, windowOf } from './follow-up-words.js';
import { readFollowUpsFlags } from './follow-ups-options.js';
import { describeBases, describeCitation } from './rule-sources.js';
import { type ExitCode, UsageError, type Work, type World } from './world.js';
import { wrap } from './wrap.js';

/** Why one follow-up is asked for: its rule, what the rule was told, its days and its sources. */
export async function explainFollowUp(
  args: readonly string[],
  world: World,
  work: Work,
): Promise<ExitCode> {
  const { flags, names } = readFollowUpsFlags(args, ['json']);
  const [id, ...more] = names;
  if (id === undefined || more.length > 0 || !/^[0-9a-f][0-9a-f-]{3,35}$/.test(id)) {
    throw new UsageError('follow-ups why needs one ID, or its first letters, four at least.');
  }
  const { caution } = await work.rules();
  return work.followUps(async (lists) => {
    const [found, ...others] = await lists.find(id);
    if (found === undefined) {
      world.err('There is no follow-up of this id.\n');
      return 1;
    }
    if (others.length > 0) {
      world.err('Several follow-ups have an id that begins so: name more of it.\n');
      return 1;
    }
    const said = flags.form === 'json' ? { ...found, caution } : undefined;
    world.out(`${said === undefined ? explain(found, caution) : JSON.stringify(said)}\n`);
    return 0;
  });
}

function explain(found: FollowUp, caution: string): string {
  const { item } = found;
  const says = [...item.says, ...item.reasons.map((reason) => reason.says)];
  const parts: readonly (readonly [label: string, text: string])[] = [
    ['  id', found.id],
    ['  case', `${found.case.value} (${found.case.system}), /cases/${found.caseId}`],
    ['  patient', `${found.patient.value} (${found.patient.system})`],
    ...dayParts(found),
    ['  last changed', `${found.changedAt}, state ${found.state} of the record`],
    ['  look', item.look],
    ...says.map((text, i) => [i === 0 ? '  because' : '', text] as const),
    ['  rule', `row ${item.row} of ${item.ruleSet}, by ${item.rule} version ${item.version}`],
    ['  told', toldText(item.inputs)],
    ['  follows', followsText(item)],
    ...item.overlaps.map(
      ({ row, target = 'no day' }) => ['  also asks', `row ${row}, ${target}`] as const,
    ),
    ...(found.visitWith.length === 0
      ? []
      : [['  visit', `also answers ${found.visitWith.map(shortId).join(', ')}`] as const]),
    ...item.cites.map(
      (cited, i) => [i === 0 ? '  sources' : '', `[${i + 1}] ${describeCitation(cited)}`] as const,
    ),
    ...describeBases(item.cites).map((text, i) => [i === 0 ? '  marks' : '', text] as const),
  ];
  const lines = parts.map(([label, text]) => wrap(label.padEnd(LABEL), text));
  const heading = `${whatText(item)}: ${item.state.replace('-', ' ')}, ${item.urgency}`;
  return [heading, ...lines, '', wrap('', caution)].join('\n');
}

const LABEL = '  appointment'.length + 2;

function dayParts(found: FollowUp): readonly (readonly [string, string])[] {
  const { due, proposed, room, noOpenDay, booking, doneBy, countsFrom } = found.item;
  const window = windowOf(found);
  if (due === undefined || window === undefined) return [['  due', 'no day']];
  const { earliest, target, latest } = due;
  const late = found.overdue ? '; overdue' : '';
  return [
    ['  due', `${earliest} to ${latest}, best on ${target}, counted from ${countsFrom}${late}`],
    ...(proposed !== undefined && JSON.stringify(proposed) !== JSON.stringify(due)
      ? [
          [
            '  open days',
            `${window.earliest} to ${window.latest}, best on ${window.target}`,
          ] as const,
        ]
      : []),
    ...(noOpenDay ? [['  open days', 'none: another day is to be agreed on'] as const] : []),
    ...(room === undefined ? [] : [['  may be on', `${room.earliest} to ${room.latest}`] as const]),
    ...(booking === undefined
      ? []
      : [['  appointment', `${booking.status.replaceAll('-', ' ')}, ${booking.on}`] as const]),
    ...(doneBy === undefined
      ? []
      : [['  done', `${doneBy.kind} on ${doneBy.on}, ${doneBy.timing}`] as const]),
  ];
}

/** What the rule was told; what it was not told is not shown. */
function toldText(inputs: FollowUp['item']['inputs']): string {
  const told = Object.entries(inputs).filter(([, value]) => value !== undefined);
  if (told.length === 0) return 'nothing: it goes by its days alone';
  return told.map(([name, value]) => `${name} ${value === null ? 'not known' : value}`).join(', ');
}
