import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sandboxDatabase } from './support/sandbox-database.js';
import { startServer, type TestServer } from './support/server.js';

const postgres = await sandboxDatabase();
let server: TestServer;

/** One Procedure for each target value that HL7 FHIR R4 Search, section "date", speaks of. */
const TARGETS: Readonly<Record<string, object>> = {
  'jan-14-midnight': { performedDateTime: '2013-01-14T00:00:00Z' },
  'jan-14-ten': { performedDateTime: '2013-01-14T10:00:00Z' },
  'jan-15-midnight': { performedDateTime: '2013-01-15T00:00:00Z' },
  'jan-14-whole-day': { performedDateTime: '2013-01-14' },
  'from-jan-21': { performedPeriod: { start: '2013-01-21' } },
  'from-mar-15': { performedPeriod: { start: '2013-03-15' } },
  'until-jan-21': { performedPeriod: { end: '2013-01-21' } },
  'across-new-year': {
    performedPeriod: { start: '2013-12-31T22:00:00Z', end: '2014-01-01T01:00:00Z' },
  },
  undated: {},
};

beforeAll(async () => {
  server = await startServer(postgres.db);
  const entry = Object.entries(TARGETS).map(([id, performed]) => ({
    resource: { resourceType: 'Procedure', id, status: 'completed', ...performed },
    request: { method: 'PUT', url: `Procedure/${id}` },
  }));
  const answer = await server.post('/', { resourceType: 'Bundle', type: 'transaction', entry });
  expect(answer.status).toBe(200);
});

afterAll(async () => {
  await server.stop();
});

async function found(form: string): Promise<readonly string[]> {
  const { json, status } = await server.search('Procedure', form);
  expect(status).toBe(200);
  return (json.entry ?? []).map((entry: { resource: { id: string } }) => entry.resource.id);
}

describe('date prefixes, against HL7 FHIR R4 Search, sections "Prefixes" and "date"', () => {
  it.each([
    ['eq2013-01-14', ['jan-14-midnight', 'jan-14-ten', 'jan-14-whole-day'], ['jan-15-midnight']],
    ['2013-01-14', ['jan-14-midnight', 'jan-14-ten'], ['jan-15-midnight', 'from-jan-21']],
    ['ne2013-01-14', ['jan-15-midnight'], ['jan-14-midnight', 'jan-14-ten', 'undated']],
    ['lt2013-01-14T10:00', ['jan-14-whole-day', 'until-jan-21'], ['jan-14-ten']],
    ['gt2013-01-14T10:00', ['jan-14-whole-day', 'from-jan-21'], ['jan-14-midnight']],
    ['ge2013-03-14', ['from-jan-21', 'from-mar-15'], ['until-jan-21', 'undated']],
    ['le2013-03-14', ['from-jan-21', 'until-jan-21'], ['from-mar-15', 'undated']],
    ['sa2013-03-14', ['from-mar-15'], ['from-jan-21', 'until-jan-21']],
    ['eb2013-03-14', ['until-jan-21', 'jan-14-ten'], ['from-jan-21', 'from-mar-15']],
  ])('%s finds %j and not %j', async (value, included, excluded) => {
    const ids = await found(`date=${value}`);
    expect(ids).toEqual(expect.arrayContaining(included));
    for (const id of excluded) expect(ids).not.toContain(id);
  });

  it('leaves nothing between eq and ne of dated resources', async () => {
    const all = [...(await found('date=eq2013-01-14')), ...(await found('date=ne2013-01-14'))];
    const dated = Object.keys(TARGETS).filter((id) => id !== 'undated');
    expect(all.sort()).toEqual(dated.sort());
  });

  it('finds a period across new year in both years by overlap', async () => {
    expect(await found('date=gt2013-12-31&date=lt2014-01-02')).toContain('across-new-year');
    expect(await found('date=lt2014&date=ge2013')).toContain('across-new-year');
    expect(await found('date=eq2013')).not.toContain('across-new-year');
  });

  it('takes several values as or, and several parameters as and', async () => {
    expect(await found('date=2013-01-15,sa2013-03-14')).toEqual([
      'across-new-year',
      'from-mar-15',
      'jan-15-midnight',
    ]);
    expect(await found('date=ge2013-01-14&date=lt2013-01-15&date=eb2013-01-14T10:00')).toEqual([
      'jan-14-midnight',
    ]);
  });

  it('finds what has no date by :missing', async () => {
    expect(await found('date:missing=true')).toEqual(['undated']);
    expect(await found('date:missing=false')).not.toContain('undated');
  });

  it.each(['date=2013-02-30', 'date=ap2013', 'date=yesterday', 'date:above=2013', 'date='])(
    'refuses %s with 400, without saying it',
    async (form) => {
      const { status, json, text } = await server.search('Procedure', form);
      expect(status).toBe(400);
      expect(json.resourceType).toBe('OperationOutcome');
      expect(text).not.toContain('2013');
    },
  );
});

describe('order by date, against HL7 FHIR R4 Search, section "Sorting"', () => {
  it('goes up by the start and down by the end, and puts what has none last', async () => {
    const up = await found('_sort=date');
    expect(up.slice(0, 2)).toEqual(['until-jan-21', 'jan-14-midnight']);
    expect(up.at(-1)).toBe('undated');
    const down = await found('_sort=-date');
    expect(down.slice(0, 3)).toEqual(['from-jan-21', 'from-mar-15', 'across-new-year']);
    expect(down.at(-1)).toBe('undated');
  });

  it('goes by id, and by the time of the last change', async () => {
    const ids = Object.keys(TARGETS).sort();
    expect(await found('_sort=_id')).toEqual(ids);
    expect(await found('_sort=-_id')).toEqual(ids.toReversed());
    const changed = { resourceType: 'Procedure', id: 'undated', status: 'stopped' };
    expect((await server.put('/Procedure/undated', changed)).status).toBe(200);
    expect((await found('_sort=-_lastUpdated'))[0]).toBe('undated');
  });

  it('refuses an order that it does not know', async () => {
    const { status, json } = await server.search('Procedure', '_sort=status');
    expect([status, json.issue[0].code]).toEqual([400, 'not-supported']);
  });
});

describe('_lastUpdated, against HL7 FHIR R4 Search, section "_lastUpdated"', () => {
  it('finds by the time of the last change', async () => {
    const { json } = await server.get('/Procedure/jan-14-ten');
    const at: string = json.meta.lastUpdated;
    expect(await found(`_lastUpdated=${at}`)).toContain('jan-14-ten');
    expect(await found(`_lastUpdated=gt${at}`)).not.toContain('jan-14-ten');
    expect(await found(`_lastUpdated=ge${at}`)).toContain('jan-14-ten');
    expect(await found(`_lastUpdated=lt${at}`)).not.toContain('jan-14-ten');
  });
});
