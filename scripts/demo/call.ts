import type { Running } from '../../src/serve.js';

/** Calls over HTTP, each with the key of a role. */
export interface Calls {
  readonly base: string;
  /** `GET`, or `POST` where there is a body. */
  call(role: DemoRole, path: string, body?: Uint8Array<ArrayBuffer> | string): Promise<Response>;
  /** The same, answered with JSON. @throws Error when it is refused */
  read<T>(role: DemoRole, path: string, body?: string): Promise<T>;
}

export type DemoRole = 'note-system' | 'records-team' | 'scheduler';

export function createCalls({ port, oneTimeKeys }: Running): Calls {
  const base = `http://127.0.0.1:${port}`;
  const keyOf = (role: DemoRole): string =>
    oneTimeKeys.find(({ stored }) => stored.role === role)?.key ?? '';
  const call: Calls['call'] = (role, path, body) =>
    fetch(base + path, {
      ...(body === undefined ? {} : { method: 'POST', body }),
      headers: { authorization: `Bearer ${keyOf(role)}`, 'content-type': 'application/json' },
    });
  const read = async <T>(role: DemoRole, path: string, body?: string): Promise<T> => {
    const response = await call(role, path, body);
    if (!response.ok) throw new Error(`${path} answers ${response.status}`);
    return response.json() as Promise<T>;
  };
  return { base, call, read };
}
