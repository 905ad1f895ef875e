import { describe, expect, it } from 'vitest';
import { defectCircumference } from '../../src/assessment/defect-circumference.js';
import { specimenAreaCm2 } from '../../src/assessment/specimen-area.js';
import { strictureRisk } from '../../src/assessment/stricture-risk.js';
import { vesselInvasion } from '../../src/assessment/vessel-invasion.js';
import type { Finding } from '../../src/kernel/index.js';
import { soundPathology } from './sound-pathology.js';

/** Works behind a finding, and how well they support it. */
function supportOf(found: Finding<unknown> | undefined): readonly string[] {
  if (found?.kind !== 'determined') throw new Error('everything is told');
  return found.cites.map(({ work, basis }) => `${work} ${basis}`);
}

// Oracle: the project definition that no rule stands without its source; works by the docstrings.
describe('a finding names its source', () => {
  it.each([
    [{ ly: '1' }],
    [{ ly: '0', v: '0' }],
    [{ histology: 'low-grade-dysplasia' }],
    [{ ly: 'X', v: 'X' }],
  ] as const)('of invasion of vessels, told %j', (told) => {
    const findings = { ly: undefined, v: undefined, histology: 'carcinoma', ...told };
    expect(supportOf(vesselInvasion(soundPathology(findings)))).toEqual(['esdPractice recalled']);
  });

  it('of the share of the circumference, as stated and by its width', () => {
    expect(supportOf(defectCircumference({ circumferencePercent: 50 }))).toEqual([
      'esdPractice practice',
    ]);
    expect(supportOf(defectCircumference({ widthMm: 20, lumenDiameterMm: 20 }))).toEqual([
      'esdPractice derived',
    ]);
  });

  it('of the area of a specimen', () => {
    expect(supportOf(specimenAreaCm2({ longAxisMm: 20, shortAxisMm: 10 }))).toHaveLength(1);
  });

  // Kim GH et al. Clin Endosc 2014;47:516, abstract: length above 30 mm, upper oesophagus.
  it('of a stricture risk, also of what adds to it', () => {
    const share = defectCircumference({ circumferencePercent: 80 });
    const risk = (lengthMm: number) =>
      supportOf(strictureRisk(share, { organ: 'oesophagus', lengthMm }));
    const short = risk(20);
    expect(short[0]).toBe('esdPractice practice');
    expect(risk(31)).toEqual([...short, 'kim2014 published']);
  });
});
