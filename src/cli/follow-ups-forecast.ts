import { toCsv } from '../kernel/index.js';
import type { ExpectedLoad } from '../pipeline/index.js';
import { type Form, readFollowUpsFlags } from './follow-ups-options.js';
import { tableOf } from './table.js';
import { type ExitCode, UsageError, type Work, type World } from './world.js';
import { wrap } from './wrap.js';

/** The visits to expect by the present plans, month by month. */
export async function forecast(
  args: readonly string[],
  world: World,
  work: Work,
): Promise<ExitCode> {
  const { flags, names } = readFollowUpsFlags(args, ['from', 'months', 'json', 'csv']);
  if (names.length > 0) throw new UsageError('follow-ups forecast takes options alone.');
  return work.followUps(async (lists) => {
    const load = await lists.forecast(flags.from ?? lists.today, flags.months);
    world.out(written(load, flags.form));
    return 0;
  });
}

function written(load: ExpectedLoad, form: Form): string {
  switch (form) {
    case 'json':
      return `${JSON.stringify(load)}\n`;
    case 'csv':
      return toCsv(
        ['month', 'upper', 'lower'],
        load.months.map(({ month, upper, lower }) => [month, upper, lower]),
      );
    case 'text':
      return `${describe(load)}\n`;
  }
}

const LONGEST_BAR = 60;

function describe({ months, plans, unsure, undated }: ExpectedLoad): string {
  const most = Math.max(0, ...months.map(({ upper, lower }) => upper + lower));
  const each = Math.max(1, Math.ceil(most / LONGEST_BAR));
  const rows = months.map(({ month, upper, lower }) => [
    ...[month, String(upper), String(lower), String(upper + lower)],
    '#'.repeat(Math.ceil((upper + lower) / each)),
  ]);
  const scale = each === 1 ? 'a visit' : `up to ${each} visits`;
  return [
    tableOf(['month', 'upper', 'lower', 'visits', `# is ${scale}`], rows, [1, 2, 3]),
    '',
    wrap(
      '',
      `Plans: ${plans}, of them provisional or to be confirmed: ${unsure}. They come to a day that ` +
        `only findings give, and are not counted from there: ${undated}.`,
    ),
  ].join('\n');
}
