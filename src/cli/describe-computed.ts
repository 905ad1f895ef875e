import type { Finding } from '../kernel/index.js';
import type { Answer } from '../pipeline/index.js';

/** What was computed of a case: one line each, with what is missing for the rest. */
export function describeComputed(assessment: Answer['assessment']): readonly string[] {
  return Object.entries(assessment)
    .filter(isFinding)
    .map(([name, finding]) => `${labelOf(name)}: ${told(name, finding)}`);
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
