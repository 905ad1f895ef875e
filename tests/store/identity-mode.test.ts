import { describe, expect, it } from 'vitest';
import { createKeptMode } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';

const test = await testDatabase();
const [one, other] = [createKeptMode(await test.open()), createKeptMode(await test.open())];

describe('how resources keep their identity at the FHIR server', () => {
  it('is not known before it is chosen, and then the same for every program', async () => {
    expect(await one.read()).toBeUndefined();
    await one.keep('conditional');
    expect(await other.read()).toBe('conditional');
    await other.keep('client-id');
    expect(await one.read()).toBe('client-id');
  });
});
