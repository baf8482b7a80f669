import { dailyRanges } from '../../src/measures/series/daily-ranges.ts';
import { extremeWeek } from '../../src/measures/series/extreme-week.ts';
import { airChart } from '../../src/report/charts/air-chart.ts';
import type { Chart } from '../../src/report/charts/chart.ts';
import { coldSpotChart } from '../../src/report/charts/cold-spot-chart.ts';
import { weekChart } from '../../src/report/charts/week-chart.ts';
import type { GalleryRun, Shown } from './run-gallery.ts';

const WIDTH = 720;
const HOURS_OF_WEEK = 168;

const chosen = (run: GalleryRun, names: readonly string[]): Shown[] =>
  names.map((name) => run[name]!);
const roomOf = (one: Shown, room: string): number =>
  one.plan.home.rooms.findIndex(({ name }) => name === room);

/** Relative humidity at the coldest spot of a room, through the period. */
export function coldSpots(run: GalleryRun, room: string, names: readonly string[]): Chart {
  const plans = chosen(run, names).map((one) => {
    const { start, rooms } = one.series;
    const humidity = rooms[roomOf(one, room)]!.coldSpotHumidity;
    return {
      name: one.name,
      days: dailyRanges(humidity, start, one.plan.household.clock),
      hoursAbove80: one.measures.rooms[room]!.cold_spot_hours_above_80_pct,
    };
  });
  return coldSpotChart({ room, plans }, WIDTH);
}

/** What the air of all rooms carries of a species. */
export function air(run: GalleryRun, species: string, names: readonly string[]): Chart {
  const plans = chosen(run, names);
  const [{ plan, measures }] = plans as [Shown];
  const { unit, mean_outdoors: outdoors } = measures.species[species]!;
  const rooms = plan.home.rooms.map(({ name }, k) => {
    const { high: limit, hours } = plan.bands[k]!.species[species]!;
    return { name, limit, hours };
  });
  return airChart(
    {
      ...{ label: LABELS[species]!, unit, outdoors, rooms },
      plans: plans.map((one) => ({
        name: one.name,
        levels: rooms.map(({ name }) => one.measures.rooms[name]!.species[species]!),
      })),
    },
    WIDTH,
  );
}

const LABELS: Readonly<Record<string, string>> = { co2: 'CO2', pm25: 'PM2.5', pollen: 'Pollen' };

/** Temperature of a room through the coldest or the hottest week outdoors. */
export function week(
  run: GalleryRun,
  room: string,
  names: readonly string[],
  end: 'lowest' | 'highest',
): Chart {
  const plans = chosen(run, names);
  const [first] = plans as [Shown];
  const { series, plan } = first;
  const { clock } = plan.household;
  const from = extremeWeek(series.outdoors.temperature, series.start, clock, end);
  const to = from + HOURS_OF_WEEK;
  const own = (one: Shown) => one.series.rooms[roomOf(one, room)]!;
  return weekChart(
    {
      ...{ room, quantity: 'temperature', clock },
      band: plan.bands[roomOf(first, room)]!.temperature,
      start: series.start + from * 3600,
      plans: plans.map((one) => ({
        name: one.name,
        values: own(one).operativeTemperature.subarray(from, to),
      })),
      occupied: own(first).occupied.subarray(from, to),
    },
    WIDTH,
  );
}
