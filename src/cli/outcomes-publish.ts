import { parseOutcomeQuery } from '../contract/index.js';
import { needPeriod, problemsText, readOutcomesFlags } from './outcomes-options.js';
import { type ExitCode, type Publication, UsageError, type Work, type World } from './world.js';

/** Puts the report that `outcomes measure-report` prints on the FHIR server, with its Measure. */
export async function publish(
  args: readonly string[],
  world: World,
  work: Work,
): Promise<ExitCode> {
  const { question, forms, names } = readOutcomesFlags(args, parseOutcomeQuery, ['json']);
  if (names.length > 0) throw new UsageError('outcomes publish takes options alone.');
  needPeriod(question);
  return work.publishOutcomes(question, (publication) => {
    if (forms.length > 0) world.out(`${JSON.stringify(publication)}\n`);
    return tell(publication, forms.length > 0 ? { ...world, out: () => undefined } : world);
  });
}

function tell(publication: Publication, { out, err }: World): ExitCode {
  switch (publication.kind) {
    case 'written':
      out(`Put on the FHIR server: ${publication.detail}.\n${listed(publication.locations)}`);
      return 0;
    case 'unchanged':
      out(`The FHIR server holds the same already: nothing was sent.\n`);
      out(listed(publication.locations));
      return 0;
    case 'invalid':
      err(`${problemsText(publication.problems)}\n`);
      return 1;
    case 'not-published':
      err(`Not published. ${publication.reason}\n${listed(publication.issues)}`);
      if (!publication.passing) return 1;
      err(`Run it again${later(publication.waitMs)}: a rerun replaces and never doubles.\n`);
      return 3;
  }
}

const listed = (lines: readonly string[]): string => lines.map((line) => `  ${line}\n`).join('');

const later = (waitMs: number | undefined): string =>
  waitMs === undefined ? '' : ` after ${Math.ceil(waitMs / 1_000)} s`;
