import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { classBy } from '../../../src/assessment/curability/class-by.js';
import { assessCurability } from '../../../src/assessment/curability/curability.js';
import { toCurabilityQuestion } from '../../../src/assessment/curability/from-record.js';
import { MAPS_III_2025 } from '../../../src/assessment/curability/maps-iii-2025.table.js';
import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';
import { type PathologyFields, parseCase, parsePathology } from '../../../src/contract/index.js';
import { invariant } from '../../../src/kernel/index.js';
import { EUROPE_2022, HARMLESS } from './spaces.js';

const told = (asked: Partial<CurabilityQuestion>) => ({ ...HARMLESS, ...asked });
const stomach = (asked: Partial<CurabilityQuestion>) =>
  assessCurability(told(asked), 'stomach', 'esge-esd-2022', false);

describe('what a verdict shows beside its class', () => {
  it('are the remarks of its rule, word by word', () => {
    const small = { gastricType: 'undifferentiated', sizeMm: 20 } as const;
    const { remarks } = EUROPE_2022.rule;
    const expected = remarks.filter(({ remark }) => remark === 'undifferentiated-small-elsewhere');
    expect(stomach(small).verdict.remarks).toStrictEqual(
      expected.map(({ remark, says, cites }) => ({ remark, says, cites })),
    );
    expect(expected).toHaveLength(1);
  });

  it('is a reason only where the row is one', () => {
    const reasonsOf = (asked: Partial<CurabilityQuestion>) => {
      const { outcome } = stomach(asked).verdict;
      return outcome.kind === 'decided' ? outcome.reasons : [];
    };
    expect(reasonsOf({})[0]).not.toHaveProperty('reason');
    expect(reasonsOf({ ly: '1' })).toMatchObject([{ row: 'lymphatic-invasion', reason: 'lvi' }]);
  });

  it('is why a set is not in use, of that set alone', () => {
    const { verdict, others } = stomach({ ulcer: 'UL1' });
    expect(verdict).not.toHaveProperty('unconfirmed');
    const compared = others.find(({ rule }) => rule === 'maps-iii-2025');
    expect(compared?.unconfirmed).toBe(MAPS_III_2025.unconfirmed);
    expect(compared?.unconfirmed).toMatch(/\w/);
  });
});

function sample(): {
  readonly fields: ReturnType<typeof caseFields>;
  readonly report: PathologyFields;
} {
  const report = parsePathology(readFileSync('examples/pathology/stomach-differentiated.json'));
  invariant(report.ok, 'the examples are sound');
  return { fields: caseFields(), report: report.value.fields };
}

function caseFields() {
  const parsed = parseCase(readFileSync('examples/cases/stomach-differentiated.json'));
  invariant(parsed.ok, 'the examples are sound');
  return parsed.value.fields;
}

type Findings = NonNullable<PathologyFields['findings']>;

const questionOf = (findings: Findings, tumour?: 'gastric') => {
  const { fields, report } = sample();
  const lesion = { ...fields.lesion, tumour };
  return toCurabilityQuestion({ ...fields, lesion }, { ...report, findings });
};

// Curability rules, inputs: three kinds of histology, all else has no rule or is not known.
describe('the histology of a report', () => {
  it.each([
    ['low-grade-dysplasia', 'low-grade-dysplasia', 'gastric'],
    ['high-grade-dysplasia', 'high-grade-dysplasia', 'gastric'],
    ['carcinoma', 'carcinoma', 'gastric'],
    ['none', null, 'other'],
    ['neuroendocrine-tumour', null, 'other'],
    ['other-tumour', null, 'other'],
    ['indefinite', null, 'gastric'],
    ['not-assessable', null, 'gastric'],
  ] as const)('%s is asked as %s of a tumour that is %s', (histology, asked, tumour) => {
    const question = questionOf({ histology }, 'gastric');
    expect(question['histology']).toBe(asked);
    expect(question['tumour']).toBe(tumour);
  });

  it('leaves the layer open where it cannot be judged, and where the tumour is not told', () => {
    expect(questionOf({ histology: 'carcinoma', depth: 'X' }, 'gastric')['depth']).toBeNull();
    expect(questionOf({ histology: 'carcinoma', depth: 'X' })['depth']).toBeNull();
    expect(questionOf({ histology: 'low-grade-dysplasia' })['depth']).toBeUndefined();
  });
});

describe('a class by a set, whichever the unit has chosen', () => {
  it('is absent while more than one is possible', () => {
    expect(classBy('jges-jgca-2021', told({}))).toBe('eCuraA');
    expect(classBy('jges-jgca-2021', { ...told({}), ly: null })).toBeUndefined();
  });
});
