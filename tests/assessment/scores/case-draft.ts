import { type CaseFields, caseSchema } from '../../../src/contract/index.js';

const id = (value: string) => ({ system: 'urn:oid:2.999.1.2', value });

/** Parts of a case to change; what is left out stays out. */
export interface Parts {
  readonly patient?: object;
  readonly before?: object;
  readonly lesion: { readonly organ: string; readonly [field: string]: unknown };
  readonly lesionsInSession?: number;
  readonly scopeInAt?: string;
  readonly outcome?: string;
}

/** An invented case with the least that the contract asks for, and these parts. */
export function caseWith({
  patient,
  before,
  lesion,
  lesionsInSession,
  ...rest
}: Parts): CaseFields {
  const { scopeInAt = '2026-03-01T09:00:00+01:00', outcome = 'en-bloc' } = rest;
  return caseSchema.parse({
    schema: 'case/1',
    source: 'example-notes',
    case: id('EX-C-1'),
    patient: { ...id('EX-P-1'), ...patient },
    revision: 1,
    sentAt: '2026-12-31T12:00:00Z',
    ...(before === undefined ? {} : { before }),
    ...(lesionsInSession === undefined ? {} : { lesionsInSession }),
    lesion: { longAxisMm: 20, ...lesion },
    times: { scopeInAt, scopeOutAt: '2026-12-31T11:00:00Z' },
    resection: { outcome },
    team: { operator: id('EX-D-1') },
  });
}
