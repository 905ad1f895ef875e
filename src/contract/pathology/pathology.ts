import { z } from 'zod';
import { revision, source } from '../envelope.js';
import type { DeepReadonly } from '../read-only.js';
import { identifier, instant, oneOf, wholeIn } from '../scalars.js';
import { ancillary, background, findings } from './findings.js';
import { specimen } from './specimen.js';
import * as words from './words.table.js';

/** The report as a document of the laboratory. */
const report = z.strictObject({
  status: oneOf(words.REPORT_STATUSES),
  version: wholeIn({ from: 1, to: 1000 }).describe(
    '1 until the first final report is out; each amendment counts one more',
  ),
  reportedAt: instant.optional().describe('when this version was signed'),
  amendmentReason: oneOf(words.AMENDMENT_REASONS)
    .optional()
    .describe('why there is more than one version'),
});

/**
 * The report of the laboratory on the specimen of one dissection, natural key case + accession.
 * Lengths in mm unless the name says um; instants carry their offset; a list that is absent was
 * not told, an empty list says "none".
 */
export const pathologySchema = z.strictObject({
  schema: z.literal('pathology/1'),
  source,
  case: identifier.describe('the dissection that the specimen comes from'),
  patient: identifier,
  accession: identifier.describe('number of the specimen or report in the laboratory'),
  revision: revision.describe('of this message, for one case and accession'),
  sentAt: instant,
  laboratory: identifier.optional(),
  pathologist: identifier.optional().describe('a practitioner number, not a name'),
  report,
  specimen: specimen.optional(),
  findings: findings.optional(),
  background: background.optional(),
  ancillary: ancillary.optional(),
});

export type PathologyFields = DeepReadonly<z.infer<typeof pathologySchema>>;
