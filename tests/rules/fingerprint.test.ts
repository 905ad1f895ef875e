import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { fingerprint, type Rule } from '../../src/rules/index.js';
import { SAMPLE_QUANTITY, SAMPLE_SCORE, SAMPLE_SET } from './sample-rules.js';

/** A rule with one text of its data replaced, wherever that stands. */
function changed(rule: Rule, from: string, to: string): Rule {
  const text = JSON.stringify(rule, (_, value) => (value === Infinity ? 'open' : value));
  expect(text).toContain(from);
  const copy = JSON.parse(text.replace(from, to), (_, value) =>
    value === 'open' ? Infinity : value,
  );
  return { ...rule, ...copy };
}

describe('the fingerprint of a rule', () => {
  it('is 64 hexadecimal digits, and the same for a copy', () => {
    for (const rule of [SAMPLE_SET, SAMPLE_SCORE, SAMPLE_QUANTITY]) {
      expect(fingerprint(rule)).toMatch(/^[0-9a-f]{64}$/);
      expect(fingerprint(changed(rule, 'An invented', 'Another'))).toBe(fingerprint(rule));
    }
  });

  it.each([
    ['a border', SAMPLE_SET, '"above":20', '"above":21'],
    ['the kind of a border', SAMPLE_SET, '"above":20', '"atLeast":20'],
    ['a class', SAMPLE_SET, '"class":"low"', '"class":"lower"'],
    ['a row', SAMPLE_SET, '"row":"large"', '"row":"big"'],
    [
      'when a remark is shown',
      SAMPLE_SET,
      '"remark":"flat","when":{"flat":{"is":[true]}}',
      '"remark":"flat","when":{"flat":{"is":[false]}}',
    ],
    ['a contradiction', SAMPLE_SET, '"above":90', '"above":80'],
    ['what absence means', SAMPLE_SET, '"value":false', '"value":true'],
    ['the range of a field', SAMPLE_SET, '"to":100', '"to":99'],
    ['the unit of a field', SAMPLE_SET, '"unit":"mm"', '"unit":"cm"'],
    ['points', SAMPLE_SCORE, '"points":2', '"points":3'],
    ['the end of a group', SAMPLE_SCORE, '"to":1,', '"to":2,'],
    ['an open end', SAMPLE_SCORE, '"to":"open"', '"to":9'],
    ['a published rate', SAMPLE_SCORE, '"percent":2', '"percent":3'],
    ['a formula', SAMPLE_QUANTITY, 'size x 2', 'size x 3'],
  ])('is another one with another value of %s', (_, rule, from, to) => {
    expect(fingerprint(changed(rule, from, to))).not.toBe(fingerprint(rule));
  });

  it.each([
    ['what a row says', SAMPLE_SET, '"says":"Large."', '"says":"It is large."'],
    ['the place of a source', SAMPLE_SET, '"place":"invented"', '"place":"page 3"'],
    ['a message', SAMPLE_SET, 'Both cannot be.', 'Not both.'],
    ['the population', SAMPLE_SCORE, 'Nobody.', 'Nobody at all.'],
  ])('is the same with another wording of %s', (_, rule, from, to) => {
    expect(fingerprint(changed(rule, from, to))).toBe(fingerprint(rule));
  });

  it('does not see the order in which keys were written, but that of fields and steps', () => {
    const { fields, ...rest } = SAMPLE_SET;
    const turned = Object.fromEntries(Object.entries(fields).reverse());
    expect(fingerprint({ fields, ...rest })).toBe(fingerprint(SAMPLE_SET));
    expect(fingerprint({ ...rest, fields: turned })).not.toBe(fingerprint(SAMPLE_SET));
    expect(fingerprint({ ...SAMPLE_SET, table: [...SAMPLE_SET.table].reverse() })).not.toBe(
      fingerprint(SAMPLE_SET),
    );
  });

  // Keys in the order of their characters as in RFC 8785; the text is written out by hand.
  it('is SHA-256 of its data as JSON, keys in order, without prose', () => {
    const contradiction =
      '{"field":"flat","rule":"wide-and-flat","when":{"flat":{"is":[true]},"sizeMm":{"above":90}}}';
    const fields =
      '["sizeMm",{"from":0,"to":100,"type":"number","unit":"mm"}],' +
      '["flat",{"assumed":[{"value":false,"when":{}}],"type":"flag"}]';
    const head = `"contradictions":[${contradiction}],"fields":[${fields}]`;
    const bands =
      '{"from":0,"group":"low","rate":{"percent":2},"to":1},' +
      '{"from":2,"group":"high","to":"Infinity"}';
    const items = '{"item":"large","points":2,"when":{"sizeMm":{"above":20}}}';
    const score = `{"bands":[${bands}],${head},"items":[${items}],"kind":"score","remarks":[]}`;
    const quantity = `{${head},"formula":"size x 2","kind":"quantity"}`;
    const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');
    expect(fingerprint(SAMPLE_SCORE)).toBe(sha256(score));
    expect(fingerprint(SAMPLE_QUANTITY)).toBe(sha256(quantity));
    expect(fingerprint(SAMPLE_SCORE)).not.toBe(sha256(score.replace('"points":2', '"points":3')));
  });

  it.each(['rule-set', 'classification', 'follow-up'] as const)('sees the rows of a %s', (kind) => {
    const rule = { ...SAMPLE_SET, kind };
    const other = { ...rule, table: rule.table.slice(1) };
    expect(fingerprint(other)).not.toBe(fingerprint(rule));
  });
});
