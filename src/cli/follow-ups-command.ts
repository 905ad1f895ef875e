import { forecast } from './follow-ups-forecast.js';
import { listFollowUps } from './follow-ups-list.js';
import { STATES } from './follow-ups-options.js';
import { proposeDays } from './follow-ups-propose.js';
import { explainFollowUp } from './follow-ups-why.js';
import type { Command } from './world.js';

const HELP = `Usage: dissection-records follow-ups [options]
       dissection-records follow-ups why ID [--json]
       dissection-records follow-ups propose --sessions FILE [--from DAY] [--json | --csv]
       dissection-records follow-ups forecast [--from DAY] [--months N] [--json | --csv]

Lists the examinations and tasks that plans ask for, as far as somebody still has to do something.
why explains one: its rule, what the rule was told, its days, its sources. propose gives open
examinations days out of free places: one visit for those of a patient and route whose windows
meet, the more urgent first, near their targets; nothing is booked. forecast counts the visits to
come. Uses the database and the settings that serve would use; a service may run meanwhile.

Options:
  --from DAY            windows that end on DAY, YYYY-MM-DD, or later; of propose and forecast the
                        first day, instead of today
  --to DAY              windows that begin on DAY or earlier
  --state STATE         one or more, with commas: ${STATES.slice(0, 4).join(', ')},
                        ${STATES.slice(4).join(', ')}
  --route ROUTE         upper or lower
  --overdue             the window is over and there is no appointment
  --unbooked-soon DAYS  no appointment, and the window ends within so many days
  --limit N             at most so many; a table stops at 50 by itself
  --sessions FILE       free places: CSV with the header date,route,places, or a JSON list of such
                        objects; route is upper, lower or both; - is standard input
  --months N            length of the forecast, 36 if not said
  --json                one JSON document
  --csv                 CSV for spreadsheets
  --help                this text

Exit code: 0 done, 1 no such follow-up or no usable sessions, 2 called wrongly, 3 the database or
the file cannot be had.
`;

export const followUps: Command = {
  help: HELP,
  run: (args, world, work) => {
    const [action, ...rest] = args;
    switch (action) {
      case 'why':
        return explainFollowUp(rest, world, work);
      case 'propose':
        return proposeDays(rest, world, work);
      case 'forecast':
        return forecast(rest, world, work);
      default:
        return listFollowUps(args, world, work);
    }
  },
};
