import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EXAMINATION_CHECKS, parseExamination } from '../../../src/contract/index.js';
import { bytesOf, changed, type Fields } from '../changed.js';

interface Edge {
  readonly rule: string;
  readonly says: string;
  readonly of: string;
  readonly last: Fields;
  readonly beyond: Fields;
}

/** The last value that is no contradiction, and the first that is one. Project rules but CC-12. */
const EDGES: readonly Edge[] = [
  {
    rule: 'day-of-time',
    says: 'an evening at UTC-12 is noon of the next day at UTC',
    of: 'stomach-first',
    last: { examinedAt: '2026-07-29T11:59:59Z', sentAt: '2026-07-30T08:00:00Z' },
    beyond: { examinedAt: '2026-07-29T12:00:00Z', sentAt: '2026-07-30T08:00:00Z' },
  },
  {
    rule: 'sent-before-it-happened',
    says: 'a message may be sent as the scope goes in',
    of: 'stomach-first',
    last: { sentAt: '2026-07-28T08:15:00Z' },
    beyond: { sentAt: '2026-07-28T08:14:59Z' },
  },
  {
    rule: 'next-before-examination',
    says: 'the next one is at least tomorrow',
    of: 'colon-recurrence',
    last: { 'next.on': '2026-07-15' },
    beyond: { 'next.on': '2026-07-14' },
  },
  {
    rule: 'part-of-another-route',
    says: 'the bowel is cleaned for the lower route',
    of: 'rectum-stopped',
    last: { 'quality.bowelPreparation': { left: 2 } },
    beyond: { route: 'upper' },
  },
  {
    rule: 'part-of-another-route',
    says: 'mucus covers the upper tract',
    of: 'stomach-first',
    last: {},
    beyond: { route: 'lower' },
  },
  {
    rule: 'part-of-another-route',
    says: 'and Barrett mucosa lies there',
    of: 'oesophagus-barrett',
    last: { 'quality.mucosaView': undefined },
    beyond: { 'quality.mucosaView': undefined, route: 'lower' },
  },
  {
    rule: 'organ-of-another-route',
    says: 'the duodenum ends the upper route',
    of: 'stomach-first',
    last: { newLesions: [{ organ: 'duodenum' }, { organ: 'oesophagus' }] },
    beyond: { newLesions: [{ organ: 'duodenum' }, { organ: 'colon' }] },
  },
  {
    rule: 'organ-of-another-route',
    says: 'and the rectum begins the lower one',
    of: 'colon-recurrence',
    last: { newLesions: [{ organ: 'rectum' }] },
    beyond: { newLesions: [{ organ: 'duodenum' }] },
  },
  // CC-12: common practice, no source.
  {
    rule: 'CC-12',
    says: 'the rectosigmoid junction counts to the rectum',
    of: 'colon-recurrence',
    last: { newLesions: [{ organ: 'rectum', site: 'rectosigmoid-junction' }] },
    beyond: { newLesions: [{ organ: 'colon', site: 'rectosigmoid-junction' }] },
  },
  ...[{ finding: 'none' }, { sizeMm: 3 }, { biopsy: 'pending' }, { treatments: ['emr'] }].map(
    (told) => ({
      rule: 'scar-not-seen',
      says: `of an unseen scar there is no ${Object.keys(told).join()}`,
      of: 'oesophagus-scar',
      last: { scar: { seen: false, biopsy: 'not-taken', treatments: [] } },
      beyond: { scar: { seen: false, ...told } },
    }),
  ),
  {
    rule: 'passage-not-dilated',
    says: 'a diameter may stand where dilatation is not told',
    of: 'oesophagus-scar',
    last: { 'passage.dilated': undefined },
    beyond: { 'passage.dilated': false },
  },
  {
    rule: 'barrett-denied',
    says: 'nothing is 0 cm long',
    of: 'oesophagus-barrett',
    last: { barrettLeft: { present: false, maximumCm: 0, ablated: false } },
    beyond: { barrettLeft: { present: false, maximumCm: 0.5 } },
  },
  {
    rule: 'barrett-denied',
    says: 'and is not ablated',
    of: 'oesophagus-barrett',
    last: { barrettLeft: { present: true, ablated: true } },
    beyond: { barrettLeft: { present: false, ablated: true } },
  },
  {
    rule: 'stop-reason',
    says: 'a stop has a reason',
    of: 'rectum-stopped',
    last: { next: { step: 'stop', reason: 'age' } },
    beyond: { next: { step: 'stop' } },
  },
  {
    rule: 'stop-reason',
    says: 'going on needs none',
    of: 'rectum-stopped',
    last: { next: { step: 'as-planned' } },
    beyond: { next: { step: 'as-planned', reason: 'age' } },
  },
  {
    rule: 'next-day',
    says: 'a sooner examination has a day or none',
    of: 'colon-recurrence',
    last: { next: { step: 'sooner' } },
    beyond: { next: { step: 'as-planned', on: '2026-11-10' } },
  },
];

describe('the edges of the rules across fields of an examination', () => {
  it.each(EDGES)('$rule: $says', ({ rule, of, last, beyond }) => {
    expect(rulesOf(of, last)).toEqual([]);
    expect(new Set(rulesOf(of, beyond))).toEqual(new Set([rule]));
  });

  it('are known for every rule', () => {
    expect(new Set(EDGES.map(({ rule }) => rule))).toEqual(
      new Set(EXAMINATION_CHECKS.map(({ rule }) => rule)),
    );
  });

  it('say nothing of required fields alone', () => {
    const told = ['answers', 'quality', 'scar', 'newLesions', 'passage', 'next', 'examinedAt'];
    const none = Object.fromEntries(told.map((field) => [field, undefined]));
    expect(rulesOf('stomach-first', none)).toEqual([]);
    expect(EXAMINATION_CHECKS.flatMap(({ broken }) => broken({}))).toEqual([]);
  });
});

function rulesOf(name: string, fields: Fields): readonly string[] {
  const sound: object = JSON.parse(readFileSync(`examples/examinations/${name}.json`, 'utf8'));
  const checked = parseExamination(bytesOf(changed(sound, fields)));
  return checked.ok ? [] : checked.problems.map(({ rule }) => rule);
}
