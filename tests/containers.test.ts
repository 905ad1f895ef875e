import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { VARIABLES } from '../src/config/index.js';

interface ComposeService {
  readonly image?: string;
  readonly build?: string;
  readonly environment?: Readonly<Record<string, string>>;
  readonly healthcheck?: object;
  readonly ports?: readonly string[];
  readonly secrets?: readonly string[];
  readonly volumes?: readonly string[];
}

interface Compose {
  readonly services: Readonly<Record<string, ComposeService>>;
  readonly volumes: Readonly<Record<string, unknown>>;
  readonly secrets: Readonly<Record<string, unknown>>;
}

/** What is wrong with a compose file, as far as its text shows. */
function faultsOf({ services, volumes, secrets }: Compose): readonly string[] {
  return Object.entries(services).flatMap(([name, service]) => [
    ...(service.image === undefined && service.build === undefined ? [`${name} has no image`] : []),
    ...(service.image !== undefined && !/:[^:]*\d/.test(service.image) ? [`${name} floats`] : []),
    ...(service.ports ?? [])
      .filter((port) => !port.startsWith('127.0.0.1:'))
      .map((port) => `${name} is open to the network at ${port}`),
    ...(service.secrets ?? []).filter((key) => !(key in secrets)).map((key) => `no secret ${key}`),
    ...(service.volumes ?? [])
      .map((volume) => volume.split(':')[0] ?? '')
      .filter((volume) => !(volume in volumes))
      .map((volume) => `no volume ${volume}`),
    ...(name === 'service'
      ? Object.keys(service.environment ?? {})
          .filter((key) => !Object.hasOwn(VARIABLES.shape, key))
          .map((key) => `${key} is no setting`)
      : []),
  ]);
}

const compose: Compose = parse(readFileSync('docker-compose.yml', 'utf8'));
const dockerfile = readFileSync('Dockerfile', 'utf8');

describe('the container files, as far as their text shows', () => {
  it('name settings that exist, fixed images, known volumes, loopback ports', () => {
    expect(faultsOf(compose)).toEqual([]);
  });

  it('would be told of each fault', () => {
    const service = { build: '.', ports: ['3000:3000'], secrets: ['x'], volumes: ['y:/y'] };
    const broken = {
      services: {
        service: { ...service, environment: { DISSECTION_NOTHING: '1' } },
        fhir: { image: 'a/b:latest' },
        empty: {},
      },
      volumes: {},
      secrets: {},
    };
    expect(faultsOf(broken)).toEqual([
      'service is open to the network at 3000:3000',
      'no secret x',
      'no volume y',
      'DISSECTION_NOTHING is no setting',
      'fhir floats',
      'empty has no image',
    ]);
  });

  it('check the health of the service and its database', () => {
    expect(compose.services['service']?.healthcheck).toBeDefined();
    expect(compose.services['postgres']?.healthcheck).toBeDefined();
    expect(dockerfile).toMatch(/^HEALTHCHECK /m);
  });

  it('run the service as an ordinary user', () => {
    expect([...dockerfile.matchAll(/^USER (\w+)$/gm)].at(-1)?.[1]).toBe('node');
  });
});
