import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import type { Observation } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import type { ScoreFinding } from '../../src/assessment/index.js';
import { SCORE_RULES } from '../../src/assessment/scores/score-rules.js';
import { InvariantError } from '../../src/kernel/index.js';
import { SCORES } from '../../src/mapping/answers.table.js';
import { scoresSentence, toScores } from '../../src/mapping/scores.js';
import { answer } from '../../src/rules/index.js';
import { STRUCTURE } from '../../src/terminology/index.js';
import { fhirJs, medplum, officialSchema, type Peer } from '../conformance/peers.js';
import { publishedProfiles } from '../conformance/published.js';
import { brokenBy, codesOf, contextOf, textsOf } from './answers.js';

const CONTEXT = contextOf('stomach-dual-antiplatelet', 'stomach-high-risk');
const WAITS = contextOf('rectum', 'rectum-interim');
const PRESENT = new Set(['antithrombotics-taken', 'lesion-description', 'gas']);
const CITE = { work: 'hatta2021', place: 'abstract', basis: 'published' } as const;

/** Source: Gut 2021;70:476-484, table of risk groups: 3 to 4 points, 87 of 760, 11.4 % (9.3 to 13.9). */
const BEST_J: ScoreFinding = {
  rule: 'best-j',
  version: 2,
  title: 'Bleeding after gastric dissection',
  population: 'Patients of a test.',
  outcome: {
    kind: 'total',
    total: 4,
    group: 'high',
    rate: {
      says: 'bled',
      percent: 11.4,
      events: 87,
      of: 760,
      interval: {
        lowerPercent: 9.3,
        upperPercent: 13.9,
        levelPercent: 95,
        method: 'clopper-pearson',
      },
    },
    figures: [{ says: 'mean speed', value: 8.1, unit: 'mm2/min' }],
    counted: [{ item: 'warfarin', points: 4, says: 'warfarin', cites: [CITE] }],
  },
  remarks: [{ remark: 'r', says: 'Shown beside.', cites: [CITE] }],
};
const bare = (rule: string, outcome: ScoreFinding['outcome']): ScoreFinding => ({
  rule,
  version: 1,
  title: 'A score',
  population: 'Patients of a test.',
  outcome,
  remarks: [],
});
const OPEN = { kind: 'indeterminate', missing: ['ly', 'v'], lowest: 1, highest: 5 } as const;
const REFUSED = { kind: 'refused', because: 'The score was made for others.' } as const;

function mapped(score: ScoreFinding): Observation {
  const [draft] = toScores(CONTEXT, [score], PRESENT);
  if (draft === undefined) throw new Error('a score becomes an Observation');
  return draft.resource;
}
const partsOf = ({ component = [] }: Observation) =>
  component.map(({ code, valueQuantity }) => [
    codesOf(code, 'esd-observation')[0],
    valueQuantity?.value,
    valueQuantity?.code,
  ]);

describe('a score with a total', () => {
  const observation = mapped(BEST_J);

  it('says its points, its group, and the published rate with the limits', () => {
    const { valueQuantity, interpretation, status } = observation;
    expect([valueQuantity?.value, valueQuantity?.code]).toEqual([4, '{score}']);
    expect(codesOf(interpretation?.[0], 'score-group')).toEqual(['high']);
    expect(partsOf(observation)).toEqual([
      ['published-rate', 11.4, '%'],
      ['published-rate-lower', 9.3, '%'],
      ['published-rate-upper', 13.9, '%'],
    ]);
    expect(status).toBe('final');
  });

  it('says in words what was counted, what was published and how, and what stands beside', () => {
    expect(textsOf(observation)).toEqual([
      'Counted 4: warfarin [hatta2021, abstract: published]',
      'Published of this group: bled, 11.4 % ' +
        '(87 of 760; 95 % interval 9.3 to 13.9 %, exact (Clopper-Pearson)).',
      'Published of this group: mean speed, 8.1 mm2/min.',
      'Shown beside. [hatta2021, abstract: published]',
    ]);
  });

  it('names the score with its version, and derives from inputs that the case has', () => {
    expect(observation.method?.coding?.map(({ code, version }) => [code, version])).toEqual([
      ['best-j', '2'],
    ]);
    expect(observation.derivedFrom).toHaveLength(2);
    const [unlinked] = toScores(CONTEXT, [BEST_J], new Set(['gas']));
    expect(unlinked?.resource).not.toHaveProperty('derivedFrom');
  });

  it('without a published group or rate has neither', () => {
    const total = { kind: 'total', total: 0, counted: [] } as const;
    const observation = mapped(bare('kr-colorectal-bleeding', total));
    expect(observation.valueQuantity?.value).toBe(0);
    expect(observation).not.toHaveProperty('interpretation');
    expect(observation).not.toHaveProperty('component');
    expect(observation).not.toHaveProperty('note');
    expect(brokenBy(observation)).toEqual([]);
  });

  it('has a rate without limits where none were published', () => {
    const rate = { says: 'bled', percent: 4.1 };
    const total = { kind: 'total', total: 1, group: 'low-medium', rate, counted: [] } as const;
    const observation = mapped(bare('limoges', total));
    expect(partsOf(observation)).toEqual([['published-rate', 4.1, '%']]);
    expect(textsOf(observation)).toEqual(['Published of this group: bled, 4.1 %.']);
  });
});

/** Source: FHIR R4, value set data-absent-reason. */
describe('a score without a total', () => {
  it.each([
    ['is open', OPEN, STRUCTURE.absent.unknown, 'Not known: ly, v; possible total: 1 to 5.'],
    [
      'is open though its points are known',
      { ...OPEN, highest: 1 },
      STRUCTURE.absent.unknown,
      'Not known: ly, v; possible total: 1.',
    ],
    ['was not made for the case', REFUSED, STRUCTURE.absent.notApplicable, REFUSED.because],
  ])('%s', (_name, outcome, absent, note) => {
    const observation = mapped(bare('ecura', outcome));
    expect(observation.dataAbsentReason).toEqual(absent);
    for (const element of ['valueQuantity', 'interpretation', 'component']) {
      expect(observation).not.toHaveProperty(element);
    }
    expect(textsOf(observation)).toEqual([note]);
    expect(brokenBy(observation)).toEqual([]);
  });
});

describe('a score that asks for the report', () => {
  const of = (rule: string, outcome: ScoreFinding['outcome']) =>
    toScores(WAITS, [bare(rule, outcome)], new Set())[0]?.resource;

  it('is preliminary, and its answer still to come, until the report is final', () => {
    expect(of('ecura', OPEN)).toMatchObject({
      status: 'preliminary',
      dataAbsentReason: STRUCTURE.absent.tempUnknown,
    });
    expect(of('ecura', REFUSED)).toMatchObject({ status: 'preliminary' });
  });

  it('and no other score is', () => {
    expect(of('limoges', OPEN)).toMatchObject({
      status: 'final',
      dataAbsentReason: STRUCTURE.absent.unknown,
    });
  });
});

describe('several scores of a case', () => {
  const scores = [
    BEST_J,
    bare('limoges', OPEN),
    bare('ecura', REFUSED),
    bare('colorectal-difficulty-2021', { ...OPEN, highest: 1 }),
  ];

  it('are told apart by their keys and methods, of one item or of several', () => {
    expect(toScores(CONTEXT, scores, PRESENT).map(({ key }) => key)).toEqual([
      'bleeding-risk-score.best-j',
      'bleeding-risk-score.limoges',
      'node-risk.ecura',
      'difficulty-score.colorectal-difficulty-2021',
    ]);
  });

  it('stand in one sentence; one that was refused is left to its Observation', () => {
    expect(scoresSentence(scores)).toEqual([
      'Scores: BEST-J: 4 (high); Limoges: open, 1 to 5; Colorectal difficulty 2021: open, 1.',
    ]);
    expect(scoresSentence([bare('ecura', REFUSED)])).toEqual([]);
    expect(scoresSentence([])).toEqual([]);
  });
});

describe('every score that can be asked', () => {
  it('has its row, and no row is of another', () => {
    expect(Object.keys(SCORES).sort()).toEqual(SCORE_RULES.map(({ id }) => id).sort());
  });

  it('would be missed: a score or a group without a code is our fault', () => {
    expect(() => mapped(bare('unheard-of', REFUSED))).toThrow(InvariantError);
    const total = { kind: 'total', total: 1, group: 'lowest', counted: [] } as const;
    expect(() => mapped(bare('limoges', total))).toThrow(InvariantError);
  });
});

interface Example {
  readonly id: string;
  readonly inputs_json: string;
  readonly rule_or_score: string;
  readonly expected: string;
  readonly source: string;
}

const EXAMPLES = parse<Example>(readFileSync('tests/published/worked-examples.csv', 'utf8'), {
  columns: true,
}).filter(({ rule_or_score }) => Object.hasOwn(SCORES, rule_or_score));

/** The answer of the rule in the form that the assessment of a case has. */
function findingOf({ rule_or_score, inputs_json }: Example): ScoreFinding {
  const rule = SCORE_RULES.find(({ id }) => id === rule_or_score);
  const asked = rule === undefined ? undefined : answer(rule, JSON.parse(inputs_json));
  if (asked?.ok !== true) throw new Error('the example is a question to the score');
  const { missing, rate } = asked.value;
  const [total = '', group = ''] = asked.value.answer.split(';');
  const range = /range=(\d+)-(\d+)/.exec(asked.value.answer);
  const named = /^[a-z-]+$/.test(group) ? { group } : {};
  return bare(
    rule_or_score,
    range === null
      ? {
          kind: 'total',
          total: Number(total),
          ...named,
          ...(rate === undefined ? {} : { rate }),
          counted: [],
        }
      : { kind: 'indeterminate', missing, lowest: Number(range[1]), highest: Number(range[2]) },
  );
}

describe('the published worked examples as Observations', () => {
  let peers: readonly Peer[] = [];
  beforeAll(() => {
    peers = [officialSchema(), medplum(publishedProfiles()), fhirJs()];
  });
  /** Complaints of the validators of others; a link into the Bundle is all they may not know. */
  const complaints = (observation: Observation) =>
    peers
      .flatMap(({ validate }) => validate(observation))
      .filter((message) => !message.includes('Invalid reference: got "urn:uuid:'));

  it('are some of every score but the newest', () => {
    const asked = new Set(EXAMPLES.map(({ rule_or_score }) => rule_or_score));
    const unasked = Object.keys(SCORES).filter((score) => !asked.has(score));
    expect(unasked).toEqual(['colorectal-difficulty-2023']);
  });

  it.each(EXAMPLES)('$id: $expected ($source)', (example) => {
    const observation = mapped(findingOf(example));
    const [total = '', group, percent] = example.expected.split(';');
    const isOpen = total === 'indeterminate';
    expect(observation.valueQuantity?.value).toBe(isOpen ? undefined : Number(total));
    const groups = codesOf(observation.interpretation?.[0], 'score-group');
    expect(groups).toEqual(isOpen || group === undefined ? [] : [group]);
    const [rate] = partsOf(observation);
    expect(rate?.[1]).toBe(percent === undefined || isOpen ? undefined : Number(percent));
    expect(brokenBy(observation)).toEqual([]);
    expect(complaints(observation)).toEqual([]);
  });

  it('would not pass with half a point, a group without points, or limits that do not fit', () => {
    const right = mapped(BEST_J);
    const { valueQuantity, component = [], ...rest } = right;
    const half = { ...right, valueQuantity: { ...valueQuantity, value: 2.5 } };
    expect(brokenBy(half)).toEqual(['dr-r-sco-1']);
    const pointless = { ...rest, dataAbsentReason: STRUCTURE.absent.unknown };
    expect(brokenBy(pointless)).toEqual(['dr-r-sco-2']);
    const { method: _method, ...nameless } = right;
    expect(complaints(nameless)).not.toEqual([]);
    const [first, second, third] = component;
    const swapped = [second, third, first].map((part, i) => ({
      code: component[i]?.code,
      valueQuantity: part?.valueQuantity,
    }));
    expect(brokenBy({ ...right, component: swapped })).toEqual(['dr-r-sco-3']);
  });
});
