import { z } from 'zod';
import { type Checked, isTimeZone } from '../kernel/index.js';
import { FOLLOW_UP_RULE_SETS, WEEKDAYS, type Weekday } from './follow-up-choices.table.js';
import { readDocument } from './read-document.js';
import { date, listOf, oneOf, someOf, uri, wholeIn } from './scalars.js';
import {
  ANTITHROMBOTIC_EDITIONS,
  CURABILITY_RULE_SETS,
  REVIEW_CHECKS,
  type ReviewCheck,
  STRICTURE_PROPHYLAXIS_READINGS,
} from './words.table.js';

type Chosen<Sets> = { readonly [Organ in keyof Sets]: Sets[Organ][number & keyof Sets[Organ]] };

/** The rule set by which curability is judged, one for each organ that has any. */
export type CurabilityRules = Chosen<typeof CURABILITY_RULE_SETS>;

const DEFAULT_CURABILITY_RULES: CurabilityRules = {
  oesophagus: 'esge-esd-2022',
  stomach: 'esge-esd-2022',
  colon: 'esge-esd-2022',
  rectum: 'esge-esd-2022',
};

const curabilityRules = z
  .strictObject({
    oesophagus: oneOf(CURABILITY_RULE_SETS.oesophagus).default(DEFAULT_CURABILITY_RULES.oesophagus),
    stomach: oneOf(CURABILITY_RULE_SETS.stomach).default(DEFAULT_CURABILITY_RULES.stomach),
    colon: oneOf(CURABILITY_RULE_SETS.colon).default(DEFAULT_CURABILITY_RULES.colon),
    rectum: oneOf(CURABILITY_RULE_SETS.rectum).default(DEFAULT_CURABILITY_RULES.rectum),
  })
  .default(DEFAULT_CURABILITY_RULES)
  .describe('rule set of curability, by organ; the duodenum has none');

/** The rule set by which follow-up is planned, one for each organ. */
export type FollowUpRules = Chosen<typeof FOLLOW_UP_RULE_SETS>;

const DEFAULT_FOLLOW_UP_RULES: FollowUpRules = {
  oesophagus: 'esge-esd-2022-follow-up',
  stomach: 'esge-esd-2022-follow-up',
  duodenum: 'esge-duodenum-2021',
  colon: 'esge-esd-2022-follow-up',
  rectum: 'esge-esd-2022-follow-up',
};

const followUpRules = z
  .strictObject({
    oesophagus: oneOf(FOLLOW_UP_RULE_SETS.oesophagus).default(DEFAULT_FOLLOW_UP_RULES.oesophagus),
    stomach: oneOf(FOLLOW_UP_RULE_SETS.stomach).default(DEFAULT_FOLLOW_UP_RULES.stomach),
    duodenum: oneOf(FOLLOW_UP_RULE_SETS.duodenum).default(DEFAULT_FOLLOW_UP_RULES.duodenum),
    colon: oneOf(FOLLOW_UP_RULE_SETS.colon).default(DEFAULT_FOLLOW_UP_RULES.colon),
    rectum: oneOf(FOLLOW_UP_RULE_SETS.rectum).default(DEFAULT_FOLLOW_UP_RULES.rectum),
  })
  .default(DEFAULT_FOLLOW_UP_RULES)
  .describe('rule set of follow-up, by organ; Barrett mucosa has one of its own');

/** One line of printable text without blanks at its ends. */
const NAME =
  /^[\p{L}\p{N}\p{P}\p{S}]([\p{L}\p{M}\p{N}\p{P}\p{S} ]{0,98}[\p{L}\p{M}\p{N}\p{P}\p{S}])?$/u;

/** Room for ten years of single days. */
const MOST_CLOSED_DAYS = 3700;
const daysOf = (what: string) => listOf(date, MOST_CLOSED_DAYS, 'days').default([]).describe(what);

const DEFAULT_CLOSED_WEEKDAYS: readonly Weekday[] = ['saturday', 'sunday'];

const checksOff = listOf(oneOf(REVIEW_CHECKS), REVIEW_CHECKS.length, 'ids of checks')
  .default([])
  .describe('checks of the case review that this unit does not want to read');

const unitName = z
  .string()
  .regex(NAME)
  .meta({ title: '1 to 100 printable characters without blanks at the ends' })
  .describe('what people call the unit, for the head of its reports; never a person');

/** What an endoscopy unit decides for itself, kept in one versioned file. */
export const unitSettingsSchema = z.strictObject({
  schema: z.literal('unit-settings/1'),
  version: wholeIn({ from: 1, to: 1_000_000 }).describe(
    'rises with every change; kept with each record version',
  ),
  name: unitName.optional(),
  identifierBase: uri
    .refine((text) => !text.endsWith('/'), 'This URI ends in a slash.')
    .meta({ title: 'an absolute URI without a slash at its end' })
    .describe('identifier systems of the records begin with it'),
  licences: z.strictObject({
    snomedCt: z.boolean().describe('codes beyond the freely usable sets may be sent'),
  }),
  endoscopyReport: oneOf(['wait', 'sign-at-once']).describe(
    'whether the endoscopy report waits for pathology before it is final',
  ),
  missingPatient: oneOf(['require', 'logical']).describe(
    'whether a case waits for its Patient resource or is sent with the identifier alone',
  ),
  curabilityRules,
  followUpRules,
  closedWeekdays: someOf(WEEKDAYS)
    .max(WEEKDAYS.length - 1)
    .default([...DEFAULT_CLOSED_WEEKDAYS])
    .describe('days of the week on which the unit examines nobody; not all seven'),
  closedDays: daysOf('single days on which the unit is closed'),
  publicHolidays: daysOf('public holidays of the place, on which the unit is closed too'),
  checksOff,
  strictureProphylaxis: oneOf(STRICTURE_PROPHYLAXIS_READINGS)
    .default('above-three-quarters')
    .describe('from which wound of the oesophagus the review asks for prophylaxis of a stricture'),
  antithromboticEdition: oneOf(ANTITHROMBOTIC_EDITIONS)
    .default('bsg-esge-2021')
    .describe('the guideline by which the review reads stop and restart of antithrombotics'),
  timeZone: z
    .string()
    .refine(isTimeZone, 'This is no name of a time zone.')
    .meta({ title: 'a name of the IANA time zone database, such as Europe/Madrid' })
    .default('UTC')
    .describe('where the unit is: which day is today, and on which day a visit falls'),
  waitingCaseDays: wholeIn({ from: 1, to: 365, unit: 'days' })
    .default(14)
    .describe('after so many days, messages that wait for their case are shown as overdue'),
  proposedAppointments: z
    .boolean()
    .default(false)
    .describe('whether open examinations are proposed as Appointments on the FHIR server too'),
  smallCells: oneOf(['hide', 'show'])
    .default('hide')
    .describe(
      'whether outcomes show small counts, curves of single cases and exports to the records team',
    ),
  smallCellThreshold: wholeIn({ from: 2, to: 100, unit: 'cases' })
    .default(5)
    .describe('counts from 1 to one less are small'),
});

export interface UnitSettings {
  readonly schema: 'unit-settings/1';
  readonly version: number;
  /** What people call the unit. */
  readonly name?: string | undefined;
  readonly identifierBase: string;
  readonly licences: { readonly snomedCt: boolean };
  readonly endoscopyReport: 'wait' | 'sign-at-once';
  readonly missingPatient: 'require' | 'logical';
  readonly curabilityRules: CurabilityRules;
  readonly followUpRules: FollowUpRules;
  readonly closedWeekdays: readonly Weekday[];
  /** YYYY-MM-DD. */
  readonly closedDays: readonly string[];
  /** YYYY-MM-DD. */
  readonly publicHolidays: readonly string[];
  readonly checksOff: readonly ReviewCheck[];
  readonly strictureProphylaxis: (typeof STRICTURE_PROPHYLAXIS_READINGS)[number];
  readonly antithromboticEdition: (typeof ANTITHROMBOTIC_EDITIONS)[number];
  readonly timeZone: string;
  readonly waitingCaseDays: number;
  readonly proposedAppointments: boolean;
  readonly smallCells: 'hide' | 'show';
  readonly smallCellThreshold: number;
}

/** In force without a settings file; its identifier base is an example and not for production. */
export const DEFAULT_UNIT_SETTINGS: UnitSettings = {
  schema: 'unit-settings/1',
  version: 1,
  identifierBase: 'https://dissection-records.example/unit',
  licences: { snomedCt: false },
  endoscopyReport: 'wait',
  missingPatient: 'require',
  curabilityRules: DEFAULT_CURABILITY_RULES,
  followUpRules: DEFAULT_FOLLOW_UP_RULES,
  closedWeekdays: DEFAULT_CLOSED_WEEKDAYS,
  closedDays: [],
  publicHolidays: [],
  checksOff: [],
  strictureProphylaxis: 'above-three-quarters',
  antithromboticEdition: 'bsg-esge-2021',
  timeZone: 'UTC',
  waitingCaseDays: 14,
  proposedAppointments: false,
  smallCells: 'hide',
  smallCellThreshold: 5,
};

/** @returns the settings, or every problem of the file at once */
export function parseUnitSettings(bytes: Uint8Array): Checked<UnitSettings> {
  return readDocument(unitSettingsSchema, bytes);
}
