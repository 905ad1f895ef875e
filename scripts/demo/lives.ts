import { readdirSync, readFileSync } from 'node:fs';
import type { SentKind } from '../../src/pipeline/index.js';

/** What happens to one patient, message by message. */
export interface Life {
  readonly title: string;
  /** Two sentences. */
  readonly story: string;
  readonly steps: readonly LifeStep[];
}

interface Step {
  /** Below `examples/`. */
  readonly file: string;
  /** What the message says, in a few words. */
  readonly tells: string;
}
export interface MessageStep extends Step {
  readonly kind: SentKind;
}
/** The word of a scheduler about the case that the steps before are about. */
export interface BookingStep extends Step {
  readonly kind: 'booking';
  /** Key of the item in the plan of the case. */
  readonly followUp: string;
}
export type LifeStep = MessageStep | BookingStep;

/** The lives in the order in which they are best read. */
const FIRST_READ = ['curative', 'local-risk', 'surgery', 'bleeding', 'amended'];
const FOLDER = 'examples/lives';

export function readLives(): readonly Life[] {
  const rest = readdirSync(FOLDER).map((file) => file.replace('.json', ''));
  const names = [...new Set([...FIRST_READ, ...rest.sort()])];
  return names.map((name): Life => JSON.parse(readFileSync(`${FOLDER}/${name}.json`, 'utf8')));
}

/** Example cases that no life tells of. */
export function otherCases(lives: readonly Life[]): readonly string[] {
  const told = new Set(lives.flatMap(({ steps }) => steps.map(({ file }) => file)));
  return readdirSync('examples/cases')
    .map((file) => `cases/${file}`)
    .filter((file) => !told.has(file))
    .sort();
}

export const readExample = (file: string): Uint8Array<ArrayBuffer> =>
  new Uint8Array(readFileSync(`examples/${file}`));
