import { z } from 'zod';
import {
  bookingSchema,
  caseSchema,
  EVENT_PARTS,
  eventSchema,
  examinationSchema,
  pathologySchema,
  unitSettingsSchema,
  withdrawalSchema,
} from '../../src/contract/index.js';
import {
  WHAT_JSON_SCHEMA_CANNOT_SAY,
  WHAT_PATHOLOGY_SCHEMA_CANNOT_SAY,
} from './beyond-json-schema.table.js';
import {
  type BeyondLaterSchema,
  WHAT_LATER_SCHEMAS_CANNOT_SAY,
} from './beyond-later-schemas.table.js';

const FOLDER = 'shared/schemas';
const BASE = 'https://dissection-records.example/schemas';

interface Published {
  readonly file: string;
  readonly title: string;
  readonly description: string;
  readonly schema: z.ZodType;
}

const PUBLISHED: readonly Published[] = [
  {
    file: 'case-1.schema.json',
    title: 'Finished endoscopic submucosal dissection of one lesion',
    description:
      'The message `case/1`. Lengths are in mm unless the name says cm, volumes in ml, doses in ' +
      'mg, shares in percent. Names that end in At hold instants with offset, names that end in ' +
      'On hold calendar dates. A list that is absent was not told; an empty list says "none".',
    schema: caseSchema,
  },
  {
    file: 'pathology-1.schema.json',
    title: 'Report of the laboratory on the specimen of one dissection',
    description:
      'The message `pathology/1`; natural key: case and accession. Lengths are in mm unless the ' +
      'name says um, shares in percent. Names that end in At hold instants with offset. A field ' +
      'that is absent was not told; X: cannot be assessed. An empty list says "none".',
    schema: pathologySchema,
  },
  {
    file: 'event-1.schema.json',
    title: 'What happened or was decided after a dissection',
    description:
      'The message `event/1`; natural key: case and event. Haemoglobin is in g/dL, lengths are in ' +
      'mm. Names that end in At hold instants with offset, names that end in On hold calendar ' +
      'dates. A field that is absent was not told; that nothing happened is told by the kind ' +
      '`status-at-30-days` alone.',
    schema: eventSchema,
  },
  {
    file: 'examination-1.schema.json',
    title: 'Follow-up endoscopy that took place',
    description:
      'The message `examination/1`; natural key: case and examination. Lengths are in mm unless ' +
      'the name says cm. Names that end in At hold instants with offset, names that end in On hold ' +
      'calendar dates. A field that is absent was not told; an empty list says "none".',
    schema: examinationSchema,
  },
  {
    file: 'withdrawal-1.schema.json',
    title: 'A case that is taken back',
    description: 'The message `withdrawal/1`; natural key: case.',
    schema: withdrawalSchema,
  },
  {
    file: 'booking-1.schema.json',
    title: 'What a scheduler says of the appointment for a follow-up',
    description:
      'The message `booking/1`; natural key: the follow-up, which the address names. Names that ' +
      'end in At hold instants with offset.',
    schema: bookingSchema,
  },
  {
    file: 'unit-settings.schema.json',
    title: 'Settings of an endoscopy unit',
    description: 'What a unit decides for itself; one versioned file.',
    schema: unitSettingsSchema,
  },
];

/**
 * Says the schemas of the contract as JSON Schema, draft 2020-12, for those who send messages.
 *
 * @returns path from the root of the project -> content
 */
export async function generateSchemas(): Promise<ReadonlyMap<string, string>> {
  const schemas = PUBLISHED.map((published): [string, string] => [
    `${FOLDER}/${published.file}`,
    `${JSON.stringify(jsonSchemaOf(published), null, 2)}\n`,
  ]);
  return new Map([...schemas, [`${FOLDER}/README.md`, readme()]]);
}

function jsonSchemaOf({ file, title, description, schema }: Published): object {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input', target: 'draft-2020-12' });
  return { $schema, $id: `${BASE}/${file}`, title, description, ...rest };
}

const readme = (): string => `# JSON Schema of the messages

Generated from the contract (\`npm run generated\`); draft 2020-12.

${PUBLISHED.map(({ file, title }) => `- \`${file}\`: ${title}.`).join('\n')}

Use a validator that asserts \`format\`: otherwise 30 February passes. What the schema of a message
refuses, the service refuses. What it accepts, the service may still refuse for these reasons:

## Lost before a schema sees the value

${listOf(WHAT_JSON_SCHEMA_CANNOT_SAY, 'bytes')}

## Across fields of a case

${listOf(WHAT_JSON_SCHEMA_CANNOT_SAY, 'fields')}

## Across fields of a pathology report

${listOf(WHAT_PATHOLOGY_SCHEMA_CANNOT_SAY, 'fields')}

## Between a pathology report and its case

${listOf(WHAT_PATHOLOGY_SCHEMA_CANNOT_SAY, 'case')}

## Across fields of an event

${later('event', 'fields')}

Parts of an event and the kinds that they belong to; an operation, a meeting and a status cannot
be without theirs:

${partTable()}

## Between an event and its case

${later('event', 'case')}

## Across fields of an examination

${later('examination', 'fields')}

## Between an examination and its case

${later('examination', 'case')}

## Across fields of a withdrawal

${later('withdrawal', 'fields')}

## Between a withdrawal and its case

${later('withdrawal', 'case')}

## Across fields of a booking

${later('booking', 'fields')}

## Between a booking and the case of its follow-up

${later('booking', 'case')}

A follow-up that alsoFor names is known to the service and one of the same patient.

## Named otherwise

Two rules agree with the schema and have names of their own: \`too-deep\` (more than 16 levels) and
\`ill-formed-text\` (control characters, half of a character).
`;

const later = (message: BeyondLaterSchema['message'], kind: string): string =>
  listOf(
    WHAT_LATER_SCHEMAS_CANNOT_SAY.filter((row) => row.message === message),
    kind,
  );

const partTable = (): string =>
  [
    '| part | kinds |',
    '| --- | --- |',
    ...EVENT_PARTS.map(({ part, kinds }) => `| \`${part}\` | ${kinds.join(', ')} |`),
  ].join('\n');

interface Row {
  readonly rule: string;
  readonly kind: string;
  readonly asks: string;
}

const listOf = (rows: readonly Row[], kind: string): string =>
  rows
    .filter((row) => row.kind === kind)
    .map(({ rule, asks }) => `- \`${rule}\`: ${asks}`)
    .join('\n');
