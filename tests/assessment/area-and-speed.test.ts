import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  defectCircumference,
  dissectionMin,
  procedureMin,
  specimenAreaCm2,
  speedCm2PerH,
} from '../../src/assessment/index.js';
import { determined } from '../../src/kernel/index.js';
import published from '../published/area-speed-stricture.json' with { type: 'json' };

const numberOf = (finding: ReturnType<typeof specimenAreaCm2>): number =>
  finding.kind === 'determined' ? finding.value : Number.NaN;

describe('specimen area and dissection speed', () => {
  it.each(published.areaAndSpeed)(
    '$id: $inputs.longMm x $inputs.shortMm mm in $inputs.minutes min ($source, $mark)',
    ({ inputs, expected }) => {
      const area = specimenAreaCm2({ longAxisMm: inputs.longMm, shortAxisMm: inputs.shortMm });
      const speed = speedCm2PerH(area, determined(inputs.minutes, []));
      expect(numberOf(area)).toBeCloseTo(expected.areaCm2, 3);
      expect(numberOf(speed)).toBeCloseTo(expected.cm2PerH, 3);
      // cm2/h = mm2/min x 0.6, by arithmetic.
      expect(numberOf(speed) / 0.6).toBeCloseTo(expected.mm2PerMin, 2);
    },
  );

  it('gives a circle its area by the formula of a circle, and is symmetric in the axes', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 200, noNaN: true }), (diameter) => {
        const area = numberOf(specimenAreaCm2({ longAxisMm: diameter, shortAxisMm: diameter }));
        expect(area).toBeCloseTo(Math.PI * (diameter / 20) ** 2, 6);
      }),
    );
    expect(specimenAreaCm2({ longAxisMm: 30, shortAxisMm: 20 })).toEqual(
      specimenAreaCm2({ longAxisMm: 20, shortAxisMm: 30 }),
    );
  });

  it('is indeterminate without an axis or a time, and names each that is missing', () => {
    const area = specimenAreaCm2({ longAxisMm: 30 });
    const minutes = dissectionMin({ scopeInAt: NINE, scopeOutAt: TEN, firstIncisionAt: NINE });
    expect(area).toEqual({ kind: 'indeterminate', missing: ['specimen.shortAxisMm'] });
    expect(minutes).toEqual({ kind: 'indeterminate', missing: ['times.dissectionEndAt'] });
    expect(speedCm2PerH(area, minutes)).toEqual({
      kind: 'indeterminate',
      missing: ['specimen.shortAxisMm', 'times.dissectionEndAt'],
    });
    expect(specimenAreaCm2({})).toMatchObject({
      missing: ['specimen.longAxisMm', 'specimen.shortAxisMm'],
    });
  });
});

describe('a finding that rests on others', () => {
  const area = specimenAreaCm2({ longAxisMm: 30, shortAxisMm: 20 });
  const times = { scopeInAt: '2026-03-02T09:00:00+01:00', scopeOutAt: '2026-03-02T10:00:00+01:00' };
  const at = '2026-03-02T09:30:00+01:00';

  it('names each time that is missing, and none that is there', () => {
    const missingOf = (more: object) => {
      const found = dissectionMin({ ...times, ...more });
      return found.kind === 'indeterminate' ? found.missing : [];
    };
    expect(missingOf({})).toEqual(['times.firstIncisionAt', 'times.dissectionEndAt']);
    expect(missingOf({ dissectionEndAt: at })).toEqual(['times.firstIncisionAt']);
    expect(missingOf({ firstIncisionAt: at })).toEqual(['times.dissectionEndAt']);
    expect(specimenAreaCm2({ shortAxisMm: 20 })).toEqual({
      kind: 'indeterminate',
      missing: ['specimen.longAxisMm'],
    });
  });

  it('has no speed without an area or without a time', () => {
    const minutes = dissectionMin({ ...times, dissectionEndAt: at });
    expect(speedCm2PerH(area, minutes)).toEqual({
      kind: 'indeterminate',
      missing: ['times.firstIncisionAt'],
    });
    expect(speedCm2PerH(specimenAreaCm2({ longAxisMm: 30 }), determined(60, []))).toEqual({
      kind: 'indeterminate',
      missing: ['specimen.shortAxisMm'],
    });
  });

  it('cites what it rests on', () => {
    const worksOf = (finding: ReturnType<typeof specimenAreaCm2>) =>
      finding.kind === 'determined' ? finding.cites.map(({ work }) => work) : [];
    expect(worksOf(area)).toHaveLength(1);
    expect(worksOf(procedureMin(times))).toHaveLength(1);
    expect(worksOf(dissectionMin({ ...times, firstIncisionAt: at, dissectionEndAt: at }))).toEqual(
      worksOf(procedureMin(times)),
    );
    expect(worksOf(speedCm2PerH(area, determined(60, [])))).toHaveLength(2);
  });
});

const NINE = '2026-03-02T09:00:00+01:00';
const TEN = '2026-03-02T10:00:00+01:00';

describe('durations, by instant', () => {
  // Source: IANA time zone database, Europe/Berlin: +01:00 until 2026-03-29T01:00Z, then +02:00.
  it('counts 60 minutes from 01:30 to 03:30 over the change to summer time', () => {
    const times = {
      scopeInAt: '2026-03-29T01:30:00+01:00',
      scopeOutAt: '2026-03-29T03:30:00+02:00',
    };
    expect(procedureMin(times)).toMatchObject({ kind: 'determined', value: 60 });
  });

  it('counts 120 minutes from 02:30 to 03:30 over the change to winter time', () => {
    const times = {
      scopeInAt: '2026-10-25T02:30:00+02:00',
      scopeOutAt: '2026-10-25T03:30:00+01:00',
    };
    expect(procedureMin(times)).toMatchObject({ kind: 'determined', value: 120 });
  });
});

describe('circumference of the defect', () => {
  it('takes what the operator states, even beside a width', () => {
    expect(
      defectCircumference({ circumferencePercent: 60, widthMm: 10, lumenDiameterMm: 20 }),
    ).toMatchObject({ kind: 'determined', value: { percent: 60, from: 'operator' } });
  });

  // Source: circumference of a circle, pi x diameter.
  it('computes half the circumference from a width of half of pi times the diameter', () => {
    const widthMm = (Math.PI * 20) / 2;
    const finding = defectCircumference({ widthMm, lumenDiameterMm: 20 });
    expect(finding).toMatchObject({ value: { from: 'width' } });
    expect(finding.kind === 'determined' && finding.value.percent).toBeCloseTo(50, 9);
  });

  it('never exceeds the whole circumference', () => {
    expect(defectCircumference({ widthMm: 200, lumenDiameterMm: 20 })).toMatchObject({
      value: { percent: 100 },
    });
  });

  it('is indeterminate when neither stated nor computable', () => {
    const missing = ['defect.circumferencePercent'];
    expect(defectCircumference({ widthMm: 10 })).toEqual({ kind: 'indeterminate', missing });
    expect(defectCircumference({ lumenDiameterMm: 10 })).toEqual({
      kind: 'indeterminate',
      missing,
    });
  });
});
