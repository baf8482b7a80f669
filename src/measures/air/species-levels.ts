import { quickselect } from 'simple-statistics';
import type { Home } from '../../home/home.ts';
import { type LocalClock, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Hour } from '../hourly-means.ts';
import type { SpeciesLevel } from '../plan-measures.ts';

/** Usual and highest levels of each species in each room. */
export interface SpeciesLevels {
  observe(hour: Hour): void;
  /** Levels of a room, by name. [species unit] */
  room(room: number): Readonly<Record<string, SpeciesLevel>>;
}

/**
 * Evenings are from 18 to 23 h and nights from 23 to 7 h by the wall clock, each hour by when it
 * begins. The percentile is by nearest rank: that many hours of a hundred lie at or below it.
 *
 * @param hours  length of the period, for which memory is taken once [h]
 */
export function createSpeciesLevels(
  { species, rooms: { length: rooms } }: Home,
  clock: LocalClock,
  hours: number,
): SpeciesLevels {
  const all = species.map(() => Array.from({ length: rooms }, () => new Float64Array(hours)));
  const partOfDay = new Uint8Array(hours);
  let had = 0;

  function observe({ start, species: levels }: Hour): void {
    if (had >= hours) return;
    partOfDay[had] = partAt(toLocal(clock, start));
    for (let q = 0; q < all.length; q++) {
      for (let i = 0; i < rooms; i++) all[q]![i]![had] = levels[q]![i]!;
    }
    had++;
  }

  function levelOf(values: Float64Array): SpeciesLevel {
    const [mean, evening, night] = [ANY, EVENING, NIGHT].map((part) =>
      meanOf(values, partOfDay, part),
    );
    return {
      ...{ mean: mean!, evening: evening!, night: night! },
      ...highest(values),
    };
  }

  return {
    observe,
    room: (i) =>
      Object.fromEntries(
        species.map(({ name }, q) => [name, levelOf(all[q]![i]!.subarray(0, had))]),
      ),
  };
}

/** The 95th percentile by nearest rank, and the highest value; 0 where there are none. */
function highest(values: Float64Array): Pick<SpeciesLevel, 'p95' | 'peak'> {
  const rank = Math.ceil(0.95 * values.length) - 1;
  if (rank < 0) return { p95: 0, peak: 0 };
  const parted = values.slice();
  quickselect(parted as unknown as number[], rank); // it swaps places, which numbers of a fixed kind have too
  let peak = parted[rank]!;
  for (let k = rank; k < parted.length; k++) peak = Math.max(peak, parted[k]!);
  return { p95: parted[rank]!, peak };
}

/** Mean of the values in a part of the day; of all of them where none is in it. */
function meanOf(values: Float64Array, partOfDay: Uint8Array, part: number): number {
  let sum = 0;
  let count = 0;
  for (let k = 0; k < values.length; k++) {
    if (part !== ANY && partOfDay[k] !== part) continue;
    sum += values[k]!;
    count++;
  }
  if (count > 0) return sum / count;
  return part === ANY ? 0 : meanOf(values, partOfDay, ANY);
}

function partAt(local: number): number {
  const hour = Math.floor((local % SECONDS_PER_DAY) / 3600);
  if (hour >= NIGHT_FROM || hour < NIGHT_TO) return NIGHT;
  return hour >= EVENING_FROM ? EVENING : ANY;
}

const [ANY, EVENING, NIGHT] = [0, 1, 2];
const EVENING_FROM = 18; // h by the wall clock
const NIGHT_FROM = 23;
const NIGHT_TO = 7;
