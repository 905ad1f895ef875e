import { cite } from '../../references/index.js';
import { type Band, type FieldsOf, type ItemsOf, scoreRule } from '../../rules/index.js';

const SCALE = [cite('bbps2009', 'scale of one segment', 'published')];
const ADEQUATE = [cite('bbps2009', 'adequate: every segment 2 or more', 'published')];

/** Points of each segment after washing, 0 to 3. */
type Question = { readonly right: number; readonly transverse: number; readonly left: number };

const segment = (says: string) => ({ type: 'number', unit: 'points', whole: true, says }) as const;

const FIELDS = {
  right: { ...segment('right colon, after washing'), from: 0, to: 3 },
  transverse: { ...segment('transverse colon with both flexures, after washing'), from: 0, to: 3 },
  left: { ...segment('left colon and rectum, after washing'), from: 0, to: 3 },
} as const satisfies FieldsOf<Question>;

const ITEMS: ItemsOf<Question> = [
  {
    item: 'right-part-seen',
    when: { right: [{ atLeast: 1 }, { atMost: 1 }] },
    points: 1,
    says: 'right colon: part of the mucosa seen',
    cites: SCALE,
  },
  {
    item: 'right-minor-residue',
    when: { right: [{ atLeast: 2 }, { atMost: 2 }] },
    points: 2,
    says: 'right colon: minor residue, mucosa seen well',
    cites: SCALE,
  },
  {
    item: 'right-all-seen',
    when: { right: { atLeast: 3 } },
    points: 3,
    says: 'right colon: all mucosa seen well',
    cites: SCALE,
  },
  {
    item: 'transverse-part-seen',
    when: { transverse: [{ atLeast: 1 }, { atMost: 1 }] },
    points: 1,
    says: 'transverse colon: part of the mucosa seen',
    cites: SCALE,
  },
  {
    item: 'transverse-minor-residue',
    when: { transverse: [{ atLeast: 2 }, { atMost: 2 }] },
    points: 2,
    says: 'transverse colon: minor residue, mucosa seen well',
    cites: SCALE,
  },
  {
    item: 'transverse-all-seen',
    when: { transverse: { atLeast: 3 } },
    points: 3,
    says: 'transverse colon: all mucosa seen well',
    cites: SCALE,
  },
  {
    item: 'left-part-seen',
    when: { left: [{ atLeast: 1 }, { atMost: 1 }] },
    points: 1,
    says: 'left colon: part of the mucosa seen',
    cites: SCALE,
  },
  {
    item: 'left-minor-residue',
    when: { left: [{ atLeast: 2 }, { atMost: 2 }] },
    points: 2,
    says: 'left colon: minor residue, mucosa seen well',
    cites: SCALE,
  },
  {
    item: 'left-all-seen',
    when: { left: { atLeast: 3 } },
    points: 3,
    says: 'left colon: all mucosa seen well',
    cites: SCALE,
  },
];

const BANDS: readonly Band[] = [
  {
    group: 'adequate',
    from: 0,
    to: 9,
    when: { right: { atLeast: 2 }, transverse: { atLeast: 2 }, left: { atLeast: 2 } },
    cites: ADEQUATE,
  },
  { group: 'not-adequate', from: 0, to: 9, cites: ADEQUATE },
];

/** Source: bbps2009. Indeterminate: without the points of a segment. */
export const BBPS = scoreRule({
  kind: 'score',
  id: 'bbps',
  version: 1,
  title: 'Boston bowel preparation scale',
  population:
    'Colonoscopy, judged after washing. Every segment decides: 6 as 3, 3 and 0 is not adequate. ' +
    'Not for the upper tract.',
  cites: [...SCALE, ...ADEQUATE],
  fields: FIELDS,
  contradictions: [],
  items: ITEMS,
  bands: BANDS,
  remarks: [],
});
