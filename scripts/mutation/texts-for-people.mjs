// For the mutation run: a sentence for people may be worded in another way without a wrong rule,
// and the name of a property in a type is no code at all.
const FOR_PEOPLE = new Set(['says', 'message', 'expected', 'title', 'population', 'formula']);
const TAKES_A_SENTENCE = new Set(['invariant', 'checkShare']);

const isText = (node) => node.type === 'StringLiteral' || node.type === 'TemplateLiteral';

/** A sentence, or the parts that are put together to one. */
function shouldIgnore(path) {
  if (!isText(path.node)) return undefined;
  const around = path.findParent(({ node }) => !isText(node) && node.type !== 'BinaryExpression');
  const { node } = around ?? {};
  if (node?.type === 'TSPropertySignature') return 'a type';
  if (node?.type === 'ObjectProperty' && FOR_PEOPLE.has(node.key.name)) return 'for people';
  if (node?.type === 'CallExpression' && TAKES_A_SENTENCE.has(node.callee.name)) {
    return 'for people';
  }
  return undefined;
}

export const strykerPlugins = [
  { kind: 'Ignore', name: 'texts-for-people', value: { shouldIgnore } },
];
