import { describe, expect, it } from 'vitest';
import { parseCase } from '../../src/contract/index.js';
import { isWithin, toPath, toPointer } from '../../src/contract/pointer.js';

/** RFC 6901 section 5: the keys of its document and the pointers to them. */
const RFC_6901 = [
  { path: [], pointer: '' },
  { path: ['foo'], pointer: '/foo' },
  { path: ['foo', '0'], pointer: '/foo/0' },
  { path: [''], pointer: '/' },
  { path: ['a/b'], pointer: '/a~1b' },
  { path: ['c%d'], pointer: '/c%d' },
  { path: ['e^f'], pointer: '/e^f' },
  { path: ['g|h'], pointer: '/g|h' },
  { path: ['i\\j'], pointer: '/i\\j' },
  { path: ['k"l'], pointer: '/k"l' },
  { path: [' '], pointer: '/ ' },
  { path: ['m~n'], pointer: '/m~0n' },
];

describe('a pointer, against the table of RFC 6901 section 5', () => {
  it.each(RFC_6901)('to $path is "$pointer"', ({ path, pointer }) => {
    expect(toPointer(path)).toBe(pointer);
    expect(toPath(pointer)).toEqual(path);
  });

  it('reads ~01 as ~1 and never as a slash (section 4)', () => {
    expect(toPath('/~01')).toEqual(['~1']);
    expect(toPointer(['~1'])).toBe('/~01');
    expect('/~01'.replaceAll('~0', '~').replaceAll('~1', '/')).toBe('//'); // the wrong order
  });

  it('lies in another place only from key to key', () => {
    expect(isWithin('/times/scopeInAt', '/times')).toBe(true);
    expect(isWithin('/timesheet', '/times')).toBe(false);
    expect(isWithin('/times', '')).toBe(true);
  });

  it('leads from the problem of an unknown field to the very key', () => {
    const keys = RFC_6901.filter(({ path }) => path.length === 1);
    const body = JSON.stringify(Object.fromEntries(keys.map(({ path }) => [path[0], 1])));
    const checked = parseCase(new TextEncoder().encode(body));
    const problems = checked.ok ? [] : checked.problems;
    expect(
      problems.filter(({ rule }) => rule === 'unknown-field').map(({ pointer }) => pointer),
    ).toEqual(keys.map(({ pointer }) => pointer));
  });
});
