import type { ChecksOn } from './check.js';
import type { ReviewFacts } from './facts.js';
import { PRACTICE } from './practice.table.js';

/** Endoscope, fluid and gas: PC-10 to PC-17. PC-12 and PC-15 are refused by the contract. */
export const EQUIPMENT_CHECKS: ChecksOn<ReviewFacts> = [
  {
    check: 'PC-10',
    severity: 'warning',
    title: 'no cap',
    fields: ['/equipment/endoscope/cap'],
    when: {
      capFitted: { is: [false] },
      outcome: { is: ['en-bloc', 'piecemeal', 'abandoned'] },
    },
    says: 'A transparent cap is needed to open the submucosa. Was there really none?',
    cites: PRACTICE,
  },
  {
    check: 'PC-11',
    severity: 'warning',
    title: 'viscous fluid through the knife',
    fields: ['/equipment/knives/*/injectionChannel', '/injection/routes/*', '/injection/fluids/*'],
    when: { viscousThroughKnife: { is: [true] } },
    says:
      'Viscous fluid does not pass the narrow channel of a knife; saline with indigo carmine ' +
      'does. Please look whether route and fluid are right.',
    cites: PRACTICE,
  },
  {
    check: 'PC-13',
    severity: 'note',
    title: 'no dye in the fluid',
    fields: ['/injection/dye'],
    when: { dye: { is: ['none'] } },
    says: 'Without dye in the fluid the plane of the submucosa is harder to see.',
    cites: PRACTICE,
  },
  {
    check: 'PC-14',
    severity: 'warning',
    title: 'unusual channel of a gastroscope',
    fields: ['/equipment/endoscope/kind', '/equipment/endoscope/channelMm'],
    when: { endoscopeKind: { is: ['gastroscope'] }, channelMm: { above: 0 } },
    unless: [{ channelMm: { is: [2.8, 3.2, 3.7, 3.8] } }],
    says:
      'A channel of {channelMm} mm is unusual for a gastroscope; most have 2.8 or 3.2 mm. ' +
      'Please look whether the number is right.',
    cites: PRACTICE,
  },
  {
    check: 'PC-16',
    severity: 'note',
    title: 'gastroscope turned back in the large bowel',
    fields: ['/equipment/endoscope/kind', '/position/retroflexed', '/lesion/organ'],
    when: {
      endoscopeKind: { is: ['gastroscope'] },
      organ: { is: ['colon', 'rectum'] },
      retroflexed: { is: [true] },
    },
    says:
      'A gastroscope bends about 90 degrees downwards, a colonoscope 180. ' +
      'Please look whether instrument and manoeuvre are right.',
    cites: PRACTICE,
  },
  {
    check: 'PC-17',
    severity: 'note',
    title: 'room air',
    fields: ['/equipment/gas'],
    when: { gas: { is: ['air'] } },
    says: 'Room air is recorded; carbon dioxide is usual for long dissections.',
    cites: PRACTICE,
  },
];
