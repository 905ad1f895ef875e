import type { IdentityMode } from './address.js';
import { isRecord, recordsAt, textAt } from './json.js';

/** What we ask of a target before anything is sent to it. */
export interface TargetNeeds {
  /** Resource types that are ever written. */
  readonly types: readonly string[];
  readonly mode: IdentityMode | 'auto';
  /** Entries of the largest Bundle that is ever sent. */
  readonly largestBundle: number;
  /** Entries that the target takes in one transaction, where its operator names a limit. */
  readonly entryLimit?: number;
}

export type ModeChoice =
  | { readonly kind: 'chosen'; readonly mode: IdentityMode }
  | { readonly kind: 'refused'; readonly fault: string; readonly reason: string };

/** Types without an identifier, which a conditional create finds by its tag instead. */
const WITHOUT_IDENTIFIER: readonly string[] = ['Provenance'];

/**
 * Chooses how resources keep their identity at this target, or says why it cannot be used.
 * Client ids come first: they are the only way that is free of races by construction.
 *
 * Source: FHIR R4 (4.0.1), CapabilityStatement (fhirVersion, format, rest.interaction,
 * rest.resource.updateCreate, conditionalUpdate, conditionalCreate).
 *
 * @param statement the answer of `/metadata`, of any shape
 */
export function chooseMode(statement: unknown, needs: TargetNeeds): ModeChoice {
  if (textAt(statement, 'resourceType') !== 'CapabilityStatement') {
    return refused('no-capability', 'The target gives no CapabilityStatement at /metadata.');
  }
  if (!/^4\.0\.\d+$/.test(textAt(statement, 'fhirVersion') ?? '')) {
    return refused('fhir-version', 'The target does not speak FHIR R4 (version 4.0).');
  }
  const rest = recordsAt(statement, 'rest').find(({ mode }) => mode === 'server');
  const interactions = recordsAt(rest, 'interaction').map(({ code }) => code);
  if (!interactions.includes('transaction')) {
    const reason =
      'The target does not offer transactions; without them a record could arrive in part.';
    return refused('no-transaction', reason);
  }
  if (needs.entryLimit !== undefined && needs.entryLimit < needs.largestBundle) {
    const limits = `${needs.entryLimit} entries in one transaction, a record has up to`;
    return refused('entry-limit', `The target takes ${limits} ${needs.largestBundle}.`);
  }
  return byOffer(rest, needs);
}

function byOffer(rest: unknown, needs: TargetNeeds): ModeChoice {
  const lacks = (flagOf: (type: string) => string) =>
    needs.types.filter((type) => {
      const resource = recordsAt(rest, 'resource').find((row) => row['type'] === type);
      return !isRecord(resource) || resource[flagOf(type)] !== true;
    });
  const withoutClientId = lacks(() => 'updateCreate');
  const withoutConditional = lacks((type) =>
    WITHOUT_IDENTIFIER.includes(type) ? 'conditionalCreate' : 'conditionalUpdate',
  );
  const { mode } = needs;
  if (mode !== 'conditional' && withoutClientId.length === 0) {
    return { kind: 'chosen', mode: 'client-id' };
  }
  if (mode !== 'client-id' && withoutConditional.length === 0) {
    return { kind: 'chosen', mode: 'conditional' };
  }
  return refused('no-identity-mode', noModeReason(mode, withoutClientId, withoutConditional));
}

function noModeReason(
  mode: TargetNeeds['mode'],
  withoutClientId: readonly string[],
  withoutConditional: readonly string[],
): string {
  const clientId = `ids chosen by the client (updateCreate) for ${withoutClientId.join(', ')}`;
  const conditional =
    'conditional writes (conditionalUpdate, conditionalCreate) for ' +
    withoutConditional.join(', ');
  switch (mode) {
    case 'client-id':
      return `The target does not offer ${clientId}, as the mode in use needs.`;
    case 'conditional':
      return `The target does not offer ${conditional}, as the mode in use needs.`;
    case 'auto':
      return (
        `The target offers neither ${clientId}, nor ${conditional}. ` +
        'Looking up each id before writing (mode resolved) is not offered by this version.'
      );
  }
}

const refused = (fault: string, reason: string): ModeChoice => ({
  kind: 'refused',
  fault,
  reason,
});
