import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';
import { describe, expect, it } from 'vitest';
import { checkOutcomeReport } from '../../src/conformance/index.js';
import { OUTCOME_REPORT_RULES } from '../../src/conformance/outcome-report.js';
import { InvariantError, sha256 } from '../../src/kernel/index.js';
import { toMeasure } from '../../src/measure/index.js';
import { INDICATOR_IDS } from '../../src/outcomes/index.js';
import { fhirJs, medplum, officialSchema, type Peer } from '../conformance/peers.js';
import { publishedProfiles } from '../conformance/published.js';
import { REPORT_FAULTS } from './report-faults.js';
import { CASES, HIDE, REPORTING, reported, rows, SHOW, YEAR } from './reported.js';

const PEERS: readonly Peer[] = [officialSchema(), medplum(publishedProfiles()), fhirJs()];

const SAMPLES = {
  'all cases': reported(CASES),
  'all cases, small counts hidden': reported(CASES, YEAR, HIDE),
  'by organ': reported(CASES, { ...YEAR, by: ['organ'] }),
  'by organ and operator': reported(CASES, { ...YEAR, by: ['organ', 'operator'] }),
  'by operator, hidden': reported(CASES, { ...YEAR, by: ['operator'] }, HIDE),
  'exact intervals': reported(CASES, { ...YEAR, interval: 'clopper-pearson' }),
  nobody: reported([]),
};

const said = (sample: unknown, path: string) =>
  fhirpath.evaluate(structuredClone(Object(sample)), path, {}, r4, { async: false });

const problemsOf = (report: unknown) => {
  const checked = checkOutcomeReport(report);
  return checked.ok ? [] : checked.problems;
};

const keysIn = (report: unknown) => [...new Set(problemsOf(report).map(({ rule }) => rule))];

describe.each(Object.entries(SAMPLES))('the MeasureReport of %s', (_name, sample) => {
  it('passes our own rules', () => {
    expect(problemsOf(sample)).toEqual([]);
  });

  it.each(PEERS)('is valid R4 by $name', ({ validate }) => {
    expect(validate(sample)).toEqual([]);
  });

  // FHIR R4 (4.0.1), MeasureReport, constraints mrp-1 and mrp-2.
  it.each([
    "(type != 'data-collection') or group.exists().not()",
    'group.stratifier.stratum.all(value.exists() xor component.exists())',
  ])('holds %s', (constraint) => {
    expect(said(sample, constraint)).toEqual([true]);
  });
});

describe('the rules on a report of outcomes', () => {
  it('each have a planted fault', () => {
    const planted = new Set(REPORT_FAULTS.map(({ rule }) => rule));
    for (const { key } of OUTCOME_REPORT_RULES) expect(planted).toContain(key);
    expect(OUTCOME_REPORT_RULES).toHaveLength(9);
  });

  it.each(REPORT_FAULTS)('$rule: find $name, and say nothing else', (planted) => {
    const report = structuredClone(SAMPLES['all cases']);
    planted.inReport?.(report);
    for (const group of report.group?.slice(0, 1) ?? []) planted.inCell?.(group);
    const { rule, also } = planted;
    expect(keysIn(report)).toEqual(also === undefined ? [rule] : [rule, also]);
  });

  it.each(REPORT_FAULTS.filter(({ inCell }) => inCell !== undefined))(
    '$rule: find $name in a stratum too',
    ({ rule, inCell, also }) => {
      const report = structuredClone(SAMPLES['by organ']);
      const [stratum] = report.group?.[0]?.stratifier?.[0]?.stratum ?? [];
      if (stratum !== undefined) inCell?.(stratum);
      expect(keysIn(report)).toEqual(also === undefined ? [rule] : [rule, also]);
    },
  );

  it('refuse what is no report at all', () => {
    for (const value of [undefined, null, 7, [], {}, { resourceType: 'Patient' }]) {
      expect(problemsOf(value)).not.toEqual([]);
    }
    const observation = { resourceType: 'Observation', status: 'final', code: { text: 'x' } };
    expect(keysIn(observation)).toContain('profile-shape');
  });
});

describe('what a MeasureReport says', () => {
  const of = (id: string) => `group.where(code.coding.code = '${id}')`;
  const counts = (sample: unknown, id: string, at = of(id)) =>
    said(sample, `${at}.population.count`);

  it('is the rate over the denominator less what it excludes, with the reasons apart', () => {
    const report = SAMPLES['all cases'];
    // Of 60 cases 50 have a report: 40 R0; 10 reports are missing.
    expect(counts(report, 'r0')).toEqual([60, 60, 10, 40]);
    expect(said(report, `${of('r0')}.measureScore.value`)).toEqual([0.8]);
    // Of 60, 10 windows are open and 8 are silent: 2 died of 42.
    expect(counts(report, 'death-30d')).toEqual([60, 60, 18, 2]);
    const why = `${of('death-30d')}.population.extension.extension.value`;
    expect(said(report, why)).toEqual([8, 10]);
  });

  it('has the published Wilson interval beside it', () => {
    // Newcombe, Stat Med 1998;17:857, 81 of 263, from memory.
    const report = reported([...rows(81, { enBloc: 'yes' }), ...rows(182, { enBloc: 'no' })]);
    const ends = said(report, `${of('en-bloc')}.measureScore.extension.extension.value`);
    expect(ends.slice(0, 3).map((end) => Number(end).toFixed(4))).toEqual([
      '0.2553',
      '0.3662',
      '0.9500',
    ]);
    expect(ends[3]).toMatchObject({ code: 'wilson' });
  });

  it('is nothing but the reason where counts are hidden', () => {
    const report = SAMPLES['all cases, small counts hidden'];
    expect(counts(report, 'death-30d')).toEqual([]);
    const reason = `${of('death-30d')}.measureScore.extension.value`;
    expect(said(report, reason)).toEqual(['masked']);
    expect(counts(report, 'r0')).toEqual([60, 60, 10, 40]);
    expect(JSON.stringify(report)).not.toMatch(/"count":[1-4]\b/);
  });

  it('names a stratum by its value, and a pair by its components', () => {
    const strata = `${of('r0')}.stratifier.stratum`;
    expect(said(SAMPLES['by organ'], `${strata}.value.text`)).toEqual(['colon', 'rectum']);
    expect(said(SAMPLES['by organ'], `${strata}.population.count`)).toEqual([
      40, 40, 10, 30, 20, 20, 0, 10,
    ]);
    const pairs = `${strata}.component.value.text`;
    expect(said(SAMPLES['by organ and operator'], pairs)).toEqual([
      'colon',
      'a',
      'colon',
      'b',
      'rectum',
      'a',
      'rectum',
      'b',
    ]);
  });

  it('has one identifier for measure, period and unit, so that a second run replaces it', () => {
    const later = reported(CASES.slice(0, 5), YEAR, SHOW, {
      ...REPORTING,
      countedAt: '2027-01-01T00:00:00Z',
    });
    expect(later.identifier).toEqual(SAMPLES['all cases'].identifier);
    const other = reported(CASES, YEAR, SHOW, {
      ...REPORTING,
      identifierBase: 'https://other.example/dissections',
    });
    expect(other.identifier).not.toEqual(SAMPLES['all cases'].identifier);
  });

  it('is of a whole period and of all cases, or is not made', () => {
    const open = { ...YEAR };
    expect(() =>
      reported(CASES, { filters: {}, by: [], interval: 'wilson', asOf: open.asOf }),
    ).toThrow(InvariantError);
    expect(() => reported(CASES, { ...YEAR, filters: { organ: 'colon' } })).toThrow(InvariantError);
  });
});

describe('the published Measure', () => {
  const measure = toMeasure();

  it.each(PEERS)('is valid R4 by $name', ({ validate }) => {
    expect(validate(measure)).toEqual([]);
  });

  it.each(PEERS)('would be refused by $name with a fault', ({ validate }) => {
    const broken = structuredClone(measure);
    Object.assign(broken, { group: { code: 7 } });
    expect(validate(broken)).not.toEqual([]);
  });

  // FHIR R4 (4.0.1), Measure, constraints mea-0 and mea-1; Expression, exp-1.
  it.each([
    "name.matches('[A-Z]([A-Za-z0-9_]){0,254}')",
    'group.stratifier.all((code | description | criteria).exists() xor component.exists())',
    'group.population.criteria.all(expression.exists() or reference.exists())',
  ])('holds %s', (constraint) => {
    expect(said(measure, constraint)).toEqual([true]);
  });

  it('has a version that rises when a definition changes', () => {
    // An alarm, no oracle: whoever changes a definition raises the version, then this.
    const { version, identifier, ...definitions } = measure;
    expect(identifier?.[0]?.value).toContain(version);
    const hash = sha256(new TextEncoder().encode(JSON.stringify(definitions))).slice(0, 12);
    expect([version, hash]).toEqual(['1.0.0', '2fc1efcc81cf']);
  });

  it('has a group for every indicator, and its reports name no other', () => {
    const codes = said(measure, 'group.code.coding.code');
    expect(codes).toHaveLength(INDICATOR_IDS.length);
    expect(said(SAMPLES['all cases'], 'group.code.coding.code')).toEqual(codes);
    expect(SAMPLES['all cases'].measure).toBe(`${measure.url}|${measure.version}`);
  });
});
