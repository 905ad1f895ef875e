import { SaxesParser } from 'saxes';

/** An element as a parser of XML read it. */
export interface Node {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Node[];
  /** Text directly inside. */
  readonly text: string;
}

interface Growing extends Node {
  readonly children: Growing[];
  text: string;
}

/** Reads well-formed XML; throws for any other text. */
export function readXml(xml: string): Node {
  const top: Growing = { name: '', attributes: {}, children: [], text: '' };
  const open: Growing[] = [top];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const node: Growing = { name, attributes: { ...attributes }, children: [], text: '' };
    open.at(-1)?.children.push(node);
    open.push(node);
  });
  parser.on('text', (text) => {
    const node = open.at(-1);
    if (node !== undefined) node.text += text;
  });
  parser.on('closetag', () => {
    open.pop();
  });
  parser.write(xml).close();
  const [root] = top.children;
  if (root === undefined) throw new Error('no element');
  return root;
}

/** The element and all below it. */
export const all = (node: Node): readonly Node[] => [node, ...node.children.flatMap(all)];

/** The pieces of a chart that carry this name. */
export const parts = (svg: Node, name: string): readonly Node[] =>
  all(svg).filter(({ attributes }) => attributes['data-part'] === name);

export const part = (svg: Node, name: string): Node => {
  const [found] = parts(svg, name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

/** Where the marks below an element are. */
export const marks = (node: Node): readonly (readonly [number, number])[] =>
  all(node).flatMap(({ attributes: { transform } }) => {
    const found = /^translate\(([-\d.]+) ([-\d.]+)\)$/.exec(transform ?? '');
    return found === null ? [] : [[Number(found[1]), Number(found[2])] as const];
  });

/** Corners of a line, from its `M x y L x y` form. */
export const corners = (node: Node): readonly (readonly [number, number])[] =>
  [...(node.attributes['d'] ?? '').matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );

/** An axis as a reader sees it: where the ticks are and what is written at them. */
export interface SeenAxis {
  readonly pixels: readonly number[];
  readonly values: readonly number[];
  /** The value at a pixel, read between the first and the last tick. */
  readonly valueAt: (pixel: number) => number;
}

export function seenAxis(svg: Node, name: 'up-axis' | 'across-axis'): SeenAxis {
  const { children } = part(svg, name);
  const isUp = name === 'up-axis';
  const pixels = children
    .filter((child) => child.name === 'path')
    .map((tick) => corners(tick)[0]?.[isUp ? 1 : 0] ?? Number.NaN);
  const values = children
    .filter((child) => child.name === 'text')
    .map(({ text }) => Number(text.replace('−', '-').replace(' %', '')));
  const [fromPixel = 0, from = 0] = [pixels[0], values[0]];
  const [toPixel = 1, to = 1] = [pixels.at(-1), values.at(-1)];
  const valueAt = (pixel: number): number =>
    from + ((pixel - fromPixel) / (toPixel - fromPixel)) * (to - from);
  return { pixels, values, valueAt };
}
