import { type Kysely, type Migration, sql } from 'kysely';

/** In the order of their digits, the last digit first. */
const WORD_COLUMNS = [
  ...['en_bloc', 'r0', 'curative', 'intraprocedural_perforation', 'delayed_perforation'],
  ...['bleeding28d', 'bleeding6h30d', 'bleeding30d_csdb', 'stricture', 'conversion_to_surgery'],
  ...['death30d', 'readmission30d', 'adverse_event30d', 'residual_or_recurrence'],
];
const wordDigit = (column: string): string =>
  `coalesce(array_position(array['yes', 'no', 'missing', 'window-open'], ${column}), 0)`;
const CHECK_DIGIT = `
  case when first_check_state = 'done' and first_check_timing = 'late' then 2
  else array_position(
    array['done', 'late', 'open', 'provisional', 'lost', 'ended', 'not-planned', 'unplanned'],
    first_check_state) end`;
const DIGITS = [...WORD_COLUMNS.map(wordDigit), `coalesce(${CHECK_DIGIT}, 0)`];
const WORDS = DIGITS.map((digit, i) => `(${digit})::bigint * ${10 ** i}`).join(' + ');

/** A cast of text would follow the settings of a session. */
const dayOf = (column: string): string =>
  `make_date(left(${column}, 4)::int, substr(${column}, 6, 2)::int, substr(${column}, 9, 2)::int)`;
const daysUntil = (column: string): string =>
  `case when resected_on > '' then ${dayOf(column)} - ${dayOf('resected_on')} end`;
/** Days until neoplasia was found, or until the last look without: twice, and one more if found. */
const WATCHED = `case when recurrence_on is null then 2 * (${daysUntil('last_check_on')})
  else 2 * (${daysUntil('recurrence_on')}) + 1 end`;

/** A value of the cases that are in its denominator. */
const measured = (value: string, word: string): string =>
  `double precision generated always as (
    case when ${word} <> 'not-applicable' then ${value} end) stored`;
/** Finer values would be as many as cases, and counting them as slow as sorting. */
const SPEED = 'round(speed_cm2_per_h::numeric, 1)::double precision';

/** Lists of the contract as types: short to hold, quick to tell apart. Columns by their type. */
const TYPES: Readonly<Record<string, readonly string[]>> = {
  organ: ['oesophagus', 'stomach', 'duodenum', 'colon', 'rectum'],
  size_band: ['under-20-mm', '20-to-29-mm', '30-to-49-mm', '50-mm-and-more', 'not computed'],
  trainee_band: ['none', 'less-than-half', 'half-and-more', 'all', 'not-told', 'not computed'],
  fibrosis: ['F0', 'F1', 'F2'],
  technique: ['esd', 'hybrid-esd'],
};

/** A column without a default takes another type. */
const WITH_DEFAULT = ['size_band', 'trainee_band'];

/**
 * One statement writes the rows anew once; one for each column would do it as often
 * (https://www.postgresql.org/docs/18/sql-altertable.html, Notes).
 */
const ALL_AT_ONCE = `alter table facts ${[
  ...WITH_DEFAULT.map((name) => `alter column ${name} drop default`),
  ...Object.keys(TYPES).map((name) => `alter column ${name} type ${name} using ${name}::${name}`),
  ...WITH_DEFAULT.map((name) => `alter column ${name} set default 'not computed'`),
  `add column words bigint not null generated always as (${WORDS}) stored`,
  `add column measured_speed ${measured(SPEED, 'en_bloc')}`,
  `add column measured_size ${measured('lesion_long_axis_mm', 'en_bloc')}`,
  `add column measured_min ${measured('round(procedure_min)', 'en_bloc')}`,
  `add column measured_pathology_days ${measured('pathology_days', 'r0')}`,
  `add column watched integer generated always as (${WATCHED}) stored`,
  `add column check_open_until date generated always as (
    case when first_check_state = 'open' then ${dayOf('first_check_latest_on')} end) stored`,
].join(', ')}`;

/**
 * What is counted, in a form that is read fast: every word of a case as one digit of one number,
 * and an index that holds all that a question about outcomes reads. The database keeps these
 * columns itself (https://www.postgresql.org/docs/18/ddl-generated-columns.html).
 */
export const countedFacts: Migration = {
  up: async (db: Kysely<unknown>) => {
    for (const [name, words] of Object.entries(TYPES)) {
      const labels = words.map((word) => `'${word}'`).join(', ');
      await sql.raw(`create type ${name} as enum (${labels})`).execute(db);
    }
    await sql`drop index facts_resected_on`.execute(db);
    await sql.raw(ALL_AT_ONCE).execute(db);
    await sql`
      create index facts_counted on facts (resected_on) include (
        organ, size_band, trainee_band, fibrosis, technique, words,
        measured_speed, measured_size, measured_min, measured_pathology_days,
        watched, check_open_until, curability_rule, operator)
      where not withdrawn and resected_on > ''`.execute(db);
  },
};
