import { describe, expect, it } from 'vitest';
import { type ClassRule, readTold } from '../../src/rules/index.js';
import { ALL_SETS } from '../assessment/curability/spaces.js';
import { everyQuestion, type Plain } from '../support/every-question.js';
import { changesOfCondition, replaced } from './changes.js';
import { countsInReadme } from './counts.js';

/**
 * What one report cannot say at once, as plain conditions: vessel invasion in a dysplasia that
 * stays within the mucosa, a depth within the submucosa of a tumour that does not end there, a
 * part within the submucosa of a tumour that does not reach it. Source: the words themselves.
 */
function contradictions({ histology, depth, ly, v, smDepthUm, undiffInSm }: Plain): string {
  const mucosal = depth === 'ep' || depth === 'lpm' || depth === 'mm' || depth === 'm';
  const dysplasia = histology === 'low-grade-dysplasia' || histology === 'high-grade-dysplasia';
  const broken: string[] = [];
  if (dysplasia && mucosal && ly === '1') broken.push('vessel-invasion-in-dysplasia /ly');
  if (dysplasia && mucosal && v === '1') broken.push('vessel-invasion-in-dysplasia /v');
  if (Number(smDepthUm ?? 0) > 0 && (mucosal || depth === 'mp')) {
    broken.push('depth-outside-submucosa /smDepthUm');
  }
  if (undiffInSm === true && depth === 'm') {
    broken.push('undifferentiated-part-outside-submucosa /undiffInSm');
  }
  return broken.join();
}

const QUESTIONS = [
  { tumour: ['squamous'], depth: [null, 'ep', 'lpm', 'mm', 'sm', 'mp'] },
  { tumour: ['gastric'], depth: [null, 'm', 'sm', 'mp'] },
].flatMap((layers) =>
  everyQuestion({
    ...layers,
    histology: [null, 'low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'],
    ly: [null, '0', '1', 'X'],
    v: ['0', '1'],
    smDepthUm: [null, 0, 1, 2, 300],
    undiffInSm: [null, false, true],
  }),
);

function refusal({ fields, contradictions: of }: ClassRule, question: Plain): string {
  const known = Object.entries(question).filter(([name]) => name in fields);
  const read = readTold(fields, of, Object.fromEntries(known));
  return read.ok ? '' : read.problems.map(({ rule, pointer }) => `${rule} ${pointer}`).join();
}

/** Only sets that read a field can refuse it. */
const mustRefuse = ({ fields }: ClassRule, question: Plain): string =>
  contradictions(Object.fromEntries(Object.entries(question).filter(([name]) => name in fields)));

/** A set refuses only by fields that it has. */
function planted(rule: ClassRule) {
  return rule.contradictions.flatMap((contradiction, i) => {
    if (!(contradiction.field in rule.fields)) return [];
    const withEntries = (...by: readonly (typeof contradiction)[]): ClassRule => ({
      ...rule,
      contradictions: replaced(rule.contradictions, i, ...by),
    });
    const { rule: code, field, when } = contradiction;
    return [
      { name: `${code} ${field}: removed`, rule: withEntries() },
      ...changesOfCondition(rule.fields, when).map((change) => ({
        name: `${code} ${field}: ${change.name}`,
        rule: withEntries({ ...contradiction, when: change.to }),
      })),
    ];
  });
}

let made = 0;

describe.each(ALL_SETS)('contradictions of $rule.id', ({ rule }) => {
  it('are those of the second writing', () => {
    const differing = QUESTIONS.filter((q) => refusal(rule, q) !== mustRefuse(rule, q));
    expect(differing).toEqual([]);
  });

  it('are noticed when one point of them changes', () => {
    const changes = planted(rule);
    made += changes.length;
    const unnoticed = changes.filter(
      (change) => !QUESTIONS.some((q) => refusal(change.rule, q) !== mustRefuse(rule, q)),
    );
    expect(unnoticed.map(({ name }) => name)).toEqual([]);
  });
});

describe('the changes of contradictions', () => {
  it('are as many as is written down', () => {
    expect({ made, unnoticed: 0 }).toEqual(countsInReadme('contradictions'));
  });
});
