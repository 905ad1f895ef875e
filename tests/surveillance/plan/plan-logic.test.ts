import { describe, expect, it } from 'vitest';
import { type PlanFacts, planFollowUp } from '../../../src/surveillance/index.js';
import {
  ALWAYS_OPEN,
  ESD_ON,
  happened,
  idOf,
  itemOf,
  looked,
  NO_EVENTS,
  REPORT,
  resected,
  shortOf,
  toCome,
} from './plan-samples.js';

// Source of every expectation: the plan logic of follow-up, sections on provisional items,
// recomputation, high risk and unmet classes; days of 15 March 2024 by hand.

const plan = (facts: PlanFacts, before: readonly PlanFacts[] = []) =>
  planFollowUp(facts, ALWAYS_OPEN, before);
const dueShort = (facts: PlanFacts) => toCome(plan(facts)).map(shortOf);

function withoutReport(facts: PlanFacts): PlanFacts {
  const { pathology, ...rest } = facts;
  return { ...rest, verdict: { rule: 'esge-esd-2022' }, classes: {} };
}

describe('before pathology', () => {
  it('waits for it and shows the shortest plausible check, which nobody books', () => {
    const found = plan(withoutReport(resected('colon', '', { outcome: 'piecemeal' })));
    expect(toCome(found).map(shortOf)).toEqual(['pathology.1 open', 'provisional.1 provisional']);
    // Piecemeal: 3 to 6 months.
    expect(itemOf(found, 'provisional.1')?.due).toMatchObject({
      earliest: '2024-06-15',
      latest: '2024-09-15',
    });
    expect(itemOf(found, 'pathology.1')?.due?.target).toBe('2024-03-29');
  });

  it('supersedes it when the report is there, says why and names what stands instead', () => {
    const facts = resected('colon', 'low-risk', {
      pathology: { ...REPORT, histology: 'carcinoma', depth: 'sm' },
    });
    const found = plan(facts, [withoutReport(facts)]);
    expect(itemOf(found, 'provisional.1')).toMatchObject({
      state: 'superseded',
      reasons: [{ code: 'pathology-arrived' }],
      replacedBy: 'COL-4.1',
    });
    expect(itemOf(found, 'pathology.1')).toMatchObject({
      state: 'done',
      doneBy: { kind: 'report', on: '2024-03-25', timing: 'in-window' },
    });
  });

  it('keeps every date provisional as long as the report is interim', () => {
    const facts = resected('stomach', 'low-risk', { pathology: { ...REPORT, status: 'interim' } });
    expect(dueShort(facts)).toEqual(['pathology.1 open', 'GAS-1.1 provisional']);
  });

  it('asks a person where there will be no report', () => {
    const lost = { ...withoutReport(resected('colon', '')), specimenRetrieved: false };
    expect(dueShort(lost)).toEqual(['no-class.1 open', 'provisional.1 to-confirm']);
    for (const outcome of ['abandoned', 'not-started'] as const) {
      expect(dueShort(withoutReport(resected('colon', '', { outcome })))).toEqual([
        'no-class.1 open',
      ]);
    }
  });

  it('changes the date when an amended report changes the class', () => {
    const was = resected('colon', 'very-low-risk');
    const now = resected('colon', 'low-risk', {
      pathology: { ...REPORT, histology: 'carcinoma', depth: 'sm' },
    });
    const found = plan(now, [was]);
    expect(itemOf(found, 'COL-1.1')).toMatchObject({
      state: 'superseded',
      reasons: [{ code: 'class-changed' }],
      replacedBy: 'COL-4.1',
    });
    expect(itemOf(found, 'COL-4.1')).toMatchObject({
      state: 'open',
      due: { target: '2025-03-15' },
    });
  });
});

describe('an examination', () => {
  const gastric = (...examinations: PlanFacts['examinations']) =>
    resected('stomach', 'low-risk', { examinations });

  it.each([
    ['2024-06-15', 'in-window'],
    ['2024-09-15', 'in-window'],
    ['2024-09-16', 'late'],
    // A tenth of 92 days before the window.
    ['2024-06-06', 'early'],
  ])('of %s answers the first check, %s', (on, timing) => {
    const found = plan(gastric(looked(on)));
    expect(itemOf(found, 'GAS-1.1')).toMatchObject({ state: 'done', doneBy: { on, timing } });
    expect(itemOf(found, 'GAS-1.2')?.countsFrom).toBe(on);
  });

  it('too early answers nothing unless it says so, and is kept beside', () => {
    const on = '2024-06-05';
    const found = plan(gastric(looked(on)));
    expect(found.unplanned).toEqual([{ id: idOf(`X-${on}`), on }]);
    expect(itemOf(found, 'GAS-1.1')?.state).toBe('open');
    const named = plan(gastric(looked(on, { answers: 'c0ffee.GAS-1.1' })));
    expect(itemOf(named, 'GAS-1.1')).toMatchObject({ state: 'done', doneBy: { timing: 'early' } });
    expect(named.unplanned).toEqual([]);
    const other = plan(gastric(looked(on, { answers: 'c0ffee.GAS-1.11' })));
    expect(itemOf(other, 'GAS-1.1')?.state).toBe('open');
  });

  it('by the other route answers nothing', () => {
    const found = plan(gastric(looked('2024-09-15', { route: 'lower' })));
    expect(itemOf(found, 'GAS-1.1')?.state).toBe('open');
  });

  it.each([
    ['incomplete', { incomplete: true }, 'last-incomplete'],
    ['with biopsies pending', { recurrence: 'open' as const }, 'last-open'],
    [
      'that wants it sooner and names no day',
      { next: { step: 'sooner' as const } },
      'sooner-without-day',
    ],
  ])('%s puts the next one in question', (_, more, code) => {
    const found = plan(gastric(looked('2024-09-15', more)));
    expect(itemOf(found, 'GAS-1.2')).toMatchObject({ state: 'to-confirm', reasons: [{ code }] });
  });

  it('may name an earlier day for the next one, never a later one', () => {
    const sooner = (on: string) =>
      plan(gastric(looked('2024-09-15', { next: { step: 'sooner', on } })));
    expect(itemOf(sooner('2025-01-10'), 'GAS-1.2')).toMatchObject({
      due: { earliest: '2025-01-10', target: '2025-01-10', latest: '2025-01-10' },
      reasons: [{ code: 'sooner' }],
    });
    expect(itemOf(sooner('2026-01-10'), 'GAS-1.2')?.due?.target).toBe('2025-09-15');
  });

  it('may stop the examinations, until another one takes place', () => {
    const stopped = looked('2024-09-15', { next: { step: 'stop' } });
    expect(itemOf(plan(gastric(stopped)), 'GAS-1.2')).toMatchObject({
      state: 'revoked',
      reasons: [{ code: 'stopped' }],
    });
    const back = plan(gastric(stopped, looked('2025-09-15')));
    expect(toCome(back).map(shortOf)).toEqual(['GAS-1.3 open']);
  });

  it.each([
    ['COL-1-clear', 'none' as const, '2032-03-15', 'open'],
    ['COL-1-clear', 'not-told' as const, '2032-03-15', 'to-confirm'],
    ['COL-1-found', 'needing-surveillance' as const, '2030-03-15', 'open'],
  ])('of the bowel leads to %s after findings %s', (row, findings, target, state) => {
    const first = looked('2027-03-15', { route: 'lower', findings });
    const found = plan(resected('colon', 'very-low-risk', { examinations: [first] }));
    expect(itemOf(found, `${row}.1`)).toMatchObject({ due: { target }, state });
  });

  it('names a new lesion to a person', () => {
    const found = plan(gastric(looked('2024-09-15', { newNeoplasia: true })));
    expect(itemOf(found, 'new-lesion.1')).toMatchObject({
      task: 'clinician-decision',
      state: 'open',
    });
  });
});

describe('neoplasia at the scar', () => {
  const scar = (on: string, more: object = {}) =>
    looked(on, { route: 'lower', recurrence: 'found', ...more });
  const colon = (...examinations: PlanFacts['examinations']) =>
    resected('colon', 'local-risk', { outcome: 'piecemeal', examinations });

  it('that was treated opens the first check of a local risk again', () => {
    const found = plan(colon(scar('2024-09-15', { treated: true })));
    expect(toCome(found).map(shortOf)).toEqual(['COL-2.2 open']);
    expect(itemOf(found, 'COL-2.2')).toMatchObject({
      due: { earliest: '2024-12-15', target: '2025-03-15', latest: '2025-03-15' },
      reasons: [{ code: 'recurrence' }],
    });
  });

  it('that was not treated is a task, and the check counts from the treatment', () => {
    const found = plan(colon(scar('2024-09-15')));
    expect(toCome(found).map(shortOf)).toEqual(['recurrence.1 open', 'COL-2.2 to-confirm']);
    expect(itemOf(found, 'recurrence.1')?.task).toBe('recurrence-treatment');
  });

  it.each([{ carcinoma: true, treated: true }, { toSurgery: true }])(
    'goes to a meeting with %j',
    (more) => {
      const found = plan(colon(scar('2024-09-15', more)));
      expect(itemOf(found, 'recurrence.1')?.task).toBe('multidisciplinary-meeting');
    },
  );

  it('was discussed when a meeting followed, or done when somebody looked again', () => {
    const grave = scar('2024-09-15', { toSurgery: true });
    const meetings = [{ ...happened('2024-10-01'), decision: 'no-surgery' as const }];
    const discussed = plan({ ...colon(grave), events: { ...NO_EVENTS, meetings } });
    expect(itemOf(discussed, 'recurrence.1')).toMatchObject({
      state: 'done',
      doneBy: { kind: 'event', on: '2024-10-01' },
    });
    const before = plan({
      ...colon(grave),
      events: { ...NO_EVENTS, meetings: [{ ...happened('2024-09-14'), decision: 'no-surgery' }] },
    });
    expect(itemOf(before, 'recurrence.1')?.state).toBe('open');
    const again = plan(colon(scar('2024-09-15'), looked('2024-12-15', { route: 'lower' })));
    expect(itemOf(again, 'recurrence.1')).toMatchObject({
      state: 'done',
      doneBy: { kind: 'examination', on: '2024-12-15' },
    });
  });

  it('counts also when nothing was due', () => {
    const found = plan(colon(scar('2024-04-20', { treated: true })));
    expect(itemOf(found, 'COL-2.1')).toMatchObject({ state: 'open', countsFrom: '2024-04-20' });
    expect(found.unplanned).toHaveLength(1);
  });

  it.each([
    ['oesophagus', 'squamous', 'OES-2'],
    ['oesophagus', 'barrett', 'BAR-1'],
    ['stomach', 'gastric', 'GAS-2'],
    ['rectum', 'colorectal', 'COL-2'],
  ] as const)('of the %s (%s) opens %s', (organ, tumour, row) => {
    const route = organ === 'rectum' ? 'lower' : 'upper';
    const examinations = [scar('2025-03-20', { treated: true, route })];
    const found = plan(resected(organ, 'very-low-risk', { tumour, examinations }));
    expect(toCome(found).map((item) => item.row)).toEqual([row]);
  });
});

describe('high risk', () => {
  const meeting = (on: string, decision: PlanFacts['events']['meetings'][number]['decision']) => ({
    ...happened(on),
    decision,
  });
  const high = (...meetings: PlanFacts['events']['meetings']) =>
    resected('stomach', 'high-risk', { events: { ...NO_EVENTS, meetings } });

  it('asks for a meeting 2 to 4 weeks after the report, and for nothing else', () => {
    expect(toCome(plan(high()))).toMatchObject([
      {
        key: 'meeting.1',
        task: 'multidisciplinary-meeting',
        due: { earliest: '2024-04-08', latest: '2024-04-22' },
      },
    ]);
  });

  it.each([
    ['no-surgery', ['GAS-3.1 open']],
    ['surgery', ['surgery-referral.1 open']],
    ['further-endoscopic-treatment', ['additional-treatment.1 open', 'GAS-3.1 to-confirm']],
    ['chemoradiotherapy', ['additional-treatment.1 open', 'GAS-3.1 to-confirm']],
    ['best-supportive-care', []],
    ['further-staging', ['meeting.2 open']],
  ] as const)('follows the decision %s', (decision, expected) => {
    const found = plan(high(meeting('2024-04-10', decision)));
    expect(toCome(found).map(shortOf)).toEqual(expected);
    expect(itemOf(found, 'meeting.1')).toMatchObject({ state: 'done', doneBy: { kind: 'event' } });
  });

  it('follows the last of several meetings, in whatever order they were told', () => {
    const both = [meeting('2024-04-10', 'further-staging'), meeting('2024-04-30', 'no-surgery')];
    for (const told of [both, [...both].reverse()]) {
      const found = plan(high(...told));
      expect(toCome(found).map(shortOf)).toEqual(['GAS-3.1 open']);
      expect(itemOf(found, 'meeting.2')).toMatchObject({ doneBy: { on: '2024-04-30' } });
    }
  });

  it('asks again whether a decision holds that is older than the report', () => {
    const found = plan(high(meeting('2024-03-24', 'no-surgery')));
    expect(itemOf(found, 'GAS-3.1')).toMatchObject({
      state: 'to-confirm',
      reasons: [{ code: 'report-newer-than-decision' }],
    });
  });

  it('of another set, which the chosen set does not share, asks for a meeting too', () => {
    const facts = resected('colon', 'low-risk', {
      verdict: { rule: 'jsccr-2019', class: 'consider-surgery', group: 'non-curative' },
      pathology: { ...REPORT, histology: 'carcinoma', depth: 'sm' },
    });
    expect(dueShort(facts)).toEqual(['meeting.1 open']);
  });
});

describe('what ends a plan', () => {
  const events = (more: Partial<PlanFacts['events']>, on: PlanFacts['examinations'] = []) =>
    resected('stomach', 'low-risk', { events: { ...NO_EVENTS, ...more }, examinations: on });
  const gone = (code: string) => ({ state: 'revoked', reasons: [{ code }] });

  it('is an operation; a person plans what follows it', () => {
    const found = plan(events({ surgeries: [{ ...happened('2024-05-02'), kind: 'resection' }] }));
    expect(itemOf(found, 'GAS-1.1')).toMatchObject(gone('surgery-done'));
    expect(toCome(found).map(shortOf)).toEqual(['after-surgery.1 open']);
  });

  it('is not a local excision, which puts it in question', () => {
    const found = plan(events({ surgeries: [{ ...happened('2024-05-02'), kind: 'excision' }] }));
    expect(itemOf(found, 'GAS-1.1')?.state).toBe('to-confirm');
  });

  it('is death, of everything', () => {
    const found = plan({
      ...events({ deaths: [happened('2024-05-02')] }),
      helicobacter: 'unknown',
    });
    expect(toCome(found)).toEqual([]);
    expect(itemOf(found, 'GAS-1.1')).toMatchObject(gone('death'));
    expect(itemOf(found, 'helicobacter-test.1')).toMatchObject(gone('death'));
  });

  it('is that the case was taken back', () => {
    const found = plan({ ...resected('stomach', 'low-risk'), withdrawn: true });
    expect(toCome(found)).toEqual([]);
    expect(itemOf(found, 'GAS-1.1')).toMatchObject(gone('withdrawn'));
  });

  it('is a patient who declines all, or this one, until the patient comes back', () => {
    const on = '2024-06-01';
    for (const request of [undefined, 'c0ffee.GAS-1.1']) {
      const declined = { ...happened(on), ...(request && { request }) };
      expect(itemOf(plan(events({ declines: [declined] })), 'GAS-1.1')).toMatchObject(
        gone('declined'),
      );
      const back = plan(events({ declines: [declined] }, [looked('2024-09-15')]));
      expect(toCome(back).map(shortOf)).toEqual(['GAS-1.2 open']);
    }
  });

  it('is neither a refusal of another request nor a patient out of reach', () => {
    const decline = (request: string) =>
      plan(events({ declines: [{ ...happened('2024-06-01'), request }] }));
    expect(itemOf(decline('c0ffee.GAS-1.2'), 'GAS-1.1')?.state).toBe('open');
    expect(itemOf(decline('EX-Q-2026-007'), 'GAS-1.1')).toMatchObject({
      state: 'to-confirm',
      reasons: [{ code: 'declined-other' }],
    });
    const lost = plan(events({ losses: [happened('2024-06-01')] }));
    expect(itemOf(lost, 'GAS-1.1')).toMatchObject({
      state: 'to-confirm',
      reasons: [{ code: 'lost' }],
    });
  });
});

describe('Barrett mucosa', () => {
  const barrett = (histology: string, ...examinations: PlanFacts['examinations']) =>
    resected('oesophagus', 'very-low-risk', {
      tumour: 'barrett',
      pathology: { ...REPORT, histology },
      examinations,
    });
  const cleared = looked('2024-06-15', { barrettLeft: false });

  it('is looked at every three months until none is left', () => {
    const found = plan(barrett('carcinoma', looked('2024-06-15', { barrettLeft: true })));
    expect(itemOf(found, 'BAR-1.2')?.due?.target).toBe('2024-09-15');
  });

  // ESGE Barrett 2023, second source: years 1, 2, 3, 4, 5, 7, 10; after low grade 1, 3, 5.
  it.each([
    ['carcinoma', 'BAR-2', [1, 2, 3, 4, 5, 7, 10]],
    ['high-grade-dysplasia', 'BAR-2', [1, 2, 3, 4, 5, 7, 10]],
    ['low-grade-dysplasia', 'BAR-3', [1, 3, 5]],
  ] as const)('that is gone after %s follows the calendar of %s', (histology, row, years) => {
    let told = [cleared];
    for (const [i, year] of years.entries()) {
      const day = `${2024 + year}-06-15`;
      const found = plan(barrett(histology, ...told));
      expect(toCome(found).map(({ key, due }) => [key, due?.target])).toEqual([
        [`${row}.${i + 1}`, day],
      ]);
      told = [...told, looked(day, { barrettLeft: false })];
    }
    expect(toCome(plan(barrett(histology, ...told))).map(({ task }) => task)).toEqual([
      'clinician-decision',
    ]);
  });

  it('keeps to the calendar when an examination is late, and skips what is over', () => {
    const found = plan(barrett('carcinoma', cleared, looked('2026-07-01', { barrettLeft: false })));
    expect(itemOf(found, 'BAR-2.2')?.due?.target).toBe('2027-06-15');
  });

  it('that is back starts again', () => {
    const found = plan(barrett('carcinoma', cleared, looked('2025-06-15', { barrettLeft: true })));
    expect(toCome(found).map(({ key, due }) => [key, due?.target])).toEqual([
      ['BAR-1.2', '2025-09-15'],
    ]);
  });

  it('after a pT1b of low risk has two rows: the earlier date wins and both are named', () => {
    const facts = resected('oesophagus', 'low-risk', {
      tumour: 'barrett',
      pathology: { ...REPORT, histology: 'carcinoma', depth: 'sm' },
    });
    expect(toCome(plan(facts))).toMatchObject([
      {
        key: 'BAR-1.1',
        due: { target: '2024-06-15' },
        overlaps: [{ row: 'BAR-4', target: '2024-06-15' }],
      },
    ]);
    const notFree = {
      ...facts,
      pathology: { ...REPORT, histology: 'carcinoma', depth: 'sm', r0: false },
    };
    expect(toCome(plan(notFree))).toMatchObject([{ key: 'BAR-1.1', overlaps: [] }]);
  });
});

describe('the rule set of the unit', () => {
  const adenoma = (sizeMm: number, more: Partial<PlanFacts> = {}) =>
    resected('colon', 'very-low-risk', {
      sizeMm,
      pathology: { ...REPORT, polypType: 'adenoma' },
      ...more,
    });
  const bsg = {
    ...ALWAYS_OPEN,
    followUpRules: { ...ALWAYS_OPEN.followUpRules, colon: 'bsg-2019' as const },
  };

  it('leaves a lesion that it does not speak of to the default one, and says so', () => {
    expect(toCome(planFollowUp(adenoma(20), bsg))).toMatchObject([{ row: 'COL-6', reasons: [] }]);
    expect(toCome(planFollowUp(adenoma(19), bsg))).toMatchObject([
      { row: 'COL-1', reasons: [{ code: 'set-silent' }] },
    ]);
  });

  it('gives way to the class: a pT1 of low risk is looked at after a year', () => {
    const facts = resected('colon', 'low-risk', {
      pathology: { ...REPORT, histology: 'carcinoma', depth: 'sm' },
    });
    expect(toCome(planFollowUp(facts, bsg))).toMatchObject([
      { row: 'COL-4', due: { target: '2025-03-15' }, overlaps: [{ row: 'COL-6' }] },
    ]);
  });

  it('names what it needs to know', () => {
    const { sizeMm, ...unknown } = adenoma(20);
    expect(toCome(planFollowUp(unknown, bsg))[0]?.row).toBe('COL-1');
    const duodenal = resected('duodenum', 'no-rule');
    expect(toCome(plan(duodenal))).toMatchObject([
      {
        task: 'clinician-decision',
        reasons: [{ code: 'facts-missing' }],
        says: ['not known: polypType'],
      },
    ]);
  });

  it('of another class weighs treatment beside the examination', () => {
    const unit = {
      ...ALWAYS_OPEN,
      followUpRules: {
        ...ALWAYS_OPEN.followUpRules,
        oesophagus: 'jges-jes-2020-follow-up' as const,
      },
    };
    const facts = resected('oesophagus', '', {
      verdict: { rule: 'jges-jes-2020', class: 'undetermined', group: 'open' },
      classes: { 'jges-jes-2020': 'undetermined' },
    });
    expect(toCome(planFollowUp(facts, unit)).map(shortOf)).toEqual([
      'treatment.1 open',
      'OES-4.1 open',
    ]);
  });
});

describe('what only an earlier plan had', () => {
  const now = resected('stomach', 'low-risk');
  const early = looked('2024-04-20', { recurrence: 'found', treated: true });

  it.each<readonly [string, PlanFacts, PlanFacts, string, string | undefined]>([
    ['another class', now, resected('stomach', 'local-risk'), 'class-changed', 'GAS-1.1'],
    ['no examination', { ...now, examinations: [early] }, now, 'examination-told', 'GAS-2.1'],
    [
      'no meeting',
      resected('stomach', 'high-risk', {
        events: { ...NO_EVENTS, meetings: [{ ...happened('2024-04-10'), decision: 'surgery' }] },
      }),
      resected('stomach', 'high-risk', {
        events: { ...NO_EVENTS, meetings: [{ ...happened('2024-04-10'), decision: 'no-surgery' }] },
      }),
      'event-told',
      'surgery-referral.1',
    ],
  ])('is superseded: %s', (_, present, was, code, replacedBy) => {
    const gone = plan(present, [was]).items.filter(({ state }) => state === 'superseded');
    expect(gone).toMatchObject([{ reasons: [{ code }], replacedBy }]);
  });

  it('beside the series has nothing in its place', () => {
    const found = plan(now, [{ ...now, helicobacter: 'unknown' }]);
    const gone = itemOf(found, 'helicobacter-test.1');
    expect(gone).toMatchObject({ state: 'superseded', reasons: [{ code: 'facts-changed' }] });
    expect(gone).not.toHaveProperty('replacedBy');
  });

  it('and was revoked there is not brought up again', () => {
    const dead = resected('stomach', 'local-risk', {
      events: { ...NO_EVENTS, deaths: [happened('2024-05-02')] },
    });
    expect(plan(now, [dead]).items.map(shortOf)).not.toContain('GAS-2.1 superseded');
  });
});

describe('an item', () => {
  it('says who asks for it, from what, with which sources, and how to look', () => {
    const [item] = toCome(
      plan(
        resected('colon', 'low-risk', {
          pathology: { ...REPORT, histology: 'carcinoma', depth: 'sm' },
        }),
      ),
    );
    expect(item).toMatchObject({
      key: 'COL-4.1',
      kind: 'endoscopy',
      route: 'lower',
      rule: 'esge-esd-2022-follow-up',
      version: 1,
      ruleSet: 'esge-esdo-2019',
      countsFrom: ESD_ON,
      inputs: { organ: 'colon', tumour: 'colorectal', esdDate: ESD_ON, class: 'low-risk' },
      basis: 'published',
      follows: '36,60',
    });
    expect(item?.look).toMatch(/colonoscopy/i);
    expect(item?.cites.length).toBeGreaterThan(0);
  });
});
