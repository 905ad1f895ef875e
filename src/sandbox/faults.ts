/** What goes wrong with one request. */
export type Fault =
  /** Nothing is done; this is answered. */
  | {
      readonly kind: 'answer';
      readonly status: number;
      readonly headers?: Readonly<Record<string, string>>;
      readonly body?: string;
    }
  /** No byte is ever answered. */
  | { readonly kind: 'hang'; readonly committed: boolean }
  /** The connection is cut. */
  | { readonly kind: 'cut'; readonly committed: boolean }
  /** It is done; half of the answer comes, then the connection is cut. */
  | { readonly kind: 'truncate' }
  /** It is done; the answer comes byte by byte. */
  | { readonly kind: 'drip'; readonly everyMs: number }
  /** It is done; the answer to the transaction is none that a server should give. */
  | { readonly kind: 'alter'; readonly how: Alteration };

export type Alteration =
  | 'batch-response'
  | 'entry-missing'
  | 'entry-extra'
  | 'entries-reordered'
  | 'entry-refused'
  | 'without-location';

export interface SeenRequest {
  readonly method: string;
  /** Below the base, with a slash at its front. */
  readonly path: string;
}

/** By this a test or a demonstration says what goes wrong. Nothing does until it is told. */
export interface Faults {
  /**
   * @param times how many requests meet the fault, from the next one on; 1 when absent
   * @param matching which requests count; all when absent
   */
  next(
    fault: Fault,
    more?: { readonly times?: number; readonly matching?: (request: SeenRequest) => boolean },
  ): void;
  /** How many requests will still meet a fault. */
  pending(): number;
  /** Forgets all faults, and cuts the connections that hang. */
  clear(): void;
  /** For the sandbox: takes the fault that this request meets, the one told first. */
  take(request: SeenRequest): Fault | undefined;
  /** For the sandbox: a connection that hangs until `cut` is called by `clear`. */
  hanging(cut: () => void): void;
}

export function createFaults(): Faults {
  const planned: {
    fault: Fault;
    left: number;
    matching: (request: SeenRequest) => boolean;
  }[] = [];
  const cuts: (() => void)[] = [];
  return {
    next: (fault, { times = 1, matching = () => true } = {}) => {
      planned.push({ fault, left: times, matching });
    },
    pending: () => planned.reduce((sum, { left }) => sum + left, 0),
    clear: () => {
      planned.length = 0;
      for (const cut of cuts.splice(0)) cut();
    },
    take: (request) => {
      const plan = planned.find(({ left, matching }) => left > 0 && matching(request));
      if (plan !== undefined) plan.left -= 1;
      return plan?.fault;
    },
    hanging: (cut) => {
      cuts.push(cut);
    },
  };
}
