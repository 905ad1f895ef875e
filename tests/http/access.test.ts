import { afterEach, describe, expect, it } from 'vitest';
import { ROLES, type Role } from '../../src/contract/index.js';
import {
  ACCESS,
  accessTo,
  createApp,
  createAuthenticator,
  KeysUnavailable,
  SILENT_LOG,
} from '../../src/http/index.js';
import { CASE_TEXT, jsonOf, type RunningApp, runApp, stopApps } from './running-app.js';
import { CASE_ID, createServiceDouble } from './service-double.js';

let app: RunningApp;
afterEach(stopApps);

const auth = createAuthenticator(() => Promise.resolve([]));
const parts = {
  service: createServiceDouble(),
  auth,
  log: SILENT_LOG,
  limits: { bodyBytes: 1_000, lingerMs: 10 },
  health: { accepting: () => true, fhirServer: () => ({ state: 'up' }) },
  clock: { monotonicMs: () => 0 },
};

/** Every route that the router really has, as `GET /path`. */
function mountedRoutes(): readonly string[] {
  return createApp(parts).router.stack.flatMap(({ route }) =>
    (route?.stack ?? [])
      .filter(({ method }) => method !== undefined)
      .map(({ method }) => `${method.toUpperCase()} ${route?.path}`),
  );
}

const ROUTES = mountedRoutes();
const GUARDED = ROUTES.filter((name) => accessTo(...split(name)) !== 'open');

function split(name: string): [string, string] {
  const [method = '', path = ''] = name.split(' ');
  return [method, path];
}

async function call(name: string, authorization: string | undefined): Promise<Response> {
  const [method, path] = split(name);
  return fetch(`${app.url}${path.replace(/:(caseId|id)/, CASE_ID)}`, {
    method,
    headers: {
      'content-type': 'application/json',
      ...(authorization === undefined ? {} : { authorization }),
    },
    ...(method === 'POST' ? { body: '{}' } : {}),
  });
}

/**
 * Who may call what. Source: project definition (table of routes and roles); liveness is open, and
 * the calendar, whose address holds its own secret.
 */
const PERMITTED: Readonly<Record<string, readonly Role[]>> = {
  'GET /readyz': ['operator'],
  'POST /cases': ['note-system'],
  'POST /cases/check': ['note-system'],
  'POST /pathology': ['note-system'],
  'POST /pathology/check': ['note-system'],
  'POST /events': ['note-system'],
  'POST /events/check': ['note-system'],
  'POST /examinations': ['note-system'],
  'POST /examinations/check': ['note-system'],
  'POST /withdrawals': ['note-system'],
  'POST /withdrawals/check': ['note-system'],
  'POST /cases/search': ['note-system', 'records-team'],
  'GET /cases/:caseId': ['note-system', 'records-team'],
  'GET /cases/:caseId/bundle': ['records-team'],
  'GET /follow-ups': ['scheduler', 'records-team'],
  'GET /follow-ups/:id': ['scheduler', 'records-team'],
  'POST /follow-ups/:id/booking': ['scheduler'],
  'POST /follow-ups/feeds': ['scheduler'],
  'GET /follow-ups/feeds': ['scheduler'],
  'POST /follow-ups/feeds/:id/revoke': ['scheduler'],
  'GET /outcomes': ['records-team'],
  'GET /outcomes/series': ['records-team'],
  'GET /outcomes/report': ['records-team'],
  'GET /outcomes/measure-report': ['records-team'],
  'GET /outcomes/dictionary': ['records-team'],
  'GET /outcomes/export.csv': ['records-team'],
  'GET /outcomes/export.ndjson': ['records-team'],
  'GET /outcomes/export.parquet': ['records-team'],
  'GET /outcomes/charts/:name.svg': ['records-team'],
};

/** An export that a unit hides is a 403 of another kind. */
const isNotPermitted = async (response: Response): Promise<boolean> =>
  response.status === 403 && String((await jsonOf(response))['type']).endsWith('/not-permitted');

describe('the routes of the router', () => {
  it('are those of the table and no other', () => {
    expect([...ROUTES].sort()).toEqual(Object.keys(ACCESS).sort());
    expect([...GUARDED].sort()).toEqual(Object.keys(PERMITTED).sort());
    const open = ROUTES.filter((name) => !GUARDED.includes(name));
    expect(open.sort()).toEqual(['GET /follow-ups/feeds/:token.ics', 'GET /livez']);
  });

  it.each(GUARDED)(
    '%s refuses without a key, with a wrong one and with another scheme',
    async (name) => {
      app = await runApp();
      const wrong = [
        undefined,
        '',
        'Bearer',
        `Bearer drk_${'A'.repeat(43)}`,
        'Bearer x',
        'Basic eDp5',
      ];
      for (const authorization of wrong) {
        const response = await call(name, authorization);
        expect(response.status).toBe(401);
        // RFC 9110 section 15.5.2: a 401 carries a challenge.
        expect(response.headers.get('www-authenticate')).toMatch(/^Bearer realm="/);
        expect((await jsonOf(response))['type']).toMatch(/\/not-authenticated$/);
      }
    },
  );

  it.each(GUARDED.flatMap((name) => ROLES.map((role) => ({ name, role }))))(
    '$name for $role is as the table says',
    async ({ name, role }) => {
      app = await runApp();
      const response = await call(name, `Bearer ${app.keys[role]}`);
      const refused = response.status === 401 || (await isNotPermitted(response));
      expect(refused).toBe(PERMITTED[name]?.includes(role) !== true);
    },
  );

  it('refuse everyone where no role was declared', async () => {
    expect(accessTo('GET', '/new')).toEqual([]);
    expect(accessTo('GET', '/constructor')).toEqual([]);
    const service = createServiceDouble();
    const route = {
      method: 'GET',
      path: '/new',
      answer: () => Promise.resolve({ status: 200, body: {} }),
    } as const;
    const holder = { authenticate: async () => ({ keyId: '00000000', role: 'operator' as const }) };
    const undeclared = createApp({ ...parts, service, auth: holder }, [route]);
    const server = undeclared.listen(0, '127.0.0.1');
    await new Promise((listening) => server.once('listening', listening));
    const address = server.address();
    const port = typeof address === 'object' ? address?.port : undefined;
    const response = await fetch(`http://127.0.0.1:${port}/new`, {
      headers: { authorization: 'Bearer x' },
    });
    expect(response.status).toBe(403);
    await new Promise((closed) => server.close(closed));
  });
});

describe('a guard that fails', () => {
  const failing = [
    { what: 'an error', error: new Error('patient EX-1'), status: 500 },
    { what: 'no key list', error: new KeysUnavailable('away'), status: 503 },
  ];
  it.each(failing)('lets nobody in: $what', async ({ error, status }) => {
    let asked = 0;
    app = await runApp({
      auth: { authenticate: () => Promise.reject(error) },
      service: {
        receive: () => {
          asked += 1;
          return Promise.reject(new Error('reached'));
        },
      },
    });
    expect((await app.post('/cases', CASE_TEXT)).status).toBe(status);
    expect(asked).toBe(0);
  });

  it('lets no note system in that has no source', async () => {
    const authenticate = async () => ({ keyId: '00000000', role: 'note-system' as const });
    app = await runApp({ auth: { authenticate } });
    expect((await app.get(`/cases/${CASE_ID}`)).status).toBe(500);
  });
});

describe('a source', () => {
  it('reads its own cases alone', async () => {
    app = await runApp();
    await app.post('/cases', CASE_TEXT);
    const own = await app.get(`/cases/${CASE_ID}`, { role: 'note-system' });
    const foreign = await app.get(`/cases/${CASE_ID}`, { key: app.otherKey });
    expect([own.status, foreign.status]).toEqual([200, 404]);
  });
});
