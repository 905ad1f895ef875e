import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROLES } from '../../src/contract/index.js';
import type { FollowUp } from '../../src/pipeline/index.js';
import { SCHEDULED_REASONS } from '../../src/pipeline/scheduled.table.js';
import { showTo } from '../../src/pipeline/show-follow-up.js';

/* Who is told what of a follow-up. Source: project definition (roles, least privilege). */

const SECRET = 'a-secret-of-the-tests-that-is-long-enough';
/** Stands wherever a plan may speak of tissue, verdict, rule or reason. */
const CANARY = 'adenocarcinoma-canary';

const citation = fc.constant({ work: CANARY, place: CANARY, basis: 'published' as const });
const window = fc.constant({ earliest: '2026-05-01', target: '2026-06-01', latest: '2026-07-01' });
const reasons = fc.array(
  fc.oneof(
    fc
      .constantFrom('recurrence', 'high-risk', 'class-changed', 'treatment-weighed')
      .map((code) => ({
        code: code as 'recurrence',
        says: CANARY,
      })),
    fc.constantFrom(...SCHEDULED_REASONS).map((code) => ({ code, says: 'For people.' })),
  ),
);
const item = fc.record(
  {
    kind: fc.constant('endoscopy' as const),
    route: fc.constantFrom('upper' as const, 'lower' as const),
    state: fc.constantFrom('open' as const, 'done' as const, 'superseded' as const),
    urgency: fc.constantFrom('routine' as const, 'urgent' as const),
    key: fc.constant(`${CANARY}.1`),
    row: fc.constant(CANARY),
    rule: fc.constant(CANARY),
    ruleSet: fc.constant(CANARY),
    look: fc.constant(CANARY),
    follows: fc.constant(CANARY),
    says: fc.array(fc.constant(CANARY)),
    inputs: fc.dictionary(fc.constantFrom('class', 'histology'), fc.constant(CANARY)),
    cites: fc.array(citation),
    overlaps: fc.array(fc.constant({ row: CANARY, rule: CANARY })),
    basis: fc.constant('published' as const),
    version: fc.constant(1),
    sequence: fc.constant(1),
    first: fc.boolean(),
    anchorOn: fc.constant('2026-01-01'),
    countsFrom: fc.constant('2026-01-01'),
    reasons,
    due: window,
    proposed: window,
    replacedBy: fc.constant(`${CANARY}.2`),
    about: fc.constant(`${CANARY}.3`),
    doneBy: fc.constant({
      kind: 'report' as const,
      id: { system: 'urn:oid:2.999.1', value: CANARY },
      on: '2026-06-02',
      timing: 'in-window' as const,
    }),
  },
  {
    requiredKeys: [
      ...(['kind', 'route', 'state', 'urgency', 'key', 'row', 'rule', 'ruleSet', 'look'] as const),
      ...(['follows', 'says', 'inputs', 'cites', 'overlaps', 'basis', 'version'] as const),
      ...(['sequence', 'first', 'anchorOn', 'countsFrom', 'reasons'] as const),
    ],
  },
);

const followUpOf = (planned: FollowUp['item']): FollowUp => ({
  id: 'b7f1d1c6-2c7b-8a54-9f01-4a1d6f4b2c11',
  caseId: '0b54d9a2-6f0e-8c11-9b7d-2f3f5a6b7c8d',
  case: { system: 'urn:oid:2.999.1.2', value: 'EX-C-1' },
  patient: { system: 'urn:oid:2.999.1.1', value: 'EX-P-1' },
  state: 2,
  changedAt: '2026-06-02T10:00:00.000Z',
  item: planned,
  overdue: false,
  visitWith: [],
});

describe('a follow-up as it is shown', () => {
  it('tells nobody but the records team what was found or why, whatever the plan says', () => {
    const others = [undefined, ...ROLES.filter((role) => role !== 'records-team')];
    fc.assert(
      fc.property(item, fc.constantFrom(...others), (planned, role) => {
        const shown = showTo(role, followUpOf(planned), SECRET);
        expect(JSON.stringify(shown)).not.toContain(CANARY);
        expect(shown).toMatchObject({
          case: { value: 'EX-C-1' },
          patient: { value: 'EX-P-1' },
          item: { kind: 'endoscopy', route: planned.route, state: planned.state },
        });
      }),
    );
  });

  it('tells the records team all of it, where the canary would be seen', () => {
    fc.assert(
      fc.property(item, (planned) => {
        const shown = showTo('records-team', followUpOf(planned), SECRET);
        expect(shown).toEqual(followUpOf(planned));
        expect(JSON.stringify(shown)).toContain(CANARY);
      }),
    );
  });

  it('names what stands instead of it by an id of the list', () => {
    const [planned] = fc.sample(item, { numRuns: 1, seed: 7 });
    if (planned === undefined) throw new Error('no sample');
    const shown = showTo('scheduler', followUpOf({ ...planned, replacedBy: 'STO-1.1' }), SECRET);
    expect(Reflect.get(shown.item, 'replacedBy')).toMatch(/^[0-9a-f-]{36}$/);
  });
});
