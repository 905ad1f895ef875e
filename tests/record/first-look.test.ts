import { describe, expect, it } from 'vitest';
import { bookingSchema, DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { sha256 } from '../../src/kernel/index.js';
import { parseRecordMessage } from '../../src/pipeline/parse-record-message.js';
import { foldRecord, type RecordMessage } from '../../src/record/index.js';
import { bookingBytes, morningOf } from '../support/bookings.js';
import { altered, example, type Sent } from '../support/example-messages.js';

/*
 * PC-46: after a wound of more than three quarters of the oesophagus somebody looks within six
 * weeks. Source: common practice, no source. The wound of the example
 * is near-circular.
 */

const esd = example('case', 'complete');

function message({ kind, bytes }: Sent): RecordMessage {
  const parsed = parseRecordMessage(kind, bytes);
  if (!parsed.ok) throw new Error('an example is sound');
  return parsed.value;
}

function bookedOn(on: string): RecordMessage {
  const bytes = bookingBytes({ ...morningOf(on), sentAt: esd.document.sentAt });
  const fields = bookingSchema.parse(JSON.parse(new TextDecoder().decode(bytes)));
  const named = { source: 'scheduler', item: 'stricture-check.1' };
  return { kind: 'booking', fields: { ...fields, ...named }, decimals: {}, sha256: sha256(bytes) };
}

const remarksOn = (messages: readonly RecordMessage[], checksOff: readonly 'PC-46'[] = []) =>
  foldRecord('c', messages, { ...DEFAULT_UNIT_SETTINGS, checksOff: [...checksOff] })
    ?.assessment.review.filter(({ check }) => check === 'PC-46')
    .map(({ says }) => says);

/** The day of the dissection and so many days. */
const daysOn = (days: number): string =>
  new Date(Date.parse(esd.document.times.scopeInAt.slice(0, 10)) + days * 86_400_000)
    .toISOString()
    .slice(0, 10);

describe('the review of the first look that is planned', () => {
  const planned = foldRecord('c', [message(esd)], DEFAULT_UNIT_SETTINGS)?.plan.items;

  it('is silent on a look by the rules, and on one that is booked in the sixth week', () => {
    expect(planned?.map(({ key }) => key)).toContain('stricture-check.1');
    expect(remarksOn([message(esd)])).toEqual([]);
    expect(remarksOn([message(esd), bookedOn(daysOn(42))])).toEqual([]);
  });

  it('speaks of one that is booked after six weeks, unless it is switched off', () => {
    const late = [message(esd), bookedOn(daysOn(43))];
    expect(remarksOn(late)).toHaveLength(1);
    expect(remarksOn(late)?.[0]).toContain('after 6.14 weeks'); // 43 / 7
    expect(remarksOn(late, ['PC-46'])).toEqual([]);
  });

  it('is silent after any look, and when nobody is to look any more', () => {
    const { document } = example('examination', 'oesophagus-scar');
    const late = [message(esd), bookedOn(daysOn(43))];
    expect(document.case).toEqual(esd.document.case);
    expect(remarksOn([...late, message(example('examination', 'oesophagus-scar'))])).toEqual([]);
    const { source, case: own, patient } = esd.document;
    const { system, value } = patient;
    const withdrawal = altered(example('withdrawal', 'minimal-wrong-patient'), {
      ...{ source, case: own, patient: { system, value }, sentAt: `${daysOn(9)}T10:00:00Z` },
    });
    expect(remarksOn([...late, message(withdrawal)])).toEqual([]);
  });

  it('speaks when the patient declines all that is planned', () => {
    const { source, case: own, patient } = esd.document;
    const { system, value } = patient;
    const declined = altered(example('event', 'colon-follow-up-declined'), {
      ...{ source, case: own, patient: { system, value }, occurredOn: daysOn(10) },
      ...{ sentAt: `${daysOn(11)}T10:00:00Z`, decline: { reason: 'patient-wish' } },
    });
    expect(remarksOn([message(esd), message(declined)])?.[0]).toContain('no early look');
  });
});
