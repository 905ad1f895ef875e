import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService } from '../../src/pipeline/index.js';
import { createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { EXAMPLES } from '../support/example-messages.js';
import { type RunningApp, runApp, stopApps } from './running-app.js';

/*
 * A scheduler never receives what was found in tissue or what it means (project definition). What
 * must not be told is taken from the messages and verdicts themselves, not from a list.
 */

const SECRET = 'a-secret-of-the-tests-that-is-long-enough';
const test = await testDatabase();
const database = await test.open();
const service = createService({
  store: createRecordStore(database),
  settings: { unit: DEFAULT_UNIT_SETTINGS, secret: SECRET, softwareVersion: '0' },
  now: () => '2027-06-01T10:00:00.000Z',
});

/** Every text in a document, at any depth. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsIn);
}

/** Words that say nothing of tissue by themselves and stand elsewhere too. */
const PLAIN = ['absent', 'present', 'upper', 'lower', 'final', 'interim', 'death', 'none', 'other'];
/** What is to be arranged, which a scheduler must know; a row of a task has its name. */
const TASKS = new Set<string>();
const secret = new Set<string>();
const told = (value: unknown): void => {
  for (const text of textsIn(value)) {
    if (text.length > 4 && !PLAIN.includes(text) && !/^\d{4}-\d\d/.test(text)) secret.add(text);
  }
};

let app: RunningApp;
let answers: readonly string[] = [];
let full = '';

beforeAll(async () => {
  for (const { kind, bytes, document } of EXAMPLES) {
    const receipt = await service.receive(kind, bytes, {});
    if (kind === 'pathology') told(document['findings']);
    if (receipt.kind !== 'accepted' || !('plan' in receipt.view)) continue;
    told(receipt.view.assessment.curability);
    for (const item of receipt.view.plan.items) {
      if (item.task !== undefined) TASKS.add(item.task);
      told([item.says, item.inputs, item.look, item.row, item.rule, item.ruleSet, item.key]);
      told([item.cites, item.overlaps.map(({ row, rule }) => [row, rule])]);
    }
  }
  for (const task of TASKS) secret.delete(task);
  app = await runApp({ service });
  const every = 'state=provisional,open,to-confirm,done,superseded,revoked&limit=500';
  const read = async (path: string, role: 'scheduler' | 'records-team' = 'scheduler') =>
    (await app.get(path, { role })).text();
  full = await read(`/follow-ups?${every}`, 'records-team');
  const list = await read(`/follow-ups?${every}`);
  const { followUps, cursor } = JSON.parse(list);
  const ids: readonly string[] = followUps.map(({ id }: { readonly id: string }) => id);
  const ones = await Promise.all(ids.map((id) => read(`/follow-ups/${id}`)));
  const zero = Buffer.from(cursor, 'base64url')
    .toString()
    .replace(/\|\d+\|/, '|0|');
  const since = Buffer.from(zero).toString('base64url');
  const changes = await read(`/follow-ups?since=${since}&limit=500`);
  const wish = JSON.stringify({ schema: 'feed/1' });
  const feed = await app.post('/follow-ups/feeds', wish, { role: 'scheduler' });
  const { path } = JSON.parse(await feed.text());
  answers = [list, ...ones, changes, await read(path), ...app.logLines()];
});
afterAll(stopApps);

describe('what a scheduler receives', () => {
  it('holds no word of tissue, verdict, row, rule or reason of a plan', () => {
    expect(secret.size).toBeGreaterThan(150);
    expect(answers.length).toBeGreaterThan(60);
    const whole = answers.join('\n');
    expect([...secret].filter((word) => whole.includes(`"${word}"`))).toEqual([]);
    expect([...secret].filter((word) => word.length > 12 && whole.includes(word))).toEqual([]);
  });

  it('holds the fields of the interface and no other', () => {
    const fields = new Set<string>();
    const [list = '{}'] = answers;
    for (const { item } of JSON.parse(list).followUps) {
      for (const name of Object.keys(item)) fields.add(name);
    }
    expect([...fields].sort()).toEqual(
      expect.arrayContaining(['due', 'kind', 'reasons', 'route', 'state', 'urgency']),
    );
    for (const name of ['inputs', 'says', 'look', 'row', 'rule', 'ruleSet', 'cites', 'key']) {
      expect(fields).not.toContain(name);
    }
  });

  it('would be caught in what the records team receives', () => {
    expect([...secret].filter((word) => full.includes(`"${word}"`)).length).toBeGreaterThan(20);
  });
});

describe('the changes', () => {
  it('are those of every follow-up, so that the look at them was not empty', () => {
    const [list = '{}'] = answers;
    const changes = answers.find((text) => text.includes('"cursor"') && text !== list) ?? '{}';
    expect(JSON.parse(changes).followUps.length).toBe(JSON.parse(list).followUps.length);
  });
});
