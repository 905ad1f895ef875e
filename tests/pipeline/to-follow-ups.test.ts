import { describe, expect, it } from 'vitest';
import type { FollowUp } from '../../src/pipeline/index.js';
import { proposeDays } from '../../src/pipeline/propose-days.js';
import { toFollowUps } from '../../src/pipeline/to-follow-ups.js';
import { type Different, madeBooking, madeFollowUp } from '../support/made-follow-ups.js';

/*
 * Which follow-ups one visit answers. Source: the plan logic of the follow-up table, "one visit
 * covers all lesions of the same route" (derived); what is over is due on the first day that there
 * is (project definition, as proposals of days have it).
 */

const TODAY = '2026-11-25';
const OVER = ['2026-05-01', '2026-06-01', '2026-06-30'] as const;
const LONG_OVER = ['2026-01-01', '2026-02-01', '2026-02-28'] as const;
const RUNNING = ['2026-10-01', '2026-12-15', '2026-12-31'] as const;
const LATER = ['2027-03-01', '2027-04-01', '2027-05-01'] as const;

const of =
  (id: string, days: typeof OVER | typeof LONG_OVER | typeof RUNNING | typeof LATER) =>
  (more: Different = {}) =>
    madeFollowUp(id, days, { patient: 'EX-P-1', ...more });

/** Who is answered together, as the list says it. */
async function listed(...followUps: readonly FollowUp[]) {
  const stored = followUps.map(({ id, caseId, item, patient, state, changedAt, ...rest }) => ({
    ...{ id, caseId, itemKey: item.key, itemState: item.state, state, changedAt },
    patientKey: patient.value,
    document: JSON.stringify({ case: rest.case, patient, item }),
  }));
  const shown = await toFollowUps(stored, { toCome: async () => stored }, TODAY);
  return Object.fromEntries(shown.map(({ id, visitWith }) => [id, visitWith]));
}

describe('follow-ups of one patient by one route', () => {
  it('are one visit where two of them are over, however far apart their windows were', async () => {
    const followUps = [of('a', LONG_OVER)(), of('b', OVER)()];
    expect(await listed(...followUps)).toEqual({ a: ['b'], b: ['a'] });
  });

  it('are one visit where one is over and the window of the other is running', async () => {
    expect(await listed(of('a', OVER)(), of('b', RUNNING)())).toEqual({ a: ['b'], b: ['a'] });
  });

  it('are two where the other one is not due yet, or has its day', async () => {
    expect(await listed(of('a', OVER)(), of('b', LATER)())).toEqual({ a: [], b: [] });
    const booked = of('b', RUNNING)({ item: { booking: madeBooking('2026-12-15') } });
    expect(await listed(of('a', OVER)(), booked)).toEqual({ a: [], b: [] });
  });

  it('are the visits that days are proposed for', async () => {
    const followUps = [of('a', LONG_OVER)(), of('b', OVER)(), of('c', RUNNING)(), of('d', LATER)()];
    const sessions = [{ on: '2026-11-27', route: 'upper', places: 9 } as const];
    const proposal = proposeDays(followUps, sessions, TODAY);
    const ids = proposal?.placed.map((visit) => visit.followUps.map(({ id }) => id).sort());
    expect(ids).toEqual([['a', 'b', 'c']]);
    expect(await listed(...followUps)).toEqual({
      ...{ a: ['b', 'c'], b: ['a', 'c'], c: ['a', 'b'], d: [] },
    });
  });
});
