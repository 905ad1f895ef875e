import { assess } from './assess-command.js';
import { bundle } from './bundle-command.js';
import { check } from './check-command.js';
import { compare } from './compare-command.js';
import { exportCases } from './export-command.js';
import { followUps } from './follow-ups-command.js';
import { keys } from './keys-command.js';
import { outcomes } from './outcomes-command.js';
import { reassess } from './reassess-command.js';
import { rule } from './rule-command.js';
import { serve } from './serve-command.js';
import { verify } from './verify-command.js';
import { views } from './views-command.js';
import { type Command, type ExitCode, UsageError, type Work, type World } from './world.js';

const COMMANDS: Readonly<Record<string, Command>> = {
  serve,
  check,
  bundle,
  assess,
  rule,
  'follow-ups': followUps,
  outcomes,
  compare,
  views,
  export: exportCases,
  reassess,
  verify,
  keys,
};

const HELP = `Usage: dissection-records COMMAND [options]

Takes finished endoscopic submucosal dissections, and makes coded and checked FHIR R4 records.

Commands:
  serve       run the service
  check       say what is wrong with messages, or what would become of them
  bundle      print the FHIR Bundle that would be sent for a case message
  assess      say what a case means: verdict, scores, review
  rule        list the clinical rules, show one with its sources, or ask it
  follow-ups  list what plans ask for, say why, propose days, forecast the load
  outcomes    rates with intervals, and a printable report
  compare     outcomes of several units side by side, of the reports that they gave out
  views       flat rows of FHIR resources, by views of SQL on FHIR
  export      one row a case, for analysis
  reassess    show which kept cases the present rules judge otherwise, and judge them anew
  verify      say whether the facts for counting are what the journal says
  keys        add, list and revoke API keys

  --help, --version; COMMAND --help says more.
`;

/**
 * Runs one command.
 *
 * @param args what follows the name of the program
 */
export async function runCli(args: readonly string[], world: World, work: Work): Promise<ExitCode> {
  const [name, ...rest] = args;
  if (name === '--help' || name === '-h') return say(world, HELP);
  if (name === '--version') return say(world, `${work.version}\n`);
  const command = name !== undefined && Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (command === undefined) {
    world.err(name === undefined ? HELP : `There is no command of this name.\n\n${HELP}`);
    return 2;
  }
  if (asksForHelp(rest)) return say(world, command.help);
  try {
    return await command.run(rest, world, work);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    world.err(`${error.message}\nSee: dissection-records ${name} --help\n`);
    return 2;
  }
}

/** What stands behind `--` is a name and no option. */
function asksForHelp(args: readonly string[]): boolean {
  const end = args.indexOf('--');
  const options = end === -1 ? args : args.slice(0, end);
  return options.includes('--help') || options.includes('-h');
}

function say({ out }: World, text: string): ExitCode {
  out(text);
  return 0;
}
