import type { Appointment, Bundle } from 'fhir/r4.js';
import type { FollowUpPage, ScheduledFollowUp } from '../../src/pipeline/index.js';
import { appointmentWords } from './booking-words.js';
import type { Calls } from './call.js';
import { lines } from './lines.js';

/** Follow-ups that are shown of a list. */
const SHOWN = 5;

/** What the scheduler of a unit sees of all that was pushed, in a screen of text. */
export async function tellScheduler(calls: Calls, fhirBase: string): Promise<string> {
  const overdue = '/follow-ups?due=overdue&kind=endoscopy&state=open';
  const feeds = '/follow-ups/feeds';
  const wish = JSON.stringify({ schema: 'feed/1', expiresInDays: 1 });
  const page = await calls.read<FollowUpPage<ScheduledFollowUp>>('scheduler', overdue);
  const feed = await calls.read<{ readonly path: string }>('scheduler', feeds, wish);
  const calendar = await fetch(calls.base + feed.path);
  return [
    '\nThe scheduler sees what is due and when, and nothing of what was found.',
    `\n  Examinations that are overdue: GET ${overdue}\n`,
    listed(page.followUps),
    '\n  What was booked above, on the FHIR server: GET /Appointment?_sort=date\n',
    ...(await appointments(fhirBase)).map((one) => `    ${appointmentWords(one)}`),
    `\n  A calendar to subscribe to: POST ${feeds} ${wish}\n`,
    `    ${calls.base}${feed.path}\n`,
    bookedIn(await calendar.text()),
  ].join('\n');
}

function listed(followUps: readonly ScheduledFollowUp[]): string {
  if (followUps.length === 0) return '    none';
  const rows = followUps.slice(0, SHOWN).map(({ item, case: { value } }) => {
    const { earliest = '', target = '', latest = '' } = item.proposed ?? item.due ?? {};
    const what = item.task?.replaceAll('-', ' ') ?? `${item.route} endoscopy`;
    const window = earliest === latest ? earliest : `${earliest} to ${latest}`;
    return [target, window, what, item.urgency, value];
  });
  const table = [['best on', 'window', 'what', 'urgency', 'case'], ...rows];
  const width = (column: number): number =>
    Math.max(...table.map((row) => row[column]?.length ?? 0));
  const shown = table.map((row) =>
    `    ${row.map((cell, i) => cell.padEnd(width(i))).join('  ')}`.trimEnd(),
  );
  const more = followUps.length - rows.length;
  return [...shown, ...(more > 0 ? [`    ... and ${more} more`] : [])].join('\n');
}

/** Those with a time; what is only proposed has none. */
async function appointments(fhirBase: string): Promise<readonly Appointment[]> {
  const response = await fetch(`${fhirBase}/Appointment?_sort=date`);
  const found = (await response.json()) as Bundle<Appointment>;
  const all = (found.entry ?? []).flatMap(({ resource }) => resource ?? []);
  return all.filter(({ start }) => start !== undefined);
}

/** The beginning of a calendar, and the last event that is booked. */
function bookedIn(calendar: string): string {
  const [head = '', ...events] = calendar.split('BEGIN:VEVENT');
  const booked = events.findLast((event) => event.includes('STATUS:CONFIRMED')) ?? '';
  return `${head}...\r\nBEGIN:VEVENT${booked.slice(0, booked.lastIndexOf('END:VEVENT'))}END:VEVENT\r\n...`
    .split('\r\n')
    .map((line) => lines('    ', line))
    .join('\n');
}
