import { readFileSync } from 'node:fs';
import type { PathologyFields } from '../../src/contract/index.js';

/** A report of the examples with some of its findings replaced; undefined takes one away. */
export function soundPathology(findings: Readonly<Record<string, unknown>>): PathologyFields {
  const report = JSON.parse(readFileSync('examples/pathology/colon-caecum.json', 'utf8'));
  return { ...report, findings: { ...report.findings, ...findings } };
}
