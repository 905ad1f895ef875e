import type { IncomingMessage, ServerResponse } from 'node:http';
import express, {
  type ErrorRequestHandler,
  type Express,
  type IRoute,
  type RequestHandler,
} from 'express';
import helmet from 'helmet';
import { accessTo } from './access.table.js';
import { authorise } from './authorise.js';
import { refusalOf } from './error-refusal.js';
import { exchangeOf, note } from './exchange.js';
import type { Authenticator } from './keys/authenticator.js';
import type { Log } from './log/create-log.js';
import { logExchange } from './log-exchange.js';
import { Refused } from './problem-document.js';
import { RequestCut, readBody } from './read-body.js';
import type { Parts, Route } from './route.js';
import { bookFollowUp } from './routes/book-follow-up.js';
import { createFeed, listFeeds, readFeed, revokeFeed } from './routes/feeds.js';
import { listFollowUps, readFollowUp } from './routes/follow-ups.js';
import { livez, readyz } from './routes/health.js';
import { readMeasureReport } from './routes/measure-report.js';
import { messageRoutes } from './routes/message-routes.js';
import { readChart } from './routes/outcome-charts.js';
import {
  exportCsv,
  exportNdjson,
  exportParquet,
  readDictionary,
  readOutcomes,
  readReport,
  readSeries,
} from './routes/outcomes.js';
import { readBundle, readCase } from './routes/read-case.js';
import { searchCases } from './routes/search-cases.js';
import { refusalReply, type SendLimits, send } from './send.js';

/** Everything that the routes need of the world. */
export interface AppParts extends Parts {
  readonly auth: Authenticator;
  readonly log: Log;
  readonly limits: SendLimits;
  readonly clock: { monotonicMs(): number };
}

/** Fixed paths stand before those with an id in them. */
const ROUTES: readonly Route[] = [
  livez,
  readyz,
  ...messageRoutes,
  searchCases,
  readCase,
  readBundle,
  listFollowUps,
  createFeed,
  listFeeds,
  readFeed,
  revokeFeed,
  readFollowUp,
  bookFollowUp,
  readOutcomes,
  readSeries,
  readReport,
  readMeasureReport,
  readDictionary,
  exportCsv,
  exportNdjson,
  exportParquet,
  readChart,
];

/** The HTTP interface. Whoever mounts it must not read bodies before it. */
export function createApp(parts: AppParts, routes: readonly Route[] = ROUTES): Express {
  const app = express();
  app.disable('x-powered-by');
  app.disable('etag');
  app.set('query parser', false);
  app.enable('case sensitive routing');
  app.enable('strict routing');
  app.use(begin(parts));
  app.use(helmet({ contentSecurityPolicy: { useDefaults: false, directives: NOTHING } }));
  for (const path of new Set(routes.map((route) => route.path))) {
    const here = routes.filter((route) => route.path === path);
    const place = app.route(path);
    for (const route of here) mount(place, route, parts);
    place.all(() => Promise.reject(wrongMethod(here)));
  }
  app.use(() => Promise.reject(new Refused(NOWHERE)));
  app.use(onError(parts));
  return app;
}

const NOTHING = { defaultSrc: ["'none'"], frameAncestors: ["'none'"] };

const NOWHERE = { problem: 'not-found', detail: 'No such route.' } as const;

function begin({ clock, health, log }: AppParts): RequestHandler {
  return (request, response, next) => {
    exchangeOf(request, clock.monotonicMs());
    response.once('close', () => logExchange(request, response, log, clock.monotonicMs()));
    response.setHeader('Cache-Control', 'no-store');
    if (!health.accepting()) response.setHeader('Connection', 'close');
    next();
  };
}

function mount(place: IRoute, route: Route, parts: AppParts): void {
  const access = accessTo(route.method, route.path);
  const handler: RequestHandler = async (request, response) => {
    note(request, { route: route.path });
    const caller = await authorise(request, access, parts.auth);
    const reply = await route.answer(
      {
        caller,
        body: () => readBody(request, parts.limits.bodyBytes),
        param: (name) => textOf(request.params[name]),
        query: () => /\?(.*)$/s.exec(request.url)?.[1] ?? '',
        header: (name) => request.get(name),
        note: (noted) => note(request, noted),
      },
      parts,
    );
    send(request, response, reply, parts.limits);
  };
  switch (route.method) {
    case 'GET':
      place.get(handler);
      return;
    case 'POST':
      place.post(handler);
  }
}

const textOf = (param: string | readonly string[] | undefined): string =>
  typeof param === 'string' ? param : '';

/** Source: RFC 9110 section 15.5.6 (Allow), 9.1 (what has GET has HEAD). */
function wrongMethod(offered: readonly Route[]): Refused {
  const Allow = offered
    .flatMap(({ method }) => (method === 'GET' ? ['GET', 'HEAD'] : [method]))
    .join(', ');
  return new Refused({
    problem: 'method-not-allowed',
    detail: `Offered here: ${Allow}.`,
    headers: { Allow },
  });
}

function onError({ log, limits }: AppParts): ErrorRequestHandler {
  return (error: unknown, request: IncomingMessage, response: ServerResponse, _next) => {
    if (error instanceof RequestCut || response.headersSent) {
      response.destroy();
      return;
    }
    const { correlationId, traceId } = exchangeOf(request);
    const refusal = refusalOf(error);
    if (refusal.problem === 'internal-error') {
      log.error({ event: 'request-failed', correlationId, traceId, err: error });
    }
    note(request, { class: refusal.problem });
    send(request, response, refusalReply(refusal, correlationId), limits);
  };
}
