import type { CodeableConcept, Observation, ObservationComponent } from 'fhir/r4.js';
import type { Curability, Reason, Verdict } from '../assessment/index.js';
import { CAUTION } from '../kernel/index.js';
import {
  type CodeRef,
  CURABILITY_CLASSES,
  CURABILITY_GROUPS,
  CURABILITY_REASONS,
  ITEMS,
  STRUCTURE,
} from '../terminology/index.js';
import { VERDICT_INPUTS } from './answers.table.js';
import type { MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { lowered } from './narrative.js';
import { coded, type ObservationContent, toObservation } from './observation.js';
import { byRule, codeIn, notes, ruleName, shown, sourced } from './rule-answer.js';
import { cannotHaveSpecimen } from './specimen.js';

type Decided = Extract<Verdict['outcome'], { kind: 'decided' }>;
type Open = Extract<Verdict['outcome'], { kind: 'indeterminate' }>;

/**
 * Whether the patient is cured by the resection, as one Observation: class and coarse group with
 * the reasons, or why there is no class. Preliminary while the final report is awaited.
 *
 * @param present keys of the Observations of the case
 */
export function toVerdict(
  context: MappingContext,
  { verdict, others }: Curability,
  present: ReadonlySet<string>,
): Draft<Observation> {
  const { outcome } = verdict;
  return toObservation(context, {
    item: 'curability',
    about: 'lesion',
    category: 'procedure',
    profile: 'dr-curability',
    issuedAt: context.concludedAt,
    content: {
      ...(outcome.kind === 'decided'
        ? decidedContent(context, verdict.rule, outcome)
        : openContent(context, outcome)),
      ...byRule(context, verdict, VERDICT_INPUTS, present),
      ...notes([
        ...(outcome.kind === 'decided' ? because(outcome) : [whyOpen(context, outcome)]),
        ...(others.length === 0 ? [] : [`Other rule sets: ${others.map(inWords).join('; ')}.`]),
        ...(verdict.usually === '' ? [] : [`What usually follows: ${verdict.usually}`]),
        ...shown(verdict.remarks),
        CAUTION,
      ]),
    },
  });
}

/** What the verdict is, in one sentence. */
export function verdictSentence(context: MappingContext, { verdict }: Curability): string {
  const { rule, outcome } = verdict;
  if (outcome.kind === 'decided') {
    const reasons = coarseReasons(outcome).map(({ text }) => lowered(text));
    const because = reasons.length === 0 ? '' : `, because: ${reasons.join(', ')}`;
    const lead = isPreliminary(context, outcome) ? 'Preliminary curability' : 'Curability';
    return `${lead} by ${ruleName(rule)}: ${classText(rule, outcome.class)}${because}.`;
  }
  if (cannotHaveSpecimen(context)) return 'Curability: no class, because there is no specimen.';
  if (outcome.awaits === 'pathology') {
    return `Curability: open until ${context.known.reports.length > 0 ? 'the final report' : 'pathology'} is back.`;
  }
  return `Curability by ${ruleName(rule)}: open, not known: ${outcome.missing.join(', ')}.`;
}

function decidedContent(
  context: MappingContext,
  rule: string,
  outcome: Decided,
): ObservationContent {
  const code = context.concept(ITEMS['curability-reason']);
  const component = coarseReasons(outcome).map(
    (reason): ObservationComponent => coded(code, context.concept(reason)),
  );
  return {
    ...(isPreliminary(context, outcome) ? { status: 'preliminary' } : {}),
    valueCodeableConcept: toClass(context, rule, outcome),
    ...(component.length === 0 ? {} : { component }),
  };
}

/** Classes that do not rest on the specimen: no pathologist could change them. */
const WITHOUT_SPECIMEN: readonly string[] = ['no-rule', 'incomplete'];

/** Whether a class may still change with the final report. */
function isPreliminary(context: MappingContext, outcome: Decided): boolean {
  const { hasFinalReport } = context;
  return (
    !hasFinalReport && !cannotHaveSpecimen(context) && !WITHOUT_SPECIMEN.includes(outcome.class)
  );
}

/** The class of the rule set, and beside it the coarse group that all sets share. */
function toClass(context: MappingContext, rule: string, outcome: Decided): CodeableConcept {
  const named = context.concept(codeIn(CURABILITY_CLASSES[rule] ?? {}, outcome.class));
  const group = context.concept(CURABILITY_GROUPS[outcome.group]);
  return { ...named, coding: [...(named.coding ?? []), ...(group.coding ?? [])] };
}

function openContent(context: MappingContext, { awaits }: Open): ObservationContent {
  if (cannotHaveSpecimen(context)) return { dataAbsentReason: STRUCTURE.absent.notPerformed };
  return awaits === 'pathology'
    ? { status: 'preliminary', dataAbsentReason: STRUCTURE.absent.tempUnknown }
    : { dataAbsentReason: STRUCTURE.absent.unknown };
}

/** Reasons by their codes, each once: several rows may share one. */
function coarseReasons({ reasons }: Decided): readonly CodeRef[] {
  const words = reasons.flatMap(({ reason }) => (reason === undefined ? [] : [reason]));
  return [...new Set(words)].map((word) => codeIn(CURABILITY_REASONS, word));
}

function because({ reasons }: Decided): readonly string[] {
  return reasons.map((reason: Reason) => `Reason: ${sourced(reason)}`);
}

function whyOpen(context: MappingContext, { awaits, missing }: Open): string {
  if (cannotHaveSpecimen(context)) return 'No class, because there is no specimen.';
  const lead = awaits === 'pathology' ? 'Pathology is awaited; not known' : 'Open, not known';
  return `${lead}: ${missing.join(', ')}.`;
}

/** What another rule set says. */
function inWords({ rule, outcome, unconfirmed }: Verdict): string {
  const note = unconfirmed === undefined ? '' : ` (only for comparison: ${unconfirmed})`;
  if (outcome.kind === 'indeterminate') {
    return `${ruleName(rule)} open, not known: ${outcome.missing.join(', ')}${note}`;
  }
  const group = lowered(CURABILITY_GROUPS[outcome.group].text);
  return `${ruleName(rule)} says ${classText(rule, outcome.class)}, group ${group}${note}`;
}

/** The class as its code is displayed; as the rule set writes it where it is never sent. */
const classText = (rule: string, word: string): string =>
  CURABILITY_CLASSES[rule]?.[word]?.text ?? word;
