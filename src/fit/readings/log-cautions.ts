import { quantileSorted } from 'simple-statistics';
import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';
import type { Weather } from '../../weather/weather.ts';
import { known } from '../statistics/misfit.ts';
import type { Readings } from './readings.ts';
import type { Division } from './span-of.ts';

/** What is odd about the readings themselves, in sentences without their first capital. */
export function logCautions({ rooms }: Readings, weather: Weather, division: Division): string[] {
  return [
    ...rooms.flatMap(({ name, temperature, humidity, species }) => [
      ...stuck(`temperature of ${name}`, temperature?.hourly),
      ...stuck(`humidity of ${name}`, humidity?.hourly),
      ...ceiling(name, humidity?.hourly),
      ...belowOutdoors(name, species[CARBON_DIOXIDE.name]?.hourly),
    ]),
    ...strangeWeather(weather, division),
  ];
}

/** A sensor whose reading does not move for two days. */
function stuck(name: string, hourly: Float64Array | undefined): string[] {
  let longest = 0;
  let run = 0;
  (hourly ?? []).forEach((value, k, all) => {
    run = k > 0 && Math.abs(value - all[k - 1]!) < 1e-9 ? run + 1 : 0;
    longest = Math.max(longest, run);
  });
  if (longest < STUCK) return [];
  return [`${name} stood still for ${longest + 1} hours: is the sensor alive?`];
}

/** A sensor of humidity that stops at some level. */
function ceiling(room: string, hourly: Float64Array | undefined): string[] {
  const all = known(hourly ?? new Float64Array(0)).sort((a, b) => a - b);
  const most = all.at(-1) ?? 0;
  if (all.length < STUCK || most > 97) return [];
  const atMost = all.filter((x) => x > most - 0.05).length;
  if (atMost < AT_CEILING * all.length) return [];
  return [
    `humidity of ${room} never exceeds ${most.toFixed(1)} % and is often there: the sensor may stop there`,
  ];
}

/** CO2 below what is outdoors. */
function belowOutdoors(room: string, hourly: Float64Array | undefined): string[] {
  const all = known(hourly ?? new Float64Array(0)).sort((a, b) => a - b);
  if (all.length === 0) return [];
  const low = quantileSorted(all, 0.02);
  if (low >= LEAST_BREATHED) return [];
  return [
    `${CARBON_DIOXIDE.symbol} of ${room} falls to ${low.toFixed(0)} ppm, below the air outdoors: calibrate the sensor`,
  ];
}

/** Withheld weather that is colder or warmer than all that was fitted. */
function strangeWeather(
  { temperature, start, step }: Weather,
  { start: from, hours, withheld }: Division,
): string[] {
  const at = (hour: number): number => Math.round((from + hour * 3600 - start) / step);
  const fitted = temperature.slice(Math.max(0, at(0)), at(withheld)).sort();
  const later = temperature.slice(at(withheld), at(hours));
  const [least, most] = [fitted[0], fitted.at(-1)];
  if (least === undefined || most === undefined || later.length === 0) return [];
  const beyond = later.filter((t) => t < least || t > most).length / later.length;
  if (beyond < BEYOND) return [];
  return [
    `in ${(100 * beyond).toFixed(0)} % of the withheld hours it was colder or warmer outdoors than ever in the fitted part`,
  ];
}

const STUCK = 48; // hours
const AT_CEILING = 0.03;
const LEAST_BREATHED = 370; // ppm
const BEYOND = 0.1;
