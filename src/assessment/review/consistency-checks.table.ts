import type { ChecksOn } from './check.js';
import type { ReviewFacts } from './facts.js';
import { PRACTICE } from './practice.table.js';

const SPEED_FIELDS = [
  '/specimen/longAxisMm',
  '/specimen/shortAxisMm',
  '/times/firstIncisionAt',
  '/times/dissectionEndAt',
];

/**
 * Facts that go together badly, and may still be true: the consistency rules CC that are
 * warnings, and RC for one part of the record against another. `/findings` lies in the pathology
 * message, all other pointers in the case.
 */
export const CONSISTENCY_CHECKS: ChecksOn<ReviewFacts> = [
  {
    check: 'CC-04',
    severity: 'warning',
    title: 'submucosal invasion without its depth',
    fields: ['/findings/depth', '/findings/smDepthUm'],
    when: { invadesSubmucosa: { is: [true] }, smDepthTold: { is: [false] } },
    says:
      'The pathology report says submucosal invasion without its depth in micrometres. ' +
      'Please ask the pathologist: what follows often depends on it.',
    cites: PRACTICE,
  },
  {
    check: 'CC-08',
    severity: 'warning',
    title: 'bowel preparation in the upper tract',
    fields: ['/before/bowelPreparation', '/lesion/organ'],
    when: {
      organ: { is: ['oesophagus', 'stomach', 'duodenum'] },
      bowelPreparationTold: { is: [true] },
    },
    says:
      'Bowel preparation is recorded for a lesion of the upper tract. ' +
      'Please look whether the organ is right.',
    cites: PRACTICE,
  },
  {
    check: 'CC-12',
    severity: 'warning',
    title: 'oesophagus, far from the incisors',
    fields: ['/lesion/organ', '/lesion/distanceFromIncisorsCm'],
    when: { organ: { is: ['oesophagus'] }, distanceFromIncisorsCm: { above: 45 } },
    says:
      '{distanceFromIncisorsCm} cm from the incisors is far for the oesophagus. ' +
      'Please look whether distance and organ are right.',
    cites: PRACTICE,
  },
  {
    check: 'CC-12',
    severity: 'warning',
    title: 'rectum, far from the anal verge',
    fields: ['/lesion/organ', '/lesion/distanceFromAnalVergeCm'],
    when: { organ: { is: ['rectum'] }, distanceFromAnalVergeCm: { above: 20 } },
    says:
      '{distanceFromAnalVergeCm} cm from the anal verge is far for the rectum. ' +
      'Please look whether distance and organ are right.',
    cites: PRACTICE,
  },
  {
    check: 'CC-13',
    severity: 'warning',
    title: 'very slow',
    fields: SPEED_FIELDS,
    when: { speedCm2PerH: { below: 0.5 } },
    says:
      'Times and specimen give {speedCm2PerH} cm2 an hour, which is unusually slow. ' +
      'Please look whether times and size are right.',
    cites: PRACTICE,
  },
  {
    check: 'CC-13',
    severity: 'warning',
    title: 'very fast',
    fields: SPEED_FIELDS,
    when: { speedCm2PerH: { above: 60 } },
    says:
      'Times and specimen give {speedCm2PerH} cm2 an hour, which is unusually fast. ' +
      'Please look whether times and size are right.',
    cites: PRACTICE,
  },
  {
    check: 'CC-15',
    severity: 'warning',
    title: 'very small lesion',
    fields: ['/lesion/longAxisMm'],
    when: { lesionLongAxisMm: { below: 3 } },
    says: 'A lesion of {lesionLongAxisMm} mm is very small. Was it measured in cm?',
    cites: PRACTICE,
  },
  {
    check: 'CC-15',
    severity: 'warning',
    title: 'very large lesion',
    fields: ['/lesion/longAxisMm'],
    when: { lesionLongAxisMm: { above: 300 } },
    says: 'A lesion of {lesionLongAxisMm} mm is very large. Is the size really in mm?',
    cites: PRACTICE,
  },
  {
    check: 'RC-01',
    severity: 'warning',
    title: 'fixed before it was retrieved',
    fields: ['/specimen/retrievedAt', '/specimen/fixedAt'],
    when: { fixedAfterRetrievalMin: { below: 0 } },
    says: 'The specimen was fixed before it was retrieved. Please look at both times.',
    cites: PRACTICE,
  },
  {
    check: 'RC-03',
    severity: 'warning',
    title: 'perforation denied and described',
    fields: [
      '/safety/perforation/occurred',
      '/safety/perforation/sizeMm',
      '/safety/perforation/at',
    ],
    when: { perforated: { is: [false] }, perforationDescribed: { is: [true] } },
    says: 'No perforation is recorded, yet a size or a time of one. Please look which is right.',
    cites: PRACTICE,
  },
  {
    check: 'RC-04',
    severity: 'warning',
    title: 'en bloc, several pieces listed',
    fields: ['/resection/outcome', '/specimen/pieces'],
    when: { outcome: { is: ['en-bloc'] }, piecesListed: { atLeast: 2 } },
    says:
      'The resection is recorded as en bloc, and {piecesListed} pieces are listed. ' +
      'Please look which is right.',
    cites: PRACTICE,
  },
  {
    check: 'RC-05',
    severity: 'warning',
    title: 'age and date of birth',
    fields: ['/patient/ageYears', '/patient/bornOn'],
    when: { ageOffYears: { atLeast: 1 } },
    says: 'The age does not fit the date of birth on the day of the procedure.',
    cites: PRACTICE,
  },
];
