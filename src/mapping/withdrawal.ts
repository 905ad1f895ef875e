import type { WithdrawalMessage } from '../record/index.js';
import { WORD_CODES } from '../terminology/index.js';
import { proposalGone } from './appointments.js';
import { MAIN } from './context.js';
import type { CaseResource, Draft } from './draft.js';
import { isCheckOfBooking } from './follow-up-tasks.js';
import { narrative } from './narrative.js';
import { inError } from './retraction.js';

/**
 * A case that was taken back: all that it ever became is entered in error, whatever is told of it
 * later. The dissection and the reports say so to people, and which case stands instead. What a
 * scheduler has booked is booked until the scheduler says otherwise, and checking it is a task.
 *
 * Source: FHIR R4, status codes entered-in-error; DiagnosticReport, withdrawn reports.
 */
export function withdrawn(
  drafts: readonly Draft[],
  withdrawal: WithdrawalMessage,
): readonly Draft[] {
  const sentences = sentencesOf(withdrawal);
  return drafts.map((draft) => ({
    key: draft.key,
    resource: saidSo(draft.key, takenOut(draft.resource), sentences),
  }));
}

function takenOut(resource: CaseResource): CaseResource {
  if (resource.resourceType === 'Appointment') return proposalGone(resource);
  return isCheckOfBooking(resource) ? resource : inError(resource);
}

function saidSo(key: string, resource: CaseResource, sentences: readonly string[]): CaseResource {
  const isDissection = resource.resourceType === 'Procedure' && key === MAIN;
  if (isDissection) {
    return { ...resource, text: narrative(sentences), note: [{ text: sentences.join(' ') }] };
  }
  if (resource.resourceType !== 'DiagnosticReport') return resource;
  const { conclusionCode: _none, ...rest } = resource;
  return { ...rest, text: narrative(sentences), conclusion: sentences.join(' ') };
}

function sentencesOf({ fields: { reason, replacedBy } }: WithdrawalMessage): readonly string[] {
  return [
    `Withdrawn, not to be used: ${WORD_CODES.withdrawalReason[reason].text}.`,
    ...(replacedBy === undefined
      ? []
      : [`Case ${replacedBy.value} of ${replacedBy.system} stands instead.`]),
  ];
}
