import type { UnitSettings } from '../../contract/index.js';
import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { Test } from '../../rules/index.js';
import type { ChecksOn } from './check.js';
import type { ReviewFacts } from './facts.js';
import { PRACTICE } from './practice.table.js';

/** From which share of the circumference, in percent, a wound counts as wide. */
interface Reading {
  readonly reading: UnitSettings['strictureProphylaxis'];
  readonly wide: Test<number>;
  readonly cites: readonly Citation[];
}

const READINGS: readonly Reading[] = [
  {
    reading: 'above-three-quarters',
    wide: { above: 75 },
    cites: [cite('korea2020', 'statement E6: more than three quarters', 'published')],
  },
  {
    reading: 'from-three-quarters',
    wide: { atLeast: 75 },
    cites: [cite('jes2022', 'three quarters or more, second source', 'recalled')],
  },
];

/** Wide wounds of the oesophagus: PC-45 and PC-46, once for each reading of the threshold. */
const STRICTURE_CHECKS: ChecksOn<ReviewFacts> = READINGS.flatMap(({ reading, wide, cites }) => {
  const when = {
    organ: { is: ['oesophagus'] },
    prophylaxisReading: { is: [reading] },
    defectPercent: wide,
  } as const;
  const fields = ['/lesion/organ', '/defect/circumferencePercent'];
  return [
    {
      check: 'PC-45',
      severity: 'warning',
      title: `wide wound without prophylaxis of a stricture, ${reading}`,
      fields: [...fields, '/safety/stricturePrevention/*/measure'],
      when: { ...when, prophylaxisGiven: { is: [false] } },
      says:
        'The wound takes {defectPercent} % of the circumference, and no prophylaxis of a ' +
        'stricture is recorded.',
      cites,
    },
    {
      check: 'PC-46',
      severity: 'warning',
      title: `wide wound without any planned look, ${reading}`,
      fields,
      when: { ...when, firstLook: { is: ['none'] } },
      says:
        'The wound takes {defectPercent} % of the circumference, and no early look for a ' +
        'stricture is planned.',
      cites: PRACTICE,
    },
    {
      check: 'PC-46',
      severity: 'warning',
      title: `wide wound, first look planned late, ${reading}`,
      fields,
      when: { ...when, firstLookWeeks: { above: 6 } },
      says:
        'The wound takes {defectPercent} % of the circumference, and the first look is planned ' +
        'after {firstLookWeeks} weeks. A look within 6 weeks finds a stricture early.',
      cites: PRACTICE,
    },
  ];
});

/** The end of the procedure: PC-40 to PC-47. */
export const CLOSING_CHECKS: ChecksOn<ReviewFacts> = [
  {
    check: 'PC-40',
    severity: 'warning',
    title: 'specimen out, no inspection recorded',
    fields: ['/safety/siteInspection/inspectedAt', '/specimen/retrievedAt'],
    when: { retrievalTimeTold: { is: [true] }, inspectionTimeTold: { is: [false] } },
    says:
      'No inspection of the bed is recorded. Looking for bleeding and perforation comes before ' +
      'the specimen is taken out, while the scope is still there.',
    cites: PRACTICE,
  },
  {
    check: 'PC-40',
    severity: 'note',
    title: 'inspection after retrieval',
    fields: ['/safety/siteInspection/inspectedAt', '/specimen/retrievedAt'],
    when: { inspectedAfterRetrievalMin: { above: 0 } },
    says:
      'The bed was inspected after the specimen had been taken out. Looking for bleeding and ' +
      'perforation first is safer, because the scope is still there.',
    cites: PRACTICE,
  },
  {
    check: 'PC-41',
    severity: 'note',
    title: 'visible vessels left',
    fields: ['/safety/siteInspection/visibleVessels', '/safety/siteInspection/coagulated'],
    when: { visibleVessels: { is: [true] }, vesselsCoagulated: { is: [false] } },
    says: 'Visible vessels in the bed were left untreated.',
    cites: PRACTICE,
  },
  {
    check: 'PC-42',
    severity: 'warning',
    title: 'specimen not pinned',
    fields: ['/specimen/pinned'],
    when: { specimenRetrieved: { is: [true] }, specimenPinned: { is: [false] } },
    says: 'The specimen was not pinned; its size and margins become unreliable.',
    cites: PRACTICE,
  },
  {
    check: 'PC-43',
    severity: 'note',
    title: 'specimen without orientation',
    fields: ['/specimen/oriented'],
    when: { specimenRetrieved: { is: [true] }, specimenOriented: { is: [false] } },
    says: 'Neither end of the specimen was marked; a mark tells the oral from the anal side.',
    cites: PRACTICE,
  },
  {
    check: 'PC-44',
    severity: 'note',
    title: 'two antiplatelet drugs continued on advice',
    fields: [
      '/before/antithrombotics/*/class',
      '/before/antithrombotics/*/decision',
      '/before/antithrombotics/*/advisedBy',
    ],
    when: { dualAntiplatelet: { is: ['with advice'] } },
    says:
      'Aspirin and a P2Y12 inhibitor were both continued on the advice of the cardiologist. ' +
      'This is accepted, with more bleeding to be expected.',
    cites: PRACTICE,
  },
  {
    check: 'PC-44',
    severity: 'warning',
    title: 'two antiplatelet drugs continued without recorded advice',
    fields: [
      '/before/antithrombotics/*/class',
      '/before/antithrombotics/*/decision',
      '/before/antithrombotics/*/advisedBy',
    ],
    when: { dualAntiplatelet: { is: ['without advice'] } },
    says:
      'Aspirin and a P2Y12 inhibitor were both continued, and no advice of a cardiologist is ' +
      'recorded. With such advice this is accepted; please record who gave it.',
    cites: PRACTICE,
  },
  ...STRICTURE_CHECKS,
  {
    check: 'PC-47',
    severity: 'note',
    title: 'H. pylori not known',
    fields: ['/lesion/organ', '/before/helicobacterPylori'],
    when: { organ: { is: ['stomach'] }, helicobacterPylori: { is: ['unknown'] } },
    says: 'Whether H. pylori is present is not known.',
    cites: PRACTICE,
  },
];
