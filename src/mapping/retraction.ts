import type { Observation } from 'fhir/r4.js';
import { STRUCTURE } from '../terminology/index.js';
import type { CaseResource, Draft } from './draft.js';

/**
 * What earlier revisions said and the current one does not: the same content, entered in error.
 *
 * @param current resources of the current revision
 * @param earlier resources of each earlier revision, rising
 */
export function retracted(
  current: readonly Draft[],
  earlier: readonly (readonly Draft[])[],
): readonly Draft[] {
  const kept = new Set(current.map(nameOf));
  const gone = new Map(earlier.flat().map((draft) => [nameOf(draft), draft] as const));
  return [...gone.values()]
    .filter((draft) => !kept.has(nameOf(draft)))
    .map((draft) => ({ key: draft.key, resource: inError(draft.resource) }));
}

/**
 * An Observation that an earlier revision had, final and with other content, is a corrected one.
 * What was or is only preliminary is no correction: the status codes of R4 ask for a final before.
 */
export function corrected(
  current: readonly Draft[],
  earlier: readonly (readonly Draft[])[],
): readonly Draft[] {
  const before = earlier.flat();
  return current.map((draft) => {
    const { resource } = draft;
    if (!isFinal(resource)) return draft;
    const said = JSON.stringify(contentOf(resource));
    const differs = before.some(
      (other) =>
        nameOf(other) === nameOf(draft) &&
        isFinal(other.resource) &&
        JSON.stringify(contentOf(other.resource)) !== said,
    );
    return differs ? { ...draft, resource: { ...resource, status: 'corrected' as const } } : draft;
  });
}

const isFinal = (resource: CaseResource): resource is Observation =>
  resource.resourceType === 'Observation' && resource.status === 'final';

const nameOf = ({ key, resource }: Draft): string => `${resource.resourceType}/${key}`;

/** All that an Observation says, but for the time at which the message was sent. */
function contentOf(resource: CaseResource): unknown {
  return 'issued' in resource ? { ...resource, issued: undefined } : resource;
}

function inError(resource: CaseResource): CaseResource {
  if (resource.resourceType !== 'Condition') return { ...resource, status: 'entered-in-error' };
  const { clinicalStatus: _none, ...rest } = resource;
  return { ...rest, verificationStatus: STRUCTURE.conditionVerification.enteredInError };
}
