import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  caseSchema,
  checkExaminationAgainstCase,
  EXAMINATION_CASE_CHECKS,
  examinationSchema,
} from '../../../src/contract/index.js';
import { InvariantError } from '../../../src/kernel/index.js';
import { changed, type Fields } from '../changed.js';

const read = (path: string): object => JSON.parse(readFileSync(`examples/${path}.json`, 'utf8'));
const stomach = read('cases/stomach-differentiated'); // out at 11:37 on 3 February 2026, UTC+1
const upper = read('examinations/stomach-first');
const lower = changed(upper, {
  route: 'lower',
  quality: undefined,
  scar: undefined,
  newLesions: undefined,
});
const IN = (organ: string): Fields => ({ lesion: { organ, longAxisMm: 20 } });

/** The last pair that is no contradiction, and the first that is one. */
const EDGES: readonly {
  readonly rule: string;
  readonly says: string;
  readonly sent?: unknown;
  readonly last: Fields;
  readonly beyond: Fields;
  readonly esd?: Fields;
  readonly esdBeyond?: Fields;
}[] = [
  // Project rules.
  {
    rule: 'patient-differs',
    says: 'the number alone is not the patient',
    last: {},
    beyond: { 'patient.system': 'urn:oid:2.999.1.99' },
  },
  {
    rule: 'before-procedure',
    says: 'a second look may come on the same day',
    last: { examinedOn: '2026-02-03', examinedAt: '2026-02-03T10:37:00Z' },
    beyond: { examinedOn: '2026-02-03', examinedAt: '2026-02-03T10:36:59Z' },
  },
  {
    rule: 'before-procedure',
    says: 'and not on the day before',
    last: { examinedOn: '2026-02-03', examinedAt: undefined },
    beyond: { examinedOn: '2026-02-02', examinedAt: undefined },
  },
  ...['oesophagus', 'duodenum'].map((organ) => ({
    rule: 'route-of-another-organ',
    says: `the upper route leads to the ${organ}`,
    last: { newLesions: [] },
    beyond: { newLesions: [] },
    esd: IN(organ),
    esdBeyond: IN('rectum'),
  })),
  {
    rule: 'route-of-another-organ',
    says: 'the lower one to the colon',
    sent: lower,
    last: {},
    beyond: {},
    esd: IN('colon'),
    esdBeyond: IN('stomach'),
  },
  // A colonoscopy once after a duodenal adenoma: ESGE 2021, Endoscopy 2021;53:522-534.
  {
    rule: 'scar-of-another-route',
    says: 'a colonoscopy may follow a duodenal lesion, and sees no scar',
    sent: lower,
    last: {},
    beyond: { scar: { seen: true } },
    esd: IN('duodenum'),
  },
  {
    rule: 'scar-of-another-route',
    says: 'nor how wide it is',
    sent: lower,
    last: {},
    beyond: { passage: { endoscopePasses: true } },
    esd: IN('duodenum'),
  },
  {
    rule: 'no-scar',
    says: 'an abandoned dissection leaves one, one that never began does not',
    last: {},
    beyond: {},
    esd: { resection: { outcome: 'abandoned' } },
    esdBeyond: { resection: { outcome: 'not-started' } },
  },
  {
    rule: 'no-scar',
    says: 'that none was seen may be said',
    last: { scar: { seen: false } },
    beyond: { scar: { seen: true } },
    esd: { resection: { outcome: 'not-started' } },
  },
];

describe('an examination beside its case', () => {
  it.each(EDGES)('$rule: $says', ({ rule, sent, last, beyond, esd = {}, esdBeyond = esd }) => {
    const base = Object(sent ?? upper);
    expect(rulesBeside(changed(base, last), changed(stomach, esd))).toEqual([]);
    const rules = rulesBeside(changed(base, beyond), changed(stomach, esdBeyond));
    expect(new Set(rules)).toEqual(new Set([rule]));
  });

  it('is tried by every rule', () => {
    expect(new Set(EDGES.map(({ rule }) => rule))).toEqual(
      new Set(EXAMINATION_CASE_CHECKS.map(({ rule }) => rule)),
    );
  });

  it('that is the case of another examination is a bug of the caller', () => {
    const other = changed(stomach, { 'case.value': 'EX-C-2026-999' });
    expect(() => rulesBeside(upper, other)).toThrow(InvariantError);
  });
});

function rulesBeside(examination: unknown, esd: unknown): readonly string[] {
  const problems = checkExaminationAgainstCase(
    examinationSchema.parse(examination),
    caseSchema.parse(esd),
  );
  return problems.map(({ rule }) => rule);
}
