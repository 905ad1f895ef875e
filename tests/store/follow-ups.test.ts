import { describe, expect, it } from 'vitest';
import type { FollowUpListing, FollowUpRow } from '../../src/pipeline/index.js';
import { createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { booked, row, save } from './follow-up-samples.js';

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
const { followUps } = store;

const stored = async (id: string) => {
  const { rows } = await database.pool.query('select * from follow_ups where id = $1', [id]);
  return rows[0];
};

const listed = async (listing: Partial<FollowUpListing>, ids: readonly string[]) => {
  const page = await followUps.list({ states: ['open'], limit: 500, ...listing });
  return page.followUps.map(({ id }) => id).filter((id) => ids.includes(id));
};

describe('the follow-ups of a state that is saved', () => {
  it('are found by their id, with the case and the state that they are of', async () => {
    await save(store, 'found', 1, [row('found-1')]);
    expect(await followUps.find('found-1')).toMatchObject({
      ...{ id: 'found-1', caseId: 'found', itemKey: 'row.found-1', itemState: 'open' },
      ...{ patientKey: 'p-found', state: 1, document: '{"says":"found-1"}' },
    });
    expect(await followUps.find('nobody')).toBeUndefined();
  });

  it('are told as changed only where they say something else', async () => {
    await save(store, 'same', 1, [row('same-1'), row('same-2')]);
    const first = await stored('same-1');
    await save(store, 'same', 2, [row('same-1'), row('same-2', { document: '{"new":1}' })]);
    expect(await stored('same-1')).toEqual(first);
    const other = await stored('same-2');
    expect(other).toMatchObject({ state: 2, document: '{"new":1}' });
    expect(BigInt(other.changed_tx)).toBeGreaterThan(BigInt(first.changed_tx));
  });

  it('are superseded where the plan has them no more, and stay where they were', async () => {
    await save(store, 'gone', 1, [row('gone-1'), row('gone-2')]);
    await save(store, 'gone', 2, [row('gone-2')]);
    expect(await followUps.find('gone-1')).toMatchObject({ itemState: 'superseded', state: 2 });
    expect(await followUps.find('gone-2')).toMatchObject({ itemState: 'open', state: 1 });
    const before = await stored('gone-1');
    await save(store, 'gone', 3, [row('gone-2')]);
    expect(await stored('gone-1')).toEqual(before);
    await save(store, 'gone', 4, [row('gone-1'), row('gone-2')]);
    expect(await followUps.find('gone-1')).toMatchObject({ itemState: 'open', state: 4 });
  });

  it('touch no other case', async () => {
    await save(store, 'mine', 1, [row('mine-1')]);
    await save(store, 'yours', 1, []);
    expect(await followUps.find('mine-1')).toMatchObject({ itemState: 'open' });
  });

  it('keep every character of their document', async () => {
    const document = JSON.stringify({ text: '\u0000 "é" \ud800 𝔈 \\u0000' });
    await save(store, 'text', 1, [row('text-1', { document })]);
    expect((await followUps.find('text-1'))?.document).toBe(document);
  });

  it('are rolled back with the message when the work fails', async () => {
    const failing = store.inCase('failed', async (journal) => {
      const rows = { patientKey: 'p', rows: [row('failed-1')] };
      await journal.saveFollowUps(1, rows);
      throw new Error('after all');
    });
    await expect(failing).rejects.toThrow('after all');
    expect(await followUps.find('failed-1')).toBeUndefined();
  });
});

/** Sequence, status and days: RFC 5545, 3.8.7.4, 3.8.1.11 and 3.6.1. */
describe('what a calendar shows of a follow-up', () => {
  const shown = async (id: string) =>
    (await followUps.events('2026-01-01')).find((event) => event.id === id);

  it('has a sequence that rises with each change of it, and with no other change', async () => {
    await save(store, 'cal', 3, [row('cal-1')]);
    const first = await shown('cal-1');
    expect(first).toMatchObject({ status: 'tentative', sequence: 3, lastOn: '2026-07-01' });
    await save(store, 'cal', 4, [row('cal-1', { document: '{"look":"closer"}' })]);
    expect(await shown('cal-1')).toEqual(first);
    await save(store, 'cal', 5, [booked('cal-1', '2026-06-03')]);
    expect(await shown('cal-1')).toMatchObject({
      ...{ status: 'confirmed', sequence: 5, firstOn: '2026-06-03', lastOn: '2026-06-03' },
    });
  });

  it('is kept as cancelled on its days when it is wanted no more, and can come back', async () => {
    await save(store, 'off', 1, [row('off-1')]);
    const { calendar: _none, ...done } = row('off-1', { itemState: 'done' });
    await save(store, 'off', 2, [done]);
    const cancelled = await shown('off-1');
    expect(cancelled).toMatchObject({
      ...{ status: 'cancelled', sequence: 2, firstOn: '2026-05-01', lastOn: '2026-07-01' },
    });
    await save(store, 'off', 3, [{ ...done, document: '{"more":1}' }]);
    expect(await shown('off-1')).toEqual(cancelled);
    await save(store, 'off', 4, [row('off-1')]);
    expect(await shown('off-1')).toMatchObject({ status: 'tentative', sequence: 4 });
  });

  it('is nothing where it never was to be shown', async () => {
    const { calendar: _none, ...task } = row('task-1', { kind: 'task' });
    await save(store, 'task', 1, [task]);
    expect(await shown('task-1')).toBeUndefined();
  });

  it('is cancelled for a window that the plan has no more, and not for a booked day', async () => {
    await save(store, 'drop', 1, [row('drop-1'), booked('drop-2', '2026-06-04')]);
    await save(store, 'drop', 2, []);
    expect(await shown('drop-1')).toMatchObject({ status: 'cancelled', sequence: 2 });
    expect(await shown('drop-2')).toMatchObject({ status: 'confirmed', sequence: 1 });
  });

  it('is narrowed by route, and by the last day', async () => {
    await save(store, 'rt', 1, [row('rt-1', { route: 'lower' })]);
    const ids = async (from: string, route?: 'upper' | 'lower') =>
      (await followUps.events(from, route)).map(({ id }) => id);
    expect(await ids('2026-07-01', 'lower')).toEqual(['rt-1']);
    expect(await ids('2026-07-02', 'lower')).toEqual([]);
    expect(await ids('2026-01-01', 'upper')).not.toContain('rt-1');
  });
});

describe('a list', () => {
  const on = (id: string, earliest: string, target: string, latest: string): FollowUpRow =>
    row(id, { window: { earliest, target, latest } });
  const rows = [
    on('l-3', '2027-03-01', '2027-03-10', '2027-03-20'),
    on('l-1', '2027-01-01', '2027-01-10', '2027-01-20'),
    on('l-2', '2027-02-01', '2027-02-10', '2027-02-20'),
  ];
  const { window: _none, calendar: _neither, ...noDay } = row('l-9', { kind: 'task' });
  const ids = ['l-1', 'l-2', 'l-3', 'l-9'];

  it('is by target day, and ends with tasks without a day', async () => {
    await save(store, 'list', 1, [noDay, ...rows]);
    expect(await listed({}, ids)).toEqual(ids);
  });

  // Who is booked on a day is looked for by that day, though the window was over long before.
  it.each([
    [{ from: '2027-06-07', to: '2027-06-11' }, ['b-2']],
    [{ from: '2027-06-07' }, ['b-2', 'b-3']],
    [{ to: '2027-06-11' }, ['b-1', 'b-2']],
    [{ from: '2027-01-10', to: '2027-01-20' }, []],
  ])('of who is booked shows the days of the appointments: %o', async (listing, expected) => {
    const at = (id: string, day: string): FollowUpRow =>
      booked(id, day, {
        window: { earliest: '2027-01-01', target: '2027-01-10', latest: '2027-01-20' },
      });
    const days = [at('b-1', '2027-06-04'), at('b-2', '2027-06-09'), at('b-3', '2027-06-14')];
    await save(store, 'booked-days', 1, [...days, row('b-4')]).catch(() => undefined);
    const all = ['b-1', 'b-2', 'b-3', 'b-4'];
    expect(await listed({ booked: true, ...listing }, all)).toEqual(expected);
    expect(await listed({ booked: false, from: '2026-05-01' }, all)).toEqual(['b-4']);
  });

  it.each([
    [{ from: '2027-02-20' }, ['l-2', 'l-3']],
    [{ from: '2027-02-21' }, ['l-3']],
    [{ to: '2027-02-01' }, ['l-1', 'l-2']],
    [{ to: '2027-01-31' }, ['l-1']],
    [{ from: '2027-01-21', to: '2027-01-31' }, []],
    [{ kind: 'task' as const }, ['l-9']],
    [{ route: 'lower' as const }, []],
    [{ states: ['done' as const] }, []],
  ])('shows the windows that overlap and all that matches: %o', async (listing, expected) => {
    await save(store, 'list', 1, [noDay, ...rows]).catch(() => undefined);
    expect(await listed(listing, ids)).toEqual(expected);
  });

  it('tells what is due: over, or over soon, with no appointment from today on', async () => {
    const window = { earliest: '2027-05-01', target: '2027-05-10', latest: '2027-05-20' };
    const due = ['d-open', 'd-booked', 'd-missed'];
    await save(store, 'due', 1, [
      row('d-open', { window }),
      booked('d-booked', '2027-05-30', { window }),
      booked('d-missed', '2027-05-12', { window }),
    ]);
    const over = (today: string) => listed({ due: { today } }, due);
    const soon = (today: string, until: string) => listed({ due: { today, until } }, due);
    expect(await over('2027-05-20')).toEqual([]);
    expect(await over('2027-05-21')).toEqual(['d-missed', 'd-open']);
    expect(await over('2027-05-31')).toEqual(['d-booked', 'd-missed', 'd-open']);
    expect(await soon('2027-05-13', '2027-05-19')).toEqual([]);
    expect(await soon('2027-05-13', '2027-05-20')).toEqual(['d-missed', 'd-open']);
    expect(await soon('2027-05-12', '2027-05-20')).toEqual(['d-open']);
    expect(await soon('2027-05-21', '2027-06-20')).toEqual([]);
    expect(await listed({ booked: true }, due)).toEqual(['d-booked', 'd-missed']);
    expect(await listed({ booked: false }, due)).toEqual(['d-open']);
  });

  it('of a patient tells the examinations that are still to come', async () => {
    const states = ['provisional', 'open', 'to-confirm', 'done', 'superseded'] as const;
    await save(store, 'pat', 1, [
      ...states.map((itemState) => row(`pat-${itemState}`, { itemState })),
      row('pat-task', { kind: 'task' }),
    ]);
    const found = (await followUps.toCome(['p-pat', 'p-nobody'])).map(({ id }) => id);
    expect(found.sort()).toEqual(['pat-open', 'pat-provisional', 'pat-to-confirm']);
    expect(await followUps.toCome([])).toEqual([]);
  });
});
