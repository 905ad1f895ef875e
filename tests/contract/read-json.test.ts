import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJson } from '../../src/contract/read-json.js';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Rules and pointers of everything that is wrong with the text. */
function wrongIn(text: string | Uint8Array): readonly string[] {
  const document = readJson(typeof text === 'string' ? bytesOf(text) : text);
  const problems = document.ok ? document.value.faults : document.problems;
  return problems.map(({ rule, pointer }) => `${rule} ${pointer}`);
}

function readValue(text: string): unknown {
  const document = readJson(bytesOf(text));
  return document.ok ? document.value.value : undefined;
}

describe('reading JSON, against RFC 8259', () => {
  it('reads the two examples of section 13', () => {
    const image = `{ "Image": { "Width": 800, "Height": 600, "Title": "View from 15th Floor",
      "Thumbnail": { "Url": "http://www.example.com/image/481989943", "Height": 125, "Width": 100 },
      "Animated" : false, "IDs": [116, 943, 234, 38793] } }`;
    const place = '[{ "precision": "zip", "Latitude": 37.7668, "Longitude": -122.3959 }]';
    for (const text of [image, place, '"Hello world!"', '42', 'true']) {
      expect(readValue(text)).toEqual(JSON.parse(text));
      expect(wrongIn(text)).toEqual([]);
    }
  });

  it.each([
    ['', 'no value at all (section 2)'],
    ['{"a":1,}', 'a comma after the last member (section 4)'],
    ['[1,]', 'a comma after the last element (section 5)'],
    ["{'a':1}", 'single quotes (section 7)'],
    ['{a:1}', 'a name without quotes (section 4)'],
    ['{"a" 1}', 'no colon (section 4)'],
    ['[1 2]', 'no comma (section 5)'],
    ['{"a":012}', 'leading zeros (section 6)'],
    ['{"a":+1}', 'a plus sign (section 6)'],
    ['{"a":.5}', 'no digit before the point (section 6)'],
    ['{"a":5.}', 'no digit after the point (section 6)'],
    ['{"a":0x10}', 'hexadecimal (section 6)'],
    ['{"a":NaN}', 'not a number (section 6)'],
    ['{"a":Infinity}', 'infinity (section 6)'],
    ['{"a":True}', 'a literal in capitals (section 3)'],
    ['{"a":"\u0001"}', 'a control character without escape (section 7)'],
    ['{"a":"tab\there"}', 'a tab without escape (section 7)'],
    ['{"a":"\\x41"}', 'an unknown escape (section 7)'],
    ['{"a":"\\u12"}', 'half of an escape (section 7)'],
    ['{"a":1} {"b":2}', 'a second value (section 2)'],
    ['{"a":1} // done', 'a comment'],
    ['\u00a0{"a":1}', 'a blank that is no JSON whitespace (section 2)'],
  ])('refuses %s as not-json: %s', (text) => {
    expect(wrongIn(text)).toEqual(['not-json ']);
    expect(() => JSON.parse(text)).toThrow(SyntaxError);
  });

  it('reads what another reader reads, and refuses what it refuses', () => {
    const damaged = fc
      .tuple(fc.json({ maxDepth: 6 }), fc.nat(), fc.constantFrom('', '"', ',', '}', '\\', '1', 'e'))
      .map(([text, at, sign]) => {
        const i = at % (text.length + 1);
        return `${text.slice(0, i)}${sign}${text.slice(i + 1)}`;
      });
    fc.assert(
      fc.property(fc.oneof(fc.json({ maxDepth: 6 }), damaged), (text) => {
        let expected: unknown;
        try {
          expected = JSON.parse(text);
        } catch {
          expect(wrongIn(text)).toEqual(['not-json ']);
          return;
        }
        const differs = wrongIn(text).length > 0;
        if (!differs) expect(readValue(text)).toEqual(expected);
        if (differs) expect(wrongIn(text).join()).toMatch(/number-out|ill-formed|repeated|unknown/);
      }),
      { seed: 8259, numRuns: 1500 },
    );
  });
});

describe('B2: depth', () => {
  it.each([
    ['lists', '['.repeat(200_000)],
    ['objects', '{"a":'.repeat(200_000)],
    ['both, closed', `${'[{"a":'.repeat(100_000)}1${'}]'.repeat(100_000)}`],
  ])('refuses 200,000 levels of %s as too-deep, without falling over', (_, text) => {
    expect(wrongIn(text)).toEqual(['too-deep ']);
  });

  it('counts no bracket that stands in a text', () => {
    expect(wrongIn(JSON.stringify(['['.repeat(1000), '\\"{{{{{{{{{{{{{{{{{{{{']))).toEqual([]);
    expect(wrongIn(`${'['.repeat(16)}${']'.repeat(16)}`)).toEqual([]);
    expect(wrongIn(`${'['.repeat(17)}${']'.repeat(17)}`)).toEqual(['too-deep ']);
  });
});

describe('B3: keys', () => {
  it.each([
    ['{"a":1,"a":2}', ['repeated-key /a']],
    ['{"a":1,"a":1}', ['repeated-key /a']],
    ['{"a":1,"a":1,"a":1}', ['repeated-key /a']],
    ['{"a":{"b":[0,{"c":1, "c" :2}]},"a ":1}', ['repeated-key /a/b/1/c']],
    ['[{"a":1},{"a":1}]', []],
    ['{"a":{"a":{"a":"a"}}}', []],
    ['{"a":"b\\":1,\\"a","b":1}', []],
  ])('in %s', (text, expected) => {
    expect(wrongIn(text)).toEqual(expected);
  });

  it('are the same when their escapes say the same (RFC 8259 section 8.3)', () => {
    expect(wrongIn(String.raw`{"a\\b":1,"a\u005Cb":2}`)).toEqual([String.raw`repeated-key /a\b`]);
    expect(wrongIn(String.raw`{"a\\b":1,"a/b":2}`)).toEqual([]);
  });

  it('never change the prototype of what is read', () => {
    expect(wrongIn('{"__proto__":{"polluted":true}}')).toEqual(['unknown-field /__proto__']);
    expect(readValue('{"constructor":{"prototype":{"polluted":true}}}')).toEqual({
      constructor: { prototype: { polluted: true } },
    });
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
  });
});

describe('B4: text', () => {
  it.each([
    ['half of a pair, the example of RFC 8259 section 8.2', '"\\uDEAD"'],
    ['the other half', '"\\ud83d"'],
    ['the halves in the wrong order', '"\\udd1e\\ud834"'],
    ['NUL', '"a\\u0000b"'],
    ['escape', '"\\u001b[2J"'],
    ['delete', '"\\u007f"'],
    ['a C1 control character', '"\\u0085"'],
  ])('with %s is ill-formed-text', (_, text) => {
    expect(wrongIn(text)).toEqual(['ill-formed-text ']);
    expect(wrongIn(`{"a":[${text}]}`)).toEqual(['ill-formed-text /a/0']);
    expect(wrongIn(`{"outer":{${text}:1}}`)).toEqual(['ill-formed-text /outer']);
  });

  it.each([
    ['the clef of RFC 8259 section 7, escaped', '"\\uD834\\uDD1E"', '\u{1D11E}'],
    ['the clef, in four bytes', '"\u{1D11E}"', '\u{1D11E}'],
    ['a combining mark', '"e\u0301"', 'e\u0301'],
    ['the same letter composed', '"\u00e9"', '\u00e9'],
    ['a sign of zero width and one from right to left', '"a\u200b\u202eb"', 'a\u200b\u202eb'],
    ['tab, line feed and return', '"\\t\\n\\r"', '\t\n\r'],
  ])('with %s is kept to the letter', (_, text, kept) => {
    expect(wrongIn(text)).toEqual([]);
    expect(readValue(text)).toBe(kept);
  });

  it.each([
    ['a byte that begins nothing', [0x22, 0xff, 0x22]],
    ['a character that breaks off', [0x22, 0xe2, 0x82, 0x22]],
    ['a longer way to write a slash (RFC 3629 section 10)', [0x22, 0xc0, 0xaf, 0x22]],
    ['half of a pair (RFC 3629 section 3)', [0x22, 0xed, 0xa0, 0x80, 0x22]],
    ['a letter in one byte', [...Buffer.from('"é"', 'latin1')]],
    ['UTF-16', [...Buffer.from('\ufeff"a"', 'utf16le')]],
  ])('with %s is not-utf-8', (_, bytes) => {
    expect(wrongIn(Uint8Array.from(bytes))).toEqual(['not-utf-8 ']);
  });

  it('has no byte order mark before it (RFC 8259 section 8.1)', () => {
    expect(wrongIn('\ufeff{}')).toEqual(['byte-order-mark ']);
  });
});

describe('B5: numbers', () => {
  it.each([
    ['1.10', 1.1, 2],
    ['1.1', 1.1, undefined],
    ['12', 12, undefined],
    ['12.000', 12, 3],
    ['1.20e1', 12, 1],
    ['120e-1', 12, 1],
    ['0.0', 0, 1],
    ['-0.50', -0.5, 2],
    ['9007199254740991', 9007199254740991, undefined],
    ['123456789012345', 123456789012345, undefined],
    ['0.30000000000000004', 0.30000000000000004, undefined],
  ])('keeps %s, and with it how many decimals were sent', (text, value, decimals) => {
    expect(readJson(bytesOf(`{"a/b":[${text}]}`))).toEqual({
      ok: true,
      value: {
        value: { 'a/b': [value] },
        decimals: decimals === undefined ? {} : { '/a~1b/0': decimals },
        faults: [],
      },
    });
  });

  it.each([
    ['1e400', 'beyond the range (the example of RFC 8259 section 6)'],
    ['-1e400', 'beyond the range'],
    ['1e-400', 'lost in nothing'],
    ['3.141592653589793238462643383279', 'more digits than kept (RFC 8259 section 6)'],
    ['12345678901234567890', 'twenty digits'],
    ['9007199254740993', 'beyond 2^53 (RFC 8259 section 6)'],
    ['12.345678901234567890', 'twenty digits with a point'],
    ['0e-1000000000', 'a thousand million decimals'],
    ['1e-21', 'more decimals than can be written'],
  ])('refuses %s as number-out-of-range: %s', (text) => {
    expect(wrongIn(`{"a":${text}}`)).toEqual(['number-out-of-range /a']);
  });

  it('loses no number of up to 15 significant digits', () => {
    const digits = fc.bigInt({ min: 1n, max: 999_999_999_999_999n });
    fc.assert(
      fc.property(digits, fc.integer({ min: 0, max: 15 }), (n, decimals) => {
        const text = `${n}e-${decimals}`;
        expect(wrongIn(text)).toEqual([]);
        const back = Number(readValue(text)).toPrecision(15);
        expect(Number(back)).toBe(Number(text));
        expect(
          BigInt(
            Number(back)
              .toExponential(14)
              .replace(/e.*|\./g, ''),
          ),
        ).toBe(BigInt(String(n).padEnd(15, '0')));
      }),
      { seed: 15, numRuns: 500 },
    );
  });
});
