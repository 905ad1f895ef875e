import { describe, expect, it } from 'vitest';
import { expectedLoad } from '../../src/pipeline/expected-load.js';
import type { FollowUp } from '../../src/pipeline/index.js';
import { madeBooking, madeFollowUp } from '../support/made-follow-ups.js';

const monthsOf = (followUps: readonly FollowUp[], fromOn: string) =>
  expectedLoad(followUps, fromOn).months.flatMap(({ month, upper, lower }) =>
    upper + lower > 0 ? [`${month} ${upper}/${lower}`] : [],
  );

/** Row GAS-1 of the follow-up table: 6 months after the dissection, then every 12. */
const GAS_1 = madeFollowUp('a', ['2026-09-02', '2026-12-02', '2026-12-02'], { patient: 'EX-P-1' });
/** Row COL-4: 12 months after the dissection of 28 April 2026, then 36, then 60 later. */
const COL_4 = madeFollowUp('b', ['2027-04-28', '2027-04-28', '2027-04-28'], {
  item: { route: 'lower', follows: '36,60', anchorOn: '2026-04-28' },
});

describe('the load to come, against rows of the follow-up table', () => {
  it('has each examination and what follows it', () => {
    expect(monthsOf([GAS_1, COL_4], '2026-06-01')).toEqual([
      ...['2026-12 1/0', '2027-04 0/1', '2027-12 1/0', '2028-12 1/0'],
    ]);
    expect(monthsOf([COL_4], '2027-05-01')).toEqual(['2027-05 0/1']);
  });

  // Row GAS-3: 6 for 3 years from the dissection, then 12.
  it('counts the end of a series from its anchor', () => {
    const follows = '6*until-36,12*';
    const item = { follows, anchorOn: '2026-03-10', countsFrom: '2028-09-10' };
    const one = madeFollowUp('c', ['2028-09-10', '2028-09-10', '2029-03-10'], { item });
    expect(monthsOf([one], '2028-06-01')).toEqual([
      ...['2028-09 1/0', '2029-03 1/0', '2030-03 1/0', '2031-03 1/0'],
    ]);
  });

  it('counts the day that is booked, and a visit of two lesions once', () => {
    const booked = { ...GAS_1.item, booking: madeBooking('2026-11-30') };
    expect(monthsOf([{ ...GAS_1, item: booked }], '2026-06-01')[0]).toBe('2026-11 1/0');
    expect(monthsOf([GAS_1, { ...GAS_1, id: 'd' }], '2026-06-01')[0]).toBe('2026-12 1/0');
  });

  it('counts what is not sure, says how many, and leaves out what is over or a task', () => {
    const of = (item: Partial<FollowUp['item']>) => ({
      ...GAS_1,
      item: { ...GAS_1.item, ...item },
    });
    const unsure = [of({ state: 'provisional' }), of({ state: 'to-confirm' })];
    const others = [of({ state: 'done' }), of({ state: 'superseded' }), of({ kind: 'task' })];
    const load = expectedLoad([...unsure, ...others], '2026-06-01', 12);
    expect(load).toMatchObject({ plans: 2, unsure: 2, undated: 0 });
    expect(load.months).toHaveLength(12);
    expect(expectedLoad([of({ follows: 'by-findings' })], '2026-06-01').undated).toBe(1);
  });
});
