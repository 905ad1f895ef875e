import { compare, type Operator, plainValues } from './compare.js';
import { isListOfLiterals, ofRootAlone } from './root.js';
import {
  asNodes,
  NOTHING,
  numberNodes,
  onlyText,
  type Step,
  textNodes,
  truth,
  Unanswered,
} from './step.js';
import { type Syntax, textOf } from './syntax.js';

/** @returns the operator at work on two sides, or undefined where it is not known here */
export function operation(
  syntax: Syntax,
  left: Step,
  right: Step,
  rightSyntax: Syntax,
): Step | undefined {
  const operator = syntax.text ?? '';
  switch (operator) {
    case 'and':
    case 'or':
    case 'xor':
    case 'implies':
      return logic(operator, left, right);
    case '=':
    case '!=':
    case '<':
    case '>':
    case '<=':
    case '>=':
      return comparison(operator, left, right);
    case 'in':
      return membership(left, right, rightSyntax);
    case '|':
      return (self, run) => {
        const both = [...left(self, run), ...right(self, run)];
        return [...new Map(plainValues(both).map((value, i) => [value, both[i]])).values()].flatMap(
          (node) => (node === undefined ? [] : [node]),
        );
      };
    case 'mod':
      return remainder(left, right);
    case '&':
      return (self, run) =>
        textNodes((onlyText(left(self, run)) ?? '') + (onlyText(right(self, run)) ?? ''));
    default:
      return undefined;
  }
}

const comparison = (operator: Operator, left: Step, right: Step): Step => {
  return (self, run) => compare(operator, left(self, run), right(self, run));
};

/** Of whole numbers only, where JavaScript and the decimals of FHIRPath agree. */
const remainder = (left: Step, right: Step): Step => {
  return (self, run) => {
    const [a, ...more] = left(self, run).map(({ value }) => value);
    const [b, ...others] = right(self, run).map(({ value }) => value);
    if (a === undefined || b === undefined) return NOTHING;
    const areWhole = [a, b].every(Number.isSafeInteger) && more.length + others.length === 0;
    if (!areWhole || typeof a !== 'number' || typeof b !== 'number' || a < 0 || b <= 0) {
      throw new Unanswered('remainder of anything but whole numbers');
    }
    return numberNodes(a % b);
  };
};

/** Three-valued logic; the right side is looked at only where the left does not decide. */
function logic(operator: 'and' | 'or' | 'xor' | 'implies', left: Step, right: Step): Step {
  return (self, run) => {
    const a = truth(left(self, run));
    if (operator === 'and' && a === false) return asNodes(false);
    if (operator === 'or' && a === true) return asNodes(true);
    if (operator === 'implies' && a === false) return asNodes(true);
    const b = truth(right(self, run));
    switch (operator) {
      case 'and':
        return asNodes(b === false ? false : a === true && b === true ? true : undefined);
      case 'or':
        return asNodes(b === true ? true : a === false && b === false ? false : undefined);
      case 'xor':
        return asNodes(a === undefined || b === undefined ? undefined : a !== b);
      case 'implies':
        return asNodes(b === true ? true : a === undefined ? undefined : b);
    }
  };
}

/** `x in list`: a list that does not depend on `$this` is made into a set once a run. */
function membership(left: Step, right: Step, rightSyntax: Syntax): Step {
  const fixed = ofRootAlone(rightSyntax) || isListOfLiterals(rightSyntax);
  const key = textOf(rightSyntax);
  return (self, run) => {
    const values = plainValues(left(self, run));
    if (values.length === 0) return NOTHING;
    if (values.length > 1) throw new Unanswered('several on the left of in');
    const known = fixed ? run.sets.get(key) : undefined;
    const set = known ?? new Set(plainValues(right(self, run)));
    if (fixed && known === undefined) run.sets.set(key, set);
    return asNodes(set.has(values[0]));
  };
}
