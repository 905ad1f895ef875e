import { readArguments } from './arguments.js';
import { type Command, UsageError } from './world.js';

const HELP = `Usage: dissection-records serve [options]

Runs the service with the configuration of the environment, until SIGTERM or SIGINT. The log goes
to standard output as JSON lines.

Options:
  --print-config   show the configuration, without secrets, and end
  --help           this text

Exit code: 0 stopped as asked, 1 failed, 2 the configuration cannot be used,
3 the database or the port cannot be had, 130 stopped by SIGINT.
`;

export const serve: Command = {
  help: HELP,
  run: async (args, _world, work) => {
    const { values, positionals } = readArguments(args, { 'print-config': { type: 'boolean' } });
    if (positionals.length > 0) throw new UsageError('serve takes no FILE.');
    return values['print-config'] ? work.printConfig() : work.serve();
  },
};
