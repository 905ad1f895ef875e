import type { Value } from '../../src/rules/condition.js';
import type { Told } from '../../src/rules/question.js';
import { BUDDING_SECOND } from '../assessment/classifications/second-findings.js';
import { isPureDysplasia, isRequired, isUsed } from '../assessment/curability/second-asking.js';
import { HARMLESS } from '../assessment/curability/spaces.js';
import { everyQuestion } from '../support/every-question.js';
import type { Hole } from './holes.js';
import type { KnownRule } from './known-rules.js';

/**
 * What it means that a field is absent, by the conventions of the worked examples (fields marked
 * as required, optional or not used), as plain conditions.
 */
export interface Asking {
  /** Whether this hole can be made at all in what people send. */
  readonly mayBeAbsent: (hole: Hole, base: Told) => boolean;
  readonly isPossible: (question: Told) => boolean;
  /** The value that absence stands for; undefined where it stands for none. */
  readonly ifAbsent: (field: string, question: Told) => Value | undefined;
  /** Whether the hole is named as missing, if the question is in truth this one. */
  readonly counts: (hole: Hole, question: Told) => boolean;
  readonly nameOf: (field: string) => string;
  /** Questions that must be among those in which holes are made. */
  readonly bases: readonly Told[];
  /** What must be said, where completions cannot show it. */
  readonly expected?: (base: Told, holes: readonly Hole[]) => string;
  /** One answer out of those of all completions. */
  readonly merge: (answers: readonly string[], missing: readonly string[]) => string;
}

export function askingOf({ rule }: KnownRule): Asking {
  if (rule.kind === 'rule-set' && rule.id !== 'jges-jes-2020-indication') {
    return curabilityAsking(rule.id);
  }
  if (rule.id === 'budding-itbcc') return BUDDING;
  return {
    ...BARE,
    mayBeAbsent: (hole, base) => mayBeAbsent(rule.id, hole, base),
    ifAbsent: (field) => OPTIONAL[rule.id]?.[field],
    counts: (hole, question) =>
      (hole.told === null || OPTIONAL[rule.id]?.[hole.field] === undefined) &&
      isAsked(rule.id, hole.field, question),
    nameOf: (field) => (rule.id === 'best-j' && isOfDrugs(field) ? 'drugs' : field),
    merge: rule.kind === 'score' ? rangeOf : sameOrOpen,
  };
}

const BARE = { isPossible: () => true, nameOf: (field: string) => field, bases: [] };

const AGREE = {
  intervention: 'none',
  transfusion: false,
  drugsBeyondGradeI: false,
  emergencyVisit: false,
  death: false,
  admissionHours: 0,
  observationHours: 0,
  criticalCare: 'none',
};

/** Optional fields with what their absence means. */
const OPTIONAL: Readonly<Record<string, Readonly<Record<string, Value>>>> = {
  'colorectal-difficulty-2021': { dentateLine: false },
  'colorectal-difficulty-2023': { precedingBiopsy: false, nice: 2 },
  agree: AGREE,
  'clavien-dindo': AGREE,
  'esge-esd-2022-follow-up': { enBloc: true },
  'jges-jes-2020-follow-up': { iodineVoiding: 'few' },
  'esge-pps-2020': { count: 1 },
  'esge-esdo-2019': { age: 0 },
  'bsg-2019': { r0: false },
  'background-mucosa': {
    dysplasia: 'none',
    gastritisStage: '0',
    extent: 'none',
    metaplasia: 'none',
    helicobacterGastritis: false,
    familyHistory: false,
  },
};

/** Whether a field is asked for at all beside the others. */
function isAsked(id: string, field: string, q: Told): boolean {
  switch (field) {
    case 'generalAnaesthesia':
      return id === 'clavien-dindo' && q['intervention'] !== 'none';
    case 'contamination':
      return q['sign'] === 'hole';
    case 'speedCm2PerMin':
      return q['outcome'] === 'en-bloc';
    case 'cSmDepthUm':
      return q['cDepth'] === 'sm';
    case 'upperOesophagus':
      return false;
    case 'defectLengthMm':
      return id === 'stricture-flag-stomach' && Number(q['defectCircumferencePercent']) > 75;
    case 'r0':
      return id !== 'esge-pps-2020';
    case 'depth':
      return id !== 'without-surgery' || !['gastric', 'other'].includes(String(q['tumour']));
    case 'age':
      return id !== 'esge-esdo-2019';
    case 'eradicationDate':
    case 'baselineHistology':
    case 'firstSurveillance':
    case 'findings':
      return q['stage'] === 'later';
    case 'examDate':
    case 'barrettMaxCm':
    case 'esdDate':
    case 'sizeMm':
    case 'polypType':
    case 'histology':
    case 'enBloc':
      return q['stage'] !== 'later';
    default:
      return !field.endsWith('Interrupted') || q[field.replace('Interrupted', '')] === true;
  }
}

const LATER_ONLY = ['firstSurveillance', 'findings', 'eradicationDate', 'baselineHistology'];

/** People do not send the stage, nor a field of the other stage, nor half a list of drugs. */
function mayBeAbsent(id: string, { field, told }: Hole, base: Told): boolean {
  if (field === 'stage') return false;
  // Piecemeal or not has the same dates there, by two rows: the rule asks which of the two it is.
  if (field === 'enBloc' && told === null && base['class'] === 'local-risk') return false;
  // Of the class, null says that pathology is not back; an age not known leaves every date.
  if ((field === 'class' || field === 'age') && told === null) return false;
  if (id === 'best-j' && KINDS.includes(field)) return false;
  if (field.endsWith('Interrupted')) return base[field.replace('Interrupted', '')] === true;
  if (base['stage'] === undefined) return true;
  if ((base['stage'] === 'later') !== LATER_ONLY.includes(field)) return false;
  const tellsStage = field === 'firstSurveillance' || field === 'eradicationDate';
  return !(tellsStage && told === undefined);
}

const KINDS = ['warfarin', 'doac', 'p2y12', 'aspirin', 'cilostazol'];
const isOfDrugs = (field: string) => KINDS.includes(field.replace('Interrupted', ''));

/** People send a count and its field; without buds the field does not matter. */
const BUDDING: Asking = {
  ...BARE,
  mayBeAbsent: ({ field }) => field !== 'budsInStandardField',
  ifAbsent: () => undefined,
  counts: () => true,
  merge: sameOrOpen,
  expected: ({ budsInStandardField }, holes) => {
    const names = holes.map(({ field }) => field);
    const decides = budsInStandardField === 0 && !names.includes('buds');
    if (names.length === 0 || decides)
      return BUDDING_SECOND.says({ buds: Number(budsInStandardField), fieldMm2: 0.785 });
    return `indeterminate;missing=${names}`;
  },
};

/** The one answer of all, or what is missing for one. */
function sameOrOpen(answers: readonly string[], missing: readonly string[]): string {
  const [first = 'no answer', ...rest] = answers;
  return rest.every((answer) => answer === first) ? first : `indeterminate;missing=${missing}`;
}

/** A total only when nothing is missing; else the totals between which it lies. */
function rangeOf(answers: readonly string[], missing: readonly string[]): string {
  if (missing.length === 0) return sameOrOpen(answers, missing);
  const totals = answers.map((answer) => Number(answer.split(';')[0]));
  return `indeterminate;missing=${missing};range=${Math.min(...totals)}-${Math.max(...totals)}`;
}

/** Fields that every set leaves at "nothing reported" when they are absent. */
const NONE_REPORTED: Readonly<Record<string, Value>> = { undiffLengthMm: 0, undiffInSm: false };
const OF_PURE_DYSPLASIA: Readonly<Record<string, Value>> = {
  ly: '0',
  v: '0',
  differentiation: 'well',
  gastricType: 'differentiated',
};

function curabilityAsking(id: string): Asking {
  const full = (question: Told) => ({ ...HARMLESS, ...question });
  return {
    ...BARE,
    mayBeAbsent: () => true,
    bases: EACH_LAYER,
    isPossible: (question) => {
      const layers = question['tumour'] === 'squamous' ? SQUAMOUS_LAYERS : LAYERS;
      return layers.includes(full(question).depth);
    },
    ifAbsent: (field, question) =>
      NONE_REPORTED[field] ??
      (isPureDysplasia(full(question)) ? OF_PURE_DYSPLASIA[field] : undefined),
    counts: ({ field, told }, question) =>
      (told === null ? isUsed : isRequired)(id, fieldOf(field), full(question)),
    merge: (answers, missing) => {
      const parts = answers.map((answer) => answer.split(';'));
      const [[found, ...reasons] = [], ...rest] = parts;
      if (rest.some(([other]) => other !== found)) return `indeterminate;missing=${missing}`;
      const common = reasons.filter((reason) => rest.every((each) => each.includes(reason)));
      return [found, ...common].join(';');
    },
  };
}

/** Every tumour with every histology and layer, harmless in all else. */
const EACH_LAYER: readonly Told[] = [
  { depth: ['ep', 'lpm', 'mm', 'm'], histology: ['low-grade-dysplasia'] },
  { depth: ['ep', 'lpm', 'mm', 'm', 'sm', 'mp'], histology: ['high-grade-dysplasia', 'carcinoma'] },
].flatMap((layers) =>
  everyQuestion({ tumour: ['squamous', 'barrett', 'gastric', 'colorectal'], ...layers }).map(
    (question) => ({ ...HARMLESS, ...question }),
  ),
);

const SQUAMOUS_LAYERS: readonly string[] = ['ep', 'lpm', 'mm', 'sm', 'mp'];
const LAYERS: readonly string[] = ['m', 'sm', 'mp'];

function fieldOf(name: string): keyof typeof HARMLESS {
  const field = Object.keys(HARMLESS).find((each) => each === name);
  if (field === undefined) throw new Error(`no field ${name}`);
  return field as keyof typeof HARMLESS;
}
