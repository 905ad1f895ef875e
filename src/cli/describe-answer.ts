import type { Finding } from '../kernel/index.js';
import type { Answer, DryRun } from '../pipeline/index.js';

/** What was computed of a case, for people: one line each, with what is missing for the rest. */
export function describeAnswer({ assessment, caution }: Answer): string {
  const findings = Object.entries(assessment).filter(isFinding);
  const known = findings.filter(([, finding]) => finding.kind === 'determined').length;
  const width = Math.max(...findings.map(([name]) => labelOf(name).length));
  return [
    `  Computed: ${known} of ${findings.length}`,
    ...findings.map(([name, found]) => `    ${labelOf(name).padEnd(width)}  ${told(name, found)}`),
    `  ${caution}`,
  ].join('\n');
}

type Bundle = Extract<DryRun, { readonly kind: 'valid' }>['bundle'];

/** What would be sent, counted by type of resource. */
export function describeBundle({ entry = [] }: Bundle): string {
  const types = entry.map(({ resource }) => resource?.resourceType ?? 'none').sort();
  const counted = [...new Set(types)].map(
    (type) => `${type} ${types.filter((other) => other === type).length}`,
  );
  return `  Would send ${entry.length} resources: ${counted.join(', ')}`;
}

const isFinding = (pair: [string, unknown]): pair is [string, Finding<unknown>] =>
  typeof pair[1] === 'object' && pair[1] !== null && 'kind' in pair[1];

const told = (name: string, finding: Finding<unknown>): string =>
  finding.kind === 'determined'
    ? `${valueText(finding.value)} ${unitOf(name)}`.trimEnd()
    : `not known: ${finding.missing.join(', ')} not told`;

function valueText(value: unknown): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(3)));
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(valueText).join(', ');
  if (typeof value !== 'object' || value === null) return String(value);
  return Object.entries(value)
    .map(([name, inner]) => `${labelOf(name)} ${valueText(inner)} ${unitOf(name)}`.trim())
    .join('; ');
}

/** Ends of names that say a unit, and how the rest of the name reads. */
const UNITS = [
  { end: 'Cm2PerH', unit: 'cm2/h', after: '' },
  { end: 'Cm2', unit: 'cm2', after: '' },
  { end: 'Min', unit: 'min', after: ' time' },
  { end: 'Mm', unit: 'mm', after: '' },
  { end: 'Cm', unit: 'cm', after: '' },
  { end: 'Percent', unit: '%', after: '' },
  { end: 'percent', unit: '%', after: '' },
] as const;

const unitRow = (name: string) => UNITS.find(({ end }) => name.endsWith(end));

const unitOf = (name: string): string => unitRow(name)?.unit ?? '';

/** `speedCm2PerH` -> `speed` */
function labelOf(name: string): string {
  const row = unitRow(name);
  const bare = row === undefined ? name : name.slice(0, -row.end.length) + row.after;
  return bare.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
