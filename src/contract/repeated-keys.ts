import { escapePointer } from './pointer.js';

/** One object or list that is open while the text is read. */
interface Level {
  readonly pointer: string;
  /** The keys that were seen; a list has none. */
  readonly keys: Set<string> | undefined;
  /** Key or index of what is being read in it. */
  at: string | number;
}

/**
 * Finds the keys that an object holds twice: what the second one means is left open.
 *
 * Source: RFC 8259 section 4 (behaviour with names that are not unique is unpredictable).
 *
 * @param text valid JSON
 * @returns JSON Pointers, each once
 */
export function repeatedKeys(text: string): readonly string[] {
  const found = new Set<string>();
  const open: Level[] = [];
  for (let i = 0; i < text.length; i += 1) {
    const inner = open.at(-1);
    switch (text[i]) {
      case '{':
        open.push({ pointer: placeIn(inner), keys: new Set(), at: '' });
        break;
      case '[':
        open.push({ pointer: placeIn(inner), keys: undefined, at: 0 });
        break;
      case '}':
      case ']':
        open.pop();
        break;
      case ',':
        if (inner !== undefined && typeof inner.at === 'number') inner.at += 1;
        break;
      case '"': {
        const end = endOfString(text, i);
        if (inner !== undefined) noteKey(inner, text, i, end, found);
        i = end;
        break;
      }
    }
  }
  return [...found];
}

/** A string that a colon follows is a key. */
function noteKey(level: Level, text: string, from: number, end: number, found: Set<string>): void {
  if (level.keys === undefined || !isFollowedByColon(text, end)) return;
  const key = String(JSON.parse(text.slice(from, end + 1)));
  level.at = key;
  if (level.keys.has(key)) found.add(placeIn(level));
  level.keys.add(key);
}

function isFollowedByColon(text: string, end: number): boolean {
  let i = end + 1;
  while (i < text.length && ' \t\n\r'.includes(text.charAt(i))) i += 1;
  return text[i] === ':';
}

function endOfString(text: string, from: number): number {
  let i = from + 1;
  while (i < text.length && text[i] !== '"') i += text[i] === '\\' ? 2 : 1;
  return i;
}

const placeIn = (level: Level | undefined): string =>
  level === undefined ? '' : `${level.pointer}/${escapePointer(String(level.at))}`;
