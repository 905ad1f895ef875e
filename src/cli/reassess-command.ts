import { REASON_WORD } from '../contract/index.js';
import type { Reassessed } from '../pipeline/index.js';
import { readArguments } from './arguments.js';
import { type Command, UsageError, type World } from './world.js';

const HELP = `Usage: dissection-records reassess [options]
       dissection-records reassess --apply --reason WORD

Looks at every case that is kept: does its verdict or a score differ under the rules and settings in
force now? Shows them, and writes nothing unless it is told to. With --apply each of them gets a new
state, which says why in its timeline and its Provenance, and is sent. Uses the database and the
settings that serve would use; a service may run meanwhile.

Options:
  --apply        write the new states
  --reason WORD  why: 1 to 40 lower-case letters, digits and hyphens, such as erratum-2026-05
  --json         one JSON document a case that differs, and one with the counts
  --quiet        no talk beside the data
  --help         this text

Exit code: 0 done, 1 some cases could not be looked at, 2 called wrongly, 3 the database cannot be
had.
`;

const OPTIONS = {
  apply: { type: 'boolean' },
  reason: { type: 'string' },
  json: { type: 'boolean' },
  quiet: { type: 'boolean' },
} as const;

/** After so many cases it says how far it is. */
const SAY_EVERY = 500;

export const reassess: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    const { apply = false, reason, json = false, quiet = false } = values;
    if (positionals.length > 0) throw new UsageError('reassess takes no FILE.');
    refuseOddReason(apply, reason);
    const counts = { looked: 0, differ: 0, applied: 0, failed: 0 };
    const code = await work.reassess(apply && reason !== undefined ? { reason } : {}, (one) => {
      counts.looked += 1;
      if (one.kind === 'changed') counts.differ += 1;
      if (one.applied) counts.applied += 1;
      if (one.kind === 'failed') counts.failed += 1;
      say(one, json, world);
      if (!quiet && counts.looked % SAY_EVERY === 0) world.err(`${counts.looked} cases ...\n`);
    });
    if (code !== 0) return code;
    if (json) world.out(`${JSON.stringify(counts)}\n`);
    else if (!quiet) world.out(summary(counts, apply));
    return counts.failed > 0 ? 1 : 0;
  },
};

function refuseOddReason(apply: boolean, reason: string | undefined): void {
  if (apply && reason === undefined) throw new UsageError('--apply asks for --reason WORD.');
  if (!apply && reason !== undefined) throw new UsageError('--reason is said with --apply.');
  if (reason !== undefined && !REASON_WORD.test(reason)) {
    throw new UsageError('--reason takes 1 to 40 lower-case letters, digits and hyphens.');
  }
}

function say(one: Reassessed, json: boolean, world: World): void {
  if (one.kind === 'failed')
    world.err(`${one.caseId}  cannot be assessed: a fault of the program\n`);
  if (one.kind !== 'changed' || one.change === undefined) return;
  const { caseId, change, applied } = one;
  if (json) world.out(`${JSON.stringify({ caseId, ...change, applied })}\n`);
  else world.out(`${lines(caseId, change).join('\n')}\n`);
}

function lines(caseId: string, { verdict, scores }: NonNullable<Reassessed['change']>) {
  return [
    caseId,
    ...(verdict === undefined ? [] : [`  verdict  ${verdict.from} -> ${verdict.to}`]),
    ...scores.map(({ rule, from, to }) => `  ${rule}  ${from} -> ${to}`),
  ];
}

interface Counts {
  readonly looked: number;
  readonly differ: number;
  readonly applied: number;
  readonly failed: number;
}

function summary({ looked, differ, applied, failed }: Counts, apply: boolean): string {
  const done = apply ? `new states: ${applied}` : 'nothing was written';
  const broken = failed === 0 ? '' : `; not to be assessed: ${failed}`;
  return `cases looked at: ${looked}; they differ: ${differ}${broken}; ${done}.\n`;
}
