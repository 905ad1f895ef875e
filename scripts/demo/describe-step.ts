import type { CaseView, WaitingAnswer } from '../../src/pipeline/index.js';
import { appointmentWords, bookingChanges, type Labelled } from './booking-words.js';
import type { Pushed } from './client.js';
import { computedWords } from './computed-words.js';
import { lines } from './lines.js';
import type { LifeStep } from './lives.js';
import { sentWords } from './sent-words.js';

/** A case that has come, and not only messages about it. */
type AnsweredView = Exclude<CaseView, WaitingAnswer>;

/**
 * One step of a life in a few lines: what came, the state, the verdict before and after with its
 * reason, what was delivered and what is waited for.
 *
 * @param before what stood before of the same case; absent for its first message
 */
export function describeStep(step: LifeStep, pushed: Pushed, before?: Pushed): string {
  const { status, view, bundle, key } = pushed;
  const known = status === 200 ? 'known from before' : 'accepted';
  const came = lines(`  ${step.kind.padEnd(13)}`, `${step.tells}  [${known}, state ${view.state}]`);
  if ('waitingFor' in view) return [came, line('waiting', 'for the case')].join('\n');
  const computed = step.kind === 'booking' ? undefined : computedWords(step.kind, key, view);
  return [
    came,
    ...(computed === undefined ? [] : [line('computed', computed, 2)]),
    ...verdictLines(step, view, before?.view),
    ...(view.withdrawn === undefined ? [] : [line('withdrawn', view.withdrawn)]),
    ...(bundle === undefined
      ? []
      : [line(view.delivery.name, sentWords(bundle, before?.bundle), 1)]),
    ...bookingLines(pushed, view, before?.view),
    ...waitingLines(pushed, view),
  ].join('\n');
}

const line = (label: string, text: string, most?: number): string =>
  lines(`    ${label.padEnd(11)}`, text, most);

/** Nothing where the verdict is as it was, and nobody expects another. */
function verdictLines(
  { kind }: LifeStep,
  view: AnsweredView,
  before: CaseView | undefined,
): readonly string[] {
  const now = verdictOf(view);
  const was = before === undefined || 'waitingFor' in before ? undefined : verdictOf(before);
  if (was?.text === now.text) {
    return kind === 'pathology' ? [line('verdict', `${now.text}, as before`)] : [];
  }
  // Time may have passed meanwhile, and then the newest change is not that of the message.
  const change = view.change?.by.kind === kind ? view.change.verdict : undefined;
  const from = was?.text ?? change?.from;
  return [
    line('verdict', from === undefined ? now.text : `${from} -> ${now.text}`),
    line('because', (change?.because ?? now.because).join(' '), 3),
  ];
}

function verdictOf({ assessment }: AnsweredView) {
  const { rule, outcome } = assessment.curability.verdict;
  if (outcome.kind === 'decided') {
    return { text: `${outcome.class} (${rule})`, because: outcome.reasons.map(({ says }) => says) };
  }
  const missing = `not known: ${outcome.missing.join(', ')}`;
  const because = outcome.awaits === 'pathology' ? 'there is no final report yet' : missing;
  return { text: `indeterminate (${rule})`, because: [because] };
}

function bookingLines(
  { appointment }: Pushed,
  { plan }: AnsweredView,
  before: CaseView | undefined,
): readonly string[] {
  const server: readonly Labelled[] =
    appointment === undefined ? [] : [['on server', appointmentWords(appointment)]];
  const isFirst = before === undefined || 'waitingFor' in before;
  const changes = isFirst ? [] : bookingChanges(plan.items, before.plan.items);
  return [...server, ...changes].map(([label, text]) => line(label, text));
}

function waitingLines(pushed: Pushed, view: AnsweredView): readonly string[] {
  const { awaitsPathologyDays: days } = pushed;
  const awaited = days === undefined ? [] : ['for the final report of the laboratory'];
  const aside = (view.setAside ?? []).map(({ kind }) => `for a person: this ${kind} does not fit`);
  const all = [...awaited, ...aside];
  return all.length === 0 ? [] : [line('waiting', all.join('; '))];
}
