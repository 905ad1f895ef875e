import { type Schedule, type Then, thenText } from '../../src/surveillance/schedule.js';
import { type Changed, replaced } from './changes.js';

/** Every single-point change of when to look again: months one more and one less, and what follows. */
export function changesOfSchedule(schedule: Schedule): readonly Changed<Schedule>[] {
  switch (schedule.kind) {
    case 'window':
      return [
        ...(['min', 'target', 'max'] as const).flatMap((end) =>
          oneMoreOneLess(schedule[end]).map((months) => ({
            name: `${end} ${schedule[end]} as ${months}`,
            to: { ...schedule, [end]: months },
          })),
        ),
        ...changesOfThens(schedule.then).map(({ name, to: then }) => ({
          name,
          to: { ...schedule, then },
        })),
      ];
    case 'calendar':
      return schedule.at.flatMap((months, i) => [
        ...oneMoreOneLess(months).map((other) => ({
          name: `at ${months} as ${other}`,
          to: { ...schedule, at: replaced(schedule.at, i, other) },
        })),
        { name: `at ${months} left out`, to: { ...schedule, at: replaced(schedule.at, i) } },
      ]);
    case 'none':
      return [{ name: 'a task', to: { kind: 'task', task: 'clinician-decision' } }];
    case 'task':
      return TASKS.filter((task) => task !== schedule.task).map((task) => ({
        name: `task ${task}`,
        to: { kind: 'task', task },
      }));
  }
}

const TASKS = [
  'multidisciplinary-meeting',
  'expert-centre',
  'clinician-decision',
  'await-pathology',
] as const;

const WORDS = ['by-findings', 'screening', 'COL-1'] as const;

function changesOfThens(thens: readonly Then[]): readonly Changed<readonly Then[]>[] {
  return thens.flatMap((then, i) => [
    ...changesOfThen(then).map(({ name, to }) => ({
      name: `then (${i + 1}) ${name}`,
      to: replaced(thens, i, to),
    })),
    { name: `then (${i + 1}) left out`, to: replaced(thens, i) },
  ]);
}

function changesOfThen(then: Then): readonly Changed<Then>[] {
  if (typeof then === 'number') {
    return [
      ...oneMoreOneLess(then).map((to) => ({ name: `${then} as ${to}`, to })),
      { name: `${then} for ever`, to: { every: then } },
    ];
  }
  if (typeof then === 'object') {
    const { every, until } = then;
    return [
      ...oneMoreOneLess(every).map((months) => ({
        name: `every ${every} as ${months}`,
        to: { ...then, every: months },
      })),
      ...(until === undefined
        ? []
        : [...oneMoreOneLess(until).map((months) => ({ every, until: months })), { every }].map(
            (to) => ({ name: `every ${every} until ${until} as ${thenText(to)}`, to }),
          )),
      { name: `every ${every} once`, to: every },
    ];
  }
  return WORDS.filter((word) => word !== then).map((to) => ({ name: `${then} as ${to}`, to }));
}

const oneMoreOneLess = (months: number): readonly number[] => [months + 1, months - 1];
