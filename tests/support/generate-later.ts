import fc from 'fast-check';
import { z } from 'zod';
import {
  checkEventAgainstCase,
  checkExaminationAgainstCase,
  EVENT_PARTS,
  eventSchema,
  examinationSchema,
  parseCase,
  parseEvent,
  parseExamination,
} from '../../src/contract/index.js';
import type { Problem } from '../../src/kernel/index.js';
import type { Draft } from './consistent-case.js';
import { fromJsonSchema, type SchemaNode } from './from-json-schema.js';
import { SEED, sampleCases } from './generate-case.js';

const DAY_MS = 86_400_000;
/** More than a message can contradict itself: each round takes a word away. */
const MOST_ROUNDS = 200;

const bytesOf = (document: Draft): Uint8Array => new TextEncoder().encode(JSON.stringify(document));

const drawn = (schema: z.ZodType, howMany: number): readonly Draft[] => {
  const node: SchemaNode = JSON.parse(JSON.stringify(z.toJSONSchema(schema, { io: 'input' })));
  return fc.sample(fromJsonSchema(node), { seed: SEED, numRuns: howMany });
};

/** Cases with an event each, of every kind, the same in every run. */
export function sampleEvents(howMany: number): readonly (readonly [Draft, Draft])[] {
  return paired(drawn(eventSchema, howMany), (esd, event, day) => ({
    ...event,
    ...about(esd, day(40)),
    occurredOn: day(5).slice(0, 10),
    ...renewed(event, 'occurredAt', day(5)),
    ...(event.course === undefined
      ? {}
      : {
          course: {
            ...event.course,
            ...renewed(event.course, 'intervenedAt', day(6)),
            ...renewed(event.course, 'resolvedOn', day(9).slice(0, 10)),
          },
        }),
    ...(event.status === undefined
      ? {}
      : { status: { ...event.status, untilOn: day(4).slice(0, 10) } }),
    ...requiredPart(event),
  })).flatMap(([esd, event]) => settled(esd, event, parseEvent, checkEventAgainstCase));
}

/** Cases with a follow-up examination each, the same in every run. */
export function sampleExaminations(howMany: number): readonly (readonly [Draft, Draft])[] {
  return paired(drawn(examinationSchema, howMany), (esd, examination, day) => ({
    ...examination,
    ...about(esd, day(200)),
    examinedOn: day(190).slice(0, 10),
    ...renewed(examination, 'examinedAt', day(190)),
    route: ['colon', 'rectum'].includes(esd.lesion.organ) ? 'lower' : 'upper',
    ...(examination.next === undefined
      ? {}
      : {
          next: {
            ...examination.next,
            ...renewed(examination.next, 'on', day(300).slice(0, 10)),
            ...(examination.next.step === 'stop' ? { reason: 'age' } : {}),
          },
        }),
  })).flatMap(([esd, examination]) =>
    settled(esd, examination, parseExamination, checkExaminationAgainstCase),
  );
}

function paired(
  messages: readonly Draft[],
  adapt: (esd: Draft, message: Draft, day: (days: number) => string) => Draft,
): readonly (readonly [Draft, Draft])[] {
  return sampleCases(messages.length).map((esd: Draft, i) => {
    const ended = Date.parse(esd.times.scopeOutAt);
    const day = (days: number): string => new Date(ended + days * DAY_MS).toISOString();
    return [esd, adapt(esd, messages[i], day)] as const;
  });
}

const about = (esd: Draft, sentAt: string) => ({
  source: esd.source,
  case: esd.case,
  patient: { system: esd.patient.system, value: esd.patient.value },
  sentAt,
});

const renewed = (holder: Draft, field: string, value: string) =>
  holder[field] === undefined ? {} : { [field]: value };

/** An event without the part that its kind asks for says nothing. */
function requiredPart({ kind, ...event }: Draft): Draft {
  const parts: Draft = {
    surgery: { reason: 'oncological' },
    meeting: { decision: 'surgery' },
    status: { untilOn: event.occurredOn },
  };
  const row = EVENT_PARTS.find(({ required, kinds }) => required && kinds.includes(kind));
  if (row === undefined || event[row.part] !== undefined || row.part === 'status') return {};
  return { [row.part]: parts[row.part] };
}

interface Parsed<F> {
  readonly ok: boolean;
  readonly value?: { readonly fields: F };
  readonly problems?: readonly Problem[];
}

/** Everything that contradicts itself or the case is taken away; what does not settle is left out. */
function settled<F>(
  esd: Draft,
  message: Draft,
  parse: (bytes: Uint8Array) => Parsed<F>,
  check: (sent: F, esd: Draft) => readonly Problem[],
): readonly (readonly [Draft, Draft])[] {
  const known = parseCase(bytesOf(esd));
  if (!known.ok) throw new Error('a generated case is sound');
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const found = parse(bytesOf(message));
    const problems =
      found.value === undefined
        ? (found.problems ?? [])
        : check(found.value.fields, known.value.fields);
    const [first] = problems;
    if (first === undefined) return [[esd, message]];
    if (!takeAway(message, first.pointer)) return [];
  }
  return [];
}

/** @returns false where nothing of the message can be taken away */
function takeAway(message: Draft, pointer: string): boolean {
  const path = pointer.split('/').slice(1);
  const key = path.at(-1) ?? '';
  const isRequired = ['seen', 'present', 'endoscopePasses', 'organ', 'reason'].includes(key);
  const whole = isRequired && path.length > 1 && key !== 'reason' ? path.slice(0, -1) : path;
  const last = whole.at(-1) ?? '';
  const holder = whole.slice(0, -1).reduce((node: Draft, step) => node?.[step], message);
  if (holder === undefined || holder[last] === undefined) return false;
  if (Array.isArray(holder)) holder.splice(Number(last), 1);
  else delete holder[last];
  return true;
}
