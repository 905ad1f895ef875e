/** What may be said of an error: never its message, which may quote what was sent. */
export interface ErrorFields {
  readonly name: string;
  readonly code?: string;
  /** File and line of this program, of the innermost frame that is its own. */
  readonly at?: string;
}

/** Names of classes of errors, here and in Node. */
const NAME = /^[A-Z][A-Za-z]{0,40}(Error|Refused|Unavailable|Cut|Exception)$/;
/** Codes of Node and of the system, and SQLSTATE of PostgreSQL. */
const CODE = /^(E[A-Z0-9]{2,20}(_[A-Z0-9]{1,20}){0,6}|[0-9A-Z]{5})$/;
/** Frames follow the message in a stack, each on a line of its own that starts with `at`. */
const PLACE = String.raw`(?:src|dist)/[A-Za-z0-9/._-]{1,120}:\d{1,6}`;
const FRAME = new RegExp(
  String.raw`^ {4}at (?![^\n]*node_modules)[^\n]{0,300}?/(${PLACE}):\d{1,6}\)?$`,
  'gm',
);

export function errorFields(error: unknown): ErrorFields {
  if (!(error instanceof Error)) return { name: 'NotAnError' };
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  const at = frameOf(error);
  return {
    name: NAME.test(error.name) ? error.name : 'Error',
    ...(CODE.test(code) ? { code } : {}),
    ...(at === undefined ? {} : { at }),
  };
}

/** The message is cut off before: it could imitate a frame. */
function frameOf({ stack = '', name, message }: Error): string | undefined {
  const head = [`${name}: ${message}`, message].find((text) => stack.includes(text));
  if (head === undefined && message !== '') return undefined;
  const frames = head === undefined ? stack : stack.slice(stack.indexOf(head) + head.length);
  for (const [, place] of frames.matchAll(FRAME)) return place;
  return undefined;
}
