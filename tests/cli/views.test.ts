import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { run } from './run.js';

const BUNDLE = async () => (await run(['bundle', '--quiet', 'complete.json'])).out;

async function views(args: readonly string[], files: Readonly<Record<string, string>>) {
  const readFile = (path: string) => {
    const text = files[path];
    return text === undefined
      ? Promise.reject(Object.assign(new Error(path), { code: 'ENOENT' }))
      : Promise.resolve(new TextEncoder().encode(text));
  };
  return run(['views', ...args], { readFile });
}

describe('the command views', () => {
  it('lists the views with their columns', async () => {
    const { code, out } = await views([], {});
    expect(code).toBe(0);
    expect(out.split('\n').map((line) => line.split(' ')[0])).toEqual([
      'esd_case',
      'esd_finding',
      'esd_complication',
      'esd_follow_up',
      '',
    ]);
  });

  it('makes the same rows of a Bundle and of its resources line by line', async () => {
    const bundle = await BUNDLE();
    const resources: readonly { fullUrl: string; resource: object }[] = JSON.parse(bundle).entry;
    const lines = resources.map(({ fullUrl, resource }) =>
      JSON.stringify({ ...resource, id: fullUrl.slice('urn:uuid:'.length) }),
    );
    const files = { 'b.json': bundle, 'r.ndjson': `${lines.join('\n')}\n` };
    const whole = await views(['esd_finding', 'b.json'], files);
    expect([whole.code, whole.err]).toEqual([0, '']);
    expect(await views(['esd_finding', 'r.ndjson'], files)).toEqual(whole);
    const rows: readonly Record<string, string>[] = parse(whole.out, { columns: true });
    expect(rows.length).toBeGreaterThan(50);
    const asLines = await views(['esd_finding', 'b.json', '--ndjson'], files);
    expect(asLines.out.trim().split('\n')).toHaveLength(rows.length);
  });

  it('runs a view of others', async () => {
    const view = {
      resourceType: 'ViewDefinition',
      name: 'people',
      resource: 'Patient',
      select: [
        {
          column: [
            { name: 'id', path: 'id' },
            { name: 'all', path: 'name.family', collection: true },
          ],
        },
      ],
    };
    const files = {
      'view.json': JSON.stringify(view),
      'p.json': JSON.stringify({ resourceType: 'Patient', id: 'a', name: [{ family: 'Ash' }] }),
    };
    const { code, out } = await views(['--definition', 'view.json', 'p.json'], files);
    expect([code, out]).toEqual([0, 'id,all\r\na,"[""Ash""]"\r\n']);
  });

  it('says what is wrong with a view or a file, without what stands in it', async () => {
    const faulty = { 'view.json': '{"resourceType":"ViewDefinition","secret":1}', 'p.json': '{}' };
    const noView = await views(['--definition', 'view.json', 'p.json'], faulty);
    expect(noView.code).toBe(1);
    expect(noView.err).toContain('[view-shape]');
    const noJson = await views(['esd_case', 'p.json'], { 'p.json': 'Patient Ash' });
    expect(noJson.code).toBe(1);
    expect(noJson.err).toContain('[not-json]');
    expect(noJson.err).not.toContain('Ash');
    const many = {
      'view.json': JSON.stringify({
        resourceType: 'ViewDefinition',
        name: 'many',
        resource: 'Patient',
        select: [{ column: [{ name: 'f', path: 'name.family' }] }],
      }),
      'p.json': JSON.stringify({
        resourceType: 'Patient',
        name: [{ family: 'Ash' }, { family: 'Elm' }],
      }),
    };
    const ran = await views(['--definition', 'view.json', 'p.json'], many);
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toBe('many: The column f has several values in one row.\n');
  });

  it.each([
    [['esd_case'], 2, 'needs the FILEs'],
    [['nothing', 'p.json'], 2, 'There is no view of this name'],
    [['esd_case', 'p.json', '--csv', '--ndjson'], 2, '--csv or --ndjson'],
    [['esd_case', 'gone.json'], 3, 'there is no such file'],
  ] as const)('ends as it must with %j', async (args, code, says) => {
    const ended = await views(args, { 'p.json': '{}' });
    expect(ended.code).toBe(code);
    expect(ended.err).toContain(says);
  });
});
