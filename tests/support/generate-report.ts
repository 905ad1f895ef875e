import fc from 'fast-check';
import { z } from 'zod';
import {
  checkAgainstCase,
  parseCase,
  parsePathology,
  pathologySchema,
} from '../../src/contract/index.js';
import type { Problem } from '../../src/kernel/index.js';
import type { Draft } from './consistent-case.js';
import { fromJsonSchema, type SchemaNode } from './from-json-schema.js';
import { SEED, sampleCases } from './generate-case.js';

const HOUR_MS = 3_600_000;
/** More than a report can contradict itself: each round takes a word away. */
const MOST_ROUNDS = 200;

/** Parts of a generated report that may be taken away to settle a contradiction. */
const SETTLED = /^\/(specimen|findings|background|ancillary)\//;

/**
 * Cases with a report each, the same in every run: a report of any shape, of which everything
 * that contradicts itself or the case was taken away. Cases without a specimen are left out.
 */
export function sampleReported(howMany: number): readonly (readonly [Draft, Draft])[] {
  const schema: SchemaNode = JSON.parse(
    JSON.stringify(z.toJSONSchema(pathologySchema, { io: 'input' })),
  );
  const reports = fc.sample(fromJsonSchema(schema), { seed: SEED, numRuns: howMany });
  return sampleCases(howMany).flatMap((esd, i) => {
    const settled = settledReport(esd, reports[i]);
    return settled === undefined ? [] : [[esd, settled] as const];
  });
}

function settledReport(esd: Draft, drawn: Draft): Draft | undefined {
  const parsed = parseCase(bytesOf(esd));
  if (!parsed.ok) throw new Error('a generated case is sound');
  const report = aboutCase(esd, drawn);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const found = parsePathology(bytesOf(report));
    const problems = found.ok
      ? checkAgainstCase(found.value.fields, parsed.value.fields)
      : found.problems;
    if (problems.length === 0) return report;
    if (!problems.every(({ pointer }) => SETTLED.test(pointer))) return undefined;
    takeAway(report, problems[0]);
  }
  throw new Error('a generated report settles');
}

/** The report as one on the specimen of the case, sent and signed days after it. */
function aboutCase(esd: Draft, drawn: Draft): Draft {
  const ended = Date.parse(esd.times.scopeOutAt);
  const after = (hours: number): string => new Date(ended + hours * HOUR_MS).toISOString();
  const isFinal = drawn.report.status === 'final';
  const { amendmentReason, ...report } = drawn.report;
  return {
    ...drawn,
    source: esd.source,
    case: esd.case,
    patient: { system: esd.patient.system, value: esd.patient.value },
    sentAt: after(80),
    report: {
      ...report,
      ...(amendmentReason === undefined ? { version: 1 } : { version: 2, amendmentReason }),
      ...(isFinal || report.reportedAt !== undefined ? { reportedAt: after(72) } : {}),
    },
    ...(drawn.specimen === undefined
      ? {}
      : {
          specimen: {
            ...drawn.specimen,
            ...(drawn.specimen.receivedAt === undefined ? {} : { receivedAt: after(2) }),
          },
        }),
    ...(isFinal ? { findings: { histology: 'carcinoma', ...drawn.findings } } : {}),
  };
}

/** Takes away what a problem points at; a required word of an object with the object. */
function takeAway(report: Draft, problem: Problem | undefined): void {
  const pointer = problem?.pointer ?? '';
  const path = pointer.split('/').slice(1);
  const isRequired = /\/(hm|vm)\/state$/.test(pointer);
  const whole = isRequired ? path.slice(0, -1) : path;
  const key = whole.at(-1) ?? '';
  const holder = whole.slice(0, -1).reduce((node: Draft, step) => node?.[step], report);
  if (holder === undefined) return;
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else if (key === 'histology') holder[key] = 'not-assessable';
  else delete holder[key];
}

const bytesOf = (document: Draft): Uint8Array => new TextEncoder().encode(JSON.stringify(document));
