import type { ExitCode } from './cli/index.js';
import { type Config, loadConfig, showConfig } from './config/index.js';
import { createLog, type Log } from './http/index.js';
import type { Problem } from './kernel/index.js';
import { type Running, startService } from './serve.js';

export type Say = (text: string) => void;

/** The sending system that the one-time key of a note system belongs to; the examples name it. */
const EXAMPLE_SOURCE = 'example-notes';

/** Runs the service with the configuration of the environment until a signal stops it. */
export async function runService(err: Say): Promise<ExitCode> {
  const config = await loadConfig();
  if (!config.ok) return refuse(config.problems, err);
  const log = createLog(config.value.logLevel);
  endOnCrash(log);
  const signal = nextSignal();
  try {
    const running = await startService(config.value, EXAMPLE_SOURCE);
    sayStarted(running, config.value, err);
    const code = await signal;
    await running.stop();
    return code;
  } catch (error) {
    return explain(error, log, err);
  }
}

/** Shows the configuration, without secrets, or why it cannot be used. */
export async function printConfig(out: Say, err: Say): Promise<ExitCode> {
  const config = await loadConfig();
  if (!config.ok) return refuse(config.problems, err);
  out(`${JSON.stringify(showConfig(config.value), undefined, 2)}\n`);
  return 0;
}

export function refuse(problems: readonly Problem[], err: Say): ExitCode {
  err('This configuration cannot be used:\n');
  for (const { pointer, message, expected } of problems) {
    err(`  ${pointer.slice(1)}: ${message}\n    expected: ${expected}\n`);
  }
  return 2;
}

/** A second signal ends the process at once. */
function nextSignal(): Promise<ExitCode> {
  return new Promise((resolve) => {
    const codes = { SIGTERM: 0, SIGINT: 130, SIGHUP: 129 } as const;
    let asked = false;
    const onSignal = (code: ExitCode): void => {
      if (asked) process.exit(code);
      asked = true;
      resolve(code);
    };
    process.on('SIGTERM', () => onSignal(codes.SIGTERM));
    process.on('SIGINT', () => onSignal(codes.SIGINT));
    process.on('SIGHUP', () => onSignal(codes.SIGHUP));
  });
}

/** Node by itself would print the message of the error, which may quote what was sent to us. */
function endOnCrash(log: Log): void {
  process.on('uncaughtException', (error) => {
    log.error({ event: 'crashed', err: error });
    process.exit(1);
  });
}

function sayStarted(
  { port, fhirBase, isHeld, oneTimeKeys }: Running,
  config: Config,
  err: Say,
): void {
  const host = config.host.includes(':') ? `[${config.host}]` : config.host;
  const to = `${config.sandbox ? 'the sandbox at ' : ''}${fhirBase}`;
  const delivering = isHeld ? 'delivering nothing: its cases are invented' : `delivering to ${to}`;
  err(`Listening on http://${host}:${port}, ${delivering}\n`);
  if (oneTimeKeys.length === 0) return;
  err('No API keys are set up. These are for this run alone, on this machine alone:\n');
  for (const { key, stored } of oneTimeKeys) {
    const owner = stored.source === undefined ? '' : ` (source ${stored.source})`;
    err(`  ${stored.role.padEnd(12)}  ${key}${owner}\n`);
  }
}

/** Errors whose sentences are ours and are meant for whoever starts the service. */
const OUR_SENTENCES: readonly string[] = [
  'StoreRefused',
  'StoreUnavailable',
  'SandboxRefused',
  'KeyFileRefused',
  'SiteSecretRefused',
];

const LISTENING: Readonly<Record<string, string>> = {
  EADDRINUSE: 'Another program listens on this port: name another in PORT.',
  EACCES: 'This port or a folder may not be used by this user.',
  EADDRNOTAVAIL: 'This machine does not have the address in HOST.',
  ENOTFOUND: 'The name in HOST cannot be resolved.',
};

export function explain(error: unknown, log: Log, err: Say): ExitCode {
  log.error({ event: 'not-started', err: error });
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const ours = error instanceof Error && OUR_SENTENCES.includes(error.name);
  const sentence = ours ? error.message : LISTENING[code];
  err(`It ends: ${sentence ?? 'an error that its log names.'}\n`);
  return sentence === undefined ? 1 : 3;
}
