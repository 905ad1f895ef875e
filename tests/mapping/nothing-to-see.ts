import type { Told } from './explain.js';

/** Nothing for a pathologist to see: the lesion stayed, or the specimen did not come out. */
export function hasNothingToSee({ version }: Pick<Told, 'version'>): boolean {
  const { resection, specimen } = version.now.esdCase.fields;
  return ['abandoned', 'not-started'].includes(resection.outcome) || specimen?.retrieved === false;
}
