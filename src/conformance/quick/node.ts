import r4 from 'fhirpath/fhir-context/r4';

/** A JSON value with its place in the type system of R4. */
export interface Node {
  readonly value: unknown;
  /** Type (`Quantity`, `dateTime`) or, within a backbone, its path (`Observation.component`). */
  readonly path: string;
}

/** Which JSON keys one element name stands for: several for a choice, none if unknown. */
type Keys = readonly (readonly [key: string, path: string])[];

const keysByPath = new Map<string, Map<string, Keys>>();

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** @returns the resource as a node; its type is the one it names itself */
export function resourceNode(value: unknown): Node {
  const type = isObject(value) ? value['resourceType'] : undefined;
  return { value, path: typeof type === 'string' ? type : 'Resource' };
}

/** @returns a finder of the children of that element name, in document order */
export function childrenNamed(name: string): (node: Node, into: Node[]) => void {
  const keysByOwner = new Map<string, Keys>();
  return ({ value, path: owner }, into) => {
    if (!isObject(value)) return;
    let keys = keysByOwner.get(owner);
    if (keys === undefined) {
      keys = keysOf(owner, name);
      keysByOwner.set(owner, keys);
    }
    for (const [key, path] of keys) {
      const child = value[key];
      if (child !== undefined) addChild(child, path, into);
    }
  };
}

/** Every node right beneath this one. */
export function childrenOf(node: Node): Node[] {
  const children: Node[] = [];
  if (!isObject(node.value)) return children;
  for (const key in node.value) {
    if (key !== 'resourceType') addChild(node.value[key], pathOf(node.path, key), children);
  }
  return children;
}

/** Every node beneath this one, parents before children. */
export function descendantsOf(node: Node, into: Node[]): void {
  for (const child of childrenOf(node)) {
    into.push(child);
    descendantsOf(child, into);
  }
}

/** Path of the child under that JSON key; `Element` where the standard knows none. */
export const pathOf = (path: string, key: string): string => keysOf(path, key)[0]?.[1] ?? 'Element';

/** Whether a node of this path is of the type or of one that derives from it. */
export const isOfType = (path: string, type: string): boolean => typeTester(type)(path);

/** @returns the same question for one type, asked of many paths */
export function typeTester(type: string): (path: string) => boolean {
  const answers = new Map<string, boolean>();
  return (path) => {
    let answer = answers.get(path);
    if (answer === undefined) {
      let current: string | undefined = path.includes('.') ? r4.path2Type[path] : path;
      while (current !== undefined && current !== type) current = r4.type2Parent[current];
      answer = current === type;
      answers.set(path, answer);
    }
    return answer;
  };
}

function addChild(child: unknown, path: string, into: Node[]): void {
  if (Array.isArray(child)) {
    for (const item of child)
      into.push(path === 'Resource' ? resourceNode(item) : { value: item, path });
  } else {
    into.push(path === 'Resource' ? resourceNode(child) : { value: child, path });
  }
}

function keysOf(path: string, name: string): Keys {
  let byName = keysByPath.get(path);
  if (byName === undefined) {
    byName = new Map();
    keysByPath.set(path, byName);
  }
  let keys = byName.get(name);
  if (keys === undefined) {
    keys = findKeys(path, name);
    byName.set(name, keys);
  }
  return keys;
}

function findKeys(path: string, name: string): Keys {
  for (let owner: string | undefined = path; owner !== undefined; owner = r4.type2Parent[owner]) {
    const element = `${owner}.${name}`;
    const elsewhere = r4.pathsDefinedElsewhere[element];
    if (elsewhere !== undefined) return [[name, elsewhere]];
    const choices = r4.choiceTypePaths[element];
    if (choices !== undefined) {
      return choices.map((type) => [name + type, typePath(`${element}${type}`, type)]);
    }
    const type = r4.path2Type[element];
    if (type !== undefined) return [[name, typePath(element, type)]];
  }
  return [];
}

/** Backbones have no name of their own: their path stands for their type. */
function typePath(element: string, type: string): string {
  if (type === 'BackboneElement' || type === 'Element') return element;
  return r4.path2Type[element] ?? type;
}
