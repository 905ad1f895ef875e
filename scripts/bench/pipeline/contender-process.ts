import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import type { Answer, Request } from './protocol.js';

const CHILD = fileURLToPath(new URL('./contender.ts', import.meta.url));

/** A contender in a process of its own, so that none warms or burdens another. */
export class Contender {
  readonly name: string;
  readonly loadingMs: number;
  readonly #child: ChildProcess;

  private constructor(name: string, child: ChildProcess, loadingMs: number) {
    this.name = name;
    this.#child = child;
    this.loadingMs = loadingMs;
  }

  /** @param inputs messages for the pipeline, Bundles for all others; as JSON */
  static async start(name: string, inputs: readonly string[]): Promise<Contender> {
    const child = fork(CHILD, [], { execArgv: ['--import', 'tsx'] });
    const { value } = await ask(child, { ask: 'load', name, inputs: [...inputs] });
    return new Contender(name, child, Number(value));
  }

  async outputs(): Promise<readonly string[]> {
    const { texts } = await ask(this.#child, { ask: 'outputs' });
    return texts ?? [];
  }

  /** SHA-256 of the Bundles that it makes or is given, refusals apart. */
  async hash(): Promise<string> {
    return String((await ask(this.#child, { ask: 'hash' })).value);
  }

  async entries(): Promise<number> {
    return Number((await ask(this.#child, { ask: 'entries' })).value);
  }

  /** @returns CPU in ms, user and system, for all inputs once */
  async round(): Promise<number> {
    return Number((await ask(this.#child, { ask: 'round' })).value);
  }

  stop(): void {
    this.#child.disconnect();
  }
}

async function ask(child: ChildProcess, request: Request): Promise<Answer> {
  const waiting = new AbortController();
  const { signal } = waiting;
  const answered = once(child, 'message', { signal });
  const ended = once(child, 'exit', { signal }).then(() => {
    throw new Error('a contender ended early');
  });
  ended.catch(() => {}); // also when it is asked to wait no longer
  child.send(request);
  try {
    const [answer]: Answer[] = await Promise.race([answered, ended]);
    if (answer === undefined) throw new Error('a contender gave no answer');
    return answer;
  } finally {
    answered.catch(() => {});
    waiting.abort();
  }
}
