export { runCli } from './run-cli.js';
export type { ExitCode, KeyWork, MadeKey, RuleBook, Work, World } from './world.js';
