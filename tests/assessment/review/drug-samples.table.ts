import intervals from '../../published/antithrombotic-intervals.json' with { type: 'json' };
import type { Sample } from './samples.table.js';

const BASE = 'stomach-differentiated.json';
const D = '2026-02-03T';
type Drug = Readonly<Record<string, unknown>>;
type Edition = 'bsg-esge-2016' | 'bsg-esge-2021' | 'asia-pacific-2018';
const EDITIONS: readonly Edition[] = ['bsg-esge-2016', 'bsg-esge-2021', 'asia-pacific-2018'];

interface DrugSample {
  readonly row: string;
  readonly fires: Drug;
  /** Each in place of fields of `fires`. */
  readonly silent: readonly Drug[];
  readonly edition?: Edition;
  /** Editions under which nobody says it. */
  readonly silentEditions?: readonly Edition[];
  readonly beside?: readonly Drug[];
  /** Each in place of `beside`. */
  readonly silentBeside?: readonly (readonly Drug[])[];
  readonly notNeeded?: readonly string[];
}

const VKA = { class: 'vitamin-k-antagonist', agent: 'warfarin', decision: 'stopped' };
const DOAC = { class: 'doac', agent: 'edoxaban', decision: 'stopped' };
const P2Y12 = { class: 'p2y12-inhibitor', decision: 'continued', thromboticRisk: 'high' };

/** The procedure: 3 February 2026, 10:22 to 11:37 by a clock one hour ahead of UTC. */
const SAMPLES: readonly DrugSample[] = [
  ...(['bsg-esge-2016', 'bsg-esge-2021'] as const).flatMap((edition): DrugSample[] => [
    {
      row: `P2Y12 inhibitor at high risk, advice of another, ${edition}`,
      edition,
      fires: { ...P2Y12, advisedBy: 'endoscopist' },
      silent: [
        { advisedBy: 'cardiologist' },
        { advisedBy: 'neurologist' },
        { thromboticRisk: 'low' },
        { class: 'cilostazol' },
      ],
      silentEditions: ['asia-pacific-2018'],
    },
    {
      row: `INR still high, ${edition}`,
      edition,
      fires: { ...VKA, inr: 1.5, inrOn: '2026-02-02', lastDoseAt: '2026-01-25T18:00:00+01:00' },
      silent: [
        { inr: 1.49 },
        { inrOn: '2026-01-25' }, // measured under treatment
        { decision: 'continued' },
        { class: 'doac', agent: 'apixaban' },
      ],
      silentEditions: ['asia-pacific-2018'],
      notNeeded: ['agent', 'inrOn', 'lastDoseAt'],
    },
    {
      row: 'vitamin K antagonist at high risk without bridging, bsg-esge',
      edition,
      fires: { ...VKA, thromboticRisk: 'high', bridged: false },
      silent: [
        { bridged: true },
        { thromboticRisk: 'low' },
        { decision: 'continued' },
        { decision: 'replaced', replacedBy: 'heparin' },
        { class: 'doac', agent: 'apixaban' },
      ],
      notNeeded: ['agent'],
    },
  ]),
  {
    row: 'vitamin K antagonist at high risk without bridging, asia-pacific-2018',
    edition: 'asia-pacific-2018',
    fires: { ...VKA, thromboticRisk: 'high', bridged: false },
    silent: [{ bridged: true }, { thromboticRisk: 'low' }, { decision: 'continued' }],
    notNeeded: ['agent'],
  },
  {
    row: 'direct oral anticoagulant with bridging, asia-pacific-2018',
    edition: 'asia-pacific-2018',
    fires: { ...DOAC, bridged: true },
    silent: [{ bridged: false }, { decision: 'continued' }, { class: 'heparin', agent: undefined }],
    silentEditions: ['bsg-esge-2016', 'bsg-esge-2021'],
    notNeeded: ['agent'],
  },
  {
    row: 'direct oral anticoagulant restarted early, bsg-esge-2016',
    edition: 'bsg-esge-2016',
    fires: { ...DOAC, restartedAt: `${D}23:59:00+01:00` },
    silent: [
      { restartedAt: `${D}23:00:00Z` }, // midnight by the clock of the unit
      { restartedAt: '2026-02-04T00:00:00+01:00' },
      { restartedAt: undefined, restartPlannedOn: '2026-02-02' }, // a slip, said otherwise
      { decision: 'continued' },
      VKA,
    ],
    silentEditions: ['asia-pacific-2018'],
    notNeeded: ['agent'],
  },
  {
    row: 'direct oral anticoagulant restarted early, bsg-esge-2021',
    edition: 'bsg-esge-2021',
    fires: { ...DOAC, restartPlannedOn: '2026-02-04' },
    silent: [{ restartPlannedOn: '2026-02-05' }, { restartedAt: '2026-02-05T08:00:00+01:00' }],
    silentEditions: ['bsg-esge-2016', 'asia-pacific-2018'],
    notNeeded: ['agent'],
  },
  ...['haematologist', 'anaesthetist', 'referring-physician'].map((advisedBy) => ({
    row: 'P2Y12 inhibitor at high risk, advice of another, bsg-esge-2021',
    fires: { ...P2Y12, advisedBy },
    silent: [{ advisedBy: 'cardiologist' }],
  })),
  {
    row: 'direct oral anticoagulant restarted early, bsg-esge-2021',
    fires: { ...DOAC, decision: 'replaced', restartPlannedOn: '2026-02-03' },
    silent: [
      { restartPlannedOn: '2026-02-06' },
      { restartPlannedOn: '2026-02-02' }, // a slip, said otherwise
    ],
    notNeeded: ['agent'],
  },
  {
    row: 'aspirin stopped, asia-pacific-2018',
    edition: 'asia-pacific-2018',
    fires: { class: 'aspirin', decision: 'stopped' },
    silent: [{ decision: 'continued' }, { class: 'cilostazol' }],
    silentEditions: ['bsg-esge-2016', 'bsg-esge-2021'],
  },
  {
    row: 'aspirin stopped beside a P2Y12 inhibitor, bsg-esge-2016',
    edition: 'bsg-esge-2016',
    fires: { class: 'aspirin', decision: 'stopped' },
    silent: [{ decision: 'continued' }, { class: 'cilostazol' }],
    silentEditions: ['bsg-esge-2021'],
    beside: [{ class: 'p2y12-inhibitor', agent: 'prasugrel', decision: 'stopped' }],
    silentBeside: [[], [{ class: 'doac', agent: 'edoxaban', decision: 'stopped' }]],
  },
  {
    row: 'stopped, yet taken after the scope was in',
    fires: { ...DOAC, lastDoseAt: `${D}10:22:01+01:00` },
    silent: [{ lastDoseAt: `${D}09:22:00Z` }, { decision: 'continued' }],
    notNeeded: ['agent'],
  },
  {
    row: 'restarted before the last dose',
    fires: {
      ...DOAC,
      lastDoseAt: '2026-01-20T08:00:00+01:00',
      restartedAt: '2026-01-20T06:59:59Z',
    },
    silent: [
      { restartedAt: '2026-01-20T07:00:00Z' },
      { restartedAt: '2026-02-09T08:00:00Z' },
      { decision: 'continued' },
    ],
    notNeeded: ['agent'],
  },
  {
    row: 'restarted before the procedure ended',
    fires: {
      ...DOAC,
      lastDoseAt: '2026-01-20T08:00:00+01:00',
      restartedAt: `${D}11:36:59+01:00`,
    },
    silent: [
      { restartedAt: `${D}10:37:00Z` },
      { restartedAt: '2026-01-20T07:59:30+01:00' }, // said of the last dose instead
      { decision: 'continued' },
    ],
    notNeeded: ['agent', 'lastDoseAt'],
  },
  {
    row: 'restarted before the procedure ended',
    fires: {
      ...DOAC,
      lastDoseAt: '2026-01-20T08:00:00+01:00',
      restartedAt: '2026-01-20T08:00:00+01:00',
    },
    silent: [{ restartedAt: `${D}11:37:00+01:00` }],
    notNeeded: ['agent', 'lastDoseAt'],
  },
  {
    row: 'AT-06 by bsg-esge-2021, 3 days: stopped later',
    fires: { ...DOAC, lastDoseAt: `${D}10:22:00+01:00` }, // as the scope went in
    silent: [{ lastDoseAt: `${D}10:22:01+01:00` }],
    notNeeded: ['agent'],
  },
  {
    row: 'restart planned before the day of the procedure',
    fires: { ...DOAC, restartPlannedOn: '2026-02-02' },
    silent: [{ restartPlannedOn: '2026-02-03' }, { decision: 'continued' }],
    notNeeded: ['agent'],
  },
  ...intervals.intervals.flatMap(intervalSamples),
];

/** One day too few by the calendar falls short, the days asked for do not. */
function intervalSamples(row: (typeof intervals.intervals)[number]): DrugSample[] {
  const check = { 'p2y12-inhibitor': 'AT-01', 'vitamin-k-antagonist': 'AT-03', doac: 'AT-06' };
  const asks = row.days === undefined ? `${row.hours} hours` : `${row.days} days`;
  const title = `${Reflect.get(check, row.class)} by ${row.edition}, ${asks}`;
  const drug = {
    class: row.class,
    agent: row.agent,
    decision: 'stopped',
    ...(row.risk === undefined ? {} : { thromboticRisk: row.risk }),
    ...(row.creatinineClearanceMlPerMin === undefined
      ? {}
      : { creatinineClearanceMlPerMin: row.creatinineClearanceMlPerMin }),
  };
  const edition = EDITIONS.find((name) => name === row.edition) ?? 'bsg-esge-2021';
  const agentCounts = row.agent === 'warfarin' || (row.agent === 'dabigatran' && row.days === 5);
  const notNeeded = [
    ...(agentCounts ? [] : ['agent']),
    ...(row.days === 5 && row.class === 'doac' ? ['class'] : ['creatinineClearanceMlPerMin']),
  ];
  const others = [
    ...(row.risk === undefined ? [] : [{ thromboticRisk: 'high' }]),
    { class: 'heparin', agent: undefined },
  ];
  const [short, enough] =
    row.days === undefined
      ? ['2026-02-01T10:22:01+01:00', '2026-02-01T10:22:00+01:00']
      : [eveningBefore(row.days - 1), eveningBefore(row.days)];
  return [
    {
      row: `${title}: stopped later`,
      edition,
      fires: { ...drug, lastDoseAt: short },
      silent: [{ lastDoseAt: enough }, { lastDoseAt: '2026-02-03T10:23:00+01:00' }, ...others],
      notNeeded,
    },
    {
      row: `${title}: stopped later`,
      edition,
      fires: { ...drug, decision: 'replaced', lastDoseAt: short },
      silent: [{ lastDoseAt: enough }],
      notNeeded,
    },
    {
      row: `${title}: continued`,
      edition,
      fires: { ...drug, decision: 'continued' },
      silent: [{ decision: 'stopped' }, ...others],
      notNeeded,
    },
  ];
}

/** Half an hour before midnight, so that hours would count a day less. */
function eveningBefore(days: number): string {
  return `${new Date(Date.UTC(2026, 1, 3 - days)).toISOString().slice(0, 10)}T23:30:00+01:00`;
}

const sent = (drug: Drug, { beside = [] }: DrugSample) => ({
  'before.antithrombotics': [...beside, told(drug)],
});
const told = (drug: Drug): Drug =>
  Object.fromEntries(Object.entries(drug).filter(([, value]) => value !== undefined));

export const DRUG_SAMPLES: readonly (Sample & { readonly absent: readonly Drug[] })[] = SAMPLES.map(
  (sample) => {
    const { row, fires, silent, edition = 'bsg-esge-2021', silentEditions = [] } = sample;
    const { silentBeside = [] } = sample;
    const kept = ['decision', ...(sample.notNeeded ?? [])];
    return {
      row,
      base: BASE,
      fires: sent(fires, sample),
      silent: [
        ...silent.map((change) => sent({ ...fires, ...change }, sample)),
        ...silentBeside.map((beside) => sent(fires, { ...sample, beside })),
      ],
      unit: { antithromboticEdition: edition },
      silentUnits: silentEditions.map((other) => ({ antithromboticEdition: other })),
      absent: Object.keys(fires)
        .filter((key) => key !== 'class' && !kept.includes(key))
        .map((key) => sent({ ...fires, [key]: undefined }, sample)),
    };
  },
);
