import { describe, expect, it } from 'vitest';
import { STATUS_TABLE, statusRow } from '../../src/delivery/status.table.js';

describe('status table', () => {
  it('has one row for every status from 100 to 599, in order, without gap or overlap', () => {
    expect(STATUS_TABLE[0]?.from).toBe(100);
    expect(STATUS_TABLE.at(-1)?.to).toBe(599);
    for (const [index, row] of STATUS_TABLE.entries()) {
      expect(row.to).toBeGreaterThanOrEqual(row.from);
      expect(row.from).toBe((STATUS_TABLE[index - 1]?.to ?? 99) + 1);
    }
  });

  it('reads a status outside of the table as a failure of the server', () => {
    expect(statusRow(0).means).toBe('bounded');
    expect(statusRow(999).means).toBe('bounded');
  });

  it('gives an unassigned status the meaning of its class (RFC 9110, 15)', () => {
    for (const unassigned of [418, 427, 430, 440, 499]) {
      expect(statusRow(unassigned).means).toBe(statusRow(400).means);
    }
    for (const unassigned of [509, 512, 599]) {
      expect(statusRow(unassigned).means).toBe(statusRow(500).means);
    }
  });
});
