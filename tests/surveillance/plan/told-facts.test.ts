import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type EventFields,
  type ExaminationFields,
  parseCase,
  parseEvent,
  parseExamination,
  parsePathology,
} from '../../../src/contract/index.js';
import type { Checked } from '../../../src/kernel/index.js';
import { planEvents } from '../../../src/surveillance/plan/events-of-record.js';
import { examinationFacts } from '../../../src/surveillance/plan/examination-facts.js';
import { pathologyFacts } from '../../../src/surveillance/plan/pathology-facts.js';

// Oracle: the words of the messages themselves, one meaning each; R0 is en bloc with both margins
// free (Pimentel-Nunes 2022, Endoscopy 54:591); an adenoma of low grade below 10 mm, and fewer
// than five of them, need no surveillance (Hassan 2020, Endoscopy 52:687).

function fieldsOf<F>(
  parse: (bytes: Uint8Array) => Checked<{ readonly fields: F }>,
  path: string,
): F {
  const read = parse(readFileSync(`examples/${path}.json`));
  if (!read.ok) throw new Error(`${path} is a sound example`);
  return read.value.fields;
}

const EXAMINATION = ((): ExaminationFields => {
  const sent = fieldsOf(parseExamination, 'examinations/colon-recurrence-revised');
  const { answers, newLesions, barrettLeft, passage, quality, next, scar, ...least } = sent;
  return least;
})();
const seen = (more: Partial<ExaminationFields> = {}) =>
  examinationFacts({ ...EXAMINATION, ...more });

describe('an examination that tells the least', () => {
  it('is told as such, without a guess', () => {
    const { examination: id, examinedOn: on, route } = EXAMINATION;
    expect(seen()).toEqual({
      id,
      on,
      route,
      recurrence: 'not-told',
      carcinoma: false,
      treated: false,
      toSurgery: false,
      findings: 'not-told',
      newNeoplasia: false,
      incomplete: false,
    });
  });

  it('tells what it answers, what is left of Barrett mucosa and how wide the scar is', () => {
    const answers = { system: 'urn:oid:2.999.1.14', value: 'c0ffee.COL-2.1' };
    expect(seen({ answers }).answers).toBe('c0ffee.COL-2.1');
    expect(seen({ barrettLeft: { present: false } }).barrettLeft).toBe(false);
    expect(seen({ barrettLeft: { present: true } }).barrettLeft).toBe(true);
    expect(seen({ passage: { endoscopePasses: true } }).passage).toEqual({
      passes: true,
      dilated: false,
    });
    expect(seen({ passage: { endoscopePasses: false, dilated: true } }).passage).toEqual({
      passes: false,
      dilated: true,
    });
    expect(seen({ passage: { endoscopePasses: true, dilated: false } }).passage?.dilated).toBe(
      false,
    );
  });

  it('is incomplete where it says so, or where the scar was not seen', () => {
    expect(seen({ quality: { complete: false } }).incomplete).toBe(true);
    expect(seen({ quality: { complete: true } }).incomplete).toBe(false);
    expect(seen({ quality: {} }).incomplete).toBe(false);
    expect(seen({ scar: { seen: true } }).incomplete).toBe(false);
    expect(seen({ scar: { seen: false } }).incomplete).toBe(true);
  });
});

describe('the scar', () => {
  it.each([
    [[], false, false],
    [['emr'], true, false],
    [['surgery-referral'], false, true],
    [['esd', 'surgery-referral'], true, true],
  ] as const)('after %j is treated: %s, sent to surgery: %s', (treatments, treated, toSurgery) => {
    const facts = seen({ scar: { seen: true, treatments: [...treatments] } });
    expect([facts.treated, facts.toSurgery]).toEqual([treated, toSurgery]);
  });

  it.each([
    ['high-grade-dysplasia', 'found', false],
    ['carcinoma', 'found', true],
    ['serrated-without-dysplasia', 'none', false],
    ['no-neoplasia', 'none', false],
    ['not-assessable', 'open', false],
    ['indefinite', 'open', false],
    ['pending', 'open', false],
  ] as const)(
    'with tissue %s and a clean look: %s, cancer: %s',
    (biopsy, recurrence, carcinoma) => {
      const facts = seen({ scar: { seen: true, finding: 'none', biopsy } });
      expect([facts.recurrence, facts.carcinoma]).toEqual([recurrence, carcinoma]);
    },
  );
});

type Lesions = NonNullable<ExaminationFields['newLesions']>;
const lesion = (more: Partial<Lesions[number]>): Lesions[number] => ({ organ: 'colon', ...more });

describe('new lesions', () => {
  it.each([
    ['not-taken', false],
    ['pending', false],
    ['no-neoplasia', false],
    ['serrated-without-dysplasia', false],
    ['indefinite', false],
    ['not-assessable', false],
    [undefined, false],
    ['low-grade-dysplasia', true],
    ['high-grade-dysplasia', true],
    ['carcinoma', true],
  ] as const)('of the stomach with tissue %s are a matter of their own: %s', (histology, own) => {
    const newLesions = [lesion({ organ: 'stomach', ...(histology && { histology }) })];
    expect(seen({ newLesions }).newNeoplasia).toBe(own);
  });

  it.each(['colon', 'rectum'] as const)('of the %s are none once they were removed', (organ) => {
    const histology = 'low-grade-dysplasia';
    expect(seen({ newLesions: [lesion({ organ, histology, removed: true })] }).newNeoplasia).toBe(
      false,
    );
    expect(seen({ newLesions: [lesion({ organ, histology })] }).newNeoplasia).toBe(true);
  });

  const many = (more: Partial<Lesions[number]>, count = 5) =>
    Array.from({ length: count }, () => lesion({ sizeMm: 4, ...more }));
  const low = { histology: 'low-grade-dysplasia', polypType: 'adenoma' } as const;

  it.each<readonly [string, string, Lesions]>([
    ['none', 'none at all', []],
    ['needing-surveillance', 'five adenomas of the rectum', many({ organ: 'rectum', ...low })],
    [
      'none',
      'four adenomas and one of the stomach',
      [...many(low, 4), lesion({ organ: 'stomach', sizeMm: 4, ...low })],
    ],
    ['none', 'a large one of the stomach', [lesion({ organ: 'stomach', sizeMm: 30, ...low })]],
    [
      'none',
      'four adenomas and a serrated lesion',
      [
        ...many(low, 4),
        lesion({
          sizeMm: 4,
          polypType: 'sessile-serrated',
          histology: 'serrated-without-dysplasia',
        }),
      ],
    ],
    [
      'needing-surveillance',
      'a serrated lesion with dysplasia',
      [lesion({ sizeMm: 4, polypType: 'sessile-serrated', histology: 'low-grade-dysplasia' })],
    ],
    ['open', 'one without its type', [lesion({ sizeMm: 4, histology: 'low-grade-dysplasia' })]],
    [
      'needing-surveillance',
      'four adenomas and a fifth without its type',
      [...many(low, 4), lesion({ sizeMm: 4, histology: 'low-grade-dysplasia' })],
    ],
    [
      'open',
      'four adenomas and a lesion without type or dysplasia',
      [...many(low, 4), lesion({ histology: 'serrated-without-dysplasia' })],
    ],
    ['needing-surveillance', 'one adenoma of 25 mm', [lesion({ sizeMm: 25, ...low })]],
    ['open', 'tissue not taken', [lesion({ sizeMm: 4, histology: 'not-taken' })]],
    ['open', 'tissue in doubt', [lesion({ sizeMm: 4, histology: 'indefinite' })]],
    ['open', 'nothing told of the tissue', [lesion({ sizeMm: 4, polypType: 'adenoma' })]],
    ['none', 'no neoplasia, of an unknown size', [lesion({ histology: 'no-neoplasia' })]],
  ])('of the bowel: %s for %s', (findings, _, newLesions) => {
    expect(seen({ newLesions }).findings).toBe(findings);
  });
});

describe('a report', () => {
  const esdCase = fieldsOf(parseCase, 'cases/stomach-differentiated');
  const sent = fieldsOf(parsePathology, 'pathology/stomach-differentiated');
  type Outcome = (typeof esdCase)['resection']['outcome'];
  const facts = (findings: object, outcome: Outcome = 'en-bloc') => {
    const resection = { ...esdCase.resection, outcome };
    return pathologyFacts({ ...esdCase, resection }, { ...sent, findings });
  };

  it.each([
    ['en-bloc', '0', '0', true],
    ['piecemeal', '0', '0', false],
    ['en-bloc', '1', '0', false],
    ['en-bloc', '0', '1', false],
    ['en-bloc', 'X', '0', false],
    ['en-bloc', '0', 'X', false],
    ['en-bloc', undefined, '0', false],
    ['en-bloc', '0', undefined, false],
    ['piecemeal', '1', '1', false],
  ] as const)('%s, horizontal margin %s, vertical margin %s: R0 %s', (outcome, hm, vm, r0) => {
    const margins = { ...(hm && { hm: { state: hm } }), ...(vm && { vm: { state: vm } }) };
    expect(facts(margins, outcome).r0).toBe(r0);
  });

  it('tells tissue, depth and type where it names them, and nothing else', () => {
    expect(facts({ histology: 'carcinoma', depth: 'sm', polypType: 'adenoma' })).toMatchObject({
      histology: 'carcinoma',
      depth: 'sm',
      polypType: 'adenoma',
    });
    const { background, ...rest } = sent;
    const bare = pathologyFacts(esdCase, { ...rest, findings: {} });
    expect(Object.keys(bare).sort()).toEqual(['id', 'r0', 'reportedOn', 'status']);
  });

  it('is of the day on which it was reported, or else sent', () => {
    const on = (reportedAt: string | undefined) =>
      pathologyFacts(esdCase, {
        ...sent,
        report: { ...sent.report, reportedAt },
        sentAt: '2026-05-05T08:00:00Z',
      }).reportedOn;
    expect(on('2026-04-30T23:30:00+02:00')).toBe('2026-04-30');
    expect(on(undefined)).toBe('2026-05-05');
  });

  it.each([
    [{ olga: 'I' }, { staged: true }],
    [{ olgim: 'I' }, { staged: true }],
    [{ olga: '0' }, { staged: true, gastritisStage: '0' }],
    [{ helicobacterPylori: 'negative' }, { helicobacterGastritis: false, staged: false }],
    [{}, { helicobacterGastritis: false, metaplasia: 'none' }],
    [{ intestinalMetaplasia: 'complete' }, { metaplasia: 'complete', extent: 'one-site' }],
  ] as const)('with the background %j', (background, expected) => {
    expect(pathologyFacts(esdCase, { ...sent, background }).background).toMatchObject(expected);
  });
});

describe('events', () => {
  const surgery = fieldsOf(parseEvent, 'events/stomach-surgery');
  const meeting = fieldsOf(parseEvent, 'events/stomach-meeting');
  const { surgery: _, ...bare } = surgery;
  const told = { id: bare.event, on: bare.occurredOn };
  const NONE = planEvents([]);
  const of = (kind: EventFields['kind'], more: Partial<EventFields> = {}) =>
    planEvents([{ ...bare, kind, ...more }]);

  it.each([
    ['death', 'deaths'],
    ['lost-to-follow-up', 'losses'],
    ['dilatation', 'dilatations'],
    ['stricture', 'strictures'],
    ['status-at-30-days', 'statuses'],
    ['follow-up-declined', 'declines'],
  ] as const)('of kind %s are the %s, and nothing else', (kind, list) => {
    expect(of(kind)).toEqual({ ...NONE, [list]: [told] });
  });

  it('of another kind change no plan', () => {
    expect(of('readmission')).toEqual(NONE);
    expect(of('readmission', { surgery: surgery.surgery, meeting: meeting.meeting })).toEqual(NONE);
    expect(of('surgery')).toEqual(NONE);
    expect(of('meeting-decision')).toEqual(NONE);
  });

  it('name the request that was declined', () => {
    const request = { system: 'urn:oid:2.999.1.14', value: 'c0ffee.GAS-1.1' };
    expect(of('follow-up-declined', { decline: { request } }).declines).toEqual([
      { ...told, request: 'c0ffee.GAS-1.1' },
    ]);
    expect(of('follow-up-declined', { decline: {} }).declines).toEqual([told]);
  });
});
