// Holds the directions of imports, and fails as well when it looked at fewer files than there are.
import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cruise } from 'dependency-cruiser';
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config';

const { forbidden, options } = createRequire(import.meta.url)('../.dependency-cruiser.cjs');
const { output } = await cruise(
  ['src'],
  { ...options, ruleSet: { forbidden }, validate: true },
  undefined,
  { tsConfig: extractTSConfig('tsconfig.json') },
);

const { violations } = output.summary;
for (const { rule, from, to } of violations) console.error(`${rule.name}: ${from} -> ${to}`);

const files = readdirSync('src', { recursive: true }).filter((name) => /\.ts$/.test(name));
const seen = new Set(output.modules.map(({ source }) => source));
const unseen = files.filter((name) => !seen.has(`src/${name.replaceAll('\\', '/')}`));
for (const name of unseen) console.error(`not looked at: src/${name}`);

console.log(
  `${files.length} files, ${violations.length} broken directions, ${unseen.length} unseen`,
);
process.exit(violations.length + unseen.length === 0 && files.length > 0 ? 0 : 1);
