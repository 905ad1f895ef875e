import type { ReportMessage } from '../record/index.js';

type Reason = NonNullable<ReportMessage['fields']['report']['amendmentReason']>;

/**
 * What an amendment does to what it changes: add to it, or put it right.
 *
 * Source: FHIR R4, code systems observation-status and diagnostic-report-status: amended is any
 * change after final, corrected one that puts an error right; which reason is which: project rule.
 */
export const AMENDMENTS: Readonly<Record<Reason, 'amended' | 'corrected'>> = {
  'further-sections': 'amended',
  'further-stains': 'amended',
  'second-opinion': 'amended',
  'transcription-error': 'corrected',
  'wrong-finding': 'corrected',
  'wrong-specimen': 'corrected',
};
