import { describe, expect, it } from 'vitest';
import { parseTraceparent } from '../../src/http/traceparent.js';

const TRACE = '4bf92f3577b34da6a3ce929d0e0e4736';
const PARENT = '00f067aa0ba902b7';

describe('traceparent, against W3C Trace Context section 3.2', () => {
  it('is read as in the example of section 3.2.3', () => {
    expect(parseTraceparent(`00-${TRACE}-${PARENT}-01`)).toEqual({ traceId: TRACE });
  });

  it.each([
    ['nothing', undefined],
    ['an empty header', ''],
    ['an all-zero trace id', `00-${'0'.repeat(32)}-${PARENT}-01`],
    ['an all-zero parent id', `00-${TRACE}-${'0'.repeat(16)}-01`],
    ['capital letters', `00-${TRACE.toUpperCase()}-${PARENT}-01`],
    ['the forbidden version', `ff-${TRACE}-${PARENT}-01`],
    ['more behind version 00', `00-${TRACE}-${PARENT}-01-x`],
    ['a short trace id', `00-${TRACE.slice(1)}-${PARENT}-01`],
    ['a header sent twice', `00-${TRACE}-${PARENT}-01, 00-${TRACE}-${PARENT}-01`],
    ['a line break at its end', `00-${TRACE}-${PARENT}-01\n`],
  ])('is not read from %s', (_what, header) => {
    expect(parseTraceparent(header)).toBeUndefined();
  });
});
