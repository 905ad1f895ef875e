import { z } from 'zod';
import type { Checked } from '../kernel/index.js';
import { readDocument } from './read-document.js';
import { oneOf, uri, wholeIn } from './scalars.js';

/** What an endoscopy unit decides for itself, kept in one versioned file. */
export const unitSettingsSchema = z.strictObject({
  schema: z.literal('unit-settings/1'),
  version: wholeIn({ from: 1, to: 1_000_000 }).describe(
    'rises with every change; kept with each record version',
  ),
  identifierBase: uri
    .refine((text) => !text.endsWith('/'), 'This URI ends in a slash.')
    .meta({ title: 'an absolute URI without a slash at its end' })
    .describe('identifier systems of the records begin with it'),
  licences: z.strictObject({
    snomedCt: z.boolean().describe('codes beyond the freely usable sets may be sent'),
  }),
  endoscopyReport: oneOf(['wait', 'sign-at-once']).describe(
    'whether the endoscopy report waits for pathology before it is final',
  ),
  missingPatient: oneOf(['require', 'logical']).describe(
    'whether a case waits for its Patient resource or is sent with the identifier alone',
  ),
});

export interface UnitSettings {
  readonly schema: 'unit-settings/1';
  readonly version: number;
  readonly identifierBase: string;
  readonly licences: { readonly snomedCt: boolean };
  readonly endoscopyReport: 'wait' | 'sign-at-once';
  readonly missingPatient: 'require' | 'logical';
}

/** In force without a settings file; its identifier base is an example and not for production. */
export const DEFAULT_UNIT_SETTINGS: UnitSettings = {
  schema: 'unit-settings/1',
  version: 1,
  identifierBase: 'https://dissection-records.example/unit',
  licences: { snomedCt: false },
  endoscopyReport: 'wait',
  missingPatient: 'require',
};

/** @returns the settings, or every problem of the file at once */
export function parseUnitSettings(bytes: Uint8Array): Checked<UnitSettings> {
  return readDocument(unitSettingsSchema, bytes);
}
