import type { ExaminationFields } from '../../contract/index.js';
import { askClass } from '../../rules/index.js';
import { ESGE_PPS_2020 } from '../esge-pps-2020.table.js';
import type { ExaminationFacts } from './plan-facts.js';

type Scar = NonNullable<ExaminationFields['scar']>;
type Lesions = NonNullable<ExaminationFields['newLesions']>;
type Lesion = Lesions[number];

/**
 * What a plan asks of an examination.
 *
 * Source: what the rules of the plan ask for.
 */
export function examinationFacts(sent: ExaminationFields): ExaminationFacts {
  const { examination, examinedOn, answers, route, scar, newLesions, barrettLeft, passage } = sent;
  const treatments = scar?.treatments ?? [];
  return {
    id: examination,
    on: examinedOn,
    ...(answers === undefined ? {} : { answers: answers.value }),
    route,
    recurrence: recurrenceOf(scar),
    carcinoma: scar?.biopsy === 'carcinoma',
    treated: treatments.some((each) => each !== 'surgery-referral'),
    toSurgery: treatments.includes('surgery-referral'),
    findings: findingsOf(newLesions),
    newNeoplasia: (newLesions ?? []).some(isOwnMatter),
    ...(barrettLeft === undefined ? {} : { barrettLeft: barrettLeft.present }),
    incomplete: sent.quality?.complete === false || scar?.seen === false,
    ...(passage === undefined
      ? {}
      : { passage: { passes: passage.endoscopePasses, dilated: passage.dilated === true } }),
    ...(sent.next === undefined ? {} : { next: nextOf(sent.next) }),
  };
}

const nextOf = ({ step, on }: NonNullable<ExaminationFields['next']>) => ({
  step,
  ...(on === undefined ? {} : { on }),
});

/** Tissue decides; while it is awaited or in doubt, what was seen is no answer. */
function recurrenceOf(scar: Scar | undefined): ExaminationFacts['recurrence'] {
  if (scar === undefined || !scar.seen) return 'not-told';
  switch (scar.biopsy) {
    case 'low-grade-dysplasia':
    case 'high-grade-dysplasia':
    case 'carcinoma':
      return 'found';
    case 'no-neoplasia':
    case 'serrated-without-dysplasia':
      return 'none';
    case 'indefinite':
    case 'not-assessable':
    case 'pending':
      return scar.finding === 'residual-or-recurrent-neoplasia' ? 'found' : 'open';
    case 'not-taken':
    case undefined:
      return seenOf(scar);
  }
}

function seenOf({ finding }: Scar): ExaminationFacts['recurrence'] {
  switch (finding) {
    case 'residual-or-recurrent-neoplasia':
      return 'found';
    case 'uncertain':
      return 'open';
    case 'none':
    case 'inflammation':
      return 'none';
    case undefined:
      return 'not-told';
  }
}

/** A new cancer anywhere, or any new neoplasia of the upper tract or left in place. */
function isOwnMatter({ organ, histology, removed }: Lesion): boolean {
  switch (histology) {
    case 'carcinoma':
      return true;
    case 'low-grade-dysplasia':
    case 'high-grade-dysplasia':
      return removed !== true || (organ !== 'colon' && organ !== 'rectum');
    case 'not-taken':
    case 'pending':
    case 'no-neoplasia':
    case 'serrated-without-dysplasia':
    case 'indefinite':
    case 'not-assessable':
    case undefined:
      return false;
  }
}

/**
 * Whether new lesions of the bowel need surveillance, by the rule for polyps; each is taken as
 * removed in one piece.
 */
function findingsOf(lesions: Lesions | undefined): ExaminationFacts['findings'] {
  if (lesions === undefined) return 'not-told';
  const bowel = lesions.filter(({ organ }) => organ === 'colon' || organ === 'rectum');
  const count = bowel.filter(isAdenoma).length;
  const found = bowel.map((lesion) => needOf(lesion, count));
  if (found.includes('COL-1')) return 'needing-surveillance';
  return found.includes(undefined) ? 'open' : 'none';
}

const isAdenoma = ({ polypType, histology }: Lesion): boolean =>
  polypType === 'adenoma' ||
  (polypType === undefined &&
    (histology === 'low-grade-dysplasia' || histology === 'high-grade-dysplasia'));

/** @returns the row of the rule; undefined as long as it is open */
function needOf(lesion: Lesion, count: number): string | undefined {
  const { histology } = lesion;
  if (histology === 'no-neoplasia') return 'COL-1-none';
  const { decision } = askClass(ESGE_PPS_2020, {
    stage: 'first',
    esdDate: null,
    sizeMm: lesion.sizeMm ?? null,
    polypType: lesion.polypType ?? null,
    histology: GRADE[histology ?? 'pending'],
    enBloc: true,
    count,
  });
  return decision.kind === 'decided' ? decision.class : undefined;
}

const GRADE: Readonly<Record<NonNullable<Lesion['histology']>, string | null>> = {
  'not-taken': null,
  pending: null,
  'no-neoplasia': null,
  'serrated-without-dysplasia': 'none',
  indefinite: null,
  'low-grade-dysplasia': 'low-grade-dysplasia',
  'high-grade-dysplasia': 'high-grade-dysplasia',
  carcinoma: 'carcinoma',
  'not-assessable': null,
};
