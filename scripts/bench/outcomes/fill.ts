import { invariant } from '../../../src/kernel/index.js';
import type { Database } from '../../../src/store/index.js';

/**
 * Fills the facts up to so many rows with those of the generated cases: under other ids, on other
 * days of the same years, with other sizes, times and speeds, so that as many values occur as
 * would. Nothing else is changed.
 */
export async function fillFacts({ pool }: Database, rows: number): Promise<void> {
  const { rows: found } = await pool.query<{ column_name: string }>(`
    select column_name from information_schema.columns
    where table_schema = 'public' and table_name = 'facts' and is_generated = 'NEVER'
    order by ordinal_position`);
  const columns = found.map(({ column_name: name }) => name);
  const { rows: counted } = await pool.query<{ made: number; all: number }>(`
    select count(*) filter (where case_id not like 'copy-%') as made, count(*) as all from facts`);
  const [{ made, all } = { made: 0, all: 0 }] = counted;
  invariant(made > 0, 'there are generated cases to copy');
  const chosen = columns.map((name) => {
    if (name === 'case_id') return "'copy-' || n || '-' || f.case_id";
    if (name === 'resected_on') return DAY;
    return VARIED[name] ?? `f.${name}`;
  });
  const [from, to] = [Math.ceil(all / made), Math.ceil(rows / made)];
  const client = await pool.connect();
  try {
    await client.query('set statement_timeout = 0');
    await client.query(
      "create temporary table made as select * from facts where case_id not like 'copy-%'",
    );
    for (let n = from; n < to; n += STEP) {
      const text = `
        insert into facts (${columns.join(', ')}) select ${chosen.join(', ')}
        from generate_series(${n}, ${Math.min(to, n + STEP) - 1}) as n
        cross join made as f`;
      await client.query({ text, ...PATIENT });
    }
    await client.query({ text: 'vacuum analyze facts', ...PATIENT });
  } finally {
    client.release(true);
  }
}

const STEP = 20;
/** Days beside the given one within its year; a day after a check would be none. */
const DAY = '(f.resected_on::date - n % 300)::text';
/** Spreads a number by three tenths to both sides, another way in each copy. */
const spread = (column: string, step: number, decimals: number): string =>
  `round((f.${column} * (0.7 + 0.6 * (n * ${step} % 1000) / 999))::numeric, ${decimals})`;
const VARIED: Readonly<Record<string, string>> = {
  speed_cm2_per_h: spread('speed_cm2_per_h', 379, 3),
  lesion_long_axis_mm: spread('lesion_long_axis_mm', 617, 0),
  procedure_min: spread('procedure_min', 811, 3),
  pathology_days: spread('pathology_days', 137, 0),
};
const PATIENT = { query_timeout: 600_000 };

/** The documents of the generated cases once more under other ids, up to so many. */
export async function fillDocuments({ pool }: Database, documents: number): Promise<void> {
  const { rows } = await pool.query<{ made: number }>('select count(*) as made from states');
  const times = Math.ceil(documents / (rows[0]?.made ?? 1));
  const client = await pool.connect();
  try {
    await client.query('set statement_timeout = 0');
    const text = `
      insert into states (case_id, state, version)
      select 'copy-' || n || '-' || s.case_id, s.state, s.version
      from generate_series(1, ${times - 1}) as n cross join states as s`;
    await client.query({ text, ...PATIENT });
    await client.query({ text: 'vacuum analyze states', ...PATIENT });
  } finally {
    client.release(true);
  }
}
