import type { ReportMessage } from '../record/index.js';
import { type CodeRef, WORD_CODES } from '../terminology/index.js';
import type { MappingContext } from './context.js';
import { lowered } from './narrative.js';
import { hasSpecimen } from './observation.js';
import { isFinal } from './report-line.js';

/** What the specimen showed, in one paragraph of the summary; that it waits, where it waits. */
export function pathologySentence(context: MappingContext): readonly string[] {
  const [report] = context.known.reports;
  if (report === undefined) return hasSpecimen(context) ? ['Pathology is awaited.'] : [];
  const status = context.known.assessment.specimen?.resectionStatus;
  return [
    ...reportSentences(report),
    ...(status?.kind === 'determined' ? [`Resection status: ${status.value}.`] : []),
    ...(isFinal(report) ? [] : ['The final pathology report is awaited.']),
  ];
}

/** What a report says of the lesion, in plain sentences; other findings stand as codes alone. */
export function reportSentences(report: ReportMessage): readonly string[] {
  const { findings = {} } = report.fields;
  const { histology, sizeMm, shortSizeMm, pT, tnmEdition } = findings;
  const sentences = [
    ...(histology === undefined ? [] : [listed(text('histology', histology), typeOf(findings))]),
    ...(sizeMm === undefined
      ? []
      : [`tumour ${sizeMm}${shortSizeMm === undefined ? '' : ` x ${shortSizeMm}`} mm`]),
    ...depthOf(findings),
    ...statesOf(findings),
    ...marginsOf(findings),
    ...(pT === undefined
      ? []
      : [`${pT}${tnmEdition === undefined ? '' : ` (${text('tnmEdition', tnmEdition)})`}`]),
  ];
  const lead = isFinal(report) ? 'Pathology' : 'Pathology, interim report';
  return [`${lead}: ${sentences.length === 0 ? 'nothing told yet' : sentences.join('; ')}.`];
}

type Findings = NonNullable<ReportMessage['fields']['findings']>;

const listed = (first: string, more: readonly string[]): string =>
  [lowered(first), ...more.map(lowered)].join(', ');

function typeOf({ histologicalType, differentiation, gastricType }: Findings) {
  return [
    ...(histologicalType === undefined ? [] : [text('histologicalType', histologicalType)]),
    ...(differentiation === undefined ? [] : [text('differentiation', differentiation)]),
    ...(gastricType === undefined ? [] : [text('gastricType', gastricType)]),
  ];
}

function depthOf({ depth, smDepthUm }: Findings): readonly string[] {
  if (depth === undefined) return [];
  const beyond = smDepthUm === undefined ? '' : `, ${smDepthUm} um into the submucosa`;
  return [`depth: ${lowered(text('depth', depth))}${beyond}`];
}

function statesOf({ ly, v, perineural, budding, ulcer }: Findings): readonly string[] {
  const state = (name: string, word: typeof ly) =>
    word === undefined ? [] : [`${name}: ${lowered(text('state', word))}`];
  return [
    ...state('lymphatic invasion', ly),
    ...state('venous invasion', v),
    ...state('perineural invasion', perineural),
    ...(budding?.grade === undefined
      ? []
      : [`budding: ${lowered(text('buddingGrade', budding.grade))}`]),
    ...(ulcer === undefined ? [] : [text('ulcer', ulcer)]),
  ];
}

function marginsOf({ hm, vm }: Findings): readonly string[] {
  return [
    ...(hm === undefined ? [] : [text('horizontalMargin', hm.state)]),
    ...(vm === undefined ? [] : [text('verticalMargin', vm.state)]),
  ];
}

/** The text of the code of a word. */
function text(list: keyof typeof WORD_CODES, word: string): string {
  const refs: Readonly<Record<string, CodeRef>> = WORD_CODES[list];
  return refs[word]?.text ?? word;
}
