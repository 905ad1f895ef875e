import { equalityKeys, plainValues } from './compare.js';
import { childrenNamed, descendantsOf, isObject, type Node } from './node.js';
import {
  asNodes,
  FALSE,
  NOTHING,
  type Nodes,
  numberNodes,
  onlyText,
  type Run,
  type Step,
  TRUE,
  textNodes,
  truth,
  Unanswered,
} from './step.js';

/** A function of FHIRPath: its input, its arguments as steps, `$this` outside of it. */
export type Invocation = (input: Nodes, args: readonly Step[], self: Nodes, run: Run) => Nodes;

const holds = (item: Node, criterion: Step, run: Run): boolean | undefined =>
  truth(criterion([item], run));

const where: Invocation = (input, [criterion], _self, run) =>
  criterion === undefined ? input : input.filter((item) => holds(item, criterion, run) === true);

const addExtensions = childrenNamed('extension');

const matchers = new Map<string, RegExp>();

/** As in FHIRPath, the expression may match anywhere and the dot takes line breaks. */
function matcher(pattern: string): RegExp {
  const known = matchers.get(pattern) ?? new RegExp(pattern, 'su');
  matchers.set(pattern, known);
  return known;
}

/** A function of one text and one text argument; empty where either is empty. */
const onText =
  (apply: (text: string, argument: string) => boolean): Invocation =>
  (input, [argument], self, run) => {
    const text = onlyText(input);
    const given = onlyText(argument?.(self, run) ?? NOTHING);
    return text === undefined || given === undefined ? NOTHING : asNodes(apply(text, given));
  };

/** Paragraphs of text and nothing else, as mapping writes them: no more is known as safe here. */
const PARAGRAPH = '<p>[^<>&]+(?:&(?:amp|lt|gt|quot|#39);[^<>&]*)*</p>';
const PLAIN_PARAGRAPHS = new RegExp(
  `^<div xmlns="http://www\\.w3\\.org/1999/xhtml">(?:${PARAGRAPH})+</div>$`,
);

/** What is known here of FHIRPath's functions. Source: FHIRPath 2.0, sections 5 and 6. */
export const FUNCTIONS: Readonly<Record<string, Invocation>> = {
  where,
  exists: (input, args, self, run) => asNodes(where(input, args, self, run).length > 0),
  empty: (input) => asNodes(input.length === 0),
  count: (input) => numberNodes(input.length),
  not: (input) => {
    const value = truth(input);
    return value === undefined ? NOTHING : asNodes(!value);
  },
  all: (input, [criterion], _self, run) =>
    criterion === undefined || input.every((item) => holds(item, criterion, run) === true)
      ? TRUE
      : FALSE,
  select: (input, [projection], _self, run) =>
    projection === undefined ? input : input.flatMap((item) => projection([item], run)),
  first: (input) => input.slice(0, 1),
  trace: (input) => input,
  hasValue: (input) => asNodes(input.length === 1 && !isObject(input[0]?.value)),
  distinct: (input) => {
    const seen = new Set<unknown>();
    const values = plainValues(input);
    return input.filter((_item, i) => !seen.has(values[i]) && seen.add(values[i]) !== undefined);
  },
  isDistinct: (input) => asNodes(new Set(plainValues(input)).size === input.length),
  combine: (input, [other], self, run) => [...input, ...(other?.(self, run) ?? NOTHING)],
  intersect: (input, [other], self, run) => {
    if (input.length === 0) return NOTHING;
    const values = new Set(equalityKeys(other?.(self, run) ?? NOTHING));
    const own = equalityKeys(input);
    return input.filter((_item, i) => values.delete(own[i]));
  },
  iif: (input, [criterion, then, otherwise], _self, run) => {
    if (input.length > 1) throw new Unanswered('iif on several');
    const branch = truth(criterion?.(input, run) ?? NOTHING) === true ? then : otherwise;
    return branch?.(input, run) ?? NOTHING;
  },
  startsWith: onText((text, prefix) => text.startsWith(prefix)),
  endsWith: onText((text, suffix) => text.endsWith(suffix)),
  contains: onText((text, part) => text.includes(part)),
  matches: onText((text, pattern) => matcher(pattern).test(text)),
  replaceMatches: (input, [pattern, substitution], self, run) => {
    const text = onlyText(input);
    const found = onlyText(pattern?.(self, run) ?? NOTHING);
    const put = onlyText(substitution?.(self, run) ?? NOTHING);
    if (text === undefined || found === undefined || put === undefined) return NOTHING;
    return textNodes(text.replace(new RegExp(matcher(found), 'gsu'), put));
  },
  htmlChecks: (input) => {
    if (PLAIN_PARAGRAPHS.test(onlyText(input) ?? '')) return TRUE;
    throw new Unanswered('markup beyond paragraphs');
  },
  toString: (input: Nodes) => {
    const text = onlyText(input);
    return text === undefined ? NOTHING : textNodes(text);
  },
  length: (input) => {
    const text = onlyText(input);
    return text === undefined ? NOTHING : numberNodes(text.length);
  },
  extension: (input, [url], self, run) => {
    const wanted = onlyText(url?.(self, run) ?? NOTHING);
    const extensions: Node[] = [];
    for (const item of input) addExtensions(item, extensions);
    return extensions.filter(({ value }) => isObject(value) && value['url'] === wanted);
  },
  descendants: (input) => {
    const all: Node[] = [];
    for (const item of input) descendantsOf(item, all);
    return all;
  },
};
