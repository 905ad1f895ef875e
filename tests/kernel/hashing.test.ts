import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keyedUuid, sha256 } from '../../src/kernel/index.js';

const ascii = (text: string): Buffer => Buffer.from(text, 'latin1');
const hex = (digits: string): Buffer => Buffer.from(digits, 'hex');

describe('SHA-256, against the example values of FIPS 180-4', () => {
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('of %.20s..', (message, digest) => {
    expect(sha256(ascii(message))).toBe(digest);
    expect(sha256(ascii(`${message} `))).not.toBe(digest);
  });
});

/** HMAC as RFC 2104 section 2 defines it, over the hash that was checked above. */
function hmac(key: Buffer, message: Buffer): string {
  const short = key.length > 64 ? hex(sha256(key)) : key;
  const block = Buffer.concat([short, Buffer.alloc(64 - short.length)]);
  const pad = (byte: number) => block.map((b) => b ^ byte);
  return sha256(Buffer.concat([pad(0x5c), hex(sha256(Buffer.concat([pad(0x36), message])))]));
}

describe('the HMAC of these tests, against RFC 4231 section 4', () => {
  it.each([
    {
      name: 'test case 1',
      key: hex('0b'.repeat(20)),
      data: ascii('Hi There'),
      mac: 'b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7',
    },
    {
      name: 'test case 2',
      key: ascii('Jefe'),
      data: ascii('what do ya want for nothing?'),
      mac: '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
    },
    {
      name: 'test case 3',
      key: hex('aa'.repeat(20)),
      data: hex('dd'.repeat(50)),
      mac: '773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe',
    },
    {
      name: 'test case 6 (a key longer than a block)',
      key: hex('aa'.repeat(131)),
      data: ascii('Test Using Larger Than Block-Size Key - Hash Key First'),
      mac: '60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54',
    },
  ])('$name', ({ key, data, mac }) => {
    expect(hmac(key, data)).toBe(mac);
  });
});

/** UUID version 8 of the first 16 bytes. Source: RFC 9562 sections 4 and 5.8. */
function versionEight(digest: string): string {
  const variant = ((Number.parseInt(digest.charAt(16), 16) & 0x3) | 0x8).toString(16);
  const digits = `${digest.slice(0, 12)}8${digest.slice(13, 16)}${variant}${digest.slice(17, 32)}`;
  return digits.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

const VERSION_8 = /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const SECRET = 'an invented secret of the site, 32+';

describe('a keyed id', () => {
  it('has the form of the name-based example of RFC 9562 appendix B.2', () => {
    const dns = hex('6ba7b8109dad11d180b400c04fd430c8');
    const example = '5c146b14-3c52-8afd-938a-375d0df1fbf6';
    expect(versionEight(sha256(Buffer.concat([dns, ascii('www.example.com')])))).toBe(example);
    expect(example).toMatch(VERSION_8);
    expect('5c146b14-3c52-4afd-938a-375d0df1fbf6').not.toMatch(VERSION_8);
    expect('5c146b14-3c52-8afd-c38a-375d0df1fbf6').not.toMatch(VERSION_8);
  });

  it('is version 8 of HMAC-SHA-256 of system and value', () => {
    fc.assert(
      fc.property(
        fc.string({ minLength: 32 }),
        fc.webUrl(),
        fc.string(),
        (secret, system, value) => {
          const id = keyedUuid(secret, system, value);
          expect(id).toMatch(VERSION_8);
          expect(id).toBe(
            versionEight(hmac(Buffer.from(secret), Buffer.from(`${system}|${value}`))),
          );
        },
      ),
      { seed: 9562, numRuns: 200 },
    );
  });

  it('cannot be computed by one who knows system and value but not the secret', () => {
    const id = keyedUuid(SECRET, 'urn:oid:2.999.1.1', 'EX-P-0001');
    const name = ascii('urn:oid:2.999.1.1|EX-P-0001');
    const guesses = ['', 'secret', SECRET.slice(0, -1), SECRET.toUpperCase()].map((secret) =>
      keyedUuid(secret, 'urn:oid:2.999.1.1', 'EX-P-0001'),
    );
    expect([...guesses, versionEight(sha256(name))]).not.toContain(id);
    expect(keyedUuid(SECRET, 'urn:oid:2.999.1.1', 'EX-P-0001')).toBe(id);
  });

  it('differs for all of ten thousand neighbouring numbers', () => {
    const ids = Array.from({ length: 10_000 }, (_, n) =>
      keyedUuid(SECRET, 'urn:oid:2.999.1.1', String(n)),
    );
    expect(new Set(ids).size).toBe(10_000);
  });
});
