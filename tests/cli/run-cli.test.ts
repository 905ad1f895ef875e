import { describe, expect, it } from 'vitest';
import { KEY, MINIMAL, run } from './run.js';

// Streams and exit codes: project definition (table of conventions).

describe('the program', () => {
  it('says its version and its help on standard output', async () => {
    expect(await run(['--version'])).toEqual({ code: 0, out: '1.2.3\n', err: '' });
    for (const args of [['--help'], ['-h'], ['check', '--help'], ['keys', 'add', '-h']]) {
      const { code, out, err } = await run(args);
      expect([code, err]).toEqual([0, '']);
      expect(out).toMatch(/^Usage: dissection-records /);
    }
  });

  it.each([
    [[]],
    [['nothing']],
    [['constructor']],
    [['check']],
    [['check', '--loud', 'complete.json']],
    [['check', '--settings']],
    [['check', '-', '-']],
    [['bundle']],
    [['bundle', 'complete.json', 'minimal.json']],
    [['serve', 'complete.json']],
    [['keys']],
    [['keys', 'change']],
    [['keys', 'add']],
    [['keys', 'add', '--role', 'admin']],
    [['keys', 'add', '--role', 'note-system']],
    [['keys', 'add', '--role', 'note-system', '--source', 'Not A Name']],
    [['keys', 'add', '--role', 'operator', '--source', 'example-notes']],
    [['keys', 'revoke']],
  ])('refuses %j with 2, on standard error', async (args) => {
    const { code, out, err } = await run(args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/Usage: |See: dissection-records \w+ --help/);
  });
});

describe('check', () => {
  it('says what was computed, what is not known and what would be sent', async () => {
    const { code, out, err } = await run(['check', 'minimal.json']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^minimal\.json: valid\n/);
    const { times } = JSON.parse(MINIMAL.toString());
    const minutes = (Date.parse(times.scopeOutAt) - Date.parse(times.scopeInAt)) / 60_000;
    expect(out).toContain(`procedure time: ${minutes} min`);
    expect(out).toMatch(/specimen area: not known: specimen\.longAxisMm/);
    expect(out).toMatch(/Would send \d+ resources: .*Procedure 1/);
    expect(out.split('\n').length).toBeLessThan(56);
  });

  it('says where each problem is, what it is and what is expected, and ends with 1', async () => {
    const { code, out } = await run(['check', 'empty.json']);
    expect(code).toBe(1);
    expect(out).toMatch(/^empty\.json: not valid, \d+ problems\n/);
    expect(out).toMatch(
      / {2}\/patient\n {4}A required field is missing\.\n {4}expected: .+\[missing-field\]/,
    );
  });

  it('goes on after a bad file and ends with the worst of all', async () => {
    const both = await run(['check', 'broken.json', 'complete.json']);
    expect(both.code).toBe(1);
    expect(both.out).toContain('complete.json: valid');
    const gone = await run(['check', 'gone.json', 'broken.json', 'complete.json']);
    expect(gone.code).toBe(3);
    expect(gone.err).toBe('gone.json: there is no such file\n');
    expect(gone.out).toContain('complete.json: valid');
  });

  it('reads standard input for -', async () => {
    expect((await run(['check', '-'])).out).toMatch(/^standard input: valid\n/);
  });

  it('gives JSON, one document a line, when asked', async () => {
    const { out } = await run(['check', '--json', 'complete.json', 'empty.json']);
    const [valid, invalid] = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(valid).toMatchObject({ file: 'complete.json', valid: true, state: 1 });
    expect(valid.bundle.resourceType).toBe('Bundle');
    expect(invalid).toMatchObject({ file: 'empty.json', valid: false });
    expect(invalid.errors[0]).toHaveProperty('expected');
  });

  it('says nothing when asked to be quiet', async () => {
    expect(await run(['check', '--quiet', 'empty.json'])).toEqual({ code: 1, out: '', err: '' });
  });

  it('colours its verdict only where colours show', async () => {
    expect((await run(['check', 'complete.json'])).out).not.toContain('\u001b');
    expect((await run(['check', 'complete.json'], { colour: true })).out).toContain('\u001b[32m');
  });

  it('refuses settings of the unit that are none', async () => {
    const wrong = await run(['check', '--settings', 'unit.json', 'complete.json']);
    expect([wrong.code, wrong.out]).toEqual([1, '']);
    expect(wrong.err).toContain('/identifierBase');
    expect((await run(['check', '--settings', 'gone.json', '-'])).code).toBe(3);
  });
});

describe('bundle', () => {
  it('prints the Bundle alone on standard output', async () => {
    const { code, out, err } = await run(['bundle', 'complete.json']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ resourceType: 'Bundle', type: 'transaction' });
    expect(err).toContain('secret of dry runs');
    expect((await run(['bundle', '--quiet', 'complete.json'])).err).toBe('');
  });

  it('prints no Bundle for a message that is not valid', async () => {
    const { code, out, err } = await run(['bundle', 'empty.json']);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('[missing-field]');
  });

  it('ends with 3 for a file that is not there', async () => {
    expect((await run(['bundle', 'gone.json'])).code).toBe(3);
  });
});

describe('keys', () => {
  it('shows a new key once, on standard output alone', async () => {
    const args = ['keys', 'add', '--role', 'note-system', '--source', 'example-notes'];
    const { code, out, err } = await run(args);
    expect([code, out]).toEqual([0, 'drk_new\n']);
    expect(err).toContain('keys.json');
    expect(err).not.toContain('drk_new');
    expect(JSON.parse((await run([...args, '--json'])).out)).toEqual({
      id: KEY.id,
      key: 'drk_new',
    });
  });

  it('lists keys without their hashes', async () => {
    for (const args of [
      ['keys', 'list'],
      ['keys', 'list', '--json'],
    ]) {
      const { out } = await run(args);
      expect(out).toContain(KEY.id);
      expect(out).not.toContain(KEY.sha256);
    }
  });

  it('says whether there was a key to revoke', async () => {
    expect((await run(['keys', 'revoke', KEY.id])).code).toBe(0);
    expect((await run(['keys', 'revoke', '99999999'])).code).toBe(1);
  });
});

describe('serve', () => {
  it('ends with the code of the service', async () => {
    expect((await run(['serve'])).code).toBe(130);
    expect((await run(['serve', '--print-config'])).code).toBe(0);
  });
});
