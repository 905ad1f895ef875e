import { type Kysely, type Migration, sql } from 'kysely';

/**
 * One word an indicator, and what outcomes are counted by. Days are text of one form and one
 * collation, so that they sort as days wherever the database runs. Rows of before are in no count:
 * every word reads "not computed" until the facts are made anew, by the next message of their case
 * or by `verify facts --repair`.
 */
export const outcomeFacts: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      alter table facts
        add column resected_on text collate "C" not null default '',
        add column tumour text,
        add column size_band text not null default 'not computed',
        add column trainee_band text not null default 'not computed',
        add column pathology_days double precision,
        add column first_check_state text not null default 'not computed',
        add column first_check_on text collate "C",
        add column first_check_timing text,
        add column first_check_latest_on text collate "C",
        add column recurrence_on text collate "C",
        add column last_check_on text collate "C",
        add column last_known_alive_on text collate "C",
        add column death_on text collate "C",
        add column en_bloc text not null default 'not computed',
        add column r0 text not null default 'not computed',
        add column curative text not null default 'not computed',
        add column intraprocedural_perforation text not null default 'not computed',
        add column delayed_perforation text not null default 'not computed',
        add column bleeding28d text not null default 'not computed',
        add column bleeding6h30d text not null default 'not computed',
        add column bleeding30d_csdb text not null default 'not computed',
        add column stricture text not null default 'not computed',
        add column conversion_to_surgery text not null default 'not computed',
        add column death30d text not null default 'not computed',
        add column readmission30d text not null default 'not computed',
        add column adverse_event30d text not null default 'not computed',
        add column residual_or_recurrence text not null default 'not computed'`.execute(db);
    await sql`create index facts_resected_on on facts (resected_on)`.execute(db);
  },
};
