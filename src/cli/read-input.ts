import { UsageError, type World } from './world.js';

/** A file that was read, or why it was not. */
export type Input =
  | { readonly ok: true; readonly name: string; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly name: string; readonly reason: string };

const STDIN = '-';

/** @returns the files in turn; `-` is standard input */
export async function* readInputs(files: readonly string[], world: World): AsyncGenerator<Input> {
  if (files.filter((file) => file === STDIN).length > 1) {
    throw new UsageError('Standard input can be read once only.');
  }
  for (const file of files) yield await readInput(file, world);
}

export async function readInput(file: string, world: World): Promise<Input> {
  const name = file === STDIN ? 'standard input' : file;
  try {
    const bytes = await (file === STDIN ? world.readStdin() : world.readFile(file));
    return { ok: true, name, bytes };
  } catch (error) {
    return { ok: false, name, reason: reasonOf(error) };
  }
}

/** Source: common practice, no source (what the codes of the system mean). */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'it may not be read',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is no folder',
};

function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? 'it cannot be read';
}
