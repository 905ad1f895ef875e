import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { INDICATOR_IDS, INDICATOR_WORDS } from '../../src/outcomes/index.js';
import { parseRecordMessage } from '../../src/pipeline/parse-record-message.js';
import { foldRecord, presentOf, toFacts } from '../../src/record/index.js';
import { aboutCase, CASE_NUMBERS } from '../support/example-messages.js';

/*
 * Oracle: the indicators and the assessment of a record are made apart from each other and say the
 * same where both speak: R0 by Park CH et al. Clin Endosc 2020;53:142-166, Table 1; nothing is
 * cured without R0, see the groups of the rule sets.
 */

const RECORDS = CASE_NUMBERS.map((number) => {
  const messages = aboutCase(number).map(({ kind, bytes }) => {
    const parsed = parseRecordMessage(kind, bytes);
    if (!parsed.ok) throw new Error('the examples are sound');
    return parsed.value;
  });
  const version = foldRecord(number, messages, DEFAULT_UNIT_SETTINGS);
  if (version === undefined) throw new Error('the examples hold their cases');
  const now = presentOf(version);
  return { number, now, facts: toFacts({ version, now }, () => 'p') };
});

describe.each(RECORDS)('the facts of $number', ({ now, facts }) => {
  it('hold one of the words for each indicator', () => {
    for (const id of INDICATOR_IDS) expect(INDICATOR_WORDS).toContain(facts[id]);
  });

  it('say R0 where the assessment of a final report does', () => {
    const status = now.assessment.specimen?.resectionStatus;
    const isFinal = now.reports[0]?.fields.report.status === 'final';
    const isR0 = isFinal && status?.kind === 'determined' && status.value === 'R0';
    expect(facts.r0 === 'yes').toBe(isR0);
  });

  it('say curative only where the rule set does, and R0 with it', () => {
    if (facts.curative !== 'yes') return;
    expect(facts).toMatchObject({ curabilityGroup: 'curative', r0: 'yes', enBloc: 'yes' });
  });

  it('say a bleeding by a definition only beside an adverse event', () => {
    const bled = [facts.bleeding28d, facts.bleeding6h30d, facts.bleeding30dCsdb].includes('yes');
    if (bled) expect(facts.adverseEvent30d).toBe('yes');
  });
});

describe('the examples', () => {
  it('show yes, no, missing and not asked, and days that run', () => {
    const said = new Set(RECORDS.flatMap(({ facts }) => INDICATOR_IDS.map((id) => facts[id])));
    expect([...said].sort()).toEqual([...INDICATOR_WORDS].sort());
    expect(RECORDS.some(({ facts }) => facts.curative === 'yes')).toBe(true);
    expect(RECORDS.some(({ facts }) => facts.bleeding28d === 'yes')).toBe(true);
    expect(RECORDS.some(({ facts }) => facts.residualOrRecurrence === 'yes')).toBe(true);
  });
});
