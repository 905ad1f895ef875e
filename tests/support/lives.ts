import { readdirSync, readFileSync } from 'node:fs';
import type { SentKind } from '../../src/pipeline/index.js';
import { type Sent, sent } from './example-messages.js';

/** A whole life of the examples, as its file tells it. */
export interface Life {
  readonly name: string;
  readonly title: string;
  readonly story: string;
  readonly steps: readonly {
    readonly kind: SentKind;
    readonly file: string;
    readonly tells: string;
  }[];
  /** The message of each step. */
  readonly messages: readonly Sent[];
}

const FOLDER = 'examples/lives';

export const LIVES: readonly Life[] = readdirSync(FOLDER)
  .sort()
  .map((file) => {
    const life: Omit<Life, 'name' | 'messages'> = JSON.parse(
      readFileSync(`${FOLDER}/${file}`, 'utf8'),
    );
    const messages = life.steps.map((step) =>
      sent(step.kind, JSON.parse(readFileSync(`examples/${step.file}`, 'utf8'))),
    );
    return { ...life, name: file.replace('.json', ''), messages };
  });

export function life(name: string): Life {
  const found = LIVES.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no life ${name}`);
  return found;
}

/** The messages of a life by the case that they are about, each in the order of the life. */
export function byCase({ messages }: Life): readonly (readonly Sent[])[] {
  const numbers = [...new Set(messages.map(({ document }) => document.case.value))];
  return numbers.map((number) => messages.filter(({ document }) => document.case.value === number));
}
