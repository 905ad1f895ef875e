import { CLASSIFICATION_RULES } from '../../src/assessment/classifications/classification-rules.js';
import { JGES_JES_2020_INDICATION } from '../../src/assessment/curability/jges-jes-2020-indication.table.js';
import { BLEEDING_DEFINITIONS } from '../../src/assessment/events/late-bleeding.table.js';
import { SCAR_RECURRENCE } from '../../src/assessment/events/recurrence.table.js';
import { BEST_J } from '../../src/assessment/scores/best-j.table.js';
import { SCORE_RULES } from '../../src/assessment/scores/score-rules.js';
import {
  answer,
  askClass,
  type ClassRule,
  type Condition,
  type Rule,
  type ScoreRule,
} from '../../src/rules/index.js';
import type { Told } from '../../src/rules/question.js';
import { FOLLOW_UP_RULES } from '../../src/surveillance/index.js';
import { SECOND_CLASSIFICATIONS } from '../assessment/classifications/second-classifications.js';
import { BUDDING_SECOND } from '../assessment/classifications/second-findings.js';
import { INDICATION_SECOND } from '../assessment/curability/second-indication.js';
import { ALL_SETS, HARMLESS, type Known } from '../assessment/curability/spaces.js';
import { SECOND_LATE } from '../assessment/events/second-late.js';
import { type BestJQuestion, bestJ, KINDS } from '../assessment/scores/second-best-j.js';
import { SECOND_SCORES } from '../assessment/scores/second-scores.js';
import type { Choices, SecondWriting } from '../support/every-question.js';
import { SECOND_FOLLOW_UPS, type SecondFollowUp } from '../surveillance/second-writing.js';
import { type Axes, valuesOf } from './ways.js';

/** A rule with what the tests of it know from outside its table. */
export interface KnownRule {
  readonly rule: ClassRule | ScoreRule;
  /** The questions that its tests ask, as values of each field. */
  readonly axes: readonly Axes[];
  /** What no question says at once. */
  readonly impossible: readonly Condition[];
  /** What a rule says to a question. */
  readonly says: (rule: Rule, question: Told) => string;
  /** What it must say by the second writing, to a question without a hole. */
  readonly expected: (question: Told) => string;
}

const RULES: readonly Rule[] = [
  ...SCORE_RULES,
  ...CLASSIFICATION_RULES,
  ...FOLLOW_UP_RULES,
  JGES_JES_2020_INDICATION,
  ...BLEEDING_DEFINITIONS.map(({ rule }) => rule),
  SCAR_RECURRENCE,
];

export const knownRules = (): readonly KnownRule[] => [
  ...ALL_SETS.map(curability),
  ...[INDICATION_SECOND, ...SECOND_SCORES, ...SECOND_CLASSIFICATIONS, ...SECOND_LATE]
    .filter(({ id }) => id !== BUDDING_SECOND.id)
    .map(plain),
  bestJKnown(),
  buddingKnown(),
  ...SECOND_FOLLOW_UPS.map(followUp),
];

function ruleOf(id: string): ClassRule | ScoreRule {
  const rule = RULES.find((each) => each.id === id);
  if (rule === undefined || rule.kind === 'quantity') throw new Error(`no rule ${id}`);
  return rule;
}

function curability({ rule, writing, spaces }: Known): KnownRule {
  const fields = Object.keys(rule.fields);
  return {
    rule,
    axes: spaces.map((space) => {
      const harmless: Told = { ...HARMLESS };
      // Their questions have a depth of 0 wherever the tumour does not end in the submucosa.
      const given: Axes = { ...space, smDepthUm: [0, ...(space.smDepthUm ?? [])] };
      return Object.fromEntries(
        fields.map((field) => [field, given[field] ?? [harmless[field] ?? '']]),
      );
    }),
    impossible: rule.contradictions.map(({ when }) => when),
    says: (asked, question) => {
      if (asked.kind === 'quantity' || asked.kind === 'score') return '';
      const { decision } = askClass(asked, question);
      return decision.kind === 'decided'
        ? [decision.class, ...decision.reasons].join(';')
        : `indeterminate;missing=${decision.missing.join()}`;
    },
    expected: (question) => {
      const { class: found, reasons } = writing({ ...HARMLESS, ...question });
      return [found, ...reasons].join(';');
    },
  };
}

/** Rules whose questions are bare fields. */
function plain(second: SecondWriting): KnownRule {
  const rule = ruleOf(second.id);
  return {
    rule,
    axes: [axesOf(rule, second.choices)],
    impossible: rule.contradictions.map(({ when }) => when),
    says: shortAnswer,
    expected: (question) => second.says(question),
  };
}

/** The values that tests ask with; words that say "not known" are holes. */
function axesOf({ fields, samples }: ClassRule | ScoreRule, choices: object): Axes {
  const given: Choices = { ...choices };
  return Object.fromEntries(
    Object.entries(fields).map(([name, field]) => {
      const unknown: readonly unknown[] = field.type === 'word' ? (field.unknown ?? []) : [];
      const asked = given[name]?.flatMap((value) =>
        value === null || value === undefined || unknown.includes(value) ? [] : [value],
      );
      return [name, asked ?? valuesOf(field, samples[name] ?? [])];
    }),
  );
}

/** The document lists drugs; the rule has a flag for each kind. */
function bestJKnown(): KnownRule {
  return {
    rule: BEST_J,
    axes: [axesOf(BEST_J, { sizeMm: [30, 30.1, 31] })],
    impossible: KINDS.map((kind) => ({
      [kind]: { is: [false] },
      [`${kind}Interrupted`]: { is: [true] },
    })),
    says: (asked, { haemodialysis, lowerThird, multiple, sizeMm, ...drugs }) =>
      shortAnswer(asked, { drugs: drugsOf(drugs), haemodialysis, lowerThird, multiple, sizeMm }),
    expected: (question) => bestJ(withDrugs(question)),
  };
}

function withDrugs(told: Told): BestJQuestion {
  return {
    drugs: drugsOf(told),
    haemodialysis: told['haemodialysis'] === true,
    lowerThird: told['lowerThird'] === true,
    multiple: told['multiple'] === true,
    sizeMm: Number(told['sizeMm']),
  };
}

const drugsOf = (told: Told): BestJQuestion['drugs'] =>
  KINDS.filter((kind) => told[kind] === true).map((kind) => {
    const interrupted = told[`${kind}Interrupted`];
    return { kind, interrupted: typeof interrupted === 'boolean' ? interrupted : null };
  });

/** The rule counts in the standard field; here the buds were counted in just that. */
function buddingKnown(): KnownRule {
  const rule = ruleOf(BUDDING_SECOND.id);
  const document = (told: Told) => ({
    buds: told['buds'] === 0 ? told['budsInStandardField'] : told['buds'],
    fieldMm2: told['fieldMm2'],
  });
  return {
    rule,
    axes: [
      axesOf(rule, {
        buds: [0],
        fieldMm2: [0.785],
        budsInStandardField: BUDDING_SECOND.choices.buds,
      }),
    ],
    impossible: [],
    says: (asked, question) => shortAnswer(asked, document(question)),
    expected: ({ budsInStandardField }) =>
      BUDDING_SECOND.says({ buds: Number(budsInStandardField), fieldMm2: 0.785 }),
  };
}

function followUp({ id, says, spaces }: SecondFollowUp): KnownRule {
  const rule = ruleOf(id);
  return {
    rule,
    axes: spaces.map((space) => {
      const later = LATER.some((field) => space[field] !== undefined);
      const class_ = space['class']?.map((value) => value ?? 'not-back');
      return axesOf(rule, {
        ...space,
        stage: [later ? 'later' : 'first'],
        ...(class_ === undefined ? {} : { class: class_ }),
      });
    }),
    impossible: [],
    says: (asked, question) => shortAnswer(asked, asSent(question)),
    expected: (question) => says(asSent(question)),
  };
}

function shortAnswer(rule: Rule, question: object): string {
  const told = Object.entries(question).filter(([, value]) => value !== undefined);
  const answered = answer(rule, Object.fromEntries(told));
  return answered.ok
    ? answered.value.answer
    : answered.problems.map((problem) => problem.rule).join();
}

/** Fields of a first and of a later examination; nobody sends those of both. */
const LATER = ['firstSurveillance', 'findings', 'eradicationDate', 'baselineHistology'];

/** The document without the words that the rule adds by itself. */
function asSent({ stage, ...question }: Told): Told {
  const sent = Object.entries(question).filter(
    ([field]) => stage === undefined || (stage === 'later') === LATER.includes(field),
  );
  return Object.fromEntries(
    sent.map(([field, value]) => [field, value === 'not-back' ? null : value]),
  );
}
