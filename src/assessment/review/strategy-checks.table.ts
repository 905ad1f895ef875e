import type { ChecksOn } from './check.js';
import type { ReviewFacts } from './facts.js';
import { PRACTICE } from './practice.table.js';

/** Where and how the cut began, and the course of both sides: PC-20 to PC-27. */
export const STRATEGY_CHECKS: ChecksOn<ReviewFacts> = [
  {
    check: 'PC-20',
    severity: 'note',
    title: 'oesophagus, first cut not on the anal side',
    fields: ['/lesion/organ', '/incision/firstSide'],
    when: { organ: { is: ['oesophagus'] }, firstSide: { is: ['oral', 'lateral'] } },
    says:
      'In the oesophagus the first cut usually lies on the anal side, ' +
      'which gives the dissection an end point.',
    cites: PRACTICE,
  },
  {
    check: 'PC-21',
    severity: 'note',
    title: 'oesophagus, neither full circle nor tunnel',
    fields: ['/lesion/organ', '/incision/strategy'],
    when: { organ: { is: ['oesophagus'] }, strategy: { is: ['partial', 'pocket'] } },
    says: 'In the oesophagus a full circle is usually cut first, often followed by a tunnel.',
    cites: PRACTICE,
  },
  {
    check: 'PC-22',
    severity: 'note',
    title: 'stomach, not the whole circle first',
    fields: ['/lesion/organ', '/incision/strategy'],
    when: { organ: { is: ['stomach'] }, strategy: { is: ['partial'] } },
    says: 'In the stomach the whole circle is usually cut before the dissection begins.',
    cites: PRACTICE,
  },
  {
    check: 'PC-23',
    severity: 'note',
    title: 'colon, whole circle first',
    fields: ['/lesion/organ', '/incision/strategy'],
    when: { organ: { is: ['colon'] }, strategy: { is: ['circumferential'] } },
    says:
      'In the colon the cut is usually made step by step from the anal side, ' +
      'because a full circle lets the fluid escape.',
    cites: PRACTICE,
  },
  {
    check: 'PC-24',
    severity: 'note',
    title: 'large bowel, first cut not on the anal side',
    fields: ['/lesion/organ', '/incision/firstSide', '/incision/approach', '/incision/strategy'],
    when: {
      organ: { is: ['colon', 'rectum'] },
      firstSide: { is: ['oral', 'lateral'] },
      approach: { is: ['forward'] },
    },
    unless: [{ strategy: { is: ['pocket'] }, firstSide: { is: ['oral'] } }],
    says: 'With a forward view the first cut in the large bowel usually lies on the anal side.',
    cites: PRACTICE,
  },
  {
    check: 'PC-25',
    severity: 'note',
    title: 'lesion on the low side, patient not turned',
    fields: [
      '/position/lesionSide',
      '/position/changed',
      '/times/firstIncisionAt',
      '/times/dissectionEndAt',
    ],
    when: {
      lesionSide: { is: ['dependent'] },
      patientTurned: { is: [false] },
      dissectionMin: { above: 60 },
    },
    says:
      'The lesion lay on the low side for {dissectionMin} minutes of dissection. Turning the ' +
      'patient so that the flap hangs away from the wound often helps.',
    cites: PRACTICE,
  },
  {
    check: 'PC-26',
    severity: 'note',
    title: 'one side far ahead',
    fields: ['/dissection/pauses/*/leftPercent', '/dissection/pauses/*/rightPercent'],
    when: { unevenPoints: { above: 40 } },
    says:
      'At a pause one side was {unevenPoints} points of percent ahead of the other. ' +
      'The side that remains then loses its traction.',
    cites: PRACTICE,
  },
  {
    check: 'PC-27',
    severity: 'note',
    title: 'orientation lost, gas not let out',
    fields: ['/dissection/incidents/*/kind'],
    when: { orientationLeftLost: { is: [true] } },
    says:
      'Orientation was lost. Letting the gas out and looking afresh is advised before going on; ' +
      'the record does not show it.',
    cites: PRACTICE,
  },
];
