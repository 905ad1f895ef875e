import { type Kysely, type Migration, sql } from 'kysely';

/**
 * What comes after a case: facts of its pathology and verdict, messages that wait for their case,
 * and what each state changed. Rows of before get their facts anew with their next message; until
 * then their verdict reads "not computed" and their withdrawal "no".
 */
export const afterTheCase: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      alter table facts
        add column pathology_status text,
        add column pathology_reported_at text,
        add column horizontal_margin text,
        add column vertical_margin text,
        add column histology text,
        add column invasion_depth text,
        add column curability_rule text not null default 'not computed',
        add column curability_class text,
        add column curability_group text,
        add column withdrawn boolean not null default false`.execute(db);
    await sql`alter table outbox drop constraint outbox_status_check`.execute(db);
    await sql`
      alter table outbox
        add constraint outbox_status_check check (status in
          ('queued', 'sending', 'delivered', 'waiting-patient', 'waiting-case', 'dead-letter')),
        drop constraint outbox_waits_or_is_done,
        add constraint outbox_waits_or_is_done check
          ((due_at is null) = (status in ('delivered', 'dead-letter', 'waiting-case')))`.execute(
      db,
    );
    await sql`alter table outbox add column source text`.execute(db);
    await sql`
      update outbox set source = facts.source from facts where facts.case_id = outbox.case_id`.execute(
      db,
    );
    await sql`alter table outbox alter column source set not null`.execute(db);
  },
};
