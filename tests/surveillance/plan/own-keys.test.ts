import { describe, expect, it } from 'vitest';
import { ownKeys } from '../../../src/surveillance/plan/own-keys.js';
import { EXAMPLES, versionOf } from '../../mapping/records.js';

// Source: project definition: the key of an item names one request of the case.
describe('keys of a plan', () => {
  const { items } = versionOf(EXAMPLES[0]?.text ?? '').version.plan;

  it('stay as they are where each is its own', () => {
    expect(items.length).toBeGreaterThan(0);
    expect(ownKeys(items)).toEqual(items);
  });

  it('count on where two series lead to the same row', () => {
    const twice = ownKeys([...items, ...items]);
    expect(new Set(twice.map(({ key }) => key)).size).toBe(2 * items.length);
    expect(twice.slice(0, items.length)).toEqual(items);
    for (const { key, sequence } of twice) expect(key.endsWith(`.${sequence}`)).toBe(true);
  });
});
