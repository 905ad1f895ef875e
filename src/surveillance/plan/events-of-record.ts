import type { EventFields } from '../../contract/index.js';
import type { PlanEvents } from './plan-facts.js';

/**
 * What a plan asks of the events of a case.
 *
 * Source: what the rules of the plan ask for.
 */
export function planEvents(events: readonly EventFields[]): PlanEvents {
  const of = (kind: EventFields['kind']) =>
    events.filter((event) => event.kind === kind).map(happened);
  return {
    meetings: events.flatMap((event) =>
      event.kind === 'meeting-decision' && event.meeting !== undefined
        ? [{ ...happened(event), decision: event.meeting.decision }]
        : [],
    ),
    surgeries: events.flatMap((event) => {
      const kind = surgeryKind(event);
      return kind === undefined ? [] : [{ ...happened(event), kind }];
    }),
    deaths: of('death'),
    declines: events
      .filter(({ kind }) => kind === 'follow-up-declined')
      .map((event) => ({
        ...happened(event),
        ...(event.decline?.request === undefined ? {} : { request: event.decline.request.value }),
      })),
    losses: of('lost-to-follow-up'),
    dilatations: of('dilatation'),
    strictures: of('stricture'),
    statuses: of('status-at-30-days'),
  };
}

const happened = ({ event, occurredOn }: EventFields) => ({ id: event, on: occurredOn });

/** Closure or drainage after a complication leaves the scar where it is. */
function surgeryKind({ kind, surgery }: EventFields): 'resection' | 'excision' | undefined {
  if (kind !== 'surgery' || surgery === undefined) return undefined;
  const { operation, reason } = surgery;
  switch (operation) {
    case 'resection-with-nodes':
      return 'resection';
    case 'local-excision':
      return 'excision';
    case 'closure-or-drainage':
      return undefined;
    case 'other':
    case undefined:
      return reason === 'oncological' ? 'resection' : undefined;
  }
}
