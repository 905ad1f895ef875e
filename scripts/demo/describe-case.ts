import type { Bundle } from 'fhir/r4.js';
import type { CaseView, WaitingAnswer } from '../../src/pipeline/index.js';

/** What the demo knows of a case that was pushed. */
export interface DemoCase {
  readonly name: string;
  /** HTTP status of the push: 202 the first time, 200 when it was there already. */
  readonly status: number;
  readonly location: string;
  readonly view: AnsweredView;
  readonly bundle: Bundle;
}

/** A case in a few lines: what was computed, what was sent, where to look. */
export function describeCase({ name, status, location, view, bundle }: DemoCase): string {
  const { assessment, delivery } = view;
  const known = status === 200 ? 'known from before' : 'accepted';
  return [
    `${name.replace('.json', '')}  ${known}, ${delivery.name}`,
    `  computed   ${[
      `procedure ${inWords(assessment.procedureMin, 'min')}`,
      `dissection ${inWords(assessment.dissectionMin, 'min')}`,
      `specimen ${inWords(assessment.specimenAreaCm2, 'cm2')}`,
      `speed ${inWords(assessment.speedCm2PerH, 'cm2/h')}`,
      ...strictureWords(view),
    ].join(', ')}`,
    `  sent       ${resourceCounts(bundle)}`,
    ...notes(view).map((note) => `  note       ${note}`),
    `  look       ${location}`,
  ].join('\n');
}

/** A case that has come, and not only messages about it. */
export type AnsweredView = Exclude<CaseView, WaitingAnswer>;

type Computed = AnsweredView['assessment']['speedCm2PerH'];

function inWords(finding: Computed, unit: string): string {
  return finding.kind === 'determined' ? `${finding.value.toFixed(1)} ${unit}` : 'not computable';
}

function strictureWords({ assessment: { strictureRisk } }: AnsweredView): readonly string[] {
  if (strictureRisk === undefined) return [];
  return [
    strictureRisk.kind === 'determined'
      ? `stricture risk ${strictureRisk.value.flag}`
      : 'stricture risk not computable',
  ];
}

/** What is missing for the values that could not be computed, each field once. */
function notes({ assessment }: AnsweredView): readonly string[] {
  const { procedureMin, dissectionMin, specimenAreaCm2, strictureRisk } = assessment;
  const found = [procedureMin, specimenAreaCm2, dissectionMin, strictureRisk];
  const missing = found.flatMap((finding) =>
    finding?.kind === 'indeterminate' ? finding.missing : [],
  );
  return missing.length === 0 ? [] : [`not told: ${[...new Set(missing)].join(', ')}`];
}

function resourceCounts({ entry = [] }: Bundle): string {
  const counts = new Map<string, number>();
  for (const { resource } of entry) {
    if (resource === undefined) continue;
    counts.set(resource.resourceType, (counts.get(resource.resourceType) ?? 0) + 1);
  }
  const parts = [...counts]
    .sort(([, a], [, b]) => b - a)
    .map(([type, count]) => `${count} ${type}`);
  return `${entry.length} resources: ${parts.join(', ')}`;
}
