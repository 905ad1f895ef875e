import type { Role } from '../contract/index.js';

/**
 * Who may call what. A route that is not listed here lets nobody in; `open` needs no key.
 * A note system sees and sends the cases of its own source alone.
 */
export const ACCESS = {
  'GET /livez': 'open',
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
  // The secret in the address is the key: calendars send no other.
  'GET /follow-ups/feeds/:token.ics': 'open',
} as const satisfies Readonly<Record<string, 'open' | readonly Role[]>>;

/** @returns the roles that may call, none for a route that was not declared */
export function accessTo(method: string, path: string): 'open' | readonly Role[] {
  const declared: Readonly<Record<string, 'open' | readonly Role[]>> = ACCESS;
  const name = `${method} ${path}`;
  return Object.hasOwn(declared, name) ? (declared[name] ?? []) : [];
}
