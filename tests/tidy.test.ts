import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const PURE =
  /^src\/(kernel|references|contract|terminology|rules|statistics|assessment|surveillance|capacity|calendar|record|outcomes|pages|measure|parquet|views|mapping|conformance|pipeline)\//;
const IMPURE =
  /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\brandomUUID\b|\bprocess\.|\bfetch\(|\bconsole\./;
const RULE_FOLDERS = /^src\/(assessment|surveillance)\//;
const MAX_LINES = 200;

interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** What is untidy about a file, in plain words; nothing for a tidy one. */
function untidy({ path, text }: SourceFile): readonly string[] {
  const isTable = /\.(table|generated)\.ts$/.test(path);
  const undocumented = RULE_FOLDERS.test(path)
    ? [...text.matchAll(/(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export function (\w+)/g)]
        .filter(([, doc = '']) => !doc.includes('Source:'))
        .map(([, , name]) => `${name} names no source`)
    : [];
  return [
    ...(/^src\/[a-z0-9/.-]+$/.test(path) ? [] : ['its name is not kebab-case']),
    ...(!isTable && text.split('\n').length - 1 > MAX_LINES ? [`over ${MAX_LINES} lines`] : []),
    ...(/^export default/m.test(text) ? ['a default export'] : []),
    ...(PURE.test(path) && !isTable && IMPURE.test(text)
      ? ['clock, chance or world in a pure folder']
      : []),
    ...undocumented,
  ];
}

const files: readonly SourceFile[] = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => join('src', name))
  .map((path) => ({ path, text: readFileSync(path, 'utf8') }));

describe('the house is tidy', () => {
  it('has files to look at', () => {
    expect(files.length).toBeGreaterThan(50);
  });

  it.each(files)('$path', (file) => {
    expect(untidy(file)).toEqual([]);
  });

  it.each<[string, SourceFile]>([
    ['its name is not kebab-case', { path: 'src/kernel/fooBar.ts', text: '' }],
    ['over 200 lines', { path: 'src/kernel/a.ts', text: '\n'.repeat(201) }],
    ['a default export', { path: 'src/kernel/a.ts', text: 'export default 1;' }],
    [
      'clock, chance or world in a pure folder',
      { path: 'src/mapping/a.ts', text: 'const now = Date.now();' },
    ],
    ['a names no source', { path: 'src/assessment/a.ts', text: 'export function a() {}' }],
  ])('would name: %s', (fault, file) => {
    expect(untidy(file)).toContain(fault);
  });
});
