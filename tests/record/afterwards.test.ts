import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS, type UnitSettings } from '../../src/contract/index.js';
import { parseRecordMessage } from '../../src/pipeline/parse-record-message.js';
import { foldRecord, viewRecord } from '../../src/record/index.js';

const read = (path: string) => JSON.parse(readFileSync(`examples/${path}.json`, 'utf8'));
const CASE = read('cases/stomach-differentiated');
/** A visit for pain, with a haemoglobin that fell by 2.5 g/dL; nobody tells of a bleeding. */
const VISIT = {
  ...read('events/stomach-emergency-visit'),
  haemoglobin: { beforeGPerDl: 14.1, lowestGPerDl: 11.6 },
};

function viewed(unit: Partial<UnitSettings>, ...documents: readonly object[]) {
  const settings = { ...DEFAULT_UNIT_SETTINGS, ...unit };
  const messages = [CASE, ...documents].map((document, i) => {
    const bytes = new TextEncoder().encode(JSON.stringify(document));
    const parsed = parseRecordMessage(i === 0 ? 'case' : 'event', bytes);
    if (!parsed.ok) throw new Error('the samples are sound');
    return parsed.value;
  });
  const version = foldRecord('c', messages, settings);
  if (version === undefined) throw new Error('the samples hold their case');
  return viewRecord(version, settings);
}

const checksIn = (view: ReturnType<typeof viewed>): readonly string[] =>
  view.now.assessment.review.map(({ check }) => check);

// Source: consistency check CC-10, common practice, no source.
describe('the review of a record also reads its events', () => {
  it('and speaks of a haemoglobin that fell without a bleeding', () => {
    expect(checksIn(viewed({}, VISIT))).toContain('CC-10');
    expect(checksIn(viewed({}))).not.toContain('CC-10');
  });

  it('but for the checks that the unit has switched off', () => {
    expect(checksIn(viewed({ checksOff: ['CC-10'] }, VISIT))).not.toContain('CC-10');
  });
});

describe('a view of a record', () => {
  it('knows what events mean, now and before each of them', () => {
    const { now, before } = viewed({}, VISIT);
    expect(now.afterwards.adverseEvent30d).toMatchObject({ kind: 'determined', value: 'yes' });
    expect(before.map(({ afterwards }) => afterwards.adverseEvent30d.kind)).toEqual([
      'indeterminate',
    ]);
  });
});
