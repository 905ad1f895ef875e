import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { sha256 } from '../../src/kernel/index.js';
import type { IndicatorId, IndicatorWord } from '../../src/outcomes/index.js';
import { parseRecordMessage } from '../../src/pipeline/parse-record-message.js';
import {
  foldRecord,
  presentOf,
  type RecordMessage,
  type SentKind,
  toFacts,
} from '../../src/record/index.js';
import type { Draft } from '../support/consistent-case.js';
import { example } from '../support/example-messages.js';

/*
 * Oracle: the definitions of numerators, denominators and windows as the works print them, row by
 * row: en bloc, R0, curative: Park CH et al. Clin Endosc 2020;53:142-166, Table 1; bleeding: see
 * tests/published/delayed-bleeding.json; denominators that are derived say so in their table.
 * "Missing never counts as no; for time-bound events only procedures older than the window": the
 * project's list of outcomes.
 */

const CASE = example('case', 'stomach-differentiated').document;
const REPORT = example('pathology', 'stomach-differentiated').document;
const STATUS = example('event', 'stomach-status').document;
const CHECK = example('examination', 'stomach-first').document;

type Said = readonly [SentKind, Draft];
const INTO = { case: CASE.case, patient: STATUS.patient, source: CASE.source };

function message([kind, document]: Said): RecordMessage {
  const parsed = parseRecordMessage(kind, new TextEncoder().encode(JSON.stringify(document)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.value;
}

/** The service's own word of how late it is. */
const asOf = (at: string): RecordMessage => ({
  kind: 'as-of',
  fields: {
    schema: 'as-of/1',
    source: 'service',
    case: CASE.case,
    revision: 1,
    sentAt: at,
    asOf: at,
    reason: 'time-passed',
  },
  decimals: {},
  sha256: sha256(new Uint8Array()),
});

function factsOf(said: readonly Said[], ...more: readonly RecordMessage[]) {
  const version = foldRecord('c', [...said.map(message), ...more], DEFAULT_UNIT_SETTINGS);
  if (version === undefined) throw new Error('the samples hold their case');
  return toFacts({ version, now: presentOf(version) }, () => 'p');
}

const wordOf = (id: IndicatorId, said: readonly Said[], ...more: readonly RecordMessage[]) =>
  factsOf(said, ...more)[id];

const withCase = (change: Draft): Said => ['case', { ...CASE, ...change }];
const event = (kind: string, occurredOn: string, more: Draft = {}): Said => [
  'event',
  {
    ...INTO,
    schema: 'event/1',
    event: { system: 'urn:oid:2.999.1.12', value: `EX-V-${kind}-${occurredOn}` },
    revision: 1,
    sentAt: `${occurredOn}T23:30:00+02:00`,
    kind,
    occurredOn,
    ...more,
  },
];
const look = (change: Draft): Said => ['examination', { ...CHECK, ...change }];
const report = (findings: Draft, status = 'final'): Said => {
  const { resectionStatus: _stated, ...told } = REPORT.findings;
  return [
    'pathology',
    { ...REPORT, report: { ...REPORT.report, status }, findings: { ...told, ...findings } },
  ];
};
const { pieces: _pieces, complete: _complete, ...CUT } = CASE.resection;
const piecemeal = withCase({
  resection: { ...CUT, outcome: 'piecemeal', pieces: 2, complete: true },
});
const ALONE: readonly Said[] = [['case', CASE]];
/** Day 31 after the resection of 3 February 2026, and the day before. */
const OVER = asOf('2026-03-06T00:00:00+01:00');
const NOT_OVER = asOf('2026-03-05T12:00:00+01:00');

describe('what was resected', () => {
  it.each<[string, IndicatorId, readonly Said[], IndicatorWord]>([
    ['one piece, nothing left', 'enBloc', ALONE, 'yes'],
    ['two pieces', 'enBloc', [piecemeal], 'no'],
    ['R0 without a report', 'r0', ALONE, 'missing'],
    ['R0 with an interim report', 'r0', [...ALONE, report({}, 'interim')], 'missing'],
    ['both margins free', 'r0', [...ALONE, report({})], 'yes'],
    ['a margin that cannot be assessed', 'r0', [...ALONE, report({ hm: { state: 'X' } })], 'no'],
    ['a margin that is not told', 'r0', [...ALONE, report({ vm: undefined })], 'missing'],
    [
      'one margin not told, the other not free',
      'r0',
      [...ALONE, report({ vm: undefined, hm: { state: 'X' } })],
      'no',
    ],
    ['a cured carcinoma', 'curative', [...ALONE, report({})], 'yes'],
    ['not R0', 'curative', [...ALONE, report({ hm: { state: 'X' } })], 'no'],
    ['no report', 'curative', ALONE, 'missing'],
  ])('%s: %s', (_name, id, said, word) => {
    expect(wordOf(id, said)).toBe(word);
  });

  it('counts an abandoned dissection as attempted, without pathology to wait for', () => {
    const abandoned = factsOf([['case', example('case', 'stomach-abandoned').document]]);
    expect(abandoned).toMatchObject({ enBloc: 'no', r0: 'not-applicable' });
  });

  it('counts a hybrid or converted one as attempted', () => {
    const hybrid = withCase({ resection: { ...CASE.resection, technique: 'hybrid-esd' } });
    expect(wordOf('enBloc', [hybrid])).toBe('yes');
    const converted = withCase({
      resection: { ...CUT, outcome: 'piecemeal', pieces: 2, convertedTo: 'snare-resection' },
    });
    expect(wordOf('enBloc', [converted])).toBe('no');
  });

  it('has no word for a dissection that never began', () => {
    const never = factsOf([['case', example('case', 'colon-never-started').document]]);
    expect(never).toMatchObject({ enBloc: 'not-applicable', death30d: 'not-applicable' });
  });

  it('asks of a lesion without neoplasia whether it is out, not whether it is cured', () => {
    const free = { ...REPORT.findings, histology: 'none' };
    const {
      histologicalType: _type,
      differentiation: _grade,
      gastricType: _gastric,
      undiffLengthMm: _length,
      depth: _depth,
      ly: _ly,
      v: _v,
      ulcer: _ulcer,
      pT: _pT,
      tnmEdition: _edition,
      resectionStatus: _status,
      ...told
    } = free;
    const said: Said = [
      'pathology',
      { ...REPORT, findings: { ...told, hm: { state: '0' }, vm: { state: '0' } } },
    ];
    expect(factsOf([...ALONE, said])).toMatchObject({ r0: 'yes', curative: 'not-applicable' });
  });
});

const PERFORATED = event('delayed-perforation', '2026-02-06');
const BLED = event('delayed-bleeding', '2026-02-10', {
  bleeding: { signs: ['melaena'], confirmedAtEndoscopy: true },
  course: { transfusionUnits: 2 },
});

describe('what happened within days', () => {
  const TIMED: readonly IndicatorId[] = [
    'delayedPerforation',
    'bleeding28d',
    'bleeding30dCsdb',
    'conversionToSurgery',
    'death30d',
    'readmission30d',
    'adverseEvent30d',
  ];

  it.each(TIMED)('%s is open while the days run, then missing, and "no" where it is told', (id) => {
    expect(wordOf(id, ALONE)).toBe('window-open');
    expect(wordOf(id, ALONE, NOT_OVER)).toBe('window-open');
    expect(wordOf(id, ALONE, OVER)).toBe('missing');
    expect(wordOf(id, [...ALONE, ['event', STATUS]])).toBe('no');
  });

  it.each<[IndicatorId, Said]>([
    ['delayedPerforation', PERFORATED],
    ['bleeding28d', BLED],
    ['bleeding30dCsdb', BLED],
    [
      'conversionToSurgery',
      event('surgery', '2026-02-06', { surgery: { reason: 'adverse-event' } }),
    ],
    ['death30d', event('death', '2026-03-05')],
    ['readmission30d', event('readmission', '2026-02-20')],
    ['adverseEvent30d', event('fever', '2026-02-04')],
  ])('%s is "yes" once its days are over, and not before', (id, said) => {
    expect(wordOf(id, [...ALONE, said])).toBe('window-open');
    expect(wordOf(id, [...ALONE, said], OVER)).toBe('yes');
    expect(wordOf(id, [...ALONE, said, ['event', STATUS]])).toBe('yes');
  });

  it.each<[IndicatorId, Said]>([
    ['delayedPerforation', event('delayed-perforation', '2026-03-06')],
    ['readmission30d', event('readmission', '2026-03-06')],
    ['death30d', event('death', '2026-03-06')],
  ])('%s counts up to day 30 alone', (id, said) => {
    expect(wordOf(id, [...ALONE, said, ['event', STATUS]])).toBe('no');
  });

  it('does not count an operation for the tumour', () => {
    const said = event('surgery', '2026-02-20', { surgery: { reason: 'oncological' } });
    expect(wordOf('conversionToSurgery', [...ALONE, said, ['event', STATUS]])).toBe('no');
  });

  it('knows who was seen later to have lived, and not what else happened', () => {
    expect(factsOf([...ALONE, look({})])).toMatchObject({
      death30d: 'no',
      readmission30d: 'missing',
    });
  });

  it('asks of the bowel alone what a definition for the bowel says', () => {
    expect(wordOf('bleeding6h30d', ALONE, OVER)).toBe('not-applicable');
    const rectum = example('case', 'rectum').document;
    expect(wordOf('bleeding6h30d', [['case', rectum]])).toBe('window-open');
  });
});

describe('a stricture', () => {
  const cardia = withCase({ lesion: { ...CASE.lesion, site: 'stomach-cardia' } });

  it('is asked where a scar can narrow the way', () => {
    expect(wordOf('stricture', ALONE, OVER)).toBe('not-applicable');
    expect(wordOf('stricture', [cardia], OVER)).toBe('missing');
    const squamous = example('case', 'oesophagus-squamous').document;
    expect(wordOf('stricture', [['case', squamous]])).toBe('window-open');
  });

  it('is "yes" where the scope does not pass, or it was dilated', () => {
    const dilated = event('dilatation', '2026-05-01');
    expect(wordOf('stricture', [cardia, dilated])).toBe('yes');
    expect(wordOf('stricture', [cardia, look({ passage: { endoscopePasses: false } })])).toBe(
      'yes',
    );
  });

  it('is "no" where the scope passes after the 30 days', () => {
    expect(wordOf('stricture', [cardia, look({ passage: { endoscopePasses: true } })])).toBe('no');
    expect(wordOf('stricture', [cardia, look({})])).toBe('missing');
  });
});

describe('neoplasia at the scar', () => {
  const scar = (change: Draft): Said => look({ scar: { ...CHECK.scar, ...change } });

  it.each<[string, readonly Said[], IndicatorWord]>([
    ['nobody has looked', ALONE, 'not-applicable'],
    ['a clean scar', [...ALONE, look({})], 'no'],
    ['tissue with dysplasia', [...ALONE, scar({ biopsy: 'low-grade-dysplasia' })], 'yes'],
    ['tissue that is awaited', [...ALONE, scar({ biopsy: 'pending' })], 'missing'],
    ['tissue in doubt', [...ALONE, scar({ biopsy: 'indefinite' })], 'missing'],
    ['a scar that was not seen', [...ALONE, look({ scar: { seen: false } })], 'not-applicable'],
  ])('%s', (_name, said, word) => {
    expect(wordOf('residualOrRecurrence', said)).toBe(word);
  });

  it('is dated to the check that found it', () => {
    expect(factsOf([...ALONE, scar({ biopsy: 'carcinoma' })])).toMatchObject({
      recurrenceOn: '2026-07-28',
      lastCheckOn: '2026-07-28',
    });
  });
});

describe('the first check', () => {
  it('is planned, then done with its timing', () => {
    const planned = factsOf([...ALONE, report({})]);
    expect(planned).toMatchObject({ firstCheckState: 'open', firstCheckOn: null });
    expect(planned.firstCheckLatestOn).toMatch(/^2026-\d\d-\d\d$/);
    expect(factsOf([...ALONE, report({}), look({})])).toMatchObject({
      firstCheckState: 'done',
      firstCheckOn: '2026-07-28',
      firstCheckTiming: 'in-window',
    });
  });

  it('is provisional before pathology, and ended by death', () => {
    expect(factsOf(ALONE).firstCheckState).toBe('provisional');
    expect(factsOf([...ALONE, report({}), event('death', '2026-05-30')])).toMatchObject({
      firstCheckState: 'ended',
      deathOn: '2026-05-30',
    });
  });

  // The rectal case is non-curative with a risk of nodes: its rules ask for surgery, for no check.
  it('is without a plan where the rules ask for none, and told where somebody looked', () => {
    const rectum = example('case', 'rectum').document;
    const final = example('pathology', 'rectum-final').document;
    const said: readonly Said[] = [
      ['case', rectum],
      ['pathology', final],
    ];
    const {
      answers: _,
      examinedAt: __,
      ...free
    } = example('examination', 'colon-scar-free').document;
    const seen = (examinedOn: string): Said => [
      'examination',
      {
        ...{ ...free, case: rectum.case, patient: final.patient, examinedOn },
        sentAt: `${examinedOn}T20:00:00+02:00`,
        examination: { ...free.examination, value: `EX-X-${examinedOn}` },
      },
    ];
    expect(factsOf(said)).toMatchObject({ firstCheckState: 'not-planned', firstCheckOn: null });
    expect(factsOf([...said, seen('2026-09-20'), seen('2026-06-20')])).toMatchObject({
      ...{ firstCheckState: 'unplanned', firstCheckOn: '2026-06-20' },
    });
  });
});
