import { describe, expect, it } from 'vitest';
import { vesselInvasion } from '../../src/assessment/vessel-invasion.js';
import { soundPathology } from './sound-pathology.js';

type State = '0' | '1' | 'X' | undefined;

function invasionOf(ly: State, v: State, histology = 'carcinoma'): string {
  const found = vesselInvasion(soundPathology({ ly, v, histology }));
  return found.kind === 'determined' ? found.value : `missing ${found.missing.join(', ')}`;
}

/** Common practice, no source: lymphovascular invasion is that of either kind of vessel. */
describe('lymphatic and venous invasion taken together', () => {
  it.each<[State, State, string]>([
    ['0', '0', 'absent'],
    ['1', '0', 'present'],
    ['0', '1', 'present'],
    ['1', undefined, 'present'],
    ['X', '1', 'present'],
    ['X', '0', 'not-assessable'],
    ['X', 'X', 'not-assessable'],
    ['0', undefined, 'missing pathology.findings.v'],
    [undefined, '0', 'missing pathology.findings.ly'],
    ['X', undefined, 'missing pathology.findings.v'],
    [undefined, undefined, 'missing pathology.findings.ly, pathology.findings.v'],
  ])('ly %s and v %s: %s', (ly, v, expected) => {
    expect(invasionOf(ly, v)).toBe(expected);
  });

  it.each(['low-grade-dysplasia', 'high-grade-dysplasia', 'none', 'indefinite'])(
    'does not apply to %s, which reaches no vessel, unless it was looked for',
    (histology) => {
      expect(invasionOf(undefined, undefined, histology)).toBe('not-applicable');
      expect(invasionOf('X', undefined, histology)).toBe('not-applicable');
      expect(invasionOf('0', '0', histology)).toBe('absent');
    },
  );

  it.each(['carcinoma', 'neuroendocrine-tumour', 'not-assessable'])(
    'is missing, not inapplicable, of %s',
    (histology) => {
      expect(invasionOf(undefined, undefined, histology)).toMatch(/^missing/);
    },
  );
});
