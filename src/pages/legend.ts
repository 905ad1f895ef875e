import { group, LETTERS, mark, path, text } from './drawing.js';
import { approximateWidth, shorten } from './lettering.js';
import { type Markup, together } from './markup.js';
import type { Look } from './palette.table.js';

/** What a mark, a line or both stand for. */
export interface Legend {
  readonly look: Look;
  readonly shows: 'mark' | 'line' | 'both';
  readonly words: string;
}

interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

const SAMPLE = 40;
const ROW = 20;

/** The entries in rows, from left to right. */
export function legendOf(entries: readonly Legend[], room: Room) {
  let x = room.left;
  let y = room.top + 8;
  const drawn: Markup[] = [];
  for (const entry of entries) {
    const words = shorten(entry.words, room.right - room.left - SAMPLE, LETTERS);
    const width = SAMPLE + approximateWidth(words, LETTERS) + 18;
    if (x > room.left && x + width > room.right + 18) {
      x = room.left;
      y += ROW;
    }
    drawn.push(together([...sample(entry, x, y), text({ x: x + SAMPLE, y: y + 4.5 }, words)]));
    x += width;
  }
  return {
    bottom: entries.length === 0 ? room.top : y + 12,
    drawn: group('legend', drawn),
  };
}

function sample({ look, shows }: Legend, x: number, y: number): readonly Markup[] {
  const line = path(
    [
      { x, y },
      { x: x + 32, y },
    ],
    { colour: look.colour, dashes: look.dashes, width: 2 },
  );
  const point = mark({ x: x + 16, y }, look);
  if (shows === 'line') return [line];
  return shows === 'mark' ? [point] : [line, point];
}
