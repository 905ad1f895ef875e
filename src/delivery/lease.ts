import type { Claim, Outbox } from '../pipeline/index.js';
import type { Clock } from './clock.js';

export interface HeldLease {
  /** Aborts when the claim has gone to another worker. */
  readonly lost: AbortSignal;
  end(): void;
}

/**
 * Extends the lease of a claim at every third of it, for as long as the work lasts. A fault of
 * the store is not a loss: the next third tries again, and the fence guards the result.
 */
export function holdLease(
  claim: Claim,
  deps: { readonly outbox: Outbox; readonly clock: Clock; readonly leaseMs: number },
): HeldLease {
  const lost = new AbortController();
  const everyMs = Math.max(1, Math.floor(deps.leaseMs / 3));
  let ended = false;
  let cancel = deps.clock.after(everyMs, extend);

  function extend(): void {
    deps.outbox
      .extend(claim, deps.leaseMs)
      .catch(() => true)
      .then((held) => {
        if (ended) return;
        if (held) cancel = deps.clock.after(everyMs, extend);
        else lost.abort();
      });
  }
  return {
    lost: lost.signal,
    end: () => {
      ended = true;
      cancel();
    },
  };
}
