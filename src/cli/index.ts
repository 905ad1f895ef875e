export { runCli } from './run-cli.js';
export type {
  ExitCode,
  FollowUpLists,
  KeyWork,
  MadeKey,
  Publication,
  RuleBook,
  Work,
  World,
} from './world.js';
