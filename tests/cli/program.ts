import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The real program in a process of its own. */
export interface Program {
  readonly child: ChildProcessWithoutNullStreams;
  readonly ended: Promise<Ended>;
  /** What it has said on standard error so far. */
  readonly err: () => string;
  readonly out: () => string;
}

/** @param env all that it shall know of its surroundings beside PATH */
export function startProgram(
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Program {
  const said = { out: '', err: '' };
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/main.ts', ...args], {
    env: { PATH: process.env['PATH'] ?? '', ...env },
  });
  child.stdout.on('data', (chunk) => {
    said.out += chunk;
  });
  child.stderr.on('data', (chunk) => {
    said.err += chunk;
  });
  const ended = once(child, 'close').then(() => ({ code: child.exitCode, ...said }));
  return { child, ended, err: () => said.err, out: () => said.out };
}

/** Runs the program to its end. */
export function runProgram(
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
  input = '',
): Promise<Ended> {
  const program = startProgram(args, env);
  program.child.stdin.on('error', () => undefined).end(input);
  return program.ended;
}
