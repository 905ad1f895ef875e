import type { UnitSettings } from '../contract/index.js';
import type { TargetPermissions } from '../delivery/index.js';
import type { LogLevel } from '../http/index.js';

/** All that the process is told by its surroundings, checked and frozen. */
export interface Config {
  readonly host: string;
  readonly port: number;
  readonly production: boolean;
  readonly dataDir: string;
  /** Absent: our own PostgreSQL in the data folder. A secret. */
  readonly databaseUrl: string | undefined;
  readonly fhir: {
    /** Without a slash at its end; absent with the sandbox. */
    readonly baseUrl: string | undefined;
    /** A secret. */
    readonly token: string | undefined;
    readonly mode: 'auto' | 'client-id' | 'conditional';
    readonly allowed: TargetPermissions;
    readonly entryLimit: number | undefined;
  };
  readonly sandbox: boolean;
  /** Absent: made at the first start, in the data folder. A secret. */
  readonly siteSecret: string | undefined;
  readonly unit: UnitSettings;
  readonly keysFile: string;
  readonly keyCount: number;
  readonly logLevel: LogLevel;
  readonly limits: {
    readonly bodyBytes: number;
    readonly headersMs: number;
    readonly requestMs: number;
    readonly graceMs: number;
    readonly connections: number;
  };
}
