// Compares each rule with the hash of its newest version in tests/rules/rule-versions.json.
// With --write it adds new rules and new versions to that file; it never changes an old hash.
import { readFile, writeFile } from 'node:fs/promises';
import { allRules } from '../../src/pipeline/index.js';
import { fingerprint, type Rule } from '../../src/rules/index.js';

const FILE = 'tests/rules/rule-versions.json';

interface Version {
  readonly version: number;
  readonly sha256: string;
}
type Recorded = Readonly<Record<string, readonly Version[]>>;

const isWriting = process.argv.includes('--write');
const recorded: Recorded = JSON.parse(await readFile(FILE, 'utf8').catch(() => '{}'));
const refused: string[] = [];
const added: string[] = [];

function versionsOf(rule: Rule): readonly Version[] {
  const versions = recorded[rule.id] ?? [];
  const newest = versions.at(-1);
  const now = { version: rule.version, sha256: fingerprint(rule) };
  if (newest?.version === now.version) {
    if (newest.sha256 !== now.sha256) {
      refused.push(`${rule.id}: its data changed, its version is still ${rule.version}`);
    }
    return versions;
  }
  if (now.version !== (newest?.version ?? 0) + 1) {
    refused.push(`${rule.id}: version ${now.version} does not follow ${newest?.version ?? 0}`);
    return versions;
  }
  added.push(`${rule.id} version ${now.version} ${now.sha256}`);
  return [...versions, now];
}

const next = Object.fromEntries(allRules().map((rule) => [rule.id, versionsOf(rule)]));
if (isWriting) await writeFile(FILE, `${JSON.stringify({ ...recorded, ...next }, undefined, 2)}\n`);
for (const line of added) console.log(`${isWriting ? 'added' : 'to add'}: ${line}`);
for (const line of refused) console.log(`refused: ${line}`);
console.log(`${Object.keys(next).length} rules, ${added.length} new, ${refused.length} refused`);
process.exit(refused.length > 0 || (!isWriting && added.length > 0) ? 1 : 0);
