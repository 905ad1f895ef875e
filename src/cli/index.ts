export { runCli } from './run-cli.js';
export type { ExitCode, KeyWork, MadeKey, Work, World } from './world.js';
