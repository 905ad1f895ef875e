import { type ParseArgsConfig, parseArgs } from 'node:util';
import { DEFAULT_UNIT_SETTINGS, parseUnitSettings, type UnitSettings } from '../contract/index.js';
import { describeProblems } from './describe-problems.js';
import { readInput } from './read-input.js';
import { type ExitCode, UsageError, type World } from './world.js';

type Options = NonNullable<ParseArgsConfig['options']>;

/**
 * Reads what follows the name of a command.
 *
 * @throws UsageError for an option that it does not have, or one without its value
 */
export function readArguments<const T extends Options>(args: readonly string[], options: T) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    throw new UsageError(error instanceof Error ? firstSentence(error.message) : 'Bad option.');
  }
}

const firstSentence = (text: string): string => `${text.split(/\. |\n/)[0] ?? text}.`;

/** The settings of the unit in a file, or those in force without one; else how to end. */
export async function unitSettings(
  file: string | undefined,
  world: World,
): Promise<UnitSettings | ExitCode> {
  if (file === undefined) return DEFAULT_UNIT_SETTINGS;
  const input = await readInput(file, world);
  if (!input.ok) {
    world.err(`${input.name}: ${input.reason}`);
    return 3;
  }
  const settings = parseUnitSettings(input.bytes);
  if (settings.ok) return settings.value;
  world.err(`${input.name}: these are no settings of a unit\n`);
  world.err(describeProblems(settings.problems));
  return 1;
}
