import { caseIdOf, type PipelineSettings, takeIn } from '../../src/pipeline/index.js';
import { type Database, knownCases, saveNewCases } from '../../src/store/index.js';
import type { Wanted } from './drawn-case.js';
import { caseName } from './drawn-case.js';
import { caseIdentifier } from './identifiers.js';
import { syntheticCase } from './synthetic-case.js';

/** Cases with these numbers, the last one excluded. */
export interface Batch {
  readonly from: number;
  readonly to: number;
}

/**
 * Loads the cases of a batch that the database does not hold yet, in one transaction.
 *
 * @param now the present, UTC instant
 * @returns how many it loaded
 * @throws Error when the contract refuses a message: a fault of the generator
 */
export async function loadBatch(
  database: Database,
  settings: PipelineSettings,
  wanted: Wanted,
  { from, to }: Batch,
  now: string,
): Promise<number> {
  const numbered = Array.from({ length: to - from }, (_, i) => {
    const index = from + i;
    return {
      index,
      caseId: caseIdOf(settings.secret, caseIdentifier(caseName(wanted.seed, index))),
    };
  });
  const known = await knownCases(
    database,
    numbered.map(({ caseId }) => caseId),
  );
  const cases = [];
  for (const { index } of numbered.filter(({ caseId }) => !known.has(caseId))) {
    const sent = syntheticCase(wanted, index).map(({ kind, text }) => ({
      kind,
      bytes: new TextEncoder().encode(text),
    }));
    const taken = await takeIn(sent, { settings, now });
    if (!taken.ok) throw new Error(refusalOf(index, taken.problems));
    cases.push(taken.value);
  }
  if (cases.length > 0) await saveNewCases(database, cases);
  return cases.length;
}

const refusalOf = (index: number, problems: readonly { rule: string; pointer: string }[]): string =>
  `The contract refuses the invented case ${index}: ${problems
    .map(({ rule, pointer }) => `${rule} at ${pointer}`)
    .join(', ')}`;
