import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { graphFaults } from './graph.js';
import { bundleOfLater, LATER } from './later.js';

describe('the record of every example of what came after a dissection', () => {
  it.each(LATER)('$name, with its case alone', ({ name }) => {
    const bundle = bundleOfLater(name.replace('.json', ''), 'alone');
    expect(graphFaults(bundle)).toEqual([]);
    expect(checkBundle(bundle)).toMatchObject({ ok: true });
  });

  it.each(LATER)('$name, with all that its case has', ({ name }) => {
    const bundle = bundleOfLater(name.replace('.json', ''));
    expect(graphFaults(bundle)).toEqual([]);
    expect(checkBundle(bundle)).toMatchObject({ ok: true });
  });
});
