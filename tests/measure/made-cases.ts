import type { Bundle, FhirResource } from 'fhir/r4.js';
import { syntheticCase } from '../../scripts/synthetic/synthetic-case.js';
import { LAST_DAY, UNITS } from '../../scripts/synthetic/units.table.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { prepareStored, type StateToStore, takeIn } from '../../src/pipeline/index.js';
import { aboutCase, CASE_NUMBERS, type Sent } from '../support/example-messages.js';

/** A case as it is counted, and as it is sent. */
export interface MadeCase {
  readonly facts: StateToStore['facts'];
  readonly bundle: Bundle<FhirResource>;
}

const SETTINGS = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0.0.0-test',
};

/** After the last message of the examples and of the invented cases; every window is over. */
const NOW = '2030-01-01T00:00:00Z';

const toBundle = prepareStored(SETTINGS);

async function made(sent: readonly Pick<Sent, 'kind' | 'bytes'>[]): Promise<MadeCase> {
  const taken = await takeIn(sent, { settings: SETTINGS, now: NOW });
  if (!taken.ok) throw new Error(`refused: ${JSON.stringify(taken.problems)}`);
  const { facts, version } = taken.value.state;
  const bundle = toBundle(version);
  if (!bundle.ok) throw new Error(`no Bundle: ${JSON.stringify(bundle.problems)}`);
  // Without this the declarations take the resources of a Bundle for no type in particular.
  const typed: Bundle<FhirResource> = JSON.parse(JSON.stringify(bundle.value));
  return { facts, bundle: typed };
}

/** Every example case with all that the examples tell of it. */
export const exampleCases = (): Promise<readonly MadeCase[]> =>
  Promise.all(CASE_NUMBERS.map((number) => made(inOrder(aboutCase(number)))));

/** The case first, and no revision after a higher one. */
const inOrder = ([own, ...later]: readonly Sent[]): readonly Sent[] => [
  ...(own === undefined ? [] : [own]),
  ...later.toSorted((a, b) => a.document.revision - b.document.revision),
];

/** @param seed another one makes other cases */
export const syntheticCases = (seed: number, count: number): Promise<readonly MadeCase[]> =>
  Promise.all(
    Array.from({ length: count }, (_, i) =>
      made(
        syntheticCase({ seed, units: UNITS, untilOn: LAST_DAY }, i).map(({ kind, text }) => ({
          kind,
          bytes: new TextEncoder().encode(text),
        })),
      ),
    ),
  );
