import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allRules } from '../../src/pipeline/index.js';
import { fingerprint, type Rule } from '../../src/rules/index.js';
import { faultsOf, type Recorded } from './rule-guard.js';
import { SAMPLE_SCORE, SAMPLE_SET } from './sample-rules.js';

const RECORDED: Recorded = JSON.parse(readFileSync('tests/rules/rule-versions.json', 'utf8'));
const CHANGELOG = readFileSync('CHANGELOG.md', 'utf8');

// A record keeps the id and version of each rule that it was judged by. Source: project definition.
describe('the rules of today', () => {
  it('are those that are recorded, version by version', () => {
    expect(faultsOf(allRules(), RECORDED, CHANGELOG)).toEqual([]);
  });

  it.each(allRules())('would be caught with a changed field of $id', (rule) => {
    const [[name, field] = ['', undefined]] = Object.entries(rule.fields);
    if (field === undefined) throw new Error('a rule has a field');
    const planted = { ...rule, fields: { ...rule.fields, [name]: { ...field, askedWhen: [{}] } } };
    const [fault] = faultsOf([planted], { [rule.id]: RECORDED[rule.id] ?? [] }, CHANGELOG);
    expect(fault).toContain(`The data of rule ${rule.id} changed`);
  });
});

const FIRST = { version: 1, sha256: fingerprint(SAMPLE_SET) };
const raised = {
  ...SAMPLE_SET,
  version: 2,
  table: SAMPLE_SET.table.map((step) =>
    step.map((row) => (row.row === 'large' ? { ...row, when: { sizeMm: { above: 21 } } } : row)),
  ),
};
const SECOND = { version: 2, sha256: fingerprint(raised) };
const LINE =
  '- Rule `sample-set` version 2: size limit of 21 mm after the erratum.\n' +
  '  Organs: stomach. Verdicts: high, low. Procedure dates: all.\n';

describe('the guard of rule versions', () => {
  const faults = (rule: Rule, versions: Recorded[string], changelog = '') =>
    faultsOf([rule], { 'sample-set': versions }, changelog);

  it('is content with a recorded rule, and with a new version that the changelog tells of', () => {
    expect(faults(SAMPLE_SET, [FIRST])).toEqual([]);
    expect(faults(raised, [FIRST, SECOND], `# Changes\n\n${LINE}\n- Other.\n`)).toEqual([]);
  });

  it('asks for another version when data changed', () => {
    const [fault] = faults({ ...raised, version: 1 }, [FIRST]);
    expect(fault).toContain('The data of rule sample-set changed');
    expect(fault).toContain('Make it version 2');
    expect(fault).toContain('npm run rules:hash -- --write');
    expect(fault).toContain('Organs: ... Verdicts: ... Procedure dates: ...');
  });

  it('is content with another wording', () => {
    expect(faults({ ...SAMPLE_SET, title: 'Other words', population: 'Some.' }, [FIRST])).toEqual(
      [],
    );
  });

  it.each([
    ['a rule that is not recorded', SAMPLE_SET, [], 'Version 1 of rule sample-set is not recorded'],
    ['a new version that is not', raised, [FIRST], 'Version 2 of rule sample-set is not recorded'],
    ['a version that leaps', { ...raised, version: 3 }, [FIRST], 'raise it by one'],
    ['a version that falls', SAMPLE_SET, [FIRST, SECOND], 'raise it by one'],
    ['a gap', raised, [FIRST, { ...SECOND, version: 3 }], 'do not rise from 1 by one'],
    ['a start above 1', raised, [SECOND], 'do not rise from 1 by one'],
    ['the same version twice', SAMPLE_SET, [FIRST, FIRST], 'do not rise from 1 by one'],
  ])('names %s', (_, rule, versions, sentence) => {
    expect(faults(rule, versions, LINE)[0]).toContain(sentence);
  });

  it('names a rule that is gone', () => {
    const recorded = { 'sample-set': [FIRST], 'sample-score': [] };
    expect(faultsOf([SAMPLE_SET], recorded, '')).toEqual([
      expect.stringContaining('Rule sample-score is gone'),
    ]);
    expect(faultsOf([SAMPLE_SET, SAMPLE_SCORE], recorded, '')).toEqual([
      expect.stringContaining('Version 1 of rule sample-score is not recorded'),
    ]);
  });

  it.each([
    ['no line', ''],
    ['a line about another version', LINE.replace('version 2', 'version 3')],
    ['a line about another rule', LINE.replace('sample-set', 'sample-score')],
    ['a line without organs', LINE.replace('Organs: stomach. ', '')],
    ['a line without verdicts', LINE.replace('Verdicts: high, low. ', '')],
    ['a line without procedure dates', LINE.replace('Procedure dates: all.', '')],
    ['the pattern left as it is', LINE.replace('Organs: stomach', 'Organs: ...')],
    ['parts in several lines', LINE.replace('\n  Organs', '\n- Organs')],
  ])('misses the line of the changelog beside %s', (_, changelog) => {
    expect(faults(raised, [FIRST, SECOND], changelog)).toEqual([
      expect.stringContaining('CHANGELOG.md lacks this line: - Rule `sample-set` version 2: '),
    ]);
  });
});
