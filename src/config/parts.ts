import { readFileSync } from 'node:fs';
import { DEFAULT_UNIT_SETTINGS, parseUnitSettings, type UnitSettings } from '../contract/index.js';
import { checkBaseUrl, type TargetPermissions } from '../delivery/index.js';
import { readKeyFile } from '../http/index.js';
import type { Problem } from '../kernel/index.js';
import type { Variables } from './variables.table.js';

/*
 * Parts of the configuration that need more than a look at their variable. Each adds what is wrong
 * to the problems and goes on, so that all of them are named at once.
 */

export function baseUrlOf(
  url: string | undefined,
  allowed: TargetPermissions,
  problems: Problem[],
): string | undefined {
  if (url === undefined) return undefined;
  const checked = checkBaseUrl(url, allowed);
  if (checked.ok) return checked.value;
  problems.push(
    ...checked.problems.map((found) => ({ ...found, pointer: '/DISSECTION_FHIR_BASE_URL' })),
  );
  return url;
}

export function secretOf(
  read: Variables,
  name: 'DISSECTION_FHIR_TOKEN' | 'DISSECTION_SITE_SECRET',
  problems: Problem[],
): string | undefined {
  const value = read[name];
  const file = read[`${name}_FILE`];
  if (value !== undefined && file !== undefined) {
    const message = `${name} and ${name}_FILE are both set.`;
    problems.push({ rule: 'set-twice', pointer: `/${name}`, message, expected: 'one of the two' });
  }
  if (file === undefined) return value;
  return bytesOf(`${name}_FILE`, file, problems)?.toString('utf8').trim();
}

export function unitOf(file: string | undefined, problems: Problem[]): UnitSettings {
  const bytes =
    file === undefined ? undefined : bytesOf('DISSECTION_SETTINGS_FILE', file, problems);
  if (bytes === undefined) return DEFAULT_UNIT_SETTINGS;
  const settings = parseUnitSettings(bytes);
  if (settings.ok) return settings.value;
  problems.push(
    ...settings.problems.map((found) => ({
      ...found,
      pointer: '/DISSECTION_SETTINGS_FILE',
      message: `At ${found.pointer || 'the whole document'}: ${found.message}`,
    })),
  );
  return DEFAULT_UNIT_SETTINGS;
}

export async function countKeys(file: string, problems: Problem[]): Promise<number> {
  try {
    return (await readKeyFile(file)).length;
  } catch (error) {
    const message = error instanceof Error ? error.message : 'The key file cannot be used.';
    const expected = 'a key file as dissection-records keys add makes it, mode 0600';
    problems.push({ rule: 'bad-keys', pointer: '/DISSECTION_KEYS_FILE', message, expected });
    return 0;
  }
}

function bytesOf(name: string, file: string, problems: Problem[]): Buffer | undefined {
  try {
    return readFileSync(file);
  } catch {
    const message = `The file that ${name} names cannot be read.`;
    problems.push({ rule: 'no-file', pointer: `/${name}`, message, expected: 'a readable file' });
    return undefined;
  }
}
