import { describe, expect, it } from 'vitest';
import {
  BOWEL_BLEEDING,
  GASTRIC_BLEEDING,
  STATUS_TOLD,
} from '../../scripts/synthetic/course.table.js';
import { bowelPoints, gastricPoints } from '../../scripts/synthetic/draw-course.js';
import { ASA, FIBROSIS, ORGAN, SEX, SITE, TUMOUR } from '../../scripts/synthetic/lesion.table.js';
import { LEFT_OUT } from '../../scripts/synthetic/missing.table.js';
import { FREE_OF_EN_BLOC, NEVER_REPORTED } from '../../scripts/synthetic/pathology.table.js';
import {
  EN_BLOC,
  INJURY,
  SEVERE_EN_BLOC_FACTOR,
  SPEED,
} from '../../scripts/synthetic/procedure.table.js';
import { ORGANS } from '../../src/contract/index.js';
import { binomialP, chiSquareP } from './goodness-of-fit.js';
import { type ReadCase, readCase } from './samples.js';

/*
 * The messages are counted and held against the tables, whose numbers name their sources. Chance is
 * the same in every run, so a share as rare as this one is a fault of the generator.
 */
const TOO_RARE = 0.0005;
const CASES = 6_000;
const cases: readonly ReadCase[] = Array.from({ length: CASES }, (_, i) => readCase(i));

/** Those of the last months have not had all their messages yet. */
const settled = cases.filter(({ own }) => own.times.scopeInAt < '2026-01-01');
/** Two operators who have long passed forty dissections. */
const experts = cases.filter(
  ({ drawn }) => drawn.unit.name === 'ridge' && ['1', '2'].includes(drawn.operator.number),
);

interface SharesOf<T> {
  readonly value: T;
  readonly weight: number;
}

function chanceOfFit<T>(found: readonly (T | undefined)[], shares: readonly SharesOf<T>[]): number {
  const counts = shares.map(({ value }) => found.filter((one) => one === value).length);
  expect(counts.reduce((sum, count) => sum + count, 0)).toBe(found.length);
  return chiSquareP(
    counts,
    shares.map(({ weight }) => weight),
  );
}

const chanceOfRate = (
  of: readonly ReadCase[],
  is: (one: ReadCase) => boolean,
  percent: number,
): number => {
  expect(of.length).toBeGreaterThan(25);
  return binomialP(of.filter(is).length, of.length, percent / 100);
};

describe(`what ${CASES} invented cases tell, against the tables`, () => {
  it('has the organs, and would notice two of them exchanged', () => {
    const organs = cases.map(({ own }) => own.lesion.organ);
    expect(chanceOfFit(organs, ORGAN)).toBeGreaterThan(TOO_RARE);
    const exchanged = organs.map((organ) =>
      organ === 'colon' ? 'stomach' : organ === 'stomach' ? 'colon' : organ,
    );
    expect(chanceOfFit(exchanged, ORGAN)).toBeLessThan(1e-6);
  });

  it.each(ORGANS)('has the tumours of the %s', (organ) => {
    const there = cases.filter(({ own }) => own.lesion.organ === organ);
    expect(
      chanceOfFit(
        there.map(({ own }) => own.lesion.tumour),
        TUMOUR[organ],
      ),
    ).toBeGreaterThan(TOO_RARE);
  });

  it.each(['stomach', 'duodenum', 'colon', 'rectum'] as const)(
    'has the sites of the %s',
    (organ) => {
      const there = cases.filter(({ own }) => own.lesion.organ === organ);
      expect(
        chanceOfFit(
          there.map(({ own }) => own.lesion.site),
          SITE[organ],
        ),
      ).toBeGreaterThan(TOO_RARE);
    },
  );

  it('has sexes and ASA classes, where they are told', () => {
    const sexes = cases.map(({ own }) => own.patient.sex);
    expect(chanceOfFit(sexes, SEX)).toBeGreaterThan(TOO_RARE);
    const classes = cases.flatMap(({ own }) => own.before?.asaClass ?? []);
    expect(chanceOfFit<string>(classes, ASA)).toBeGreaterThan(TOO_RARE);
  });

  it.each(['untouched', 'attempted'] as const)('has the fibrosis of lesions %s before', (which) => {
    const grades = cases
      .filter(
        ({ own }) => (own.before?.earlierAttempts?.length ?? 0) > 0 === (which === 'attempted'),
      )
      .flatMap(({ own }) => own.dissection?.fibrosis ?? []);
    expect(chanceOfFit(grades, FIBROSIS[which])).toBeGreaterThan(TOO_RARE);
  });

  it.each(ORGANS)('has en bloc resections of experts in the %s', (organ) => {
    const { percent } = EN_BLOC[organ]['from-forty'];
    const attempted = experts.filter(
      ({ own }) =>
        own.lesion.organ === organ &&
        own.resection.outcome !== 'not-started' &&
        own.dissection?.fibrosis !== undefined,
    );
    const isSevere = ({ own }: ReadCase) => own.dissection?.fibrosis === 'F2';
    const isEnBloc = ({ own }: ReadCase) => own.resection.outcome === 'en-bloc';
    const others = attempted.filter((one) => !isSevere(one));
    expect(chanceOfRate(others, isEnBloc, percent)).toBeGreaterThan(TOO_RARE);
    const severe = attempted.filter(isSevere);
    const severePercent = percent * SEVERE_EN_BLOC_FACTOR.factor;
    if (severe.length > 25)
      expect(chanceOfRate(severe, isEnBloc, severePercent)).toBeGreaterThan(TOO_RARE);
  });

  it('would notice en bloc resections as rare as those of a beginner', () => {
    const bowel = experts.filter(({ own }) => own.lesion.organ === 'rectum');
    const { percent } = EN_BLOC.rectum['first-twenty'];
    expect(
      chanceOfRate(bowel, ({ own }) => own.resection.outcome === 'en-bloc', percent),
    ).toBeLessThan(1e-6);
  });

  it.each(['colon', 'rectum'] as const)('has holes made by experts in the %s', (organ) => {
    const told = experts.filter(
      ({ own }) =>
        own.lesion.organ === organ &&
        own.resection.outcome !== 'not-started' &&
        own.safety?.perforation !== undefined,
    );
    const { percent } = INJURY[organ].expert.perforation;
    expect(
      chanceOfRate(told, ({ own }) => own.safety?.perforation?.occurred === true, percent),
    ).toBeGreaterThan(TOO_RARE);
  });

  it.each(['stomach', 'colon', 'rectum'] as const)('has free margins of the %s', (organ) => {
    const told = settled.filter(
      ({ own, reports }) =>
        own.lesion.organ === organ &&
        own.resection.outcome === 'en-bloc' &&
        own.dissection?.fibrosis !== undefined &&
        own.dissection.fibrosis !== 'F2' &&
        reports.at(-1)?.findings?.hm !== undefined &&
        reports.at(-1)?.findings?.vm !== undefined,
    );
    const isFree = ({ reports }: ReadCase) => {
      const { hm, vm } = reports.at(-1)?.findings ?? {};
      return hm?.state === '0' && vm?.state === '0';
    };
    expect(chanceOfRate(told, isFree, FREE_OF_EN_BLOC[organ].other.percent)).toBeGreaterThan(
      TOO_RARE,
    );
  });

  it.each([
    ['stomach', GASTRIC_BLEEDING, gastricPoints],
    ['rectum', BOWEL_BLEEDING, bowelPoints],
    ['colon', BOWEL_BLEEDING, bowelPoints],
  ] as const)(
    'has late bleeding in the %s by the points of its score',
    (organ, bands, pointsOf) => {
      const there = settled.filter(
        ({ own }) => own.lesion.organ === organ && own.resection.outcome !== 'not-started',
      );
      const bled = ({ events }: ReadCase) => events.some(({ kind }) => kind === 'delayed-bleeding');
      for (const { fromPoints, toPoints, percent } of bands) {
        const group = there.filter(({ drawn }) => {
          const points = pointsOf(drawn);
          return fromPoints <= points && points <= toPoints;
        });
        if (group.length <= 25) continue;
        expect(chanceOfRate(group, bled, percent)).toBeGreaterThan(TOO_RARE);
      }
    },
  );

  it('has half of the speeds of experts above the published middle', () => {
    const speeds = experts.flatMap(({ own }) => {
      const { firstIncisionAt, dissectionEndAt } = own.times;
      const { longAxisMm, shortAxisMm } = own.specimen ?? {};
      const isOther = own.dissection?.fibrosis === 'F0' || own.dissection?.fibrosis === 'F1';
      if (own.lesion.organ !== 'colon' || !isOther) return [];
      if (firstIncisionAt === undefined || dissectionEndAt === undefined) return [];
      if (longAxisMm === undefined || shortAxisMm === undefined) return [];
      const hours = (Date.parse(dissectionEndAt) - Date.parse(firstIncisionAt)) / 3_600_000;
      return [((Math.PI / 4) * longAxisMm * shortAxisMm) / 100 / hours];
    });
    const middle = SPEED.colon['from-forty'].cm2PerH;
    const above = speeds.filter((speed) => speed > middle).length;
    expect(speeds.length).toBeGreaterThan(100);
    expect(binomialP(above, speeds.length, 0.5)).toBeGreaterThan(TOO_RARE);
  });

  it('leaves out what is to be missing, and says until when nothing happened', () => {
    const cut = cases.filter(({ own }) => own.resection.outcome !== 'not-started');
    const fibrosis = LEFT_OUT.case.find(({ at }) => at === '/dissection/fibrosis')?.percent ?? 0;
    expect(
      chanceOfRate(cut, ({ own }) => own.dissection?.fibrosis === undefined, fibrosis),
    ).toBeGreaterThan(TOO_RARE);
    const withSpecimen = settled.filter(({ own }) => own.specimen?.retrieved === true);
    expect(
      chanceOfRate(withSpecimen, ({ reports }) => reports.length === 0, NEVER_REPORTED.percent),
    ).toBeGreaterThan(TOO_RARE);
    const alive = settled.filter(({ drawn, events }) => {
      const died = events.find(({ kind }) => kind === 'death');
      const days = died && (Date.parse(died.occurredOn) - drawn.times.outMs) / 86_400_000;
      return days === undefined || days > 60;
    });
    const isTold = ({ events }: ReadCase) =>
      events.some(({ kind }) => kind === 'status-at-30-days');
    expect(chanceOfRate(alive, isTold, STATUS_TOLD.percent)).toBeGreaterThan(TOO_RARE);
  });

  it('tells of most dysplasias of the stomach whether there is an ulcer, as of carcinomas', () => {
    const findings = cases.flatMap(({ reports }) => {
      const report = reports.findLast((each) => each.report.status === 'final');
      return report?.findings?.tumour === 'gastric' ? [report.findings] : [];
    });
    const toldOf = (word: string) => {
      const some = findings.filter(({ histology }) => histology?.endsWith(word));
      return { of: some.length, told: some.filter(({ ulcer }) => ulcer !== undefined).length };
    };
    for (const { of, told } of [toldOf('-dysplasia'), toldOf('carcinoma')]) {
      expect(of).toBeGreaterThan(50);
      expect(told / of).toBeGreaterThan(0.75);
      expect(told).toBeLessThan(of);
    }
    expect(toldOf('-tumour').told).toBe(0);
  });

  it('follows patients up, loses some, and finds neoplasia at some scars', () => {
    const kinds = new Set(settled.flatMap(({ events }) => events.map(({ kind }) => kind)));
    for (const kind of [
      'lost-to-follow-up',
      'follow-up-declined',
      'surgery',
      'dilatation',
    ] as const) {
      expect(kinds).toContain(kind);
    }
    const found = settled.flatMap(({ examinations }) =>
      examinations.map(({ scar }) => scar?.finding),
    );
    expect(found).toContain('residual-or-recurrent-neoplasia');
    expect(found.filter((finding) => finding === 'none').length).toBeGreaterThan(1_000);
  });
});
