import type { DiagnosticReport, Observation, Reference } from 'fhir/r4.js';
import { STRUCTURE } from '../terminology/index.js';
import { type CaseResource, claims, type Draft, isObservation } from './draft.js';

/** The resources that a case became, or could have become, before. */
export interface Earlier {
  readonly drafts: readonly Draft[];
  /** What an Observation is called that was final then and says something else now. */
  readonly word: 'amended' | 'corrected';
}

/**
 * What earlier revisions said and the current one does not: the same content, entered in error. A
 * report that is taken back lets go of the results that stand.
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
    .map(({ key, resource }) => ({ key, resource: withoutStanding(inError(resource), standing) }));
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
 * An endoscopy report that was final before: appended where results were only added, else amended
 * or corrected as its results were.
 *
 * Source: FHIR R4, code system diagnostic-report-status.
 */
export function restated(current: readonly Draft[], earlier: readonly Earlier[]): readonly Draft[] {
  return current.map((draft) => {
    const { resource } = draft;
    if (!isFinalReport(resource)) return draft;
    const now = resultsOf(current);
    const words = earlier.flatMap(({ drafts, word }) => {
      const was = drafts.find((other) => nameOf(other) === nameOf(draft))?.resource;
      if (was === undefined || !isFinalReport(was)) return [];
      const before = resultsOf(drafts);
      if (![...before].every(([key, content]) => now.get(key) === content)) return [word];
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
  claims(resource, 'dr-endoscopy-report');

/** The results of a final endoscopy report by name, with what each says. */
function resultsOf(drafts: readonly Draft[]): ReadonlyMap<string, string> {
  return new Map(
    drafts
      .filter(isObservation)
      .filter(({ resource }) => !claims(resource, 'dr-pathology-finding'))
      .filter(({ resource }) => resource.status !== 'preliminary')
      .map((draft) => [nameOf(draft), contentOf(draft.resource)] as const),
  );
}

const nameOf = ({ key, resource }: Draft): string => `${resource.resourceType}/${key}`;

/** All that an Observation says, but for its status and the time at which it was said. */
function contentOf(resource: Observation): string {
  return JSON.stringify({ ...resource, status: undefined, issued: undefined });
}

function inError(resource: CaseResource): CaseResource {
  if (resource.resourceType !== 'Condition') return { ...resource, status: 'entered-in-error' };
  const { clinicalStatus: _none, ...rest } = resource;
  return { ...rest, verificationStatus: STRUCTURE.conditionVerification.enteredInError };
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
