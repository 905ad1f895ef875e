import { describe, expect, it } from 'vitest';
import type { Draft } from '../support/consistent-case.js';
import { lived, resources } from '../support/live-life.js';
import { life } from '../support/lives.js';

/*
 * Oracles: FHIR R4 (4.0.1), Appointment (status, start, end, basedOn, app-4), Task (status, focus)
 * and ServiceRequest (status); that no plan changes what is booked is the definition of the project.
 */
describe('what a scheduler books in a life', () => {
  const standing = async (name: string, step: number): Promise<readonly Draft[]> => {
    const { bundle } = (await lived(life(name)))[step - 1] ?? {};
    return bundle === undefined ? [] : resources(bundle);
  };
  const of = (all: readonly Draft[], type: string, key: string): Draft =>
    all.find((one) => one.resourceType === type && one.identifier?.[0].value.endsWith(`.${key}`));
  const checksOfBooking = (all: readonly Draft[]): readonly Draft[] =>
    all.filter((one) => one.resourceType === 'Task' && one.code.coding[0].code === 'booking-check');

  it('curative: the look is booked inside of its window, and done on its day', async () => {
    const booked = await standing('curative', 5);
    const { start, end, status, basedOn, requestedPeriod } = of(booked, 'Appointment', 'GAS-1.1');
    expect([status, start, end]).toEqual([
      'booked',
      '2026-07-28T10:00:00+02:00',
      '2026-07-28T10:30:00+02:00',
    ]);
    // Three to six months after the dissection of 3 February; 3 May 2026 is a Sunday.
    expect(requestedPeriod).toEqual([{ start: '2026-05-04', end: '2026-08-03' }]);
    expect(of(booked, 'ServiceRequest', 'GAS-1.1').status).toBe('active');
    const done = await standing('curative', 6);
    expect(of(done, 'ServiceRequest', 'GAS-1.1').status).toBe('completed');
    expect(of(done, 'Appointment', 'GAS-1.1')).toMatchObject({ status, start, end, basedOn });
    expect([...checksOfBooking(booked), ...checksOfBooking(done)]).toEqual([]);
  });

  it('amended: a plan that changes leaves the booked day alone, and somebody looks', async () => {
    const kept = of(await standing('amended', 2), 'Appointment', 'provisional.1');
    expect(kept).toMatchObject({ status: 'booked', start: '2026-09-29T08:30:00+02:00' });
    expect(checksOfBooking(await standing('amended', 2))).toEqual([]);
    const reported = await standing('amended', 3);
    const { meta: _old, ...before } = kept;
    const { meta: _new, ...now } = of(reported, 'Appointment', 'provisional.1');
    expect(now).toEqual(before);
    const request = of(reported, 'ServiceRequest', 'provisional.1');
    expect(request.status).toBe('revoked');
    const [check, ...others] = checksOfBooking(reported);
    expect(others).toEqual([]);
    expect(check.status).toBe('requested');
    expect(kept.basedOn[0].reference).toBe(check.focus.reference);
    expect(check.focus.reference.endsWith(request.id ?? '')).toBe(true);
  });

  it('amended: the place is given back, the check is over, and the new day is booked', async () => {
    const back = await standing('amended', 4);
    const { status, cancelationReason } = of(back, 'Appointment', 'provisional.1');
    expect([status, cancelationReason === undefined]).toEqual(['cancelled', false]);
    expect(checksOfBooking(back).map((task) => task.status)).toEqual(['completed']);
    const last = await standing('amended', 6);
    const booked = last.filter((one) => one.resourceType === 'Appointment');
    expect(booked.filter((one) => one.status === 'booked').map((one) => one.start)).toEqual([
      '2027-04-28T08:30:00+02:00',
    ]);
    expect(of(last, 'ServiceRequest', 'COL-4.1').status).toBe('active');
  });
});
