import { ROLES, type Role, SOURCE_NAME } from '../contract/index.js';
import { readArguments } from './arguments.js';
import { type Command, type ExitCode, UsageError, type Work, type World } from './world.js';

const HELP = `Usage: dissection-records keys add --role ROLE [--source NAME]
       dissection-records keys list
       dissection-records keys revoke ID

Keeps the API keys. A key is shown once, when it is added; the file holds its hash alone. A running
service sees every change at its next request.

Options:
  --role ROLE    ${ROLES.join(', ')}
  --source NAME  the sending system that a note-system key belongs to
  --json         JSON instead of text
  --quiet        no talk beside the data
  --help         this text

The file is keys.json in DISSECTION_DATA_DIR (data), or DISSECTION_KEYS_FILE.
Exit code: 0 done, 1 there is no such key, 2 called wrongly, 3 the file cannot be used.
`;

const OPTIONS = {
  role: { type: 'string' },
  source: { type: 'string' },
  json: { type: 'boolean' },
  quiet: { type: 'boolean' },
} as const;

interface Flags {
  readonly role?: string | undefined;
  readonly source?: string | undefined;
  readonly json?: boolean | undefined;
  readonly quiet?: boolean | undefined;
}

export const keys: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    const [action, ...rest] = positionals;
    switch (action) {
      case 'add':
        return add(values, rest, world, work);
      case 'list':
        return list(values, rest, world, work);
      case 'revoke':
        return revoke(values, rest, world, work);
      default:
        throw new UsageError('keys needs one of: add, list, revoke.');
    }
  },
};

async function add(
  { role, source, json, quiet }: Flags,
  rest: readonly string[],
  { out, err }: World,
  work: Work,
): Promise<ExitCode> {
  if (rest.length > 0) throw new UsageError('keys add takes options alone.');
  const known = ROLES.find((name) => name === role);
  if (known === undefined) throw new UsageError(`--role must be one of: ${ROLES.join(', ')}.`);
  checkSource(known, source);
  const made = await work.keys.add(known, source);
  out(json ? `${JSON.stringify(made)}\n` : `${made.key}\n`);
  const file = await work.keys.file();
  if (!quiet) err(`Key ${made.id} was added to ${file}. It will not be shown again.\n`);
  return 0;
}

function checkSource(role: Role, source: string | undefined): void {
  if (role !== 'note-system') {
    if (source !== undefined) throw new UsageError('--source is for the role note-system alone.');
  } else if (source === undefined || !SOURCE_NAME.test(source)) {
    throw new UsageError('--source must be 1 to 40 lower-case letters, digits and hyphens.');
  }
}

async function list(
  { json }: Flags,
  rest: readonly string[],
  { out }: World,
  work: Work,
): Promise<ExitCode> {
  if (rest.length > 0) throw new UsageError('keys list takes options alone.');
  const shown = (await work.keys.list()).map(({ sha256: _sha256, ...key }) => key);
  if (json) out(`${JSON.stringify(shown)}\n`);
  else
    for (const key of shown) out(`${key.id}  ${key.createdAt}  ${key.role}  ${key.source ?? ''}\n`);
  return 0;
}

async function revoke(
  { quiet }: Flags,
  [id, ...more]: readonly string[],
  { err }: World,
  work: Work,
): Promise<ExitCode> {
  if (id === undefined || more.length > 0) throw new UsageError('keys revoke needs one ID.');
  const found = await work.keys.revoke(id);
  if (!found) err('There is no key of this id.\n');
  else if (!quiet) err(`Key ${id} is no longer in force.\n`);
  return found ? 0 : 1;
}
