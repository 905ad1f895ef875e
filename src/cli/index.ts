export { runCli } from './run-cli.js';
export type { ExitCode, FollowUpLists, KeyWork, MadeKey, RuleBook, Work, World } from './world.js';
