import type { Kysely } from 'kysely';

/** The newest version of each resource; its content lies with the versions. */
type ResourceTable = {
  type: string;
  id: string;
  version: number;
  /** Milliseconds since 1970-01-01T00:00:00Z. */
  updated_ms: number;
};

/** Every version that ever was. */
type VersionTable = {
  type: string;
  id: string;
  version: number;
  updated_ms: number;
  /** How it came: the HTTP method of its request. */
  method: string;
  /** The resource as JSON text, with its id and meta. */
  content: string;
};

/** What a newest version can be found by: one row for each value of each search parameter. */
type SearchValueTable = {
  type: string;
  id: string;
  param: string;
  /** Of a token, and of the identifier inside a reference; null when it has none. */
  system: string | null;
  code: string | null;
  /** Of a reference: Type/id for one of ours, else the address as it came. */
  target: string | null;
  target_id: string | null;
  /** Of a date: first millisecond within, first millisecond after. */
  low_ms: number | null;
  high_ms: number | null;
  /** Of a string, as it came, and without case and accents; of a uri as it came. */
  exact: string | null;
  folded: string | null;
};

/** The matches of a search whose answer has more than one page. */
type PageTable = {
  token: string;
  created_ms: number;
  type: string;
  /** The parameters as they were sent. */
  query: string;
  ids: string[];
};

export type SandboxTables = {
  resource: ResourceTable;
  version: VersionTable;
  search_value: SearchValueTable;
  page: PageTable;
};

export type SandboxDatabase = Kysely<SandboxTables>;

/** A database handle of any tables; the sandbox uses its own schema of it alone. */
export type AnyDatabase = Pick<Kysely<unknown>, 'withTables'>;

export const inSandbox = (db: AnyDatabase): SandboxDatabase =>
  db.withTables<SandboxTables>().withSchema('sandbox');
