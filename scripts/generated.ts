// Makes every generated file of the repository, or, with --check, says which are not fresh.
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { generateSchemas } from './contract/generate-schemas.js';
import { generateDictionary } from './outcomes/generate-dictionary.js';
import { generateBaseInvariants } from './profiles/base-invariants.js';
import { generateMeasure } from './profiles/generate-measure.js';
import { generateProfiles } from './profiles/generate-profiles.js';
import { generateR4Schema } from './profiles/generate-r4-schema.js';
import { generateTerminology } from './terminology/index.js';

type Generator = () => Promise<ReadonlyMap<string, string>>;

const GENERATORS: Readonly<Record<string, Generator>> = {
  'message schemas': generateSchemas,
  terminology: generateTerminology,
  'base invariants': generateBaseInvariants,
  'R4 schema': generateR4Schema,
  profiles: generateProfiles,
  'data dictionary': generateDictionary,
  measure: generateMeasure,
};

const isCheck = process.argv.includes('--check');
const stale: string[] = [];
for (const [name, generate] of Object.entries(GENERATORS)) {
  const files = await generate();
  for (const [path, content] of files) {
    const present = await readFile(path, 'utf8').catch(() => undefined);
    if (present === content) continue;
    stale.push(path);
    if (isCheck) continue;
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, content);
  }
  console.log(`${name}: ${files.size} files`);
}
console.log(`${stale.length} ${isCheck ? 'not fresh' : 'written'}`);
for (const path of stale) console.log(`  ${path}`);
process.exit(isCheck && stale.length > 0 ? 1 : 0);
