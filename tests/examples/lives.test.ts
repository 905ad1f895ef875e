import { readFileSync } from 'node:fs';
import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { brokenInBase } from '../../src/conformance/base-checks.js';
import { checkBundle } from '../../src/conformance/index.js';
import { subjectOf } from '../../src/conformance/resource-check.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService, type Service } from '../../src/pipeline/index.js';
import { graphFaults } from '../mapping/graph.js';
import type { Draft } from '../support/consistent-case.js';
import type { Sent } from '../support/example-messages.js';
import { byCase, LIVES, type Life, life } from '../support/lives.js';
import { memoryStore } from '../support/memory-store.js';
import { illegalMoves, lostResources } from '../support/status-path.js';
import { VERDICTS } from './life-verdicts.table.js';

const NOW = '2027-06-01T12:00:00.000Z';
const readme = readFileSync('examples/README.md', 'utf8');

/** The service before it has heard of anything. */
function freshService(): Service {
  return createService({
    store: memoryStore(() => NOW),
    settings: {
      unit: DEFAULT_UNIT_SETTINGS,
      secret: 'a-secret-of-the-tests-that-is-long-enough',
      softwareVersion: '0.0.0-test',
    },
    now: () => NOW,
  });
}

/** What stands after a message; the Bundle is absent while its case has not come. */
interface Stood {
  readonly caseId: string;
  readonly verdict: string;
  readonly view: Draft;
  readonly bundle?: Bundle;
}

/** Pushes the messages one after the other. @throws Error when one is not accepted */
async function live(messages: readonly Sent[]): Promise<readonly Stood[]> {
  const service = freshService();
  const stood: Stood[] = [];
  for (const { kind, bytes } of messages) {
    const receipt = await service.receive(kind, bytes, {});
    if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
    const { caseId } = receipt.receipt;
    const bundle = await service.readBundle(caseId, {});
    const view: Draft = receipt.view;
    const found = { caseId, view, verdict: verdictOf(view) };
    stood.push({ ...found, ...(bundle === undefined ? {} : { bundle }) });
  }
  return stood;
}

/** The same for a whole life, which is lived once. */
function lived(one: Life): Promise<readonly Stood[]> {
  const known = alreadyLived.get(one.name) ?? live(one.messages);
  alreadyLived.set(one.name, known);
  return known;
}
const alreadyLived = new Map<string, Promise<readonly Stood[]>>();

function verdictOf({ waitingFor, assessment }: Draft): string {
  if (waitingFor !== undefined) return 'waiting';
  const { outcome } = assessment.curability.verdict;
  return outcome.kind === 'decided' ? outcome.class : 'open';
}

/** The Bundles of each case, in the order in which they were made. */
const versionsOf = (stood: readonly Stood[]): readonly (readonly Bundle[])[] =>
  [...new Set(stood.map(({ caseId }) => caseId))].map((caseId) =>
    stood.flatMap((one) => (one.caseId === caseId && one.bundle ? [one.bundle] : [])),
  );

/** Moves between neighbouring Bundles of a life. */
const moves = (stood: readonly Stood[], judge: (before: Bundle, after: Bundle) => unknown) =>
  versionsOf(stood).flatMap((versions) =>
    versions.slice(1).flatMap((after, i) => judge(versions[i] ?? after, after)),
  );

const resources = ({ entry = [] }: Bundle): readonly Draft[] =>
  entry.flatMap(({ resource }): readonly Draft[] => (resource === undefined ? [] : [resource]));

describe('the whole lives of the examples', () => {
  it.each(LIVES)('$name has its story in two sentences, and tells each step', (one) => {
    expect(readme).toContain(`\`${one.name}.json\``);
    expect(one.story.match(/\.(?= |$)/g)).toHaveLength(2);
    for (const { kind, document } of one.messages) expect(document.schema).toBe(`${kind}/1`);
    expect(one.steps.every(({ tells }) => tells.length > 0 && tells.length <= 70)).toBe(true);
    expect(VERDICTS[one.name]).toHaveLength(one.steps.length);
  });

  it.each(LIVES)('$name: every version is sound by FHIR R4 and by our own rules', async (one) => {
    const stood = await lived(one);
    const bundles = stood.flatMap(({ bundle }) => (bundle === undefined ? [] : [bundle]));
    expect(bundles.length).toBeGreaterThanOrEqual(one.messages.length - 1);
    for (const bundle of bundles) {
      expect(graphFaults(bundle)).toEqual([]);
      expect(checkBundle(bundle)).toMatchObject({ ok: true });
      const broken = resources(bundle).flatMap((resource) => brokenInBase(subjectOf(resource, '')));
      expect(broken.map(({ rule }) => rule.key)).toEqual([]);
    }
    expect(stood.flatMap(({ view }) => view.setAside ?? [])).toEqual([]);
  });

  it.each(LIVES)(
    '$name: has the classes of its story, by the ESGE guideline of 2022',
    async (one) => {
      const stood = await lived(one);
      expect(stood.map(({ verdict }) => verdict)).toEqual(VERDICTS[one.name]);
    },
  );

  it.each(LIVES)('$name: statuses move as FHIR R4 lets them, and nothing is lost', async (one) => {
    const stood = await lived(one);
    expect(moves(stood, illegalMoves)).toEqual([]);
    expect(moves(stood, lostResources)).toEqual([]);
  });

  it.each(LIVES)('$name: ends in the same Bundles in whatever order it comes', async (one) => {
    for (const messages of byCase(one)) {
      const ends = await Promise.all(ordersOf(messages).map(endOf));
      expect(new Set(ends).size).toBe(1);
    }
  });
});

/** As sent, backwards, and the later half first. */
function ordersOf(messages: readonly Sent[]): readonly (readonly Sent[])[] {
  const half = Math.ceil(messages.length / 2);
  const turned = [...messages.slice(half), ...messages.slice(0, half)];
  return [messages, messages.toReversed(), turned];
}

/** The last Bundle; a revision that comes too late is kept and not applied. */
async function endOf(messages: readonly Sent[]): Promise<string> {
  const service = freshService();
  let caseId = '';
  for (const { kind, bytes } of messages) {
    const receipt = await service.receive(kind, bytes, {});
    if ('receipt' in receipt) caseId = receipt.receipt.caseId;
  }
  return JSON.stringify(await service.readBundle(caseId, {}));
}

describe('the oracles of the lives', () => {
  it('see a move that R4 does not know, a beginning as amended, and a loss', async () => {
    const [before, after] = versionsOf(await lived(life('amended')))[0] ?? [];
    if (before === undefined || after === undefined) throw new Error('a life has versions');
    expect(illegalMoves(after, before)).toContain(
      'Observation/curability from final to preliminary',
    );
    const amended = structuredClone(after);
    for (const resource of resources(amended)) {
      if (resource.resourceType === 'Observation') resource.status = 'amended';
    }
    expect(illegalMoves(before, amended)).toContain(
      'Observation/curability from preliminary to amended',
    );
    expect(illegalMoves(before, amended)).toContain('Observation/histology begins as amended');
    const shorter = { ...after, entry: (after.entry ?? []).slice(0, 3) };
    expect(lostResources(before, shorter)).toContain('Specimen/specimen');
  });

  it('see another end where a message is missing', async () => {
    for (const one of LIVES) {
      const [messages = []] = byCase(one);
      expect(await endOf(messages.slice(0, -1))).not.toBe(await endOf(messages));
    }
  });

  it('see a class that another report would give', async () => {
    const [esdCase, first] = life('amended').messages;
    const [, otherwise] = life('local-risk').messages;
    if (!esdCase || !first || !otherwise) throw new Error('a life has messages');
    const stood = await live([esdCase, first]);
    expect(stood.map(({ verdict }) => verdict)).not.toEqual(VERDICTS['local-risk']?.slice(0, 2));
  });
});

describe('what a life leaves', () => {
  it('surgery: the meeting and the operation with its lymph nodes', async () => {
    const last = (await lived(life('surgery'))).at(-1);
    const values = resources(last?.bundle ?? { resourceType: 'Bundle', type: 'transaction' });
    const counts = values.flatMap(({ valueInteger, valueQuantity, component = [] }) => [
      valueInteger,
      valueQuantity?.value,
      ...component.map((part: Draft) => part.valueInteger ?? part.valueQuantity?.value),
    ]);
    expect(counts).toContain(34);
  });

  it('wrong-patient: nothing of the first case stands, and the second one does', async () => {
    const [withdrawn, right] = versionsOf(await lived(life('wrong-patient'))).map((versions) =>
      versions.at(-1),
    );
    if (withdrawn === undefined || right === undefined) throw new Error('there are two cases');
    const standing = (bundle: Bundle) =>
      resources(bundle).filter(
        (r) =>
          r.resourceType !== 'Provenance' &&
          r.status !== 'entered-in-error' &&
          r.verificationStatus?.coding[0].code !== 'entered-in-error',
      );
    expect(standing(withdrawn)).toEqual([]);
    expect(standing(right).length).toBeGreaterThan(30);
    const wrong = JSON.stringify(right);
    expect(wrong).not.toContain('EX-P-0017');
    expect(wrong).toContain('EX-P-0020');
  });
});
