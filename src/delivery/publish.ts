import type { CheckedBundle } from '../conformance/index.js';
import type { Published } from '../pipeline/index.js';
import { addressBundle, type IdentityMode } from './address.js';
import type { Answer } from './answer.js';
import { classifyTransaction } from './classify.js';
import { findHeld } from './held.js';
import { issueLines } from './issue-lines.js';
import { createTarget, type TargetConfig } from './target.js';
import { type Failure, isPassing, type Verdict } from './verdict.js';

/**
 * Puts resources that are about no patient on the server, in one transaction, as records are put
 * there: what the server must offer, its address, the identity mode and the reading of its answer
 * are the same. What it holds already is left as it is. Whatever fails, a further attempt replaces
 * and never doubles.
 *
 * Source: FHIR R4 (4.0.1), http, transaction, update, conditional update.
 */
export async function publish(
  bundle: CheckedBundle,
  config: TargetConfig,
  signal: AbortSignal,
): Promise<Published> {
  const probe = await createTarget(config).probe(signal);
  if (probe.kind === 'unusable') {
    const { fault, reason, passing = false } = probe;
    return { kind: 'not-published', fault, reason, issues: [], passing };
  }
  const wanted = await whatIsNotHeld(bundle, config, probe.mode, signal);
  if ('kind' in wanted) return notPublished(wanted);
  const { entry, locations } = wanted;
  if (entry.length === 0) return { kind: 'unchanged', locations };

  const sent = addressBundle({ ...bundle, entry }, probe.mode, { kind: 'logical' });
  const answer = await config.client.transaction(JSON.stringify(sent), signal);
  return toPublished(classifyTransaction(answer, sent, config.clock.now()), answer);
}

async function whatIsNotHeld(
  bundle: CheckedBundle,
  config: TargetConfig,
  mode: IdentityMode,
  signal: AbortSignal,
) {
  const entry = [];
  const locations: string[] = [];
  for (const one of bundle.entry ?? []) {
    const held = await findHeld(config, one, mode, signal);
    if (held.kind === 'failed') return held;
    if (held.kind === 'same') locations.push(held.location);
    else entry.push(one);
  }
  return { entry, locations };
}

function toPublished(verdict: Verdict, answer: Answer): Published {
  switch (verdict.kind) {
    case 'delivered':
      return { kind: 'written', detail: verdict.detail, locations: verdict.locations };
    case 'waiting-patient': {
      const issues = issuesOf(answer);
      const reason = 'The FHIR server asks for a patient; outcomes are about none.';
      return { kind: 'not-published', fault: 'patient', reason, issues, passing: false };
    }
    case 'failed':
      return notPublished(verdict, issuesOf(answer));
  }
}

function notPublished(failure: Failure, issues: readonly string[] = []): Published {
  const { fault, reason, waitMs } = failure;
  const passing = isPassing(failure);
  return {
    kind: 'not-published',
    fault,
    reason,
    issues,
    passing,
    ...(waitMs === undefined ? {} : { waitMs }),
  };
}

const issuesOf = (answer: Answer): readonly string[] =>
  answer.kind === 'answered' && answer.body.kind === 'json' ? issueLines(answer.body.resource) : [];
