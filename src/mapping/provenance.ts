import type { Provenance, Reference } from 'fhir/r4.js';
import { BASE, STRUCTURE } from '../terminology/index.js';
import { head, type MappingContext } from './context.js';

/** Where the state came from: who did it, who sent it, what assembled it, from which message. */
export function toProvenance(context: MappingContext, target: readonly Reference[]): Provenance {
  const { fields, version, settings, caseId } = context;
  const { meta } = head(context, 'Provenance', '', 'dr-provenance');
  const base = settings.identifierBase;
  return {
    resourceType: 'Provenance',
    meta: { ...meta, tag: [...(meta.tag ?? []), provenanceTag(caseId, version.state)] },
    target: [...target],
    occurredPeriod: { start: fields.times.scopeInAt, end: fields.times.scopeOutAt },
    recorded: version.stateAt,
    activity:
      version.state === 1
        ? STRUCTURE.provenanceActivity.create
        : STRUCTURE.provenanceActivity.update,
    agent: [
      { type: STRUCTURE.provenanceAgent.author, who: context.operator },
      {
        type: STRUCTURE.provenanceAgent.assembler,
        who: {
          type: 'Device',
          identifier: { system: `${BASE}/software`, value: settings.softwareVersion },
          display: `dissection-records ${settings.softwareVersion}`,
        },
      },
      {
        type: STRUCTURE.provenanceAgent.enterer,
        who: {
          type: 'Device',
          identifier: { system: `${base}/source`, value: fields.source },
        },
      },
    ],
    entity: [
      {
        role: 'source',
        what: {
          identifier: {
            system: `${base}/message`,
            value: `${caseId}.case.${fields.revision}.sha256-${context.known.esdCase.sha256}`,
          },
        },
      },
    ],
  };
}

/** The tag by which a server finds the Provenance of a state again; R4 gives it no identifier. */
export function provenanceTag(caseId: string, state: number) {
  return { system: `${BASE}/CodeSystem/dr-provenance`, code: `${caseId}.${state}` };
}
