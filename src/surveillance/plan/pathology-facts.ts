import type { CaseFields, PathologyFields } from '../../contract/index.js';
import type { BackgroundFacts, PathologyFacts } from './plan-facts.js';

/**
 * What a plan asks of a report.
 *
 * Source: what the rules of the plan ask for.
 */
export function pathologyFacts(
  { resection }: CaseFields,
  { accession, report, findings = {}, background, sentAt }: PathologyFields,
): PathologyFacts {
  const { histology, depth, polypType, hm, vm } = findings;
  return {
    id: accession,
    status: report.status,
    reportedOn: (report.reportedAt ?? sentAt).slice(0, 10),
    ...(histology === undefined ? {} : { histology }),
    ...(depth === undefined ? {} : { depth }),
    ...(polypType === undefined ? {} : { polypType }),
    r0: resection.outcome === 'en-bloc' && hm?.state === '0' && vm?.state === '0',
    ...(background === undefined ? {} : { background: backgroundFacts(background) }),
  };
}

type Background = NonNullable<PathologyFields['background']>;

const STAGES = ['0', 'I', 'II', 'III', 'IV'] as const;

function backgroundFacts(background: Background): BackgroundFacts {
  const { olga, olgim, helicobacterPylori, intestinalMetaplasia } = background;
  const stages = [olga, olgim].map((stage) => STAGES.indexOf(stage ?? '0'));
  return {
    gastritisStage: STAGES[Math.max(...stages)] ?? '0',
    extent: extentOf(background),
    metaplasia: metaplasiaOf(intestinalMetaplasia),
    helicobacterGastritis: helicobacterPylori === 'positive',
    staged: olga !== undefined || olgim !== undefined,
  };
}

function extentOf({
  atrophyIn = [],
  metaplasiaIn = [],
  intestinalMetaplasia,
}: Background): BackgroundFacts['extent'] {
  const places = new Set([...atrophyIn, ...metaplasiaIn]);
  if (places.size > 1) return 'antrum-and-corpus';
  const somewhere = intestinalMetaplasia !== undefined && intestinalMetaplasia !== 'none';
  return places.size === 1 || somewhere ? 'one-site' : 'none';
}

/** A type that was not told is no incomplete one. */
function metaplasiaOf(told: Background['intestinalMetaplasia']): BackgroundFacts['metaplasia'] {
  switch (told) {
    case 'incomplete':
      return 'incomplete';
    case 'complete':
    case 'type-not-told':
      return 'complete';
    case 'none':
    case undefined:
      return 'none';
  }
}
