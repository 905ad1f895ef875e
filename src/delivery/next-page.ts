import { recordsAt, textAt } from './json.js';

/**
 * The path of the next page below the base of the server. A link to anywhere else is not followed:
 * our credentials go to no other place than the one that was configured.
 *
 * Source: FHIR R4, RESTful API, "Paging".
 *
 * @returns undefined on the last page
 */
export function nextPath(body: unknown, baseUrl: string): string | 'elsewhere' | undefined {
  const link = recordsAt(body, 'link').find(({ relation }) => relation === 'next');
  const url = textAt(link, 'url');
  if (url === undefined) return undefined;
  const base = new URL(baseUrl);
  const next = URL.canParse(url, `${baseUrl}/`) ? new URL(url, `${baseUrl}/`) : undefined;
  const root = base.pathname.replace(/\/$/, '');
  if (next === undefined || next.origin !== base.origin) return 'elsewhere';
  const below = next.pathname.slice(root.length);
  const isBelow = next.pathname.startsWith(root) && (below === '' || below.startsWith('/'));
  return isBelow ? `${below}${next.search}` : 'elsewhere';
}
