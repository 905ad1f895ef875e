import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { edited } from '../faults/edit.js';
import { SEEDED_FAULTS } from '../faults/seeded-faults.js';
import { appointedBundle } from './sample-variants.js';

describe('the seeded faults, of which no validator compared with finds all', () => {
  it('are 17, and the sample without them passes', () => {
    expect(SEEDED_FAULTS).toHaveLength(17);
    expect(checkBundle(appointedBundle()).ok).toBe(true);
  });

  it.each(SEEDED_FAULTS)('$name: found as $rule', ({ type, edits, rule, pointer }) => {
    const bundle = edited(appointedBundle(), edits);
    const result = checkBundle(bundle);
    const problems = result.ok ? [] : result.problems;
    const place = problems.find((problem) => problem.rule === rule)?.pointer;
    expect(problems.map((problem) => problem.rule)).toContain(rule);
    const [, , index] = place?.split('/') ?? [];
    expect(bundle.entry?.[Number(index)]?.resource?.resourceType).toBe(type);
    expect(place).toBe(`/entry/${index}/resource${pointer}`);
  });

  it.each(SEEDED_FAULTS)('$name: is said without the value that was sent', ({ edits }) => {
    const result = checkBundle(edited(appointedBundle(), edits));
    const sent = edits.map(({ set }) => set).filter((set) => typeof set === 'string' && set !== '');
    for (const { message, expected } of result.ok ? [] : result.problems) {
      for (const value of sent) expect(`${message} ${expected}`).not.toContain(value);
    }
  });
});
