import { describe, expect, it } from 'vitest';
import {
  determined,
  failed,
  InvariantError,
  indeterminate,
  invariant,
  passed,
  StoreUnavailable,
} from '../../src/kernel/index.js';

// Oracle: the four ways to fail that the project distinguishes (project definition).
describe('the ways to fail', () => {
  it('tells what a case does not say by the fields that are missing', () => {
    const missing = ['specimen.longAxisMm'];
    expect(indeterminate(missing)).toEqual({ kind: 'indeterminate', missing });
    expect(determined(false, [])).toEqual({ kind: 'determined', value: false, cites: [] });
  });

  it('keeps a value that passed apart from the problems of one that did not', () => {
    const problem = { rule: 'CC-01', pointer: '/times', message: 'm', expected: 'e' };
    expect(passed(0)).toEqual({ ok: true, value: 0 });
    expect(failed([problem])).toEqual({ ok: false, problems: [problem] });
  });

  it('throws a fault of our own, and only then', () => {
    expect(() => invariant(false, 'bands leave no gap')).toThrow(InvariantError);
    expect(() => invariant(true, 'bands leave no gap')).not.toThrow();
    expect(new InvariantError('x')).toMatchObject({ name: 'InvariantError', message: 'x' });
  });

  it('knows a store that is away from a fault of our own', () => {
    const away = new StoreUnavailable('the database is away');
    expect(away).toBeInstanceOf(Error);
    expect(away).not.toBeInstanceOf(InvariantError);
    expect(away.name).toBe('StoreUnavailable');
  });
});
