import type { CodeableConcept, Provenance, ProvenanceAgent, Reference } from 'fhir/r4.js';
import type { RecordMessage } from '../record/index.js';
import { BASE, STRUCTURE, WORD_CODES } from '../terminology/index.js';
import { head, logical, type MappingContext } from './context.js';

/** Where the state came from: who did it, who sent it, what assembled it, from which messages. */
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
    ...reasons(context),
    activity: activityOf(context),
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
      ...withdrawer(context),
    ],
    entity: inForce(context).map(({ kind, fields: { revision }, sha256 }) => ({
      role: 'source',
      what: {
        identifier: {
          system: `${base}/message`,
          value: `${caseId}.${kind}.${revision}.sha256-${sha256}`,
        },
      },
    })),
  };
}

function activityOf({ version, known }: MappingContext): CodeableConcept {
  if (known.withdrawal !== undefined) return STRUCTURE.provenanceActivity.nullify;
  return version.state === 1
    ? STRUCTURE.provenanceActivity.create
    : STRUCTURE.provenanceActivity.update;
}

/** Who took the case back, where that was told. */
function withdrawer({ known: { withdrawal } }: MappingContext): ProvenanceAgent[] {
  const who = withdrawal?.fields.withdrawnBy;
  if (who === undefined) return [];
  return [{ type: STRUCTURE.provenanceAgent.performer, who: logical('Practitioner', who) }];
}

/** Every message that the state rests on: of each line the one in force. */
function inForce({ known }: MappingContext): readonly RecordMessage[] {
  const { esdCase, reports, events, examinations, bookings, withdrawal } = known;
  // The last revision of a line is said last.
  const words = new Map(bookings.map((one) => [`${one.fields.source}|${one.fields.item}`, one]));
  return [
    esdCase,
    ...reports,
    ...events,
    ...examinations,
    ...words.values(),
    ...(withdrawal === undefined ? [] : [withdrawal]),
  ];
}

/** Why a case was taken back; else what the last message changed: the reason of an amendment, and the verdict before and after. */
function reasons(context: MappingContext): Pick<Provenance, 'reason'> {
  const { version, known } = context;
  const { change } = version;
  const { withdrawal } = known;
  if (withdrawal !== undefined) {
    return { reason: [context.concept(WORD_CODES.withdrawalReason[withdrawal.fields.reason])] };
  }
  if (change === undefined) return {};
  const amendment =
    change.by.kind === 'pathology' ? known.reports[0]?.fields.report.amendmentReason : undefined;
  const { verdict } = change;
  const reason = [
    ...(change.by.reason === undefined ? [] : [{ text: change.by.reason }]),
    ...(amendment === undefined ? [] : [context.concept(WORD_CODES.amendmentReason[amendment])]),
    ...(verdict === undefined
      ? []
      : [
          {
            text: [`Verdict from ${verdict.from} to ${verdict.to}.`, ...verdict.because].join(' '),
          },
        ]),
  ];
  return reason.length === 0 ? {} : { reason };
}

/** The tag by which a server finds the Provenance of a state again; R4 gives it no identifier. */
export function provenanceTag(caseId: string, state: number) {
  return { system: `${BASE}/CodeSystem/dr-provenance`, code: `${caseId}.${state}` };
}
