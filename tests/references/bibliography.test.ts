import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BIBLIOGRAPHY } from '../../src/references/index.js';

/** Keys of works that the rules cite, as they stand in the source. */
function citedIn(text: string): readonly string[] {
  return [...text.matchAll(/\bcite\(\s*'(\w+)'/g)].map(([, key = '']) => key);
}

const rules = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(`src/${name}`, 'utf8'))
  .join('\n');

describe('the bibliography', () => {
  it('holds no work that no rule cites', () => {
    expect(new Set(citedIn(rules))).toEqual(new Set(Object.keys(BIBLIOGRAPHY)));
  });

  it('would notice a work that is not cited', () => {
    expect(citedIn(rules.replaceAll("cite('jes2022'", "cite('kim2014'"))).not.toContain('jes2022');
  });

  it('names each work so that it can be found', () => {
    for (const { citation, about } of Object.values(BIBLIOGRAPHY)) {
      expect(citation).toMatch(/\d{4}|no source/);
      expect(about).not.toBe('');
    }
  });
});
