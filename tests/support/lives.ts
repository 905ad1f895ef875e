import { readdirSync, readFileSync } from 'node:fs';
import type { SentKind } from '../../src/pipeline/index.js';
import type { Draft } from './consistent-case.js';
import { type Sent, sent } from './example-messages.js';

/** What a scheduler says of an appointment, and of which item of the plan. */
export interface SaidOfItem {
  readonly kind: 'booking';
  readonly document: Draft;
  readonly bytes: Uint8Array;
  /** The case as its sender numbers it. */
  readonly case: { readonly system: string; readonly value: string };
  /** Key of the item. */
  readonly followUp: string;
}

/** What is sent in one step of a life. */
export type Told = Sent | SaidOfItem;

/** A whole life of the examples, as its file tells it. */
export interface Life {
  readonly name: string;
  readonly title: string;
  readonly story: string;
  readonly steps: readonly Step[];
  /** What is sent in each step. */
  readonly told: readonly Told[];
  /** The same without the scheduler: messages of the note system. */
  readonly messages: readonly Sent[];
}

interface Step {
  readonly kind: SentKind | 'booking';
  readonly file: string;
  readonly tells: string;
  /** Of a booking: key of its item in the plan of the case that the steps before are about. */
  readonly followUp?: string;
}

const FOLDER = 'examples/lives';

export const LIVES: readonly Life[] = readdirSync(FOLDER)
  .sort()
  .map((file) => {
    const life: Omit<Life, 'name' | 'told' | 'messages'> = JSON.parse(
      readFileSync(`${FOLDER}/${file}`, 'utf8'),
    );
    const told = life.steps.map((step, i) => toTold(step, life.steps.slice(0, i)));
    const messages = told.filter((one) => one.kind !== 'booking');
    return { ...life, name: file.replace('.json', ''), told, messages };
  });

function read({ file }: Step): Draft {
  return JSON.parse(readFileSync(`examples/${file}`, 'utf8'));
}

function toTold(step: Step, before: readonly Step[]): Told {
  const { kind, followUp } = step;
  if (kind !== 'booking') return sent(kind, read(step));
  const about = before.findLast((one) => one.kind !== 'booking');
  if (about === undefined || followUp === undefined) throw new Error('it is booked for an item');
  const document = read(step);
  const bytes = new TextEncoder().encode(JSON.stringify(document));
  return { kind, document, bytes, case: read(about).case, followUp };
}

export function life(name: string): Life {
  const found = LIVES.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no life ${name}`);
  return found;
}

const numberOf = (one: Told): string =>
  one.kind === 'booking' ? one.case.value : one.document.case.value;

/** What is sent in a life by the case that it is about, each in the order of the life. */
export function byCase({ told }: Life): readonly (readonly Told[])[] {
  const numbers = [...new Set(told.map(numberOf))];
  return numbers.map((number) => told.filter((one) => numberOf(one) === number));
}
