import { type Kysely, type Migration, sql } from 'kysely';

/**
 * What time alone changes: when a case is to be told how late it is, which specimens wait for their
 * report, and when this or that was last done in a day. Lines of revisions belong to their source.
 * Cases of before are looked at once, and tell then themselves when they are to be looked at next.
 */
export const passingTime: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`alter table outbox add column deadline_at timestamptz`.execute(db);
    await sql`
      update outbox set deadline_at = clock_timestamp() where status <> 'waiting-case'`.execute(db);
    await sql`
      create index outbox_deadline on outbox (case_id) include (deadline_at)
        where deadline_at is not null`.execute(db);
    await sql`
      alter table facts add column awaits_pathology boolean not null default false`.execute(db);
    await sql`
      update facts set awaits_pathology =
        not withdrawn
        and resection_outcome not in ('abandoned', 'not-started')
        and specimen_retrieved is distinct from false
        and pathology_status is distinct from 'final'`.execute(db);
    await sql`
      create index facts_awaits_pathology on facts (case_id) where awaits_pathology`.execute(db);
    await sql`
      create table daily_turns (
        name text primary key,
        taken_at timestamptz not null
      )`.execute(db);
    await sql`
      alter table journal
        drop constraint journal_one_message_a_revision,
        add constraint journal_one_message_a_revision
          unique (case_id, kind, source, natural_key, revision)`.execute(db);
  },
};
