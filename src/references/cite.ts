import type { Basis, Citation } from '../kernel/index.js';
import type { WorkKey } from './bibliography.table.js';

/** Cites a work of the bibliography; an unknown key does not compile. */
export function cite(work: WorkKey, place: string, basis: Basis): Citation {
  return { work, place, basis };
}
