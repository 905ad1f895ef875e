import { dataDictionary } from '../../src/pipeline/index.js';

/** What every column of an export holds, for those who read one without a running service. */
export async function generateDictionary(): Promise<ReadonlyMap<string, string>> {
  return new Map([
    ['shared/data-dictionary.json', `${JSON.stringify(dataDictionary(), null, 2)}\n`],
  ]);
}
