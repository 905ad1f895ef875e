import { parseArgs } from 'node:util';
import { isCalendarDate } from '../../src/kernel/index.js';
import type { Wanted } from './drawn-case.js';
import { FIRST_DAY, LAST_DAY, UNITS } from './units.table.js';

/** What the generator was asked to do. */
export interface Asked {
  readonly count: number;
  readonly wanted: Wanted;
  /** `load`: into the database of the configuration; else NDJSON to a file or to stdout. */
  readonly to:
    | { readonly kind: 'load'; readonly queue: boolean; readonly workers: number | undefined }
    | { readonly kind: 'file'; readonly path: string }
    | { readonly kind: 'stdout' };
}

export const USAGE = `Makes invented cases: every message as an invented unit would send it.

  npm run generate -- COUNT [--seed N] [--unit NAME] [--until DATE] [--out FILE.ndjson]
  npm run generate -- COUNT [--seed N] [--unit NAME] [--until DATE] --load [--queue] [--workers N]

  COUNT      cases, 1 to 1000000
  --seed     a whole number; the same one makes the same cases (1)
  --unit     ${UNITS.map(({ name }) => name).join(', ')}; all of them if absent
  --until    the last day of which there are messages (${LAST_DAY})
  --out      one message a line; to stdout if absent
  --load     into the database of the configuration, which holds invented cases alone
  --queue    lets a service deliver what is loaded; else it is held back
  --workers  threads that compute (one for each core)
`;

const LAST_YEAR = '2099';

/** @returns what is wrong, a sentence */
export function readArguments(args: readonly string[]): Asked | string {
  const read = parse(args);
  if (typeof read === 'string') return read;
  const { values, positionals } = read;
  const count = whole(positionals[0], 1, 1_000_000);
  const seed = whole(values.seed ?? '1', 0, 2_147_483_647);
  const workers = values.workers === undefined ? undefined : whole(values.workers, 1, 64);
  const untilOn = values.until ?? LAST_DAY;
  const units = UNITS.filter(({ name }) => values.unit === undefined || values.unit === name);
  if (positionals.length !== 1 || count === undefined) return 'Say how many cases: 1 to 1000000.';
  if (seed === undefined) return '--seed is a whole number from 0 to 2147483647.';
  if (values.workers !== undefined && workers === undefined) return '--workers is 1 to 64.';
  if (units.length === 0) return `--unit is one of ${UNITS.map(({ name }) => name).join(', ')}.`;
  if (!isCalendarDate(untilOn) || untilOn <= FIRST_DAY || untilOn.slice(0, 4) >= LAST_YEAR) {
    return `--until is a day after ${FIRST_DAY}, such as ${LAST_DAY}.`;
  }
  if (values.load && values.out !== undefined) return 'Either --out or --load.';
  if (!values.load && (values.queue || workers !== undefined)) {
    return '--queue and --workers go with --load.';
  }
  const wanted = { seed, units, untilOn };
  if (values.load) return { count, wanted, to: { kind: 'load', queue: values.queue, workers } };
  if (values.out === undefined) return { count, wanted, to: { kind: 'stdout' } };
  return { count, wanted, to: { kind: 'file', path: values.out } };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        seed: { type: 'string' },
        unit: { type: 'string' },
        until: { type: 'string' },
        out: { type: 'string' },
        load: { type: 'boolean', default: false },
        queue: { type: 'boolean', default: false },
        workers: { type: 'string' },
      },
    });
  } catch (error) {
    return error instanceof Error ? error.message : 'These arguments cannot be read.';
  }
}

function whole(text: string | undefined, least: number, most: number): number | undefined {
  if (text === undefined || !/^\d{1,10}$/.test(text)) return undefined;
  const value = Number(text);
  return value >= least && value <= most ? value : undefined;
}
