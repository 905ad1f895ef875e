import type { Checked } from '../kernel/index.js';
import { readArguments } from './arguments.js';
import { UsageError } from './world.js';

/** Options that say which cases, and how they are counted; each is a parameter of the address. */
const PARAMETERS = {
  from: 'from',
  to: 'to',
  organ: 'organ',
  'rule-set': 'ruleSet',
  'size-band': 'sizeBand',
  fibrosis: 'fibrosis',
  technique: 'technique',
  operator: 'operator',
  'trainee-band': 'traineeBand',
  by: 'by',
  interval: 'interval',
} as const;

type Parameter = keyof typeof PARAMETERS;

const OPTIONS = {
  from: { type: 'string' },
  to: { type: 'string' },
  organ: { type: 'string' },
  'rule-set': { type: 'string' },
  'size-band': { type: 'string' },
  fibrosis: { type: 'string' },
  technique: { type: 'string' },
  operator: { type: 'string' },
  'trainee-band': { type: 'string' },
  by: { type: 'string' },
  interval: { type: 'string' },
  json: { type: 'boolean' },
  csv: { type: 'boolean' },
  ndjson: { type: 'boolean' },
  parquet: { type: 'boolean' },
} as const;

/** Ways in which an answer can be written. */
type Switch = (typeof SWITCHES)[number];

const SWITCHES = ['json', 'csv', 'ndjson', 'parquet'] as const;

export interface OutcomesFlags<Question> {
  readonly question: Question;
  readonly forms: readonly Switch[];
  readonly names: readonly string[];
}

/**
 * Reads the options of an `outcomes` command as strictly as the address of the service.
 *
 * @param read reads the query of the address that says the same
 * @param offered switches that this command has
 * @throws UsageError which names every option that is not as expected
 */
export function readOutcomesFlags<Question>(
  args: readonly string[],
  read: (search: string) => Checked<Question>,
  offered: readonly Switch[],
): OutcomesFlags<Question> {
  const { values, positionals } = readArguments(args, OPTIONS);
  const search = new URLSearchParams();
  for (const name of PARAMETER_NAMES) {
    const value = values[name];
    if (value !== undefined) search.set(PARAMETERS[name], value);
  }
  const forms = SWITCHES.filter((form) => values[form] === true);
  const odd = forms.find((form) => !offered.includes(form));
  if (odd !== undefined) throw new UsageError(`--${odd} says nothing here.`);
  const asked = read(search.toString());
  if (!asked.ok) throw new UsageError(problemsText(asked.problems));
  return { question: asked.value, forms, names: positionals };
}

/**
 * A report to be given out is of a period.
 *
 * @throws UsageError which names the options that say it
 */
export function needPeriod({ from, to }: { readonly from?: string; readonly to?: string }): void {
  if (from !== undefined && to !== undefined) return;
  throw new UsageError('A MeasureReport is of a period: --from DAY and --to DAY.');
}

const PARAMETER_NAMES: readonly Parameter[] = [
  ...(['from', 'to', 'organ', 'rule-set', 'size-band', 'fibrosis', 'technique'] as const),
  ...(['operator', 'trainee-band', 'by', 'interval'] as const),
];

/** Problems of an address in the words of the command line. */
export const problemsText = (
  problems: readonly {
    readonly pointer: string;
    readonly message: string;
    readonly expected?: string;
  }[],
): string =>
  problems
    .map(({ pointer, message, expected }) => {
      const wanted = expected === undefined ? '' : ` Expected: ${inOptions(expected)}.`;
      return `${optionOf(pointer)}: ${message}${wanted}`;
    })
    .join('\n');

function optionOf(pointer: string): string {
  const name = PARAMETER_NAMES.find((each) => `/${PARAMETERS[each]}` === pointer);
  return name === undefined ? 'options' : `--${name}`;
}

/** `parameter` is a word of addresses. */
const inOptions = (expected: string): string => expected.replaceAll('parameter', 'option');
