import type { Bundle, BundleEntry } from 'fhir/r4.js';
import type { Assessed, RecordVersion, RecordView } from '../record/index.js';
import { BASE } from '../terminology/index.js';
import { toAppointments } from './appointments.js';
import { toComputed } from './computed.js';
import { toComplications, toLesion } from './condition.js';
import {
  fullUrl,
  type MappingContext,
  type MappingSettings,
  mappingContext,
  ownIdentifier,
  toResource,
} from './context.js';
import { toDevices } from './device.js';
import { type Draft, isObservation } from './draft.js';
import { toDrugFindings } from './drug-findings.js';
import { toEvents } from './events.js';
import { toExaminations } from './examinations.js';
import { toFindings } from './findings.js';
import { toFollowUpRequests } from './follow-up-requests.js';
import { toFollowUpTasks } from './follow-up-tasks.js';
import { toLateOutcomes } from './late-outcomes.js';
import { toListedFindings } from './listed-findings.js';
import { toMedia } from './media.js';
import { toAntithrombotics, toDrugsGiven } from './medication.js';
import { toPathology } from './pathology.js';
import { toPathologyReports } from './pathology-report.js';
import { toProcedure } from './procedure.js';
import { provenanceTag, toProvenance } from './provenance.js';
import { toReport } from './report.js';
import { changeWord } from './report-line.js';
import { toResectionFindings } from './resection-findings.js';
import { toResectionStatus } from './resection-status.js';
import { corrected, restated, retracted } from './retraction.js';
import { toScores } from './scores.js';
import { toPathologyRequest, toSpecimens } from './specimen.js';
import { summarise } from './summary.js';
import { toVerdict } from './verdict.js';
import { toVesselTreatments } from './vessel-treatment.js';
import { withdrawn } from './withdrawal.js';

/**
 * A record version as one FHIR R4 transaction, in the form that no target server shapes yet:
 * every entry under its stable urn:uuid, PUT by our identifier. Equal versions and settings give
 * byte-equal Bundles.
 */
export function toBundle({ version, now, before }: RecordView, settings: MappingSettings): Bundle {
  const context = mappingContext(version, now, settings);
  const referenceTo = ({ key, resource }: Draft) => toResource(context, resource.resourceType, key);
  const earlier = before.map((known) => ({
    drafts: toDrafts(version, known, settings),
    word: changeWord(now, known),
    stood: known.stood,
  }));
  // What was final before decides a status, so only what stood counts; whatever may have been sent
  // is taken back.
  const stood = earlier.filter((each) => each.stood);
  const current = toDrafts(version, now, settings);
  const stated = [
    ...restated(corrected(current, stood), stood, referenceTo),
    ...retracted(current, earlier, referenceTo),
  ];
  const drafts = now.withdrawal === undefined ? stated : withdrawn(stated, now.withdrawal);
  const provenance = toProvenance(context, drafts.map(referenceTo));
  const { system, code } = provenanceTag(version.caseId, version.state);
  return {
    resourceType: 'Bundle',
    meta: { profile: [`${BASE}/StructureDefinition/dr-case-bundle`] },
    type: 'transaction',
    timestamp: version.stateAt,
    entry: [
      ...drafts.map((draft) => toEntry(context, draft)),
      {
        fullUrl: fullUrl(context, 'Provenance', String(version.state)),
        resource: provenance,
        request: {
          method: 'POST',
          url: 'Provenance',
          ifNoneExist: `_tag=${encodeURIComponent(system)}%7C${code}`,
        },
      },
    ],
  };
}

function toDrafts(
  version: RecordVersion,
  known: Assessed,
  settings: MappingSettings,
): readonly Draft[] {
  const context = mappingContext(version, known, settings);
  const summary = summarise(context);
  const findings = [
    ...toFindings(context),
    ...toListedFindings(context),
    ...toDrugFindings(context),
    ...toResectionFindings(context),
    ...toPathology(context),
  ];
  const present = new Set(findings.map(({ key }) => key));
  const { curability, scores } = known.assessment;
  const events = toEvents(context);
  const told = new Set(events.filter(isObservation).map(({ key }) => key));
  const parts: readonly Draft[] = [
    toLesion(context),
    ...toComplications(context),
    ...toVesselTreatments(context),
    ...toSpecimens(context),
    ...toPathologyRequest(context),
    ...toDevices(context),
    ...toDrugsGiven(context),
    ...toAntithrombotics(context),
    ...toMedia(context),
    ...findings,
    ...toComputed(context, present),
    ...toResectionStatus(context, present),
    toVerdict(context, curability, present),
    ...toScores(context, scores, present),
    ...events,
    ...toLateOutcomes(context, told),
    ...toFollowUpRequests(context),
    ...toFollowUpTasks(context),
    ...toAppointments(context),
  ];
  const withReports = [
    ...parts,
    toReport(context, parts, summary),
    ...toPathologyReports(context, findings),
    ...toExaminations(context),
  ];
  return [toProcedure(context, withReports, summary), ...withReports];
}

function toEntry(context: MappingContext, { key, resource }: Draft): BundleEntry {
  const { system = '', value = '' } = ownIdentifier(context, resource.resourceType, key);
  return {
    fullUrl: fullUrl(context, resource.resourceType, key),
    resource,
    request: {
      method: 'PUT',
      url: `${resource.resourceType}?identifier=${encodeURIComponent(system)}%7C${value}`,
    },
  };
}
