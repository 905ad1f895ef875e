import { describe, expect, it } from 'vitest';
import { chooseMode, type TargetNeeds } from '../../src/delivery/capability.js';
import { capabilityStatement, SAMPLE_TYPES } from './support/stub-server.js';

const needs = (more: Partial<TargetNeeds> = {}): TargetNeeds => ({
  types: SAMPLE_TYPES,
  mode: 'auto',
  largestBundle: 60,
  ...more,
});

const both = { updateCreate: true, conditionalUpdate: true, conditionalCreate: true };
const onlyClientId = { updateCreate: true };
const onlyConditional = { conditionalUpdate: true, conditionalCreate: true };

/** FHIR R4 CapabilityStatement.rest.resource: updateCreate, conditionalUpdate, conditionalCreate. */
describe('the identity mode, from a CapabilityStatement', () => {
  it.each([
    ['auto', both, 'client-id'],
    ['auto', onlyClientId, 'client-id'],
    ['auto', onlyConditional, 'conditional'],
    ['client-id', both, 'client-id'],
    ['conditional', both, 'conditional'],
  ] as const)('%s with %j: %s', (mode, flags, expected) => {
    const choice = chooseMode(capabilityStatement(flags), needs({ mode }));
    expect(choice).toEqual({ kind: 'chosen', mode: expected });
  });

  it('falls back to conditional when one type alone lacks client ids', () => {
    const statement = structuredClone(capabilityStatement(both));
    Object.assign(statement.rest?.[0]?.resource?.[1] ?? {}, { updateCreate: false });
    expect(chooseMode(statement, needs())).toEqual({ kind: 'chosen', mode: 'conditional' });
  });

  it.each([
    ['client-id', onlyConditional, 'updateCreate'],
    ['conditional', onlyClientId, 'conditionalUpdate'],
    ['conditional', { conditionalUpdate: true }, 'conditionalCreate) for Provenance'],
    ['auto', {}, 'mode resolved) is not offered by this version'],
    ['auto', { conditionalCreate: true }, 'Procedure, Condition, Observation'],
  ] as const)('%s with %j is refused: %s', (mode, flags, says) => {
    const choice = chooseMode(capabilityStatement(flags), needs({ mode }));
    expect(choice).toMatchObject({ kind: 'refused', fault: 'no-identity-mode' });
    expect(choice).toHaveProperty('reason', expect.stringContaining(says));
  });

  it('names the type that the target does not have at all', () => {
    const choice = chooseMode(capabilityStatement(), needs({ types: ['Procedure', 'Media'] }));
    expect(choice).toHaveProperty('reason', expect.stringContaining('for Media'));
  });
});

describe('a target that cannot be used', () => {
  const statement = capabilityStatement();
  it.each([
    ['no CapabilityStatement', { resourceType: 'OperationOutcome' }, 'no-capability'],
    ['nothing', undefined, 'no-capability'],
    ['FHIR R5', { ...statement, fhirVersion: '5.0.0' }, 'fhir-version'],
    ['FHIR R4B', { ...statement, fhirVersion: '4.3.0' }, 'fhir-version'],
    ['STU3', { ...statement, fhirVersion: '3.0.2' }, 'fhir-version'],
    ['no version', { ...statement, fhirVersion: undefined }, 'fhir-version'],
    ['no rest', { ...statement, rest: undefined }, 'no-transaction'],
    ['a client', { ...statement, rest: [{ mode: 'client' }] }, 'no-transaction'],
    [
      'batches alone',
      { ...statement, rest: [{ mode: 'server', interaction: [{ code: 'batch' }] }] },
      'no-transaction',
    ],
  ])('%s', (_what, body, fault) => {
    expect(chooseMode(body, needs())).toMatchObject({ kind: 'refused', fault });
  });

  it('takes fewer entries than a record can have', () => {
    const choice = chooseMode(statement, needs({ entryLimit: 25 }));
    const reason = 'The target takes 25 entries in one transaction, a record has up to 60.';
    expect(choice).toEqual({ kind: 'refused', fault: 'entry-limit', reason });
    expect(chooseMode(statement, needs({ entryLimit: 60 })).kind).toBe('chosen');
  });
});
