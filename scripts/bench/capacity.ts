import { assignPlaces } from '../../src/capacity/index.js';
import { type FollowUp, proposeDays } from '../../src/pipeline/index.js';
import {
  dayNumber,
  type Instance,
  itemOf,
  ROUTES,
  URGENCIES,
} from '../../tests/capacity/instances.js';
import { asOneProgramme, bestByLinearProgramme } from '../../tests/capacity/linear-programme.js';
import { rankOf } from '../../tests/capacity/plan-rank.js';
import { madeFollowUp } from '../../tests/support/made-follow-ups.js';
import { isNoisy, machine, quiet } from './machine.js';
import { ratio, showRatio } from './ratio.js';

const ROUNDS = 9;
const WARM_UP_ROUNDS = 2;

/** The items and places of a large unit in three years, and a part that the library can do. */
const WHOLE = { items: 5000, places: 20_000 };
const PART = { items: 1000, places: 4000 };
const PATIENTS = 4000;
const PERIOD_DAYS = 1095;
const WINDOW_DAYS = 90;
const PLACES_A_SESSION = 10;

interface Load {
  readonly name: string;
  /** Targets are spread over so many days. */
  readonly dueWithin: number;
  /** Of the places, in tenths. */
  readonly tenths: number;
}

const LOADS: readonly Load[] = [
  { name: 'even', dueWithin: 1000, tenths: 10 },
  { name: 'crowded', dueWithin: 180, tenths: 10 },
  { name: 'short', dueWithin: 1000, tenths: 2 },
];

/**
 * CPU of giving items to places against linear programming (HiGHS) on a fifth of them, and on the
 * same fifth; and of a whole proposal, visits included, against giving places alone. Before it is
 * timed, ours and the library must find plans of the same worth on the fifth.
 */
export async function benchCapacity(): Promise<readonly string[]> {
  await quiet();
  console.log(`\n${machine()}\n${SAID}`);
  const noisy = isNoisy() ? ' noisy' : '';
  return LOADS.flatMap((load) => measured(load).map((line) => line + noisy));
}

const SAID =
  `${WHOLE.items} items x ${WHOLE.places} places against ${PART.items} x ${PART.places}. "crowded":` +
  ' all due within half a year;\n"short": a fifth of the places. The library is charged with' +
  ' one aim and with reading its model, not with\nwriting it; it also solves what ours cannot say.';

function measured(load: Load): readonly string[] {
  const [whole, part] = [instanceOf(WHOLE, load), instanceOf(PART, load)];
  const found = rankOf(assignPlaces(part.items, part.sessions).placed, part);
  if (String(found) !== String(bestByLinearProgramme(part))) {
    throw new Error(`the plans for "${load.name}" are not worth the same`);
  }
  const programme = asOneProgramme(part);
  const followUps = followUpsOf(whole);
  const times: Record<'whole' | 'visits' | 'part' | 'library', number[]> = {
    whole: [],
    visits: [],
    part: [],
    library: [],
  };
  for (let round = 0; round < ROUNDS + WARM_UP_ROUNDS; round += 1) {
    console.error(`${load.name}, round ${round + 1} of ${ROUNDS + WARM_UP_ROUNDS}`);
    const [library, ours, ofWhole, withVisits] = [
      cpuMs(() => programme.solve()),
      cpuMs(() => assignPlaces(part.items, part.sessions)),
      cpuMs(() => assignPlaces(whole.items, whole.sessions)),
      cpuMs(() => proposeDays(followUps, whole.sessions, dayNumber(0))),
    ];
    if (round < WARM_UP_ROUNDS) continue;
    times.library.push(library);
    times.part.push(ours);
    times.whole.push(ofWhole);
    times.visits.push(withVisits);
  }
  const against = (ours: readonly number[]) => ratio(ours, times.library);
  return [
    showRatio(`capacity ${load.name}, all / library on a fifth`, against(times.whole), ALL),
    showRatio(`capacity ${load.name}, a fifth / library on it`, against(times.part), SAME),
    showRatio(
      `capacity ${load.name}, proposal with visits / all`,
      ratio(times.visits, times.whole),
      PROPOSAL,
    ),
  ];
}

const ALL = { goal: 4, stretch: 1 };
const SAME = { goal: 0.2, stretch: 0.1 };
/** Grouping into visits leaves fewer of them, and each of them to be shown. */
const PROPOSAL = { goal: 2, stretch: 1 };

function cpuMs(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** The items as follow-ups of patients some of whom have two; nobody needs both routes at once. */
const followUpsOf = ({ items }: Instance): readonly FollowUp[] =>
  items.map(({ key, route, urgency, earliestOn, targetOn, latestOn }, i) =>
    madeFollowUp(key, [earliestOn, targetOn, latestOn], {
      patient: `EX-P-${i % PATIENTS}`,
      item: {
        route: route === 'both' ? 'upper' : route,
        urgency: urgency === 'routine' ? urgency : 'urgent',
      },
    }),
  );

/** Items and sessions of a seed, the same in every run. */
function instanceOf(size: typeof WHOLE, { dueWithin, tenths }: Load): Instance {
  const below = randomFrom(7);
  const pick = <T>(list: readonly T[], otherwise: T): T => list[below(list.length)] ?? otherwise;
  const items = Array.from({ length: size.items }, (_, i) => {
    const target = WINDOW_DAYS + below(dueWithin);
    const [early, late] = [below(WINDOW_DAYS), below(WINDOW_DAYS)];
    const urgency = below(2) === 0 ? 'routine' : pick(URGENCIES, 'routine');
    const window = [target - early, target, target + late] as const;
    return itemOf(`item-${i}`, pick(ROUTES, 'upper'), urgency, window);
  });
  const length = size.places / PLACES_A_SESSION;
  const sessions = Array.from({ length }, (_, s) => ({
    on: dayNumber(Math.floor((s * PERIOD_DAYS) / length)),
    route: ROUTES[s % ROUTES.length] ?? 'both',
    places: tenths,
  }));
  return { items, sessions };
}

/** Whole numbers from 0, by a linear congruence (Numerical Recipes; from memory). */
function randomFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    return Math.floor((state / 2 ** 32) * below);
  };
}
