import { describe } from 'vitest';
import {
  parseWithdrawal,
  WITHDRAWAL_CASE_CHECKS,
  WITHDRAWAL_CHECKS,
} from '../../../src/contract/index.js';
import { testAgreement } from '../schema-agreement.js';

describe('the published JSON Schema of a withdrawal', () => {
  testAgreement({
    message: 'withdrawal',
    file: 'withdrawal-1.schema.json',
    examples: 'examples/withdrawals',
    parse: parseWithdrawal,
    checks: WITHDRAWAL_CHECKS,
    caseChecks: WITHDRAWAL_CASE_CHECKS,
  });
});
