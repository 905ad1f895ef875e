import type { CaseFields } from '../../src/contract/index.js';
import { agentOfAnotherClass } from '../support/consistent-case.js';

/** A contradiction between fields of which each is sound. */
export interface CrossMutation {
  readonly rule: string;
  readonly mistake: string;
  /** @returns fields to set in a sound case, by dotted path; `undefined` takes one away */
  readonly set: (sent: CaseFields) => Readonly<Record<string, unknown>>;
}

const ANTITHROMBOTIC = { class: 'doac', agent: 'apixaban', decision: 'stopped' };

export const CROSS_MUTATIONS: readonly CrossMutation[] = [
  {
    rule: 'CC-01',
    mistake: 'the scope is out before it is in',
    set: ({ times }) => ({
      'times.scopeOutAt': times.scopeInAt,
      'times.scopeInAt': times.scopeOutAt,
    }),
  },
  {
    rule: 'CC-01',
    mistake: 'no time passes between scope in and out',
    set: ({ times }) => ({
      times: { scopeInAt: times.scopeInAt, scopeOutAt: times.scopeInAt },
    }),
  },
  {
    rule: 'CC-01',
    mistake: 'the bed is inspected before the scope is in',
    set: () => ({ 'safety.siteInspection.inspectedAt': '1970-01-01T00:00:00Z' }),
  },
  {
    rule: 'sent-before-end',
    mistake: 'the case is sent before its end',
    set: ({ times }) => ({ sentAt: times.scopeInAt }),
  },
  {
    rule: 'born-after-procedure',
    mistake: 'the patient is born later',
    set: () => ({ 'patient.bornOn': '2099-12-31' }),
  },
  {
    rule: 'axes-order',
    mistake: 'the short axis is the longer one',
    set: () => ({ 'lesion.longAxisMm': 12, 'lesion.shortAxisMm': 12.1 }),
  },
  {
    rule: 'area-limit',
    mistake: 'a specimen like a table cloth',
    set: () => ({ 'specimen.longAxisMm': 800, 'specimen.shortAxisMm': 700 }),
  },
  {
    rule: 'CC-03',
    mistake: 'the lesion is larger than the specimen around it',
    set: () => ({
      'resection.outcome': 'en-bloc',
      'specimen.longAxisMm': 30,
      'specimen.lesionLongAxisMm': 31,
    }),
  },
  {
    rule: 'CC-07',
    mistake: 'Prague C above M',
    set: () => ({ 'lesion.pragueCircumferentialCm': 4, 'lesion.pragueMaximumCm': 3.5 }),
  },
  {
    rule: 'PC-12',
    mistake: 'injection through a knife without a channel',
    set: () => ({
      'equipment.knives': [{ kind: 'insulated-tip', injectionChannel: false }],
      'injection.routes': ['needle', 'through-knife'],
    }),
  },
  {
    rule: 'PC-15',
    mistake: 'an accessory wider than the channel',
    set: () => ({
      'equipment.endoscope': { kind: 'gastroscope', channelMm: 2.8 },
      'equipment.accessories': [{ kind: 'snare', minChannelMm: 3.7 }],
      'dissection.incidents': [],
    }),
  },
  {
    rule: 'CC-02',
    mistake: 'en bloc in two pieces',
    set: () => ({ 'resection.outcome': 'en-bloc', 'resection.pieces': 2 }),
  },
  {
    rule: 'CC-02',
    mistake: 'piecemeal in one piece with nothing left',
    set: () => ({
      'resection.outcome': 'piecemeal',
      'resection.pieces': 1,
      'resection.complete': true,
    }),
  },
  {
    rule: 'outcome-complete',
    mistake: 'abandoned with nothing left',
    set: () => ({ 'resection.outcome': 'abandoned', 'resection.complete': true }),
  },
  {
    rule: 'not-started-cut',
    mistake: 'never started, yet cut',
    set: ({ times }) => ({
      'resection.outcome': 'not-started',
      'times.firstIncisionAt': times.scopeOutAt,
    }),
  },
  {
    rule: 'specimen-not-retrieved',
    mistake: 'not retrieved, yet measured',
    set: () => ({ specimen: { retrieved: false, longAxisMm: 20 } }),
  },
  {
    rule: 'CC-09',
    mistake: 'a hole without perforation',
    set: () => ({ 'safety.muscleInjury': 'V', 'safety.perforation.occurred': false }),
  },
  {
    rule: 'CC-12',
    mistake: 'a site of another organ',
    set: ({ lesion }) => ({ 'lesion.site': lesion.organ === 'colon' ? 'anal-canal' : 'caecum' }),
  },
  {
    rule: 'agent-class',
    mistake: 'an agent of another class',
    set: () => ({
      'before.antithrombotics': [
        { ...ANTITHROMBOTIC, class: 'heparin', agent: agentOfAnotherClass('heparin') },
      ],
    }),
  },
  {
    rule: 'repeated-drug',
    mistake: 'a drug twice',
    set: () => ({ 'before.antithrombotics': [ANTITHROMBOTIC, ANTITHROMBOTIC] }),
  },
];
