import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import type { Citation } from '../../src/kernel/index.js';
import { allRules } from '../../src/pipeline/index.js';
import { BIBLIOGRAPHY } from '../../src/references/index.js';
import type { Rule } from '../../src/rules/index.js';
import { run } from './run.js';

// Streams, exit codes and the shape of answers: project definition.

/** Asks a rule as a program would: the question on standard input, the answer on standard output. */
const ask = (id: string, question: unknown) => askBytes(id, JSON.stringify(question));

async function askBytes(id: string, text: string) {
  const readStdin = async () => Buffer.from(text);
  const { code, out, err } = await run(['rule', id, '-', '--json'], { readStdin });
  return { code, err, answer: JSON.parse(out) };
}

/** Works of a part: numbers with letters of support. */
const MARKS = /\[\d+[a-z](?:, \d+[a-z])*\]/g;

const LETTERS = { published: 'p', recalled: 'r', derived: 'd', practice: 'c' } as const;

/** What stands behind a part, by the numbers that the list below a rule gives to its works. */
function marksBy({ id }: Rule, sources: string) {
  const numberOf = (work: string): number => {
    const { citation = '' } = Object.entries(BIBLIOGRAPHY).find(([key]) => key === work)?.[1] ?? {};
    const [, number] = sources.match(new RegExp(`\\[(\\d+)\\] ${escaped(citation)}`)) ?? [];
    if (number === undefined) throw new Error(`${id} lists no ${work}`);
    return Number(number);
  };
  return (cites: readonly Citation[]): string => {
    const marks = Object.values(LETTERS).flatMap((letter) =>
      cites
        .filter(({ basis }) => LETTERS[basis] === letter)
        .map(({ work }) => ({ number: numberOf(work), mark: `${numberOf(work)}${letter}` })),
    );
    const inOrder = marks.sort((a, b) => a.number - b.number).map(({ mark }) => mark);
    return inOrder.length === 0 ? '' : `[${[...new Set(inOrder)].join(', ')}]`;
  };
}

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');

function decisiveParts(rule: Rule): readonly { readonly cites: readonly Citation[] }[] {
  if (rule.kind === 'quantity') return [];
  return rule.kind === 'score' ? [...rule.items, ...rule.bands] : rule.table.flat();
}

const ECURA = { ly: '0', v: '0', vm: '0', sizeMm: 20, smDepthUm: 100 };

describe('rule, without an id', () => {
  it('lists every rule once, under one line of headings, with aligned columns', async () => {
    const { code, out, err } = await run(['rule']);
    expect([code, err]).toEqual([0, '']);
    const [head = '', ...lines] = out.split('\n');
    const column = head.indexOf('title');
    for (const { id, version, title } of allRules()) {
      const [line = '', ...more] = lines.filter((text) => text.startsWith(`  ${id} `));
      expect(more).toEqual([]);
      expect(line.slice(0, column)).toMatch(
        new RegExp(`^  ${id} +${version} +(chosen|unconf\\w+)? *$`),
      );
      expect(title.startsWith(line.slice(column))).toBe(true);
    }
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it('says which rules the unit decides by, and which nobody can choose', async () => {
    const unit = {
      ...DEFAULT_UNIT_SETTINGS,
      curabilityRules: { ...DEFAULT_UNIT_SETTINGS.curabilityRules, stomach: 'jges-jgca-2021' },
    };
    const readFile = async () => Buffer.from(JSON.stringify(unit));
    const { out } = await run(['rule', '--settings', 'japan.json', '--json'], { readFile });
    const entries: readonly { id: string; chosenFor: string[]; unconfirmed?: string }[] =
      JSON.parse(out);
    const entry = (id: string) => entries.find((each) => each.id === id);
    expect(entry('jges-jgca-2021')?.chosenFor).toEqual(['stomach']);
    expect(entry('esge-esd-2022')?.chosenFor).toEqual(['oesophagus', 'colon', 'rectum']);
    expect(entry('maps-iii-2025')?.unconfirmed).not.toBe('');
    expect((await run(['rule'])).out).toMatch(/ {2}maps-iii-2025 +1 {2}unconfirmed {2}\S/);
    expect((await run(['rule', '--settings', 'gone.json'])).code).toBe(3);
  });
});

describe('rule, with an id', () => {
  // Classes and limits: Pimentel-Nunes 2022, Endoscopy 54:591, abstract.
  it('shows one on a screen: a row a line, with works and marks of support', async () => {
    const { code, out, err } = await run(['rule', 'esge-esd-2022']);
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n').length).toBeLessThanOrEqual(60);
    expect(out).toMatch(/^ {2}1 no-rule {8}tumour other \[1d\]$/m);
    expect(out).toMatch(/^ {2}3 high-risk {6}ly 1 \(lvi\) \[1p\]$/m);
    expect(out).toMatch(
      /^ {19}tumour colorectal, depth sm, sm depth > 1000 um \(deeper-than-sm1\)/m,
    );
    expect(out).toMatch(/^ {2}6 very-low-risk {2}tumour squamous, depth ep\/lpm \[1p\]$/m);
    expect(out).toMatch(/^Sources {2}\[1\] Pimentel-Nunes P et al\. Endoscopy 2022;54:591-622/m);
    const text = out.replaceAll(/\s+/g, ' ');
    expect(text).toContain('p read in the work itself or its abstract; r stands in the work');
    expect(text).toContain('licensed clinicians decide');
  });

  it.each(allRules())('shows every part of $id that decides, with its own marks', async (rule) => {
    const { out } = await run(['rule', rule.id]);
    expect(out).not.toMatch(/undefined|NaN|\[object| {2}\n/);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
    const text = out.replaceAll(/\s+/g, ' ');
    const [shown = '', sources = ''] = text.split(' Sources ');
    for (const name of Object.keys(rule.fields)) {
      expect(shown).toContain(` ${rule.nameOf?.(name) ?? name}`);
    }
    const marked = marksBy(rule, sources);
    const parts = [rule, ...decisiveParts(rule)];
    expect([...shown.matchAll(MARKS)].map(([marks]) => marks)).toEqual(
      parts.map(({ cites }) => marked(cites)).filter((marks) => marks !== ''),
    );
    const listed = [...sources.matchAll(/\[(\d+)\] /g)].map(([, number]) => number);
    const used = [...shown.matchAll(MARKS)].flatMap(([marks]) => marks.match(/\d+/g) ?? []);
    expect(new Set(used)).toEqual(new Set(listed));
  });

  it('shows all of it with --full: fields, remarks, places in the works', async () => {
    const { code, out, err } = await run(['rule', 'esge-esd-2022', '--full']);
    expect([code, err]).toEqual([0, '']);
    const text = out.replaceAll(/\s+/g, ' ');
    expect(out).toMatch(/^esge-esd-2022, version 1: Curability after endoscopic submucosal/);
    expect(text).toContain('Not for the duodenum');
    expect(text).toContain(
      'tumour gastric and depth sm and sm depth over 500 um (deeper-than-sm1)',
    );
    expect(text).toContain('published: read in the work itself or its abstract');
    expect(text).toMatch(/\[1\] published, Pimentel-Nunes P et al\. Endoscopy 2022;54:591-622/);
    expect(text).toContain('whole number, 0 to 50000 um. Asked for where depth sm.');
    expect(text).toContain('Decision support, not a verdict.');
    expect(text).toContain('licensed clinicians decide');
  });

  // Rates, counts and exact intervals: Hatta 2021, Gut 70:476, risk table.
  it('shows points and groups with rates, counts, intervals and their method', async () => {
    const text = (await run(['rule', 'best-j', '--full'])).out.replaceAll(/\s+/g, ' ');
    expect(text).toContain('+1 size over 30 mm');
    expect(text).toContain('-1 doac and doac interrupted');
    expect(text).toContain(
      'very-high total 5 or more; bled after the dissection: 29.7 % (60 of 202; 95 % interval ' +
        '23.5 to 36.5 %, by Clopper and Pearson)',
    );
    expect(text).toContain('[] for none. From it are read: warfarin: warfarin taken');
  });

  it.each(allRules())('shows $id whole, in 100 columns', async (rule) => {
    const { out } = await run(['rule', rule.id, '--full']);
    expect(out).not.toMatch(/undefined|NaN|\[object|where \.| {2}\n/);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
    const numbers = [...out.matchAll(/\[(\d+(?:, \d+)*)\]/g)].flatMap(([, list = '']) =>
      list.split(', '),
    );
    const listed = [...out.matchAll(/^ {2}\[(\d+)\] /gm)].map(([, number]) => number);
    expect(new Set(numbers)).toEqual(new Set(listed));
    for (const name of Object.keys(rule.fields)) expect(out).toContain(` ${name}`);
  });

  it.each(allRules())('gives $id as data, with the works that it rests on', async (rule) => {
    const { code, out } = await run(['rule', rule.id, '--json']);
    const data = JSON.parse(out);
    expect(code).toBe(0);
    expect(data).toMatchObject({ id: rule.id, version: rule.version, kind: rule.kind });
    expect(Object.keys(data.fields)).toEqual(Object.keys(rule.fields));
    expect(data).not.toHaveProperty('samples');
    expect(out).not.toContain('"to":null');
    const cited = new Set([...out.matchAll(/"work":"(\w+)"/g)].map(([, work]) => work));
    expect(new Set(Object.keys(data.sources))).toEqual(cited);
    for (const key of Object.keys(data.sources)) expect(BIBLIOGRAPHY).toHaveProperty(key);
  });

  it.each([
    ['esge-2022', 'esge-esd-2022'],
    ['bestj', 'best-j'],
    ['ECURA', 'ecura'],
    ['wilsn', 'wilson'],
  ])('refuses %s with 2 and names %s', async (asked, near) => {
    const { code, out, err } = await run(['rule', asked]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(new RegExp(`There is no rule of this id\\. Near it: .*${near}[,.]`));
  });

  it('names nothing near an id that is far from all', async () => {
    const { code, err } = await run(['rule', 'constructor', '-']);
    expect(code).toBe(2);
    expect(err).toMatch(/^There is no rule of this id\.\nSee: dissection-records rule --help\n$/);
    expect((await run(['rule', 'ecura', '-', '-'])).code).toBe(2);
    expect((await run(['rule', '--loud'])).code).toBe(2);
  });
});

describe('rule, with an id and a question', () => {
  // Hatta 2017, Am J Gastroenterol 112:874, abstract: 0 to 1 point low, 2.5 %.
  it('answers with the rule, its version, what led there and the caution', async () => {
    const { code, err, answer } = await ask('ecura', { ...ECURA, sizeMm: 31 });
    expect([code, err]).toEqual([0, '']);
    expect(Object.keys(answer)[0]).toBe('answer');
    expect(answer).toMatchObject({
      answer: '1;low;2.5',
      rule: 'ecura',
      version: 1,
      missing: [],
      rate: { percent: 2.5 },
    });
    expect(answer.reasons).toEqual([
      expect.objectContaining({
        points: 1,
        cites: [expect.objectContaining({ work: 'hatta2017' })],
      }),
    ]);
    expect(answer.caution).toContain('licensed clinicians decide');
  });

  it('names what is missing as data too', async () => {
    const { code, answer } = await ask('ecura', { ...ECURA, vm: null });
    expect(code).toBe(0);
    expect(answer).toMatchObject({ answer: 'indeterminate;missing=vm;range=0-1', missing: ['vm'] });
  });

  it('is legible without --json and on one line with it', async () => {
    const readStdin = async () => Buffer.from(JSON.stringify(ECURA));
    const legible = (await run(['rule', 'ecura', '-'], { readStdin })).out;
    const short = (await run(['rule', 'ecura', '-', '--json'], { readStdin })).out;
    expect(legible.split('\n').length).toBeGreaterThan(5);
    expect(short.trimEnd()).not.toContain('\n');
    expect(JSON.parse(legible)).toEqual(JSON.parse(short));
  });

  it('answers a list in its order, and refuses one question in its place', async () => {
    const { code, answer } = await ask('ecura', [
      ECURA,
      { ...ECURA, sizeMm: 'CANARY' },
      'CANARY',
      { ...ECURA, ly: '1' },
      [],
    ]);
    expect(code).toBe(1);
    expect(answer.map((each: { answer?: string }) => each.answer)).toEqual([
      '0;low;2.5',
      undefined,
      undefined,
      '3;intermediate;6.7',
      undefined,
    ]);
    expect(answer[1].errors).toEqual([
      expect.objectContaining({ rule: 'wrong-type', pointer: '/sizeMm' }),
    ]);
    expect(answer[2].errors[0]).toMatchObject({ rule: 'wrong-type', pointer: '' });
    expect(answer[4].errors[0]).toMatchObject({ rule: 'wrong-type', pointer: '' });
    expect(JSON.stringify(answer)).not.toContain('CANARY');
  });

  it('gives an empty list for an empty list', async () => {
    expect(await ask('ecura', [])).toEqual({ code: 0, err: '', answer: [] });
  });

  it.each([
    ['unknown-field', '/size', { ...ECURA, size: 20 }],
    ['unknown-field', '/__proto__', '{"__proto__":1}'],
    ['not-in-list', '/ly', { ...ECURA, ly: '2' }],
    ['out-of-range', '/sizeMm', { ...ECURA, sizeMm: -1 }],
    ['wrong-type', '/smDepthUm', { ...ECURA, smDepthUm: 1.5 }],
    ['wrong-type', '', 7],
    ['not-json', '', '{'],
    ['not-json', '', ''],
    ['byte-order-mark', '', '\ufeff{}'],
    ['repeated-key', '/ly', '{"ly":"0","ly":"1"}'],
    ['number-out-of-range', '/sizeMm', '{"sizeMm":1e400}'],
  ])('refuses with 1, naming %s at "%s"', async (rule, pointer, question) => {
    const text = typeof question === 'string' ? question : JSON.stringify(question);
    const { code, answer } = await askBytes('ecura', text);
    expect(code).toBe(1);
    expect(Object.keys(answer)).toEqual(['errors']);
    expect(answer.errors).toContainEqual(expect.objectContaining({ rule, pointer }));
    for (const { message, expected } of answer.errors) {
      expect(message).toMatch(/^[A-Z].*\.$/);
      expect(expected).not.toBe('');
    }
  });

  it('says of a word that looks like a number that it is none', async () => {
    const { answer } = await ask('ecura', { ...ECURA, ly: 0 });
    expect(answer.errors[0].expected).toBe('one of: "0", "1", X, or null');
  });

  it('names a fault of the JSON at its question in the list alone', async () => {
    const { code, answer } = await askBytes('wilson', '[{"x":1,"n":4,"level":0.95},{"x":1,"x":2}]');
    expect(code).toBe(1);
    expect(answer[0].answer).toBe('0.0456;0.6994');
    expect(answer[1].errors).toEqual([
      expect.objectContaining({ rule: 'repeated-key', pointer: '/x' }),
    ]);
  });

  it('ends with 3 for a file that is not there', async () => {
    const { code, out, err } = await run(['rule', 'ecura', 'gone.json']);
    expect([code, out, err]).toEqual([3, '', 'gone.json: there is no such file\n']);
  });
});
