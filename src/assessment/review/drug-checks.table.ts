import { cite } from '../../references/index.js';
import type { ConditionOn } from '../../rules/index.js';
import type { ChecksOn } from './check.js';
import type { DrugFacts } from './drug-facts.js';
import { DRUG_STOP_CHECKS } from './drug-stop-checks.table.js';
import { PRACTICE } from './practice.table.js';

const AT = '/before/antithrombotics/*';
const STOPPED = {
  decision: { is: ['stopped', 'replaced'] },
} as const satisfies ConditionOn<DrugFacts>;
const P2Y12 = {
  drugClass: { is: ['p2y12-inhibitor'] },
  thromboticRisk: { is: ['high'] },
} as const satisfies ConditionOn<DrugFacts>;
const VKA = {
  drugClass: { is: ['vitamin-k-antagonist'] },
} as const satisfies ConditionOn<DrugFacts>;
const DOAC = { drugClass: { is: ['doac'] } } as const satisfies ConditionOn<DrugFacts>;

/** All but the cardiologist, and the neurologist after a stroke (common practice). */
const OTHERS = {
  is: ['haematologist', 'anaesthetist', 'referring-physician', 'endoscopist'],
} as const;

const ASPIRIN = {
  drugClass: { is: ['aspirin'] },
  ...STOPPED,
} as const satisfies ConditionOn<DrugFacts>;

const RESTART_FIELDS = [
  `${AT}/class`,
  `${AT}/decision`,
  `${AT}/restartedAt`,
  `${AT}/restartPlannedOn`,
];
const AFTER = '{guideline} restarts it after';
const ADVICE =
  'At high thrombotic risk {guideline} asks for the advice of a cardiologist on {drug}; ' +
  'the record names somebody else.';
const INR =
  'The INR without {drug} was {inrWhileStopped}; {guideline} asks for less than 1.5 before the ' +
  'procedure.';
const BRIDGING =
  'At high thrombotic risk {guideline} bridges {drug} with heparin; the record says that it ' +
  'was not bridged.';

/** Advice, INR, bridging and restart, by the edition of the unit; contradictory times of a drug. */
export const DRUG_CHECKS: ChecksOn<DrugFacts> = [
  ...DRUG_STOP_CHECKS,
  {
    check: 'AT-02',
    severity: 'warning',
    title: 'P2Y12 inhibitor at high risk, advice of another, bsg-esge-2016',
    fields: [`${AT}/class`, `${AT}/thromboticRisk`, `${AT}/advisedBy`],
    when: { ...P2Y12, edition: { is: ['bsg-esge-2016'] }, advisedBy: OTHERS },
    says: ADVICE,
    cites: [cite('bsgEsge2016', 'P2Y12 inhibitor, high risk: ask cardiologist', 'recalled')],
  },
  {
    check: 'AT-02',
    severity: 'warning',
    title: 'P2Y12 inhibitor at high risk, advice of another, bsg-esge-2021',
    fields: [`${AT}/class`, `${AT}/thromboticRisk`, `${AT}/advisedBy`],
    when: { ...P2Y12, edition: { is: ['bsg-esge-2021'] }, advisedBy: OTHERS },
    says: ADVICE,
    cites: [cite('bsgEsge2021', 'P2Y12 inhibitor, high risk: ask cardiologist', 'recalled')],
  },
  {
    check: 'AT-04',
    severity: 'warning',
    title: 'INR still high, bsg-esge-2016',
    fields: [`${AT}/class`, `${AT}/decision`, `${AT}/inr`, `${AT}/inrOn`, `${AT}/lastDoseAt`],
    when: {
      ...VKA,
      ...STOPPED,
      edition: { is: ['bsg-esge-2016'] },
      inrWhileStopped: { atLeast: 1.5 },
    },
    says: INR,
    cites: [cite('bsgEsge2016', 'warfarin: INR below 1.5, from memory', 'recalled')],
  },
  {
    check: 'AT-04',
    severity: 'warning',
    title: 'INR still high, bsg-esge-2021',
    fields: [`${AT}/class`, `${AT}/decision`, `${AT}/inr`, `${AT}/inrOn`, `${AT}/lastDoseAt`],
    when: {
      ...VKA,
      ...STOPPED,
      edition: { is: ['bsg-esge-2021'] },
      inrWhileStopped: { atLeast: 1.5 },
    },
    says: INR,
    cites: [cite('bsgEsge2021', 'warfarin: INR below 1.5, second source', 'recalled')],
  },
  {
    check: 'AT-05',
    severity: 'warning',
    title: 'vitamin K antagonist at high risk without bridging, bsg-esge',
    fields: [`${AT}/class`, `${AT}/thromboticRisk`, `${AT}/decision`, `${AT}/bridged`],
    when: {
      ...VKA,
      ...STOPPED,
      thromboticRisk: { is: ['high'] },
      edition: { is: ['bsg-esge-2016', 'bsg-esge-2021'] },
      bridged: { is: [false] },
    },
    says: BRIDGING,
    cites: [
      cite('bsgEsge2016', 'warfarin, high risk: heparin bridging', 'recalled'),
      cite('bsgEsge2021', 'warfarin, high risk: heparin bridging, narrower list', 'recalled'),
    ],
  },
  {
    check: 'AT-05',
    severity: 'warning',
    title: 'vitamin K antagonist at high risk without bridging, asia-pacific-2018',
    fields: [`${AT}/class`, `${AT}/thromboticRisk`, `${AT}/decision`, `${AT}/bridged`],
    when: {
      ...VKA,
      ...STOPPED,
      thromboticRisk: { is: ['high'] },
      edition: { is: ['asia-pacific-2018'] },
      bridged: { is: [false] },
    },
    says: BRIDGING,
    cites: [cite('asiaPacific2018', 'warfarin, high risk: bridging', 'published')],
  },
  {
    check: 'AT-05',
    severity: 'warning',
    title: 'direct oral anticoagulant with bridging, asia-pacific-2018',
    fields: [`${AT}/class`, `${AT}/decision`, `${AT}/bridged`],
    when: {
      ...DOAC,
      ...STOPPED,
      edition: { is: ['asia-pacific-2018'] },
      bridged: { is: [true] },
    },
    says: 'Heparin was given in place of {drug}; {guideline} asks for no bridging of it.',
    cites: [cite('asiaPacific2018', 'direct oral anticoagulant: no bridging', 'published')],
  },
  {
    check: 'AT-07',
    severity: 'warning',
    title: 'direct oral anticoagulant restarted early, bsg-esge-2016',
    fields: RESTART_FIELDS,
    when: {
      ...DOAC,
      ...STOPPED,
      edition: { is: ['bsg-esge-2016'] },
      restartDays: [{ atLeast: 0 }, { below: 1 }],
    },
    says: `Restart of {drug} is recorded for the day of the procedure; ${AFTER} 24 to 48 hours.`,
    cites: [cite('bsgEsge2016', 'restart after 24 to 48 hours, from memory', 'recalled')],
  },
  {
    check: 'AT-07',
    severity: 'warning',
    title: 'direct oral anticoagulant restarted early, bsg-esge-2021',
    fields: RESTART_FIELDS,
    when: {
      ...DOAC,
      ...STOPPED,
      edition: { is: ['bsg-esge-2021'] },
      restartDays: [{ atLeast: 0 }, { below: 2 }],
    },
    says: `Restart of {drug} is recorded {restartDays} days after the procedure; ${AFTER} 2 to 3 days.`,
    cites: [cite('bsgEsge2021', 'restart after 2 to 3 days, from memory', 'recalled')],
  },
  {
    check: 'AT-08',
    severity: 'warning',
    title: 'aspirin stopped, asia-pacific-2018',
    fields: [`${AT}/class`, `${AT}/decision`],
    when: { ...ASPIRIN, edition: { is: ['asia-pacific-2018'] } },
    says: 'Aspirin was stopped; {guideline} continues it through the procedure.',
    cites: [
      cite('asiaPacific2018', 'high-bleeding-risk table, dissection not named there', 'published'),
    ],
  },
  {
    check: 'AT-08',
    severity: 'warning',
    title: 'aspirin stopped beside a P2Y12 inhibitor, bsg-esge-2016',
    fields: [`${AT}/class`, `${AT}/decision`],
    when: { ...ASPIRIN, besideP2Y12: { is: [true] }, edition: { is: ['bsg-esge-2016'] } },
    says:
      'Aspirin was stopped in a patient who also takes a P2Y12 inhibitor; {guideline} keeps ' +
      'aspirin while the other drug is stopped.',
    cites: [cite('bsgEsge2016', 'keep aspirin if dual', 'published')],
  },
  {
    check: 'RC-02',
    severity: 'warning',
    title: 'stopped, yet taken after the scope was in',
    fields: [`${AT}/decision`, `${AT}/lastDoseAt`, '/times/scopeInAt'],
    when: { ...STOPPED, hoursStopped: { below: 0 } },
    says:
      'The last dose of {drug} lies after the beginning of the procedure, although it was ' +
      'stopped. Please look at both times.',
    cites: PRACTICE,
  },
  {
    check: 'RC-02',
    severity: 'warning',
    title: 'restarted before the last dose',
    fields: [`${AT}/lastDoseAt`, `${AT}/restartedAt`],
    when: { ...STOPPED, restartedAfterLastDoseMin: { below: 0 } },
    says: 'The restart of {drug} lies before its last dose. Please look at both times.',
    cites: PRACTICE,
  },
  {
    check: 'RC-02',
    severity: 'warning',
    title: 'restarted before the procedure ended',
    fields: [`${AT}/restartedAt`, '/times/scopeOutAt'],
    when: { ...STOPPED, restartedAfterEndMin: { below: 0 } },
    unless: [{ restartedAfterLastDoseMin: { below: 0 } }],
    says: 'The restart of {drug} lies before the end of the procedure. Please look at both times.',
    cites: PRACTICE,
  },
  {
    check: 'RC-02',
    severity: 'warning',
    title: 'restart planned before the day of the procedure',
    fields: [`${AT}/restartPlannedOn`, '/times/scopeOutAt'],
    when: { ...STOPPED, plannedRestartDays: { below: 0 } },
    says: 'The restart of {drug} is planned for a day before the procedure. Please look again.',
    cites: PRACTICE,
  },
];
