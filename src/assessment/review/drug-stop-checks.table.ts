import type { UnitSettings } from '../../contract/index.js';
import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { ConditionOn } from '../../rules/index.js';
import type { Check, ChecksOn } from './check.js';
import type { DrugFacts } from './drug-facts.js';

type Edition = UnitSettings['antithromboticEdition'];
type Which = ConditionOn<DrugFacts>;

/** How long before the procedure the last dose of a drug is to lie. */
interface StopRule {
  readonly check: Check['check'];
  readonly edition: Edition;
  readonly which: Which;
  readonly unless?: readonly Which[];
  readonly stop: Pick<Which, 'daysStopped'> | Pick<Which, 'hoursStopped'>;
  /** For the sentence. */
  readonly asks: string;
  readonly risk?: string;
  readonly cites: readonly Citation[];
}

const LOW = ' at low thrombotic risk';
const P2Y12: Which = { drugClass: { is: ['p2y12-inhibitor'] }, thromboticRisk: { is: ['low'] } };
const WARFARIN: Which = { agent: { is: ['warfarin'] }, thromboticRisk: { is: ['low'] } };
const DOAC: Which = { drugClass: { is: ['doac'] } };
const WEAK_KIDNEYS: Which = {
  agent: { is: ['dabigatran'] },
  creatinineClearanceMlPerMin: [{ atLeast: 30 }, { atMost: 50 }],
};

const STOP_RULES: readonly StopRule[] = [
  {
    check: 'AT-01',
    edition: 'bsg-esge-2016',
    which: P2Y12,
    stop: { daysStopped: { below: 5 } },
    asks: '5 days',
    risk: LOW,
    cites: [cite('bsgEsge2016', 'P2Y12 inhibitor, low thrombotic risk', 'published')],
  },
  {
    check: 'AT-01',
    edition: 'bsg-esge-2021',
    which: P2Y12,
    stop: { daysStopped: { below: 7 } },
    asks: '7 days',
    risk: LOW,
    cites: [cite('bsgEsge2021', 'P2Y12 inhibitor, low risk, second source', 'recalled')],
  },
  {
    check: 'AT-01',
    edition: 'asia-pacific-2018',
    which: P2Y12,
    stop: { daysStopped: { below: 5 } },
    asks: '5 days',
    risk: LOW,
    cites: [cite('asiaPacific2018', 'P2Y12 inhibitor, high-bleeding-risk table', 'published')],
  },
  {
    check: 'AT-03',
    edition: 'bsg-esge-2016',
    which: WARFARIN,
    stop: { daysStopped: { below: 5 } },
    asks: '5 days',
    risk: LOW,
    cites: [cite('bsgEsge2016', 'warfarin, low thrombotic risk', 'published')],
  },
  {
    check: 'AT-03',
    edition: 'bsg-esge-2021',
    which: WARFARIN,
    stop: { daysStopped: { below: 5 } },
    asks: '5 days',
    risk: LOW,
    cites: [cite('bsgEsge2021', 'warfarin, low risk, second source', 'recalled')],
  },
  {
    check: 'AT-03',
    edition: 'asia-pacific-2018',
    which: WARFARIN,
    stop: { daysStopped: { below: 5 } },
    asks: '5 days',
    risk: LOW,
    cites: [cite('asiaPacific2018', 'warfarin, high-bleeding-risk table', 'published')],
  },
  {
    check: 'AT-06',
    edition: 'bsg-esge-2016',
    which: DOAC,
    stop: { hoursStopped: { below: 48 } },
    asks: '48 hours',
    cites: [cite('bsgEsge2016', 'direct oral anticoagulant, from memory', 'recalled')],
  },
  {
    check: 'AT-06',
    edition: 'bsg-esge-2021',
    which: DOAC,
    unless: [WEAK_KIDNEYS],
    stop: { daysStopped: { below: 3 } },
    asks: '3 days',
    cites: [cite('bsgEsge2021', 'direct oral anticoagulant, second source', 'recalled')],
  },
  {
    check: 'AT-06',
    edition: 'bsg-esge-2021',
    which: WEAK_KIDNEYS,
    stop: { daysStopped: { below: 5 } },
    asks: '5 days',
    risk: ' at a creatinine clearance of 30 to 50 ml/min',
    cites: [cite('bsgEsge2021', 'dabigatran, clearance 30 to 50, second source', 'recalled')],
  },
  {
    check: 'AT-06',
    edition: 'asia-pacific-2018',
    which: DOAC,
    stop: { daysStopped: { below: 2 } },
    asks: '2 days',
    cites: [
      cite('asiaPacific2018', 'direct oral anticoagulant, high-bleeding-risk table', 'published'),
    ],
  },
];

/** A slip in a time, of which RC-02 speaks. */
const TAKEN_LATER: Which = { hoursStopped: { below: 0 } };

const AT = '/before/antithrombotics/*';
const pointerTo = (fact: string): string => `${AT}/${fact === 'drugClass' ? 'class' : fact}`;

/** Stopped too late, or not at all: AT-01, AT-03 and AT-06, by the edition of the unit. */
export const DRUG_STOP_CHECKS: ChecksOn<DrugFacts> = STOP_RULES.flatMap((rule) => {
  const { check, edition, which, unless = [], stop, asks, risk = '', cites } = rule;
  const row = { check, severity: 'warning', unless, cites } as const;
  const title = `${check} by ${edition}, ${asks}`;
  const span = 'daysStopped' in stop ? '{daysStopped} days' : '{hoursStopped} hours';
  const fields = [...Object.keys(which).map(pointerTo), `${AT}/decision`];
  const asked = { ...which, edition: { is: [edition] } } as const;
  const stopped = { ...asked, decision: { is: ['stopped', 'replaced'] } } as const;
  return [
    {
      ...row,
      title: `${title}: stopped later`,
      fields: [...fields, `${AT}/lastDoseAt`, '/times/scopeInAt'],
      when: { ...stopped, ...stop },
      unless: [...unless, TAKEN_LATER],
      says:
        `The last dose of {drug} was ${span} before the procedure; ` +
        `{guideline} asks for ${asks}${risk}.`,
    },
    {
      ...row,
      title: `${title}: continued`,
      fields,
      when: { ...asked, decision: { is: ['continued'] } },
      says:
        `The record says that {drug} was continued; ` +
        `{guideline} asks to stop it ${asks} before the procedure${risk}.`,
    },
  ];
});
