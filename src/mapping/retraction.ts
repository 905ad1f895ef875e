import type { DiagnosticReport, Observation, Reference } from 'fhir/r4.js';
import { STRUCTURE } from '../terminology/index.js';
import { proposalGone } from './appointments.js';
import { type CaseResource, claims, type Draft, isObservation } from './draft.js';
import { revoked } from './follow-up-requests.js';
import { taskGone } from './follow-up-tasks.js';

/** The resources that a case became, or could have become, before. */
export interface Earlier {
  readonly drafts: readonly Draft[];
  /** What an Observation is called that was final then and says something else now. */
  readonly word: 'amended' | 'corrected';
}

/**
 * What earlier revisions said and the current one does not: the same content, entered in error. A
 * report that is taken back lets go of the results that stand. A request of an earlier plan was
 * right when it was made: it is revoked, its task and its proposal of an appointment are cancelled,
 * and what was booked stays booked.
 *
 * @param current resources of the current revision
 * @param earlier resources of each earlier revision
 * @param referenceTo how a resource is referred to
 */
export function retracted(
  current: readonly Draft[],
  earlier: readonly Earlier[],
  referenceTo: (draft: Draft) => Reference,
): readonly Draft[] {
  const kept = new Set(current.map(nameOf));
  const standing = new Set(current.map((draft) => referenceTo(draft).reference));
  const gone = new Map(
    earlier.flatMap(({ drafts }) => drafts.map((draft) => [nameOf(draft), draft] as const)),
  );
  return [...gone.values()]
    .filter((draft) => !kept.has(nameOf(draft)))
    .map(({ key, resource }) => ({ key, resource: takenBack(resource, standing) }));
}

/**
 * An Observation that an earlier revision had, final and with other content, is a corrected or
 * amended one. What was or is only preliminary is neither: the status codes of R4 ask for a final
 * before. Of both words corrected counts more.
 */
export function corrected(
  current: readonly Draft[],
  earlier: readonly Earlier[],
): readonly Draft[] {
  return current.map((draft) => {
    const { resource } = draft;
    if (!isFinal(resource)) return draft;
    const said = contentOf(resource);
    const words = earlier.flatMap(({ drafts, word }) =>
      drafts.some(
        (other) =>
          nameOf(other) === nameOf(draft) &&
          isFinal(other.resource) &&
          contentOf(other.resource) !== said,
      )
        ? [word]
        : [],
    );
    const [status] = words.toSorted(byWeight);
    return status === undefined ? draft : { ...draft, resource: { ...resource, status } };
  });
}

/**
 * A report of ours that was final before: appended where results were only added, else amended or
 * corrected as its results were. A transcription follows its laboratory instead.
 *
 * Source: FHIR R4, code system diagnostic-report-status.
 *
 * @param referenceTo how a resource is referred to
 */
export function restated(
  current: readonly Draft[],
  earlier: readonly Earlier[],
  referenceTo: (draft: Draft) => Reference,
): readonly Draft[] {
  return current.map((draft) => {
    const { resource } = draft;
    if (!isFinalReport(resource)) return draft;
    const now = resultsOf(resource, current, referenceTo);
    const words = earlier.flatMap(({ drafts, word }) => {
      const was = drafts.find((other) => nameOf(other) === nameOf(draft))?.resource;
      if (was === undefined || !isFinalReport(was)) return [];
      const before = resultsOf(was, drafts, referenceTo);
      if (![...before].every(([result, content]) => now.get(result) === content)) return [word];
      return before.size === now.size ? [] : ['appended' as const];
    });
    const [status] = words.toSorted(byWeight);
    return status === undefined ? draft : { ...draft, resource: { ...resource, status } };
  });
}

const WEIGHTS = ['corrected', 'amended', 'appended'] as const;
type Word = (typeof WEIGHTS)[number];
const byWeight = (a: Word, b: Word): number => WEIGHTS.indexOf(a) - WEIGHTS.indexOf(b);

const isFinal = (resource: CaseResource): resource is Observation =>
  resource.resourceType === 'Observation' && resource.status === 'final';

const isFinalReport = (resource: CaseResource): resource is DiagnosticReport =>
  resource.resourceType === 'DiagnosticReport' &&
  resource.status === 'final' &&
  (claims(resource, 'dr-endoscopy-report') || claims(resource, 'dr-follow-up-report'));

/** The results of a report by reference, with what each says. */
function resultsOf(
  { result = [] }: DiagnosticReport,
  drafts: readonly Draft[],
  referenceTo: (draft: Draft) => Reference,
): ReadonlyMap<string, string> {
  const listed = new Set(result.map(({ reference }) => reference));
  return new Map(
    drafts.filter(isObservation).flatMap((draft) => {
      const { reference } = referenceTo(draft);
      const isListed = reference !== undefined && listed.has(reference);
      return isListed ? [[reference, contentOf(draft.resource)] as const] : [];
    }),
  );
}

const nameOf = ({ key, resource }: Draft): string => `${resource.resourceType}/${key}`;

/** All that an Observation says, but for its status, when it was said and by whom. */
function contentOf({ status: _status, issued: _at, performer: _by, ...said }: Observation): string {
  return JSON.stringify(said);
}

/**
 * The same, entered in error. A Condition has no clinical status then, and without one no end.
 *
 * Source: FHIR R4, Condition, rules con-4 and con-5.
 */
export function inError(resource: CaseResource): CaseResource {
  if (resource.resourceType !== 'Condition') return { ...resource, status: 'entered-in-error' };
  const { clinicalStatus: _status, abatementDateTime: _end, ...rest } = resource;
  return { ...rest, verificationStatus: STRUCTURE.conditionVerification.enteredInError };
}

function takenBack(
  resource: CaseResource,
  standing: ReadonlySet<string | undefined>,
): CaseResource {
  switch (resource.resourceType) {
    case 'Appointment':
      return proposalGone(resource);
    case 'Task':
      return taskGone(resource);
    case 'ServiceRequest':
      return resource.intent === 'plan' ? revoked(resource) : inError(resource);
    default:
      return withoutStanding(inError(resource), standing);
  }
}

function withoutStanding(
  resource: CaseResource,
  standing: ReadonlySet<string | undefined>,
): CaseResource {
  if (resource.resourceType !== 'DiagnosticReport') return resource;
  const { result = [], ...rest } = resource;
  const gone = result.filter(({ reference }) => !standing.has(reference));
  return gone.length === 0 ? rest : { ...rest, result: gone };
}
