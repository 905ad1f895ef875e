import { describe } from 'vitest';
import {
  EXAMINATION_CASE_CHECKS,
  EXAMINATION_CHECKS,
  parseExamination,
} from '../../../src/contract/index.js';
import { testAgreement } from '../schema-agreement.js';

describe('the published JSON Schema of an examination', () => {
  testAgreement({
    message: 'examination',
    file: 'examination-1.schema.json',
    examples: 'examples/examinations',
    parse: parseExamination,
    checks: EXAMINATION_CHECKS,
    caseChecks: EXAMINATION_CASE_CHECKS,
  });
});
