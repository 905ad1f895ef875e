import { isUnreadable } from '../contract/index.js';
import type { Problem } from '../kernel/index.js';

/** A body that cannot be read is another matter than one that breaks rules. */
export function refusal(problems: readonly Problem[]) {
  const kind = isUnreadable(problems) ? ('unreadable' as const) : ('invalid' as const);
  return { kind, problems };
}
