import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/assessment/index.js';
import {
  DEFAULT_UNIT_SETTINGS,
  parseCase,
  parseEvent,
  parseExamination,
  parsePathology,
} from '../../../src/contract/index.js';
import type { Checked } from '../../../src/kernel/index.js';
import {
  type KnownForPlan,
  type PlanFacts,
  planFacts,
  planFollowUp,
} from '../../../src/surveillance/index.js';
import { planEvents } from '../../../src/surveillance/plan/events-of-record.js';
import { examinationFacts } from '../../../src/surveillance/plan/examination-facts.js';
import { pathologyFacts } from '../../../src/surveillance/plan/pathology-facts.js';
import { itemOf, shortOf, toCome } from './plan-samples.js';

const UNIT = DEFAULT_UNIT_SETTINGS;

function read<T>(parse: (bytes: Uint8Array) => Checked<T>, path: string): T {
  const parsed = parse(readFileSync(`examples/${path}.json`));
  if (!parsed.ok) throw new Error(`${path} is a sound example`);
  return parsed.value;
}

/** Files of an example case, by what they are. */
interface Files {
  readonly pathology?: readonly string[];
  readonly examinations?: readonly string[];
  readonly events?: readonly string[];
}

function known(name: string, { pathology = [], examinations = [], events = [] }: Files = {}) {
  const esdCase = read(parseCase, `cases/${name}`);
  const reports = pathology.map((file) => read(parsePathology, `pathology/${file}`));
  const [report] = reports;
  return {
    esdCase,
    reports,
    examinations: examinations.map((file) => read(parseExamination, `examinations/${file}`)),
    events: events.map((file) => read(parseEvent, `events/${file}`)),
    assessment: assess({ fields: esdCase.fields, ...(report && { report: report.fields }) }, UNIT),
  } satisfies KnownForPlan;
}

const planOf = (name: string, files: Files = {}) =>
  planFollowUp(planFacts(known(name, files)), UNIT, [planFacts(known(name))]);

// Source: the plan logic of follow-up and the rows of its table, on the stories of the examples.
describe('the plan of an example', () => {
  const CASES = readdirSync('examples/cases').map((file) => file.replace('.json', ''));

  it.each(CASES)('%s without pathology asks for something, and nothing is booked', (name) => {
    const items = toCome(planFollowUp(planFacts(known(name)), UNIT));
    expect(items.length).toBeGreaterThan(0);
    expect(
      items
        .filter(({ kind, state }) => kind === 'endoscopy' && state === 'open')
        .filter(({ row }) => row !== 'stricture-check'),
    ).toEqual([]);
  });

  it.each<readonly [string, Files, readonly string[]]>([
    ['oesophagus-squamous', { pathology: ['oesophagus-squamous'] }, ['OES-1.1 open']],
    [
      'oesophagus-barrett',
      { pathology: ['oesophagus-barrett'], examinations: ['oesophagus-barrett'] },
      ['BAR-1.2 open'],
    ],
    [
      'stomach-differentiated',
      { pathology: ['stomach-differentiated'], examinations: ['stomach-first'] },
      ['GAS-1.2 open'],
    ],
    [
      'stomach-dual-antiplatelet',
      { pathology: ['stomach-high-risk'] },
      ['meeting.1 open', 'MUCOSA-advanced.1 open'],
    ],
    [
      'stomach-dual-antiplatelet',
      { pathology: ['stomach-high-risk'], events: ['stomach-meeting', 'stomach-surgery'] },
      ['after-surgery.1 open'],
    ],
    [
      'duodenum',
      { pathology: ['duodenum'], examinations: ['duodenum-colonoscopy'] },
      ['DUO-1.1 open'],
    ],
    ['colon-caecum', { pathology: ['colon-caecum'] }, ['COL-4.1 open']],
    [
      'colon-piecemeal',
      { pathology: ['colon-piecemeal'], examinations: ['colon-recurrence-revised'] },
      ['COL-2.2 open'],
    ],
    ['colon-sigmoid', { pathology: ['colon-sigmoid'] }, ['COL-1.1 open']],
    ['rectum', { pathology: ['rectum-final'], events: ['rectum-meeting'] }, ['COL-5.1 open']],
    [
      'rectum',
      { pathology: ['rectum-interim'] },
      ['pathology.1 open', 'provisional.1 provisional'],
    ],
    ['stomach-abandoned', { events: ['stomach-death'] }, []],
  ])('%s with %j', (name, files, expected) => {
    expect(toCome(planOf(name, files)).map(shortOf)).toEqual(expected);
  });

  it('takes the day that the examiner named after a recurrence', () => {
    const files = { pathology: ['colon-piecemeal'], examinations: ['colon-recurrence-revised'] };
    expect(itemOf(planOf('colon-piecemeal', files), 'COL-2.2')?.due?.target).toBe('2026-11-10');
  });

  it('ends at the wish of the patient', () => {
    const files = {
      pathology: ['rectum-final'],
      events: ['rectum-meeting'],
      examinations: ['rectum-stopped'],
    };
    expect(toCome(planOf('rectum', files))).toEqual([]);
  });
});

describe('the facts of a plan', () => {
  const facts = (name: string, files?: Files): PlanFacts => planFacts(known(name, files));

  it('take the day of the dissection from the clock of the unit', () => {
    const told = known('rectum');
    const { fields } = told.esdCase;
    const times = { ...fields.times, scopeInAt: '2026-03-28T23:50:00+01:00' };
    const late = { ...told, esdCase: { fields: { ...fields, times } } };
    // In UTC it began on the same day, in Asia on the next one.
    expect(planFacts(late).esdOn).toBe('2026-03-28');
    const early = { ...times, scopeInAt: '2026-03-29T00:10:00+02:00' };
    expect(planFacts({ ...told, esdCase: { fields: { ...fields, times: early } } }).esdOn).toBe(
      '2026-03-29',
    );
  });

  it('are as late as the last message, by instant', () => {
    const { calculatedAt } = facts('stomach-differentiated', {
      pathology: ['stomach-differentiated'],
      examinations: ['stomach-first'],
    });
    expect(calculatedAt).toBe('2026-07-28T11:02:00+02:00');
  });

  it('know the way to the organ, and the lineage of an organ that has one', () => {
    expect(facts('minimal').route).toMatch(/upper|lower/);
    expect(facts('duodenum', { pathology: ['duodenum'] })).toMatchObject({
      route: 'upper',
      tumour: 'other',
    });
    expect(facts('rectum')).toMatchObject({ route: 'lower', tumour: 'colorectal' });
  });

  it('hold the verdict of the unit with its group, or none while it is open', () => {
    expect(facts('colon-caecum', { pathology: ['colon-caecum'] })).toMatchObject({
      verdict: { class: 'low-risk', group: 'curative' },
      classes: { 'esge-esd-2022': 'low-risk' },
      pathology: { status: 'final', depth: 'sm', r0: true },
    });
    expect(facts('colon-caecum').verdict).toEqual({ rule: 'esge-esd-2022' });
  });

  it('say whether Helicobacter pylori is there: tissue that shows it counts most', () => {
    const told = known('stomach-differentiated', { pathology: ['stomach-differentiated'] });
    const { fields } = told.esdCase;
    const [report] = told.reports;
    if (report === undefined) throw new Error('the example has a report');
    const { background, ...rest } = report.fields;
    type State = NonNullable<NonNullable<typeof fields.before>['helicobacterPylori']>;
    const state = (before: State | undefined, found: 'positive' | 'negative' | undefined) =>
      planFacts({
        ...told,
        esdCase: { fields: { ...fields, before: before && { helicobacterPylori: before } } },
        reports: [
          { fields: { ...rest, ...(found && { background: { helicobacterPylori: found } }) } },
        ],
      }).helicobacter;
    expect(state(undefined, undefined)).toBe('unknown');
    expect(state('unknown', 'negative')).toBe('negative');
    expect(state('eradicated', undefined)).toBe('eradicated');
    expect(state('eradicated', 'positive')).toBe('positive');
    expect(state('positive', 'negative')).toBe('positive');
  });

  it('say what operations did to the scar', () => {
    const events = ['stomach-meeting', 'stomach-surgery'];
    expect(facts('stomach-dual-antiplatelet', { events }).events).toMatchObject({
      meetings: [{ decision: 'surgery' }],
      surgeries: [{ kind: 'resection', on: '2026-06-16' }],
    });
    // An emergency operation for a perforation leaves it where it is.
    expect(
      facts('duodenum', { events: ['duodenum-emergency-operation'] }).events.surgeries,
    ).toEqual([]);
  });
});

describe('an operation', () => {
  const sent = read(parseEvent, 'events/stomach-surgery').fields;
  it.each([
    ['resection-with-nodes', 'oncological', 'resection'],
    ['resection-with-nodes', 'adverse-event', 'resection'],
    ['local-excision', 'oncological', 'excision'],
    ['closure-or-drainage', 'oncological', undefined],
    ['other', 'oncological', 'resection'],
    ['other', 'adverse-event', undefined],
    [undefined, 'oncological', 'resection'],
    [undefined, 'adverse-event', undefined],
  ] as const)('%s, %s: %s', (operation, reason, kind) => {
    const surgery = { reason, ...(operation && { operation }) };
    expect(planEvents([{ ...sent, surgery }]).surgeries.map((each) => each.kind)).toEqual(
      kind === undefined ? [] : [kind],
    );
  });
});

describe('the background of a report', () => {
  const told = known('stomach-differentiated', { pathology: ['stomach-differentiated'] });
  const of = (background: object) => {
    const [report] = told.reports;
    if (report === undefined) throw new Error('the example has a report');
    return pathologyFacts(told.esdCase.fields, { ...report.fields, background }).background;
  };

  it.each([
    [{}, { gastritisStage: '0', extent: 'none', metaplasia: 'none', staged: false }],
    [
      { olga: 'II', olgim: 'III' },
      { gastritisStage: 'III', staged: true },
    ],
    [{ olga: 'IV' }, { gastritisStage: 'IV' }],
    [{ atrophyIn: ['antrum'], metaplasiaIn: ['corpus'] }, { extent: 'antrum-and-corpus' }],
    [{ atrophyIn: ['antrum'], metaplasiaIn: ['antrum'] }, { extent: 'one-site' }],
    [{ intestinalMetaplasia: 'incomplete' }, { extent: 'one-site', metaplasia: 'incomplete' }],
    [{ intestinalMetaplasia: 'type-not-told' }, { extent: 'one-site', metaplasia: 'complete' }],
    [{ intestinalMetaplasia: 'none' }, { extent: 'none', metaplasia: 'none' }],
    [{ helicobacterPylori: 'positive' }, { helicobacterGastritis: true }],
  ])('%j', (background, expected) => {
    expect(of(background)).toMatchObject(expected);
  });
});

describe('the facts of an examination', () => {
  const sent = read(parseExamination, 'examinations/colon-recurrence-revised').fields;
  const recurrence = (scar: NonNullable<typeof sent.scar>) =>
    examinationFacts({ ...sent, scar }).recurrence;

  it.each([
    ['residual-or-recurrent-neoplasia', 'no-neoplasia', 'none'],
    ['residual-or-recurrent-neoplasia', 'pending', 'found'],
    ['residual-or-recurrent-neoplasia', 'not-taken', 'found'],
    ['none', 'low-grade-dysplasia', 'found'],
    ['none', 'carcinoma', 'found'],
    ['none', 'pending', 'open'],
    ['uncertain', 'indefinite', 'open'],
    ['uncertain', undefined, 'open'],
    ['none', 'not-taken', 'none'],
    ['inflammation', undefined, 'none'],
    [undefined, undefined, 'not-told'],
  ] as const)('seen: %s, tissue: %s is %s', (finding, biopsy, expected) => {
    const scar = { seen: true, ...(finding && { finding }), ...(biopsy && { biopsy }) };
    expect(recurrence(scar)).toBe(expected);
  });

  it('tell nothing of a scar that was not seen', () => {
    expect(recurrence({ seen: false })).toBe('not-told');
    expect(examinationFacts({ ...sent, scar: { seen: false } }).incomplete).toBe(true);
  });

  const adenoma = {
    organ: 'colon',
    polypType: 'adenoma',
    histology: 'low-grade-dysplasia',
    removed: true,
  } as const;
  it.each([
    ['none', []],
    ['none', [{ ...adenoma, sizeMm: 9 }]],
    ['needing-surveillance', [{ ...adenoma, sizeMm: 10 }]],
    [
      'needing-surveillance',
      [{ ...adenoma, sizeMm: 4, histology: 'high-grade-dysplasia' as const }],
    ],
    ['none', Array(4).fill({ ...adenoma, sizeMm: 4 })],
    ['needing-surveillance', Array(5).fill({ ...adenoma, sizeMm: 4 })],
    ['open', [{ ...adenoma, sizeMm: 4, histology: 'pending' as const }]],
    ['none', [{ ...adenoma, sizeMm: 12, histology: 'no-neoplasia' as const }]],
    ['not-told', undefined],
  ])('new lesions of the bowel: %s', (expected, newLesions) => {
    const { newLesions: own, ...rest } = sent;
    expect(examinationFacts({ ...rest, ...(newLesions && { newLesions }) }).findings).toBe(
      expected,
    );
  });

  it.each([
    ['carcinoma', true, 'colon', true],
    ['high-grade-dysplasia', true, 'colon', false],
    ['high-grade-dysplasia', false, 'colon', true],
    ['low-grade-dysplasia', true, 'stomach', true],
    ['no-neoplasia', false, 'stomach', false],
  ] as const)('a new lesion of %s, removed: %s, %s', (histology, removed, organ, expected) => {
    const newLesions = [{ organ, histology, removed }];
    expect(examinationFacts({ ...sent, newLesions }).newNeoplasia).toBe(expected);
  });
});
