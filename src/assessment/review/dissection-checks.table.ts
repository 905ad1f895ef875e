import { cite } from '../../references/index.js';
import type { ChecksOn } from './check.js';
import type { ReviewFacts } from './facts.js';
import { PRACTICE } from './practice.table.js';

/** The plane of the cut, vessels, injury and fluid: PC-30 to PC-36. */
export const DISSECTION_CHECKS: ChecksOn<ReviewFacts> = [
  {
    check: 'PC-30',
    severity: 'warning',
    title: 'high plane, deep margin not free',
    fields: ['/dissection/plane', '/findings/vm/state'],
    when: {
      plane: { is: ['superficial-submucosa', 'middle-submucosa'] },
      verticalMargin: { is: ['1', 'X'] },
    },
    says:
      'The dissection ran high in the submucosa, and the deep margin of the specimen is not ' +
      'proven free. A plane just above the muscle keeps this margin and meets fewer vessels.',
    cites: PRACTICE,
  },
  {
    check: 'PC-30',
    severity: 'note',
    title: 'high plane',
    fields: ['/dissection/plane'],
    when: { plane: { is: ['superficial-submucosa', 'middle-submucosa'] } },
    unless: [{ verticalMargin: { is: ['1', 'X'] } }],
    says:
      'The dissection ran high in the submucosa. A plane just above the muscle, with the muscle ' +
      'in view, keeps the deep margin and meets fewer vessels.',
    cites: PRACTICE,
  },
  {
    check: 'PC-31',
    severity: 'note',
    title: 'muscle not in view',
    fields: ['/dissection/muscleInView'],
    when: { muscleInView: { is: [false] } },
    says: 'The muscle layer was not in view; it should be seen while cutting.',
    cites: PRACTICE,
  },
  {
    check: 'PC-32',
    severity: 'note',
    title: 'not injected again',
    fields: ['/injection/repeated', '/times/firstIncisionAt', '/times/dissectionEndAt'],
    when: { injectedAgain: { is: [false] }, dissectionMin: { above: 30 } },
    says:
      'Fluid was injected once for {dissectionMin} minutes of dissection. ' +
      'Injecting again before further cuts keeps the cushion.',
    cites: PRACTICE,
  },
  {
    check: 'PC-33',
    severity: 'note',
    title: 'vessels sealed on the side of the specimen',
    fields: ['/safety/vessels/*/site'],
    when: { vesselsSealedAtSpecimenOnly: { is: [true] } },
    says: 'Vessels are best sealed at their root, on the side of the muscle.',
    cites: PRACTICE,
  },
  {
    check: 'PC-34',
    severity: 'warning',
    title: 'clip on a vessel during the dissection',
    fields: ['/safety/clips/*/phase', '/safety/clips/*/purpose'],
    when: { clipOnVesselDuring: { is: [true] } },
    says:
      'A clip on a vessel during the dissection conducts current and stands in the way; ' +
      'coagulation is usual. If it closed a perforation, please record that as its purpose.',
    cites: PRACTICE,
  },
  {
    check: 'PC-35',
    severity: 'warning',
    title: 'injury of the muscle left open',
    fields: ['/safety/muscleInjury', '/safety/closure/kind'],
    when: { muscleInjury: { is: ['III', 'IV', 'V'] }, closure: { is: ['none'] } },
    says:
      'Muscle injury of grade {muscleInjury} is recorded and no closure. ' +
      'From grade III on the place is clipped where that is possible.',
    cites: [cite('burgess2017', 'grades III to V clipped where possible', 'published')],
  },
  {
    check: 'PC-36',
    severity: 'warning',
    title: 'nothing injected',
    fields: ['/injection/totalMl'],
    when: {
      injectedMl: { atMost: 0 },
      outcome: { is: ['en-bloc', 'piecemeal', 'abandoned'] },
    },
    says: 'The volume injected is 0 ml. Please look whether it was left out.',
    cites: PRACTICE,
  },
];
