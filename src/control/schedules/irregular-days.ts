import { localDay, toLocal, toUtc, weekday } from '../../units/local-clock.ts';
import { evenDraw, hashFrom, stemOf } from '../../units/seeded-draw.ts';
import { standardNormal } from '../../units/seeded-random.ts';
import { startsOn } from '../../units/starts-on.ts';
import { MINUTES_PER_DAY, SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Household, IrregularDays, Person } from '../household.ts';
import { STREAM, stemsByName } from '../random-streams.ts';
import { onHoliday } from './on-holiday.ts';
import { type StepRange, type Stretch, stretchBetween } from './step-range.ts';

export type Stay = Person['schedule'][number];

/**
 * Every stay of a person as the days come: shifted, spent like a Sunday, spent out, away on holiday.
 *
 * A person's day runs from 3 in the morning to 3 in the morning. Each is drawn by itself, and the
 * pattern it follows is cut at its ends, so that nobody is ever in two places: what changes from one
 * day to the next changes in the small hours, when most people sleep in either.
 *
 * @param stream  from `streamsOfPeople`, decides which days are irregular; null for the pattern and the
 *                holidays alone
 * @param visit  called with the stay and the steps that it takes up
 */
export function eachStay(
  person: Person,
  stream: number | null,
  range: StepRange,
  visit: (stay: Stay, stretch: Stretch) => void,
): void {
  const { clock, start, dt, steps } = range;
  const firstDay = localDay(toLocal(clock, start) - HINGE);
  const lastDay = localDay(toLocal(clock, start + steps * dt) - HINGE);
  for (let day = firstDay; day <= lastDay; day++) {
    const { out, spent, shift } = drawDay(person.irregular, stream, day);
    const dawn = day * SECONDS_PER_DAY + HINGE;
    for (const stay of person.schedule) {
      if (out && !isNight(stay)) continue;
      const reach = Math.ceil(stay.to / MINUTES_PER_DAY);
      for (let away = -reach; away <= 1; away++) {
        const midnight = (day + away) * SECONDS_PER_DAY + shift;
        const from = Math.max(dawn, midnight + stay.from * 60);
        const to = Math.min(dawn + SECONDS_PER_DAY, midnight + stay.to * 60);
        if (to <= from || !startsOn(stay, day + away, spent + away)) continue;
        eachDayAtHome(person, from, to, range, stay, visit);
      }
    }
  }
}

/** Stem of the draws of each person: by the household's seed and the person's name. */
export function streamsOfPeople({ seed = FIRST_SEED, people }: Household): Int32Array {
  const names = people.map(({ name, drawnBy = name }) => drawnBy);
  return stemsByName(seed, STREAM.people, names);
}

/** How one person spends one day. */
interface DrawnDay {
  readonly out: boolean;
  /** Local day number whose weekday the day is spent like. */
  readonly spent: number;
  /** Everything comes so much later. [s] */
  readonly shift: number;
}

/** How a person spends a day, drawn at random. @param day  number of the local day, from 3 in the morning */
export function drawDay(
  irregular: IrregularDays | undefined,
  stream: number | null,
  day: number,
): DrawnDay {
  if (irregular === undefined || stream === null) return { out: false, spent: day, shift: 0 };
  const draw = (k: number): number => evenDraw(hashFrom(stemOf(stream, k), day));
  const kind = draw(0);
  const out = kind < irregular.out;
  const asSunday = !out && kind < irregular.out + irregular.asSunday;
  let draws = 0;
  const normal = standardNormal(() => draw(++draws));
  const deviate = Math.max(-MOST_DEVIATES, Math.min(MOST_DEVIATES, normal));
  return {
    out,
    spent: asSunday ? day - weekday(day) + SUNDAY : day,
    shift: Math.round(deviate * irregular.minutes * 60),
  };
}

/** The night's sleep, also somebody's who works at night, but not a nap. */
export function isNight({ asleep, from, to }: Stay): boolean {
  const nap = from >= NAPS_FROM && to <= NAPS_TO && to - from < LONGEST_NAP;
  return asleep && !nap;
}

/** Visit the parts of a stay, day by day, that do not fall on holidays. @param from  [s local] */
function eachDayAtHome(
  person: Person,
  from: number,
  to: number,
  range: StepRange,
  stay: Stay,
  visit: (stay: Stay, stretch: Stretch) => void,
): void {
  const { clock } = range;
  for (let at = from; at < to; ) {
    const date = localDay(at);
    const end = Math.min(to, (date + 1) * SECONDS_PER_DAY);
    const stretch = stretchBetween(toUtc(clock, at), toUtc(clock, end), range);
    if (stretch !== null && !onHoliday(person, date)) visit(stay, stretch);
    at = end;
  }
}

/** When one person's day gives way to the next, after local midnight. [s] */
export const HINGE = 3 * 3600;
const SUNDAY = 6;
/** Nobody is earlier or later than this many standard deviations. */
const MOST_DEVIATES = 3;
/** [min] */
const NAPS_FROM = 9 * 60;
const NAPS_TO = 20 * 60;
const LONGEST_NAP = 180;
const FIRST_SEED = 1;
