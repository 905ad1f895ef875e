import type { Bundle } from 'fhir/r4.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { caseIdOf, createService, type Service } from '../../src/pipeline/index.js';
import { followUpIdOf } from '../../src/pipeline/naming.js';
import type { Draft } from './consistent-case.js';
import type { Life, Told } from './lives.js';
import { memoryStore } from './memory-store.js';

const NOW = '2027-06-01T12:00:00.000Z';
const SECRET = 'a-secret-of-the-tests-that-is-long-enough';

/** The service before it has heard of anything. */
export function freshService(): Service {
  return createService({
    store: memoryStore(() => NOW),
    settings: {
      unit: DEFAULT_UNIT_SETTINGS,
      secret: SECRET,
      softwareVersion: '0.0.0-test',
    },
    now: () => NOW,
  });
}

/** What stands after a message; the Bundle is absent while its case has not come. */
export interface Stood {
  readonly caseId: string;
  readonly verdict: string;
  readonly view: Draft;
  readonly bundle?: Bundle;
}

/** Pushes what is told step by step. @throws Error when something is not accepted */
export async function live(steps: readonly Told[]): Promise<readonly Stood[]> {
  const service = freshService();
  const stood: Stood[] = [];
  for (const step of steps) {
    const { caseId, kind, ...said } = await send(service, step);
    if (kind !== 'accepted') throw new Error(JSON.stringify(said));
    const view: Draft = await service.readCase(caseId, {});
    const bundle = await service.readBundle(caseId, {});
    const found = { caseId, view, verdict: verdictOf(view) };
    stood.push({ ...found, ...(bundle === undefined ? {} : { bundle }) });
  }
  return stood;
}

/** Sends one step to where it goes, and tells which case it is about. */
export async function send(service: Service, step: Told) {
  if (step.kind !== 'booking') {
    const receipt = await service.receive(step.kind, step.bytes, {});
    return { ...receipt, caseId: caseIdOf(SECRET, step.document.case) };
  }
  const caseId = caseIdOf(SECRET, step.case);
  const id = followUpIdOf(SECRET, caseId, step.followUp);
  return { ...(await service.receiveBooking(id, step.bytes, {})), caseId };
}

/** The same for a whole life, which is lived once. */
export function lived(one: Life): Promise<readonly Stood[]> {
  const known = alreadyLived.get(one.name) ?? live(one.told);
  alreadyLived.set(one.name, known);
  return known;
}
const alreadyLived = new Map<string, Promise<readonly Stood[]>>();

function verdictOf({ waitingFor, assessment }: Draft): string {
  if (waitingFor !== undefined) return 'waiting';
  const { outcome } = assessment.curability.verdict;
  return outcome.kind === 'decided' ? outcome.class : 'open';
}

export const resources = ({ entry = [] }: Bundle): readonly Draft[] =>
  entry.flatMap(({ resource }): readonly Draft[] => (resource === undefined ? [] : [resource]));
