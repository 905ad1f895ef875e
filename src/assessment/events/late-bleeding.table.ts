import type { Organ } from '../../contract/index.js';
import { cite } from '../../references/index.js';
import {
  type ClassRule,
  type ConditionOn,
  classRule,
  type FieldsOf,
  type TableOf,
} from '../../rules/index.js';

type YesOrNo = 'yes' | 'no';

/** What one bleeding after a dissection was like. */
export type LateBleeding = {
  readonly days: number;
  readonly hours: number;
  readonly clinicalSigns: boolean;
  readonly haematochezia: boolean;
  readonly bleedingSpotSeen: boolean;
  readonly transfusion: boolean;
  readonly emergencyVisit: boolean;
  readonly readmission: boolean;
  readonly haemostasis: boolean;
  readonly hbDropGPerDl: number;
};

const FIELDS = {
  days: {
    type: 'number',
    unit: 'd',
    whole: true,
    from: 0,
    to: 100_000,
    says: 'calendar days from the end of the procedure to the onset',
  },
  hours: {
    type: 'number',
    unit: 'h',
    from: 0,
    to: 2_400_000,
    says: 'time from the end of the procedure to the onset',
  },
  clinicalSigns: { type: 'flag', says: 'overt sign of bleeding, or its effect on the circulation' },
  haematochezia: { type: 'flag', says: 'overt blood from the bowel' },
  bleedingSpotSeen: { type: 'flag', says: 'a bleeding spot was seen at a second endoscopy' },
  transfusion: { type: 'flag', says: 'blood products were given' },
  emergencyVisit: { type: 'flag', says: 'visit to an emergency ward' },
  readmission: { type: 'flag', says: 'admitted again' },
  haemostasis: { type: 'flag', says: 'the bleeding was treated by an intervention' },
  hbDropGPerDl: {
    type: 'number',
    unit: 'g/dL',
    from: -25,
    to: 25,
    says: 'last haemoglobin before the procedure less the lowest one since',
  },
} as const satisfies FieldsOf<LateBleeding>;

type Asked<F extends keyof LateBleeding> = Pick<LateBleeding, F>;

const EUROPE = [cite('bestJEurope2024', 'definition of delayed bleeding', 'published')];
const WJG = [cite('wjg2014', 'definition of delayed bleeding', 'published')];
const LIMOGES = [
  cite('albouys2024', 'window of 30 days', 'published'),
  cite('albouys2024', 'what makes a bleeding clinically significant', 'recalled'),
];
const no = (cites: typeof LIMOGES) =>
  [
    {
      row: 'other',
      when: {},
      class: 'no',
      says: 'what the definition asks for did not happen, or not in its time',
      cites,
    },
  ] as const;

const { days, hours, clinicalSigns, haematochezia, bleedingSpotSeen, transfusion } = FIELDS;

const BLEED_28D = classRule<YesOrNo>({
  kind: 'classification',
  id: 'bleed-28d',
  version: 1,
  title: 'Delayed bleeding within 28 days, seen at endoscopy',
  population: 'Dissection of early gastric cancer; its use in other organs is common practice.',
  cites: EUROPE,
  fields: { days, clinicalSigns, bleedingSpotSeen },
  contradictions: [],
  table: [
    [
      {
        row: 'signs-and-spot',
        when: {
          days: { atMost: 28 },
          clinicalSigns: { is: [true] },
          bleedingSpotSeen: { is: [true] },
        },
        class: 'yes',
        says: 'clinical signs, confirmed at emergency endoscopy, up to day 28',
        cites: EUROPE,
      },
    ],
    no(EUROPE),
  ] satisfies TableOf<Asked<'days' | 'clinicalSigns' | 'bleedingSpotSeen'>, YesOrNo>,
  reasonsShown: [],
  remarks: [],
});

/** Hours from which a bleeding counts as delayed, where a definition counts hours. */
export const FIRST_HOUR = 6;

const WINDOW_6H_30D = { hours: { atLeast: FIRST_HOUR }, days: { atMost: 30 } } as const;

const BLEED_6H_30D = classRule<YesOrNo>({
  kind: 'classification',
  id: 'bleed-6h-30d',
  version: 1,
  title: 'Delayed bleeding from 6 hours to 30 days',
  population: 'Colorectal dissection: haematochezia with a bleeding spot, or with transfusion.',
  cites: WJG,
  fields: { days, hours, haematochezia, bleedingSpotSeen, transfusion },
  contradictions: [],
  table: [
    [
      {
        row: 'spot',
        when: {
          ...WINDOW_6H_30D,
          haematochezia: { is: [true] },
          bleedingSpotSeen: { is: [true] },
        },
        class: 'yes',
        says: 'overt haematochezia with a bleeding spot at repeat colonoscopy',
        cites: WJG,
      },
      {
        row: 'transfusion',
        when: { ...WINDOW_6H_30D, haematochezia: { is: [true] }, transfusion: { is: [true] } },
        class: 'yes',
        says: 'overt haematochezia that needed transfusion',
        cites: WJG,
      },
    ],
    no(WJG),
  ] satisfies TableOf<
    Asked<'days' | 'hours' | 'haematochezia' | 'bleedingSpotSeen' | 'transfusion'>,
    YesOrNo
  >,
  reasonsShown: [],
  remarks: [],
});

const within30 = { days: { atMost: 30 } } as const;
const significant = (row: string, says: string, when: ConditionOn<LateBleeding>) =>
  ({ row, when: { ...within30, ...when }, class: 'yes', says, cites: LIMOGES }) as const;

/** Fall of the haemoglobin from which a bleeding is significant, in g/dL. */
export const HB_DROP_G_PER_DL = 2;

const BLEED_30D_CSDB = classRule<YesOrNo>({
  kind: 'classification',
  id: 'bleed-30d-csdb',
  version: 1,
  title: 'Clinically significant delayed bleeding within 30 days',
  population: 'Colorectal dissection; its use in other organs is common practice.',
  cites: LIMOGES,
  fields: {
    days,
    emergencyVisit: FIELDS.emergencyVisit,
    readmission: FIELDS.readmission,
    transfusion,
    haemostasis: FIELDS.haemostasis,
    hbDropGPerDl: FIELDS.hbDropGPerDl,
  },
  contradictions: [],
  table: [
    [
      significant('emergency-visit', 'visit to an emergency ward', {
        emergencyVisit: { is: [true] },
      }),
      significant('readmission', 'admitted again', { readmission: { is: [true] } }),
      significant('transfusion', 'blood products', { transfusion: { is: [true] } }),
      significant('haemostasis', 'treated by an intervention', { haemostasis: { is: [true] } }),
      significant('hb-drop', 'haemoglobin fell by 2 g/dL or more', {
        hbDropGPerDl: { atLeast: HB_DROP_G_PER_DL },
      }),
    ],
    no(LIMOGES),
  ] satisfies TableOf<
    Asked<
      'days' | 'emergencyVisit' | 'readmission' | 'transfusion' | 'haemostasis' | 'hbDropGPerDl'
    >,
    YesOrNo
  >,
  reasonsShown: [],
  remarks: [],
});

/** A published definition of delayed bleeding. */
export interface BleedingDefinition {
  readonly rule: ClassRule<YesOrNo>;
  /** Organs of which it speaks; absent: of all. */
  readonly organs?: readonly Organ[];
  /** Last day of its time, counted from the day of the procedure. */
  readonly lastDay: number;
}

/** Published definitions differ: the record keeps the facts, and each definition is asked. */
export const BLEEDING_DEFINITIONS: readonly BleedingDefinition[] = [
  { rule: BLEED_28D, lastDay: 28 },
  { rule: BLEED_6H_30D, organs: ['colon', 'rectum'], lastDay: 30 },
  { rule: BLEED_30D_CSDB, lastDay: 30 },
];
