import { CAUTION, type Finding, roundTo } from '../kernel/index.js';
import { ESD_PROCEDURE, WORD_CODES } from '../terminology/index.js';
import type { MappingContext } from './context.js';
import { eventSentences } from './event-words.js';
import { lowered } from './narrative.js';
import { pathologySentence } from './pathology-words.js';
import { scoresSentence } from './scores.js';
import { verdictSentence } from './verdict.js';

const OUTCOMES = {
  'en-bloc': 'The lesion was removed en bloc.',
  piecemeal: 'The lesion was removed piecemeal.',
  abandoned: 'The dissection was abandoned; the lesion stayed in place.',
  'not-started': 'The dissection was not started; the lesion stayed in place.',
} as const;

/** What happened, in plain sentences made of the same facts as the coded resources. */
export function summarise(context: MappingContext): readonly string[] {
  const { fields, known } = context;
  const { lesion, resection, times, specimen, safety } = fields;
  const place =
    lesion.site === undefined ? '' : `, site: ${lowered(WORD_CODES.site[lesion.site].text)}`;
  const { assessment } = known;
  return [
    `${ESD_PROCEDURE[lesion.organ].text}${place}.`,
    `Scope in ${times.scopeInAt}, scope out ${times.scopeOutAt}` +
      `${inWords(assessment.procedureMin, 'min', 0, ', ')}.`,
    `Lesion ${lesion.longAxisMm}${lesion.shortAxisMm === undefined ? '' : ` x ${lesion.shortAxisMm}`} mm` +
      `${lesion.paris === undefined ? '' : `, Paris ${lesion.paris}`}.`,
    OUTCOMES[resection.outcome],
    ...(safety?.perforation === undefined
      ? []
      : [safety.perforation.occurred ? 'The wall was perforated.' : 'No perforation was seen.']),
    ...(specimen === undefined
      ? []
      : [specimen.retrieved ? specimenSentence(context) : 'The specimen was not retrieved.']),
    ...(assessment.speedCm2PerH.kind === 'determined'
      ? [`Dissection speed${inWords(assessment.speedCm2PerH, 'cm2/h', 1, ' ')}.`]
      : []),
    ...pathologySentence(context),
    verdictSentence(context, assessment.curability),
    ...scoresSentence(assessment.scores),
    ...eventSentences(context),
  ];
}

/** The conclusion of the report: the sentences and the caution. */
export function conclude(sentences: readonly string[]): string {
  return [...sentences, CAUTION].join(' ');
}

function specimenSentence({ fields, known }: MappingContext): string {
  const { longAxisMm, shortAxisMm } = fields.specimen ?? {};
  if (longAxisMm === undefined || shortAxisMm === undefined) return 'The specimen was retrieved.';
  const area = inWords(known.assessment.specimenAreaCm2, 'cm2', 1, ', area ');
  return `The specimen was retrieved: ${longAxisMm} x ${shortAxisMm} mm${area}.`;
}

function inWords(finding: Finding<number>, unit: string, decimals: number, lead: string): string {
  return finding.kind === 'determined' ? `${lead}${roundTo(finding.value, decimals)} ${unit}` : '';
}
