import { cite } from '../../references/index.js';

/** The field to which counts of tumour buds are brought. */
export const STANDARD_FIELD = {
  areaMm2: 0.785,
  cites: [cite('itbcc2016', 'buds per 0.785 mm2, as quoted', 'published')],
} as const;
