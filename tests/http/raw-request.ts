import { connect, type Socket } from 'node:net';

export interface RawAnswer {
  /** Everything that came until the connection closed. */
  readonly text: string;
  /** Of the first status line; 0 when none came. */
  readonly status: number;
  readonly elapsedMs: number;
}

/**
 * Speaks to the server byte by byte, and waits until the server has closed the connection.
 *
 * @param write sends what it likes; stops by itself when the socket is destroyed
 */
export function rawRequest(port: number, write: (socket: Socket) => void): Promise<RawAnswer> {
  const startedMs = performance.now();
  return new Promise((resolve) => {
    let text = '';
    const socket = connect(port, '127.0.0.1', () => write(socket));
    socket.on('data', (chunk) => {
      text += chunk.toString('latin1');
    });
    socket.on('error', () => undefined);
    socket.on('close', () => {
      const status = Number(/^HTTP\/1\.1 (\d{3})/.exec(text)?.[1] ?? 0);
      resolve({ text, status, elapsedMs: performance.now() - startedMs });
    });
  });
}

/** The head of a request with these headers. */
export const head = (line: string, headers: Readonly<Record<string, string>>): string =>
  [
    `${line} HTTP/1.1`,
    'Host: localhost',
    ...Object.entries(headers).map(([name, value]) => `${name}: ${value}`),
    '',
    '',
  ].join('\r\n');
