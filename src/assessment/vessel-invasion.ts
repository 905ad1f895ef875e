import type { PathologyFields } from '../contract/index.js';
import { determined, type Finding, indeterminate } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { WITHIN_EPITHELIUM } from './vessel-invasion.table.js';

/** `not-applicable`: a lesion within the epithelium, which reaches no vessel. */
export type VesselInvasion = 'absent' | 'present' | 'not-assessable' | 'not-applicable';

const EITHER = cite('esdPractice', 'lymphovascular invasion: of either kind of vessel', 'recalled');

/**
 * Lymphatic and venous invasion taken together: present if either is, absent only if both are.
 *
 * Source: common practice, no source.
 * Indeterminate: when one was not told and the other does not show invasion.
 */
export function vesselInvasion({ findings = {} }: PathologyFields): Finding<VesselInvasion> {
  const { ly, v, histology } = findings;
  if (ly === '1' || v === '1') return determined('present', [EITHER]);
  if (ly === '0' && v === '0') return determined('absent', [EITHER]);
  if (WITHIN_EPITHELIUM.includes(histology) && histology !== undefined) {
    return determined('not-applicable', [EITHER]);
  }
  const missing = [
    ...(ly === undefined ? ['pathology.findings.ly'] : []),
    ...(v === undefined ? ['pathology.findings.v'] : []),
  ];
  return missing.length > 0 ? indeterminate(missing) : determined('not-assessable', [EITHER]);
}
