import { cite } from '../../references/index.js';
import type { ChecksOn } from './check.js';
import type { ReviewFacts } from './facts.js';
import { PRACTICE } from './practice.table.js';

/** Marks around the lesion and staining of its border: PC-01 to PC-07. */
export const PREPARATION_CHECKS: ChecksOn<ReviewFacts> = [
  {
    check: 'PC-01',
    severity: 'warning',
    title: 'marks close to the lesion',
    fields: ['/lesion/organ', '/markers/placed', '/markers/distanceMm'],
    when: {
      organ: { is: ['oesophagus', 'stomach', 'duodenum'] },
      markersPlaced: { is: [true] },
      markerDistanceMm: { below: 2 },
    },
    says:
      'The marks stand {markerDistanceMm} mm outside the lesion; 2 to 5 mm is usual. ' +
      'With so little room the cut may come close to the edge of the lesion.',
    cites: PRACTICE,
  },
  {
    check: 'PC-01',
    severity: 'note',
    title: 'marks far from the lesion',
    fields: ['/lesion/organ', '/markers/placed', '/markers/distanceMm'],
    when: {
      organ: { is: ['oesophagus', 'stomach', 'duodenum'] },
      markersPlaced: { is: [true] },
      markerDistanceMm: { above: 5 },
    },
    says:
      'The marks stand {markerDistanceMm} mm outside the lesion; 2 to 5 mm is usual. ' +
      'Marks further out make the wound larger.',
    cites: PRACTICE,
  },
  {
    check: 'PC-02',
    severity: 'note',
    title: 'marks out of sight of each other',
    fields: ['/markers/nextVisibleFromEach'],
    when: { nextMarkerVisible: { is: [false] } },
    says: 'When the next mark is in view from each mark, the cut keeps its course.',
    cites: PRACTICE,
  },
  {
    check: 'PC-03',
    severity: 'warning',
    title: 'no marks in oesophagus or stomach',
    fields: ['/lesion/organ', '/markers/placed'],
    when: {
      organ: { is: ['oesophagus', 'stomach'] },
      outcome: { is: ['en-bloc', 'piecemeal', 'abandoned'] },
      markersPlaced: { is: [false] },
    },
    says:
      'The record says that no marks were placed. ' +
      'In this organ the edge of the lesion fades once fluid has been injected.',
    cites: PRACTICE,
  },
  {
    check: 'PC-04',
    severity: 'note',
    title: 'marks in colon or rectum',
    fields: ['/lesion/organ', '/markers/placed'],
    when: { organ: { is: ['colon', 'rectum'] }, markersPlaced: { is: [true] } },
    says:
      'Marks are seldom needed in the large bowel, where the edge stays visible. ' +
      'They make sense around a flat or serrated edge.',
    cites: PRACTICE,
  },
  {
    check: 'PC-05',
    severity: 'warning',
    title: 'squamous lesion without iodine',
    fields: [
      '/lesion/organ',
      '/lesion/tumour',
      '/lesion/chromoendoscopy/*',
      '/before/iodineAllergy',
    ],
    when: {
      organ: { is: ['oesophagus'] },
      tumour: { is: ['squamous'] },
      iodineUsed: { is: [false] },
      iodineAllergyRecorded: { is: [false] },
    },
    says: 'No iodine staining is recorded. Iodine shows the true border of a squamous lesion.',
    cites: [
      cite('korea2020', 'statement E2: iodine or image-enhanced endoscopy for extent', 'published'),
      ...PRACTICE,
    ],
  },
  {
    check: 'PC-06',
    severity: 'note',
    title: 'gastric lesion without staining',
    fields: ['/lesion/organ', '/lesion/chromoendoscopy/*'],
    when: { organ: { is: ['stomach'] }, stainingUsed: { is: [false] } },
    says: 'No dye and no image enhancement are recorded for this gastric lesion.',
    cites: PRACTICE,
  },
  {
    check: 'PC-07',
    severity: 'warning',
    title: 'iodine below the oesophagus',
    fields: ['/lesion/organ', '/lesion/chromoendoscopy/*'],
    when: { organ: { is: ['stomach', 'colon', 'rectum'] }, iodineUsed: { is: [true] } },
    says:
      'Iodine stains squamous epithelium, and this organ has columnar mucosa. ' +
      'Please look whether organ and dye are right.',
    cites: PRACTICE,
  },
  {
    check: 'PC-07',
    severity: 'warning',
    title: 'iodine on Barrett mucosa',
    fields: ['/lesion/organ', '/lesion/tumour', '/lesion/chromoendoscopy/*'],
    when: {
      organ: { is: ['oesophagus'] },
      tumour: { is: ['barrett'] },
      iodineUsed: { is: [true] },
    },
    says:
      'Iodine stains squamous epithelium, and Barrett mucosa is columnar. ' +
      'Please look whether tumour and dye are right.',
    cites: PRACTICE,
  },
];
