import { describe, expect, it } from 'vitest';
import { STRICTURE_BANDS, strictureRisk } from '../../src/assessment/index.js';
import { determined, indeterminate } from '../../src/kernel/index.js';
import published from '../published/area-speed-stricture.json' with { type: 'json' };

const share = (percent: number) => determined({ percent, from: 'operator' as const }, []);

interface Published {
  readonly id: string;
  readonly organ: string;
  readonly percent: number;
  readonly lengthMm?: number;
  readonly flag: string;
  readonly source: string;
  readonly mark: string;
}

const organOf = (name: string) => (name === 'stomach' ? 'stomach' : 'oesophagus');

describe('stricture flag', () => {
  it.each<Published>(published.stricture)(
    '$id: $percent % in the $organ is $flag ($source, $mark)',
    ({ organ, percent, lengthMm, flag }) => {
      expect(strictureRisk(share(percent), { organ: organOf(organ), lengthMm })).toMatchObject({
        kind: 'determined',
        value: { flag },
      });
    },
  );

  it('gives every share one flag, and a larger share never a lower one', () => {
    const order = ['low', 'moderate', 'high', 'full'];
    const ranks = Array.from({ length: 10_001 }, (_, i) => {
      const risk = strictureRisk(share(i / 100), { organ: 'oesophagus' });
      return risk?.kind === 'determined' ? order.indexOf(risk.value.flag) : -1;
    });
    expect(Math.min(...ranks)).toBe(0);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  });

  // Source: Kim GH et al. Clin Endosc 2014;47:516, abstract: > 30 mm; upper oesophagus.
  it('shows long defects and the upper oesophagus beside the flag', () => {
    const place = { organ: 'oesophagus', site: 'oesophagus-upper-third' } as const;
    expect(strictureRisk(share(20), { ...place, lengthMm: 31 })).toMatchObject({
      value: { flag: 'low', factors: ['long-defect', 'upper-oesophagus'] },
    });
    expect(strictureRisk(share(20), { organ: 'oesophagus', lengthMm: 30 })).toMatchObject({
      value: { factors: [] },
    });
  });

  it('names the difference of the published thresholds at exactly three quarters', () => {
    expect(strictureRisk(share(75), { organ: 'oesophagus' })).toMatchObject({
      value: { factors: ['three-quarters-exactly'] },
      cites: expect.arrayContaining([expect.objectContaining({ work: 'jes2022' })]),
    });
  });

  it('is indeterminate where the length decides and is not told', () => {
    expect(strictureRisk(share(80), { organ: 'stomach' })).toEqual(
      indeterminate(['defect.longAxisMm']),
    );
    expect(strictureRisk(share(70), { organ: 'stomach' })).toMatchObject({
      value: { flag: 'low' },
    });
  });

  it('is indeterminate without the share, and names it', () => {
    const missing = indeterminate<never>(['defect.circumferencePercent']);
    expect(strictureRisk(missing, { organ: 'oesophagus' })).toEqual(missing);
  });

  it('gives no flag for an organ without a published threshold', () => {
    expect(strictureRisk(share(90), { organ: 'colon' })).toBeUndefined();
    expect(Object.keys(STRICTURE_BANDS)).toEqual(['oesophagus', 'stomach']);
  });
});
