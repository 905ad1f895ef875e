import type { ChangePoint, Place } from './follow-up-ports.js';

/** Where a page of a list ended, and from where on changes are told since the list was begun. */
export interface PagePlace {
  readonly place: Place;
  readonly point: ChangePoint;
}

const POINT = /^c\|([0-9a-f-]{36})\|(\d{1,20})\|([0-9a-f-]{36}|)$/;
const PLACE = /^p\|(\d{4}-\d\d-\d\d)\|([0-9a-f-]{36})\|(c\|.*)$/;

const pointText = ({ mark, transaction, id }: ChangePoint): string =>
  `c|${mark}|${transaction}|${id}`;

/** A point in the order of changes as opaque text for an address. */
export const writePoint = (point: ChangePoint): string => toText(pointText(point));

/** @returns undefined for text that is no such point */
export function readPoint(text: string): ChangePoint | undefined {
  return pointIn(fromText(text));
}

/** The end of a page as opaque text for an address. */
export const writePlace = ({ place: { on, id }, point }: PagePlace): string =>
  toText(`p|${on}|${id}|${pointText(point)}`);

/** @returns undefined for text that is no such end */
export function readPlace(text: string): PagePlace | undefined {
  const [, on, id, rest = ''] = PLACE.exec(fromText(text)) ?? [];
  const point = pointIn(rest);
  if (on === undefined || id === undefined || point === undefined) return undefined;
  return { place: { on, id }, point };
}

function pointIn(text: string): ChangePoint | undefined {
  const [, mark, transaction, id] = POINT.exec(text) ?? [];
  if (mark === undefined || transaction === undefined || id === undefined) return undefined;
  return { mark, transaction, id };
}

/** Source: RFC 4648 section 5, without padding. */
const toText = (plain: string): string =>
  btoa(plain).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');

function fromText(text: string): string {
  try {
    return atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  } catch {
    return '';
  }
}
