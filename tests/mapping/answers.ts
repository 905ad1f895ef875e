import { readFileSync } from 'node:fs';
import type { Observation } from 'fhir/r4.js';
import { brokenInBase } from '../../src/conformance/base-checks.js';
import { brokenInResource, brokenShape } from '../../src/conformance/own-invariants.js';
import { subjectOf } from '../../src/conformance/resource-check.js';
import { mappingContext } from '../../src/mapping/context.js';
import { SETTINGS, versionOf } from './records.js';

/** The context of an example, as mapping has it, with its report where one is named. */
export function contextOf(name: string, report?: string) {
  const version = versionOf(
    readFileSync(`examples/cases/${name}.json`, 'utf8'),
    ...(report === undefined ? [] : [readFileSync(`examples/pathology/${report}.json`, 'utf8')]),
  );
  return mappingContext(version.version, version.now, SETTINGS);
}

/** Rules of R4 and of our own profiles that a resource breaks. */
export function brokenBy(resource: unknown): readonly string[] {
  const subject = subjectOf(resource, '/entry/0/resource');
  const found = [brokenInBase, brokenInResource, brokenShape].flatMap((check) => check(subject));
  return found.map(({ rule }) => rule.key);
}

/** Codes of a system of our own that stand in a concept. */
export const codesOf = (concept: Observation['valueCodeableConcept'], set: string) =>
  (concept?.coding ?? [])
    .filter(({ system }) => system?.endsWith(`/CodeSystem/${set}`))
    .map(({ code }) => code);

export const textsOf = ({ note = [] }: Observation): readonly string[] =>
  note.map(({ text }) => text);
