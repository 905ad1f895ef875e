import { lookup } from 'node:dns/promises';
import { isIP } from 'node:net';
import type { IdentityMode } from './address.js';
import { hostOf, mayUse, type TargetPermissions } from './base-url.js';
import { chooseMode, type TargetNeeds } from './capability.js';
import { classifyReading } from './classify.js';
import type { Clock } from './clock.js';
import type { FhirClient } from './fhir-client.js';
import { isPassing } from './verdict.js';

/** Whether the target can be used now, and how. */
export type ProbeResult =
  | { readonly kind: 'usable'; readonly mode: IdentityMode }
  | {
      readonly kind: 'unusable';
      readonly fault: string;
      readonly reason: string;
      /** The server was not there, or could not answer now. */
      readonly passing?: boolean;
    };

/** What finding that out needs. */
export interface Probing {
  readonly client: FhirClient;
  /** Checked by `checkBaseUrl`. */
  readonly baseUrl: string;
  readonly needs: TargetNeeds;
  readonly allowed: TargetPermissions;
  readonly clock: Clock;
  /** Addresses of a host; the system's own resolver unless given. */
  readonly resolve?: (host: string) => Promise<readonly string[]>;
}

/** Looks where the host lies before anything is asked of it, then what it offers. */
export async function probeTarget(config: Probing, signal: AbortSignal): Promise<ProbeResult> {
  const host = hostOf(new URL(config.baseUrl));
  if (isIP(host) === 0) {
    const addresses = await (config.resolve ?? resolveHost)(host).catch(() => []);
    if (!mayUse(addresses, host, config.allowed)) {
      const reason = 'The FHIR server resolves to an address that is not allowed.';
      return { kind: 'unusable', fault: 'address-refused', reason };
    }
  }
  const answer = await config.client.capabilities(signal);
  if (answer.kind !== 'answered' || answer.status !== 200 || answer.body.kind !== 'json') {
    const failure = classifyReading(answer, config.clock.now());
    const { fault, reason } = failure;
    return { kind: 'unusable', fault, reason, passing: isPassing(failure) };
  }
  const choice = chooseMode(answer.body.resource, config.needs);
  return choice.kind === 'chosen'
    ? { kind: 'usable', mode: choice.mode }
    : { kind: 'unusable', fault: choice.fault, reason: choice.reason };
}

async function resolveHost(host: string): Promise<readonly string[]> {
  return (await lookup(host, { all: true })).map(({ address }) => address);
}
