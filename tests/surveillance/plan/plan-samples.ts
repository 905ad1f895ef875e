import {
  DEFAULT_UNIT_SETTINGS,
  type Organ,
  type UnitSettings,
} from '../../../src/contract/index.js';
import type { FollowUpPlan, PlanFacts, PlanItem } from '../../../src/surveillance/index.js';

export const ESD_ON = '2024-03-15';

/** A unit that is never closed, so that dates are those of the rules alone. */
export const ALWAYS_OPEN: UnitSettings = { ...DEFAULT_UNIT_SETTINGS, closedWeekdays: [] };

export const NO_EVENTS: PlanFacts['events'] = {
  meetings: [],
  surgeries: [],
  deaths: [],
  declines: [],
  losses: [],
  dilatations: [],
  strictures: [],
  statuses: [],
};

export const idOf = (value: string) => ({ system: 'urn:oid:2.999.1.13', value });

type Pathology = NonNullable<PlanFacts['pathology']>;
export const REPORT: Pathology = {
  id: { system: 'urn:oid:2.999.1.11', value: 'A' },
  status: 'final',
  reportedOn: '2024-03-25',
  histology: 'high-grade-dysplasia',
  depth: 'm',
  r0: true,
};

type Group = NonNullable<PlanFacts['verdict']['group']>;
const GROUPS: Readonly<Record<string, Group>> = {
  'very-low-risk': 'curative',
  'low-risk': 'curative',
  'local-risk': 'local-risk',
  'high-risk': 'non-curative',
  incomplete: 'open',
  'no-rule': 'open',
};

/** A resection of an organ in a class of the European set, en bloc and final, nothing since. */
export function resected(organ: Organ, found: string, more: Partial<PlanFacts> = {}): PlanFacts {
  const group = GROUPS[found];
  return {
    calculatedAt: '2024-03-26T08:00:00+01:00',
    esdOn: ESD_ON,
    organ,
    route: organ === 'colon' || organ === 'rectum' ? 'lower' : 'upper',
    tumour: TUMOUR[organ],
    outcome: 'en-bloc',
    sizeMm: 25,
    helicobacter: 'eradicated',
    verdict: { rule: 'esge-esd-2022', class: found, ...(group === undefined ? {} : { group }) },
    classes: { 'esge-esd-2022': found },
    pathology: REPORT,
    examinations: [],
    events: NO_EVENTS,
    withdrawn: false,
    ...more,
  };
}

const TUMOUR = {
  oesophagus: 'squamous',
  stomach: 'gastric',
  duodenum: 'other',
  colon: 'colorectal',
  rectum: 'colorectal',
} as const;

type Examination = PlanFacts['examinations'][number];

/** An examination that looked at everything and found nothing. */
export function looked(on: string, more: Partial<Examination> = {}): Examination {
  return {
    id: idOf(`X-${on}`),
    on,
    route: 'upper',
    recurrence: 'none',
    carcinoma: false,
    treated: false,
    toSurgery: false,
    findings: 'none',
    newNeoplasia: false,
    incomplete: false,
    ...more,
  };
}

export const happened = (on: string) => ({ id: idOf(`V-${on}`), on });

export const itemOf = (plan: FollowUpPlan, key: string): PlanItem | undefined =>
  plan.items.find((item) => item.key === key);

/** What is still to come of the series, not of the other timed items. */
export const toCome = (plan: FollowUpPlan): readonly PlanItem[] =>
  plan.items.filter(({ state }) => ['open', 'provisional', 'to-confirm'].includes(state));

export const shortOf = ({ key, state }: PlanItem): string => `${key} ${state}`;
