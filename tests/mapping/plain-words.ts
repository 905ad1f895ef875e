import { roundTo } from '../../src/kernel/index.js';
import {
  CURABILITY_CLASSES,
  CURABILITY_REASONS,
  ESD_PROCEDURE,
  RULES,
  SCORE_GROUPS,
  WORD_CODES,
} from '../../src/terminology/index.js';
import type { Draft } from '../support/consistent-case.js';
import type { Told } from './explain.js';
import { hasNothingToSee } from './nothing-to-see.js';

export const CAUTION =
  'Decision support, not a verdict. Confirm against the guideline and local policy; ' +
  'licensed clinicians decide.';

/** A sentence of the narrative, and the facts that stand in its gaps. */
interface Sentence {
  readonly form: RegExp;
  readonly facts: (told: Told) => readonly unknown[];
}

const fields = ({ version }: Told): Draft => version.now.esdCase.fields;
const rounded = (
  { version }: Told,
  name: 'procedureMin' | 'specimenAreaCm2' | 'speedCm2PerH',
  decimals: number,
) => {
  const finding = version.now.assessment[name];
  return finding.kind === 'determined' ? roundTo(finding.value, decimals) : undefined;
};
const ESD_TEXT: Readonly<Record<string, { readonly text: string }>> = ESD_PROCEDURE;
const SITE_TEXT: Readonly<Record<string, { readonly text: string }>> = WORD_CODES.site;
const RULE_TEXT: Readonly<Record<string, { readonly text: string }>> = RULES;
const REASON_TEXT: Readonly<Record<string, { readonly text: string }>> = CURABILITY_REASONS;
const GROUP_TEXT: Readonly<Record<string, { readonly text: string }>> = SCORE_GROUPS;
const ENDS: Readonly<Record<string, string>> = {
  'en-bloc': 'The lesion was removed en bloc.',
  piecemeal: 'The lesion was removed piecemeal.',
  abandoned: 'The dissection was abandoned; the lesion stayed in place.',
  'not-started': 'The dissection was not started; the lesion stayed in place.',
};

const SENTENCES: readonly Sentence[] = [
  { form: /^(Decision support, .*)$/, facts: () => [CAUTION] },
  {
    form: /^Scope in (\S+), scope out (\S+?)(?:, (\S+) min)?\.$/,
    facts: (told) => {
      const { scopeInAt, scopeOutAt } = fields(told).times;
      return [scopeInAt, scopeOutAt, rounded(told, 'procedureMin', 0)];
    },
  },
  {
    form: /^Lesion (\S+)(?: x (\S+))? mm(?:, Paris (\S+))?\.$/,
    facts: (told) => {
      const { longAxisMm, shortAxisMm, paris } = fields(told).lesion;
      return [longAxisMm, shortAxisMm, paris];
    },
  },
  {
    form: /^(The (?:lesion was removed|dissection was) .*)$/,
    facts: (told) => [ENDS[fields(told).resection.outcome]],
  },
  {
    form: /^(The wall was perforated\.|No perforation was seen\.)$/,
    facts: (told) => [
      { true: 'The wall was perforated.', false: 'No perforation was seen.' }[
        String(fields(told).safety?.perforation?.occurred)
      ],
    ],
  },
  {
    form: /^(The specimen was not retrieved\.|The specimen was retrieved\.|Pathology is awaited\.)$/,
    facts: (told) =>
      fields(told).specimen?.retrieved
        ? ['The specimen was retrieved.', 'Pathology is awaited.']
        : ['The specimen was not retrieved.'],
  },
  {
    form: /^The specimen was retrieved: (\S+) x (\S+) mm(?:, area (\S+) cm2)?\.$/,
    facts: (told) => {
      const { longAxisMm, shortAxisMm } = fields(told).specimen;
      return [longAxisMm, shortAxisMm, rounded(told, 'specimenAreaCm2', 1)];
    },
  },
  {
    form: /^Dissection speed (\S+) cm2\/h\.$/,
    facts: (told) => [rounded(told, 'speedCm2PerH', 1)],
  },
  {
    form: /^(Curability: .*)\.$/,
    facts: ({ version }) => [
      hasNothingToSee({ version })
        ? 'Curability: no class, because there is no specimen'
        : 'Curability: open until pathology is back',
    ],
  },
  { form: /^Curability by (.*)\.$/, facts: (told) => [verdictText(told)] },
  { form: /^Scores: (.*)\.$/, facts: (told) => [scoresText(told)] },
  {
    form: /^(.*)\.$/,
    facts: (told) => {
      const { organ, site } = fields(told).lesion;
      const place =
        site === undefined
          ? ''
          : `, site: ${(SITE_TEXT[site]?.text ?? '').replace(/^[A-Z](?=[a-z])/, (first) => first.toLowerCase())}`;
      return [`${ESD_TEXT[organ]?.text}${place}`];
    },
  },
];

/** Rule set, class and reasons, or what is missing. */
function verdictText({ version }: Told): string {
  const { rule, outcome } = version.now.assessment.curability.verdict;
  const name = RULE_TEXT[rule]?.text;
  if (outcome.kind === 'indeterminate') {
    return `${name}: open, not known: ${outcome.missing.join(', ')}`;
  }
  const words = new Set(outcome.reasons.flatMap(({ reason }) => reason ?? []));
  const reasons = [...words].map((word) => REASON_TEXT[word]?.text.toLowerCase());
  const because = reasons.length === 0 ? '' : `, because: ${reasons.join(', ')}`;
  return `${name}: ${CURABILITY_CLASSES[rule]?.[outcome.class]?.text}${because}`;
}

function scoresText({ version }: Told): string {
  const parts = version.now.assessment.scores.flatMap(({ rule, outcome }) => {
    if (outcome.kind === 'refused') return [];
    const name = RULE_TEXT[rule]?.text;
    if (outcome.kind === 'total') {
      const group = GROUP_TEXT[outcome.group ?? '']?.text.toLowerCase();
      return [`${name}: ${outcome.total}${group === undefined ? '' : ` (${group})`}`];
    }
    const { lowest, highest } = outcome;
    return [`${name}: open, ${[...new Set([lowest, highest])].join(' to ')}`];
  });
  return parts.join('; ');
}

/** Whether a sentence has a known form and only facts of the case in its gaps, in their order. */
export function saysOnlyFacts(sentence: string, told: Told): boolean {
  const row = SENTENCES.find(({ form }) => form.test(sentence));
  const [, ...gaps] = row?.form.exec(sentence) ?? [];
  const facts = row?.facts(told) ?? [];
  if (gaps.length === 1) return facts.map(String).includes(gaps[0] ?? '');
  return gaps.length > 0 && gaps.every((gap, i) => gap === undefined || gap === String(facts[i]));
}

const PLAIN: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};

/** The paragraphs of a narrative, as a reader sees them. */
export const paragraphsOf = (div: string): readonly string[] =>
  [...div.matchAll(/<p>([^<]*)<\/p>/g)].map(([, text = '']) =>
    text.replaceAll(/&(?:amp|lt|gt|quot|#39);/g, (entity) => PLAIN[entity] ?? entity),
  );
