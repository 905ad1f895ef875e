import { describe } from 'vitest';
import { EVENT_CASE_CHECKS, EVENT_CHECKS, parseEvent } from '../../../src/contract/index.js';
import { testAgreement } from '../schema-agreement.js';

describe('the published JSON Schema of an event', () => {
  testAgreement({
    message: 'event',
    file: 'event-1.schema.json',
    examples: 'examples/events',
    parse: parseEvent,
    checks: EVENT_CHECKS,
    caseChecks: EVENT_CASE_CHECKS,
  });
});
