import { describe, expect, it } from 'vitest';
import { issueLines } from '../../src/delivery/issue-lines.js';

/* Source: FHIR R4 (4.0.1), OperationOutcome; the bounds are project definition. */
const outcome = (issue: unknown) => ({ resourceType: 'OperationOutcome', issue });

describe('what an OperationOutcome says', () => {
  it('is told by its details, else by its diagnostics, with severity, code and place', () => {
    const details = { text: 'told' };
    const lines = issueLines(
      outcome([
        {
          severity: 'fatal',
          code: 'required',
          details,
          diagnostics: 'at length',
          expression: ['A.b'],
        },
        { severity: 'error', code: 'invalid', diagnostics: 'at length' },
        { severity: 'warning', code: 'informational' },
      ]),
    );
    expect(lines).toEqual([
      'fatal required at A.b: told',
      'error invalid: at length',
      'warning informational',
    ]);
  });

  it('is bounded, and holds nothing that moves a cursor or turns a line around', () => {
    const diagnostics = `a\u001b[2J\u0007\r\n\u202eb\u0085${'x'.repeat(9_000)}`;
    const issues = Array.from({ length: 30 }, () => ({
      severity: 'error',
      code: 'value',
      diagnostics,
    }));
    const lines = issueLines(outcome(issues));
    expect(lines).toHaveLength(20);
    for (const line of lines) {
      expect(line.length).toBeLessThanOrEqual(400);
      expect(line).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    }
  });

  it.each([
    undefined,
    null,
    'text',
    [],
    { resourceType: 'Patient', issue: [{ code: 'invalid' }] },
    outcome('none'),
    outcome([null, 7]),
    { resourceType: 'Bundle', entry: [{}, { response: 7 }, null] },
  ])('is nothing where there is none: %j', (body) => {
    expect(issueLines(body)).toEqual([]);
  });
});
