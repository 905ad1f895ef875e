import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import {
  ADVERSE_EVENTS,
  bookingSchema,
  type CaseFields,
  checkEventAgainstCase,
  checkExaminationAgainstCase,
  checkWithdrawalAgainstCase,
  EVENT_KINDS,
  eventSchema,
  examinationSchema,
  parseBooking,
  parseCase,
  parseEvent,
  parseExamination,
  parseWithdrawal,
  withdrawalSchema,
} from '../../src/contract/index.js';
import type { Checked, Problem } from '../../src/kernel/index.js';
import type { SchemaNode } from '../support/from-json-schema.js';
import { namesIn, namesOf } from './schema-names.js';

const readme = readFileSync('examples/README.md', 'utf8');
const cases = readdirSync('examples/cases').map((file) =>
  fieldsOf(parseCase(readFileSync(`examples/cases/${file}`)), file),
);

function fieldsOf<Fields>(checked: Checked<{ readonly fields: Fields }>, file: string): Fields {
  if (!checked.ok) throw new Error(`${file}: ${JSON.stringify(checked.problems)}`);
  return checked.value.fields;
}

interface AboutCase {
  readonly case: { readonly system: string; readonly value: string };
}
const caseOf = (sent: AboutCase): CaseFields => {
  const [found, ...others] = cases.filter(
    (one) => one.case.system === sent.case.system && one.case.value === sent.case.value,
  );
  expect(others).toEqual([]);
  if (found === undefined) throw new Error('no example case');
  return found;
};

/** The messages of a folder, each read and held against its case. */
function messages<Fields extends AboutCase>(
  folder: string,
  parse: (bytes: Uint8Array) => Checked<{ readonly fields: Fields }>,
  check: (sent: Fields, esd: CaseFields) => readonly Problem[],
) {
  return readdirSync(`examples/${folder}`).map((file) => {
    const sent = fieldsOf(parse(readFileSync(`examples/${folder}/${file}`)), file);
    return { file, sent, problems: check(sent, caseOf(sent)) };
  });
}

const events = messages('events', parseEvent, checkEventAgainstCase);
const examinations = messages('examinations', parseExamination, checkExaminationAgainstCase);
const withdrawals = messages('withdrawals', parseWithdrawal, checkWithdrawalAgainstCase);

interface Kind {
  readonly kind: string;
  readonly schema: z.ZodType;
  readonly all: readonly Told[];
  /** One field that the oracle must see. */
  readonly known: string;
}
interface Told {
  readonly file: string;
  readonly sent: object;
  readonly problems: readonly Problem[];
}

const KINDS: readonly Kind[] = [
  { kind: 'events', schema: eventSchema, all: events, known: '/course/admissionHours' },
  {
    kind: 'examinations',
    schema: examinationSchema,
    all: examinations,
    known: '/newLesions/*/polypType',
  },
  { kind: 'withdrawals', schema: withdrawalSchema, all: withdrawals, known: '/replacedBy/value' },
];

describe.each(KINDS)('the example $kind', ({ schema, all, known }) => {
  it.each(all)('$file has its story, is marked as invented and fits its case', (one) => {
    expect(readme).toContain(`\`${one.file}\``);
    expect(one.problems).toEqual([]);
    const text = JSON.stringify(one.sent);
    const systems = text.match(/"system":"[^"]*"/g) ?? [];
    const values = text.match(/"value":"[^"]*"/g) ?? [];
    expect(systems.length).toBeGreaterThan(1);
    expect(systems.filter((found) => !found.startsWith('"system":"urn:oid:2.999.'))).toEqual([]);
    expect(values.filter((found) => !found.startsWith('"value":"EX-'))).toEqual([]);
  });

  it('use every field of the contract between them', () => {
    const node: SchemaNode = JSON.parse(JSON.stringify(z.toJSONSchema(schema, { io: 'input' })));
    const used = new Set(all.flatMap(({ sent }) => namesIn(sent)));
    expect(namesOf(node).filter((name) => !used.has(name))).toEqual([]);
    expect(namesOf(node)).toContain(known);
  });
});

describe('the example events', () => {
  it('show every kind that is no adverse event, and the adverse events most looked for', () => {
    const shown = new Set(events.map(({ sent }) => sent.kind));
    const adverse: readonly string[] = ADVERSE_EVENTS;
    expect(EVENT_KINDS.filter((kind) => !adverse.includes(kind) && !shown.has(kind))).toEqual([]);
    expect([...shown].filter((kind) => adverse.includes(kind)).sort()).toEqual(
      ['coagulation-syndrome', 'delayed-bleeding', 'delayed-perforation', 'stricture'].sort(),
    );
  });

  it('name causes that are events of the same case', () => {
    const caused = events.filter(({ sent }) => sent.causedBy !== undefined);
    expect(caused.length).toBeGreaterThan(2);
    for (const { sent } of caused) {
      const cause = events.filter(
        (one) =>
          one.sent.event.value === sent.causedBy?.value &&
          one.sent.case.value === sent.case.value &&
          one.sent.occurredOn <= sent.occurredOn,
      );
      expect(cause).toHaveLength(1);
    }
  });

  it('and the examinations have a number each, the revisions of one apart', () => {
    const keys = [
      ...events.map(({ sent }) => `${sent.event.value} ${sent.revision}`),
      ...examinations.map(({ sent }) => `${sent.examination.value} ${sent.revision}`),
    ];
    expect(new Set(keys).size).toBe(keys.length);
  });
});

// The grades of the examples, worked by hand from the tables: AGREE (Nass 2022; IV from memory)
// by the kind of intervention, Clavien-Dindo (Dindo 2004) by the anaesthesia.
describe('the grades of the example events', () => {
  it.each([
    ['stomach-bleeding.json', 'IIIa', 'IIIa'], // endoscopic, without general anaesthesia
    ['oesophagus-stricture.json', 'IIIa', 'IIIa'], // the same
    ['duodenum-delayed-perforation.json', 'IVa', 'IVa'], // critical care, one organ
    ['colon-coagulation-syndrome.json', 'II', 'II'], // antibiotics
    ['stomach-emergency-visit.json', 'I', 'I'], // a visit without intervention
  ])('%s: AGREE %s, Clavien-Dindo %s', (file, agree, clavienDindo) => {
    const found = events.find((one) => one.file === file);
    expect(found?.sent.grades).toEqual({ agree, clavienDindo });
  });
});

// A booking names no case, so that nothing but the form of the follow-up's id is asked here.
describe('the example bookings', () => {
  const bookings = readdirSync('examples/bookings').map((file) => ({
    file,
    sent: fieldsOf(parseBooking(readFileSync(`examples/bookings/${file}`)), file),
  }));

  it.each(bookings)('$file has its story', ({ file }) => {
    expect(readme).toContain(`\`${file}\``);
  });

  it('use every field of the contract between them', () => {
    const node: SchemaNode = JSON.parse(
      JSON.stringify(z.toJSONSchema(bookingSchema, { io: 'input' })),
    );
    const used = new Set(bookings.flatMap(({ sent }) => namesIn(sent)));
    expect(namesOf(node).filter((name) => !used.has(name))).toEqual([]);
    expect(namesOf(node)).toContain('/alsoFor/*');
  });
});
