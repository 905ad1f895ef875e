import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

/** A program of its own that a test may kill. */
export interface Child {
  /** Resolves with the next line that it prints. */
  line(): Promise<string>;
  /** Kills it as nothing can prevent. Resolves when it is gone. */
  kill(): Promise<void>;
  /** Resolves with the signal that ended it, or its exit code. */
  readonly ended: Promise<NodeJS.Signals | number | null>;
}

/** @param script where a TypeScript file lies */
export function startChild(script: URL, ...args: readonly string[]): Child {
  const child: ChildProcess = spawn(
    process.execPath,
    ['--import', 'tsx', fileURLToPath(script), ...args],
    {
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  const ended = new Promise<NodeJS.Signals | number | null>((done) => {
    child.on('exit', (code, signal) => done(signal ?? code));
  });
  const { stdout } = child;
  if (stdout === null) throw new Error('a child prints through a pipe');
  const lines = createInterface({ input: stdout })[Symbol.asyncIterator]();
  return {
    line: async () => String((await lines.next()).value),
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
    ended,
  };
}
