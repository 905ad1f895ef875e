import { readFileSync } from 'node:fs';
import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { brokenInBase } from '../../src/conformance/base-checks.js';
import { checkBundle } from '../../src/conformance/index.js';
import { subjectOf } from '../../src/conformance/resource-check.js';
import { graphFaults } from '../mapping/graph.js';
import type { Draft } from '../support/consistent-case.js';
import { freshService, live, lived, resources, type Stood, send } from '../support/live-life.js';
import { byCase, LIVES, life, type Told } from '../support/lives.js';
import { illegalMoves, lostResources } from '../support/status-path.js';
import { VERDICTS } from './life-verdicts.table.js';

const readme = readFileSync('examples/README.md', 'utf8');

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

describe('the whole lives of the examples', () => {
  it.each(LIVES)('$name has its story in two sentences, and tells each step', (one) => {
    expect(readme).toContain(`\`${one.name}.json\``);
    expect(one.story.match(/\.(?= |$)/g)).toHaveLength(2);
    for (const { kind, document } of one.told) expect(document.schema).toBe(`${kind}/1`);
    expect(one.steps.every(({ tells }) => tells.length > 0 && tells.length <= 70)).toBe(true);
    expect(VERDICTS[one.name]).toHaveLength(one.steps.length);
  });

  it.each(LIVES)('$name: every version is sound by FHIR R4 and by our own rules', async (one) => {
    const stood = await lived(one);
    const bundles = stood.flatMap(({ bundle }) => (bundle === undefined ? [] : [bundle]));
    expect(bundles.length).toBeGreaterThanOrEqual(one.told.length - 1);
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
    for (const steps of byCase(one)) {
      const ends = await Promise.all(ordersOf(steps).map(endOf));
      expect(new Set(ends).size).toBe(1);
    }
  });
});

/** As sent, backwards, and the later half first. */
function ordersOf(steps: readonly Told[]): readonly (readonly Told[])[] {
  const half = Math.ceil(steps.length / 2);
  const turned = [...steps.slice(half), ...steps.slice(0, half)];
  return [steps, steps.toReversed(), turned];
}

/**
 * The last Bundle; a revision that comes too late is kept and not applied. A follow-up that is not
 * there yet cannot be booked: nobody has its id, and the scheduler says so again after the rest.
 */
async function endOf(steps: readonly Told[]): Promise<string> {
  const service = freshService();
  const early: Told[] = [];
  let caseId = '';
  for (const step of steps) {
    const receipt = await send(service, step);
    if (receipt.kind === 'not-found') early.push(step);
    caseId = receipt.caseId;
  }
  for (const step of early) await send(service, step);
  return JSON.stringify(await service.readBundle(caseId, {}));
}

describe('the oracles of the lives', () => {
  it('see a move that R4 does not know, a beginning as amended, and a loss', async () => {
    const [, before, , after] = versionsOf(await lived(life('amended')))[0] ?? [];
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

  it('see a task that is done and open again, and a missed visit that was never booked', async () => {
    const [, before, , after] = versionsOf(await lived(life('amended')))[0] ?? [];
    if (before === undefined || after === undefined) throw new Error('a life has versions');
    expect(illegalMoves(after, before)).toContain('Task/pathology.1 from completed to requested');
    const [proposed, missed] = ['proposed', 'noshow'].map((status) => {
      const bundle = structuredClone(before);
      const appointments = resources(bundle).filter((r) => r.resourceType === 'Appointment');
      for (const appointment of appointments) appointment.status = status;
      return bundle;
    });
    expect(illegalMoves(proposed ?? before, missed ?? before)).toEqual([
      'Appointment/provisional.1 from proposed to noshow',
    ]);
  });

  it('see another end where a message is missing', async () => {
    for (const one of LIVES) {
      const [steps = []] = byCase(one);
      expect(await endOf(steps.slice(0, -1))).not.toBe(await endOf(steps));
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
