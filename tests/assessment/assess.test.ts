import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import {
  DEFAULT_UNIT_SETTINGS,
  parseCase,
  parsePathology,
  type UnitSettings,
} from '../../src/contract/index.js';
import { invariant } from '../../src/kernel/index.js';

function caseOf(name: string) {
  const read = parseCase(readFileSync(`examples/cases/${name}.json`));
  invariant(read.ok, 'the examples are sound');
  return read.value.fields;
}

function reportOf(name: string) {
  const read = parsePathology(readFileSync(`examples/pathology/${name}.json`));
  invariant(read.ok, 'the examples are sound');
  return read.value.fields;
}

const assessed = (name: string, report?: string, unit: Partial<UnitSettings> = {}) =>
  assess(
    { fields: caseOf(name), ...(report === undefined ? {} : { report: reportOf(report) }) },
    { ...DEFAULT_UNIT_SETTINGS, ...unit },
  );

describe('what a record means', () => {
  // Arithmetic on the example: 10:41 to 11:35 is 54 minutes.
  it('counts minutes, area and speed of the case', () => {
    const { times, specimen } = caseOf('stomach-differentiated');
    const found = assessed('stomach-differentiated');
    const minutes =
      (Date.parse(String(times.dissectionEndAt)) - Date.parse(String(times.firstIncisionAt))) /
      60_000;
    const cm2 = (Math.PI / 400) * Number(specimen?.longAxisMm) * Number(specimen?.shortAxisMm);
    expect(found.dissectionMin).toMatchObject({ value: minutes });
    expect(found.specimenAreaCm2).toMatchObject({ value: expect.closeTo(cm2, 9) });
    expect(found.speedCm2PerH).toMatchObject({ value: expect.closeTo((cm2 * 60) / minutes, 9) });
    expect(found.rulesVersion).toMatch(/^\d+$/);
  });

  it('says nothing of a specimen before its report, and its status with it', () => {
    expect(assessed('stomach-differentiated')).not.toHaveProperty('specimen');
    expect(assessed('stomach-differentiated', 'stomach-differentiated').specimen).toMatchObject({
      resectionStatus: { kind: 'determined' },
      vesselInvasion: { kind: 'determined' },
    });
  });

  // Kim GH et al. Clin Endosc 2014;47:516: thresholds for oesophagus and stomach alone.
  it('flags the risk of a stricture where a threshold was published', () => {
    expect(assessed('colon-caecum')).not.toHaveProperty('strictureRisk');
    const { strictureRisk } = assessed('oesophagus-squamous');
    expect(strictureRisk?.kind).toBe('determined');
  });

  it('awaits pathology until a report is final', () => {
    const outcomeOf = (report?: string) => assessed('rectum', report).curability.verdict.outcome;
    expect(outcomeOf()).toMatchObject({ kind: 'indeterminate', awaits: 'pathology' });
    expect(outcomeOf('rectum-final')).not.toHaveProperty('awaits');
    const open = { ...reportOf('rectum-final'), findings: {} };
    const of = (status: 'final' | 'interim') =>
      assess(
        {
          fields: caseOf('rectum'),
          report: { ...open, report: { ...open.report, status } },
        },
        DEFAULT_UNIT_SETTINGS,
      ).curability.verdict.outcome;
    expect(of('interim')).toHaveProperty('awaits');
    expect(of('final')).not.toHaveProperty('awaits');
  });

  it.each([
    ['oesophagus-squamous', 'oesophagus', 'jges-jes-2020'],
    ['stomach-differentiated', 'stomach', 'jges-jgca-2021'],
    ['colon-caecum', 'colon', 'jsccr-2019'],
  ] as const)('is judged by the rule set that the unit chose: %s', (name, organ, chosen) => {
    const { curabilityRules } = DEFAULT_UNIT_SETTINGS;
    const own = assessed(name, name, { curabilityRules: { ...curabilityRules, [organ]: chosen } });
    expect(own.curability.verdict.rule).toBe(chosen);
    expect(assessed(name, name).curability.verdict.rule).toBe('esge-esd-2022');
  });

  it('has no rule for the duodenum, whatever the unit chose', () => {
    expect(assessed('duodenum', 'duodenum').curability.verdict).toMatchObject({
      rule: 'esge-esd-2022',
      outcome: { class: 'no-rule' },
    });
  });

  // Hatta W et al. Am J Gastroenterol 2017;112:874: made for eCuraC-2 and nothing else.
  it('asks the eCura score of what the Japanese set calls eCuraC-2, and refuses it elsewhere', () => {
    const ecura = (name: string, report: string) =>
      assessed(name, report).scores.find(({ rule }) => rule === 'ecura')?.outcome.kind;
    expect(ecura('stomach-differentiated', 'stomach-differentiated')).toBe('refused');
    expect(ecura('stomach-differentiated', 'stomach-high-risk')).toBe('total');
    expect(ecura('colon-caecum', 'colon-caecum')).toBeUndefined();
  });

  it('reviews the case with its own speed, defect and report', () => {
    const bare = caseOf('oesophagus-squamous');
    const wide = {
      ...bare,
      defect: { circumferencePercent: 90 },
      safety: { stricturePrevention: [] },
    };
    const { review, defectCircumference } = assess({ fields: wide }, DEFAULT_UNIT_SETTINGS);
    expect(defectCircumference).toMatchObject({ value: { percent: 90 } });
    const width = { widthMm: 50, lumenDiameterMm: 18 };
    const byWidth = assess({ fields: { ...wide, defect: width } }, DEFAULT_UNIT_SETTINGS);
    expect(byWidth.review.map(({ check }) => check)).toEqual(review.map(({ check }) => check));
    const narrow = { ...wide, defect: { widthMm: 10, lumenDiameterMm: 18 } };
    const less = assess({ fields: narrow }, DEFAULT_UNIT_SETTINGS);
    expect(less.review.length).toBeLessThan(review.length);
    expect(less.missingElements.length).toBeGreaterThan(0);
  });

  // Speeds of less than 0.5 cm2 an hour are asked again (consistency check, common practice).
  it('is asked again when its specimen is too small for its time', () => {
    const sent = caseOf('stomach-differentiated');
    const checksOf = (longAxisMm: number, shortAxisMm: number) =>
      assess(
        { fields: { ...sent, specimen: { retrieved: true, longAxisMm, shortAxisMm } } },
        DEFAULT_UNIT_SETTINGS,
      ).review.filter(({ says }) => says.includes('unusually slow'));
    expect(checksOf(5, 5)).toHaveLength(1);
    expect(checksOf(30, 30)).toEqual([]);
  });
});
