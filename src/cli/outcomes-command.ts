import { parseOutcomeQuery } from '../contract/index.js';
import { renderQualityReport } from '../pages/index.js';
import { describeOutcomes } from './describe-outcomes.js';
import { needPeriod, problemsText, readOutcomesFlags } from './outcomes-options.js';
import { publish } from './outcomes-publish.js';
import { type Command, type ExitCode, UsageError, type Work, type World } from './world.js';

const HELP = `Usage: dissection-records outcomes [options]
       dissection-records outcomes report [options] > report.html
       dissection-records outcomes measure-report --from DAY --to DAY > report.json
       dissection-records outcomes publish --from DAY --to DAY

Counts the outcomes of all kept cases: rates with their intervals, what is missing, quartiles, and
where first checks stand. report writes one printable HTML page with charts, measure-report a FHIR
MeasureReport for other units, in which small counts are always hidden. publish puts that report and
its Measure on the FHIR server of the unit, in one transaction: a rerun replaces, the same numbers
again change nothing, and a report by groups stands beside the one without. Uses the database and
the settings that serve would use; a service may run meanwhile. Small counts are hidden where the
settings of the unit hide them; a ! beside a rate is a small count that is shown.

Options:
  --from DAY, --to DAY  days of the resection, YYYY-MM-DD, both included
  --by WORDS            groups, one or two with a comma: organ, ruleSet, sizeBand, fibrosis,
                        technique, operator, traineeBand
  --organ, --rule-set, --size-band, --fibrosis, --technique, --operator, --trainee-band VALUE
                        cases of this value alone; not-told where a record may not tell it
  --interval METHOD     wilson, which is used if not said, or clopper-pearson
  --json                one JSON document, as GET /outcomes answers; of publish what became of it
  --help                this text

Exit code: 0 done, 1 the question would show small counts, or the FHIR server refuses what was put
there, 2 called wrongly, 3 the database or the FHIR server cannot be had: try again.
`;

export const outcomes: Command = {
  help: HELP,
  run: (args, world, work) => {
    const [action, ...rest] = args;
    switch (action) {
      case 'report':
        return report(rest, world, work);
      case 'measure-report':
        return measureReport(rest, world, work);
      case 'publish':
        return publish(rest, world, work);
      default:
        return table(args, world, work);
    }
  },
};

async function table(args: readonly string[], world: World, work: Work): Promise<ExitCode> {
  const { question, forms, names } = readOutcomesFlags(args, parseOutcomeQuery, ['json']);
  if (names.length > 0) throw new UsageError('outcomes knows: report, measure-report, publish.');
  return work.outcomes(async (service) => {
    const found = await service.readOutcomes(question);
    if (found.kind === 'invalid') return refuse(found.problems, world);
    const { report } = found;
    world.out(forms.length > 0 ? `${JSON.stringify(report)}\n` : `${describeOutcomes(report)}\n`);
    return 0;
  });
}

async function report(args: readonly string[], world: World, work: Work): Promise<ExitCode> {
  const { question, names } = readOutcomesFlags(args, parseOutcomeQuery, []);
  if (names.length > 0) throw new UsageError('outcomes report takes options alone.');
  return work.outcomes(async (service) => {
    const found = await service.readOutcomesAtLarge(question);
    if (found.kind === 'invalid') return refuse(found.problems, world);
    world.out(renderQualityReport(found.report).html);
    return 0;
  });
}

/** The same as the route of this name. */
async function measureReport(args: readonly string[], world: World, work: Work): Promise<ExitCode> {
  const { question, names } = readOutcomesFlags(args, parseOutcomeQuery, []);
  if (names.length > 0) throw new UsageError('outcomes measure-report takes options alone.');
  needPeriod(question);
  return work.outcomes(async (service) => {
    const found = await service.readMeasureReport(question);
    if (found.kind === 'invalid') return refuse(found.problems, world);
    world.out(`${JSON.stringify(found.report, undefined, 2)}\n`);
    return 0;
  });
}

function refuse(problems: Parameters<typeof problemsText>[0], { err }: World): ExitCode {
  err(`${problemsText(problems)}\n`);
  return 1;
}
