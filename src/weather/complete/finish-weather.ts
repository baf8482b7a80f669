import { humidityRatioFromVapourPressure } from '../../physics/moist-air/humidity-ratio.ts';
import { standardPressure } from '../../physics/moist-air/standard-pressure.ts';
import type { Problem } from '../../units/problem.ts';
import { OUTDOOR_SPECIES, type Quantity } from '../quantity.ts';
import type { RawSeries } from '../raw-series.ts';
import { throwProblems } from '../throw-problems.ts';
import type { Weather, WeatherNote } from '../weather.ts';
import type { WeatherOptions } from '../weather-options.ts';
import { alignTimestamps } from './align-timestamps.ts';
import { checkPlace } from './check-place.ts';
import { checkRanges } from './check-ranges.ts';
import { checkTimes } from './check-times.ts';
import { completeColumns } from './complete-columns.ts';
import { outdoorSun } from './outdoor-sun.ts';

/**
 * The checked, complete series from what a reader found.
 *
 * @param problems  what the reader already complains of
 * @throws InputProblems with those and everything found here
 */
export function finishWeather(
  raw: RawSeries,
  options: WeatherOptions,
  problems: Problem[],
): Weather {
  const notes: WeatherNote[] = [...raw.notes];
  checkPlace(raw, problems);
  noteOvershoot(raw, notes);
  checkRanges(raw, problems);
  const grid = checkTimes(raw, problems);
  if (grid === null) throwProblems(problems);
  const columns = completeColumns(raw, grid!, options, problems, notes);
  throwProblems(problems);

  const { step, count } = grid!;
  const { title, latitude, longitude, elevation } = raw.place;
  const shift = alignTimestamps(raw.stamps, step, raw.typical);
  const start = grid!.start - shift.earlier;
  const temperature = shift.instant(columns.get('temperature')!);
  const vapour = shift.instant(columns.get('vapour pressure')!);
  const pressure = stationPressure(columns.get('pressure'), raw, count, shift.instant, notes);
  const direction = columns.get('wind direction') ?? new Float64Array(count).fill(Number.NaN);
  const mean = (quantity: Quantity) => {
    const values = columns.get(quantity);
    return values === undefined ? undefined : shift.interval(values);
  };
  const { how, ...sun } = outdoorSun(mean, { start, step, count, latitude, longitude });
  if (how !== '') notes.push({ id: sun.sun === 'none' ? 'no-sun' : 'sun-derived', text: how });
  const species: Record<string, Float64Array> = {};
  for (const name of OUTDOOR_SPECIES) {
    const values = mean(name);
    if (values !== undefined) species[name] = values;
  }
  if (shift.earlier > 0 && !raw.typical) notes.push({ id: 'first-reading', text: FIRST });
  return {
    ...{ title, latitude, longitude, elevation, start, step, count, periodic: raw.typical },
    temperature,
    humidityRatio: vapour.map((pv, k) => humidityRatioFromVapourPressure(pv, pressure[k]!)),
    pressure,
    windSpeed: shift.instant(columns.get('wind speed')!),
    windDirection: shift.direction(direction),
    ...sun,
    sun: sun.sun === 'measured' ? (raw.sun ?? 'measured') : sun.sun,
    species,
    notes,
  };
}

/** Pressure at the height of the place: as measured, lifted from sea level, or the standard one. [Pa] */
function stationPressure(
  values: Float64Array | undefined,
  raw: RawSeries,
  count: number,
  instant: (values: Float64Array) => Float64Array,
  notes: WeatherNote[],
): Float64Array {
  const standard = standardPressure(raw.place.elevation);
  if (values === undefined) {
    const text = `no pressure in the file: ${Math.round(standard)} Pa from the elevation`;
    notes.push({ id: 'pressure-from-elevation', text });
    return new Float64Array(count).fill(standard);
  }
  if (!raw.pressureAtSeaLevel) return instant(values);
  const lift = standard / standardPressure(0);
  notes.push({ id: 'pressure-lifted', text: 'pressure taken from sea level to the elevation' });
  return instant(values).map((value) => value * lift);
}

function noteOvershoot(raw: RawSeries, notes: WeatherNote[]) {
  const relative = raw.columns.get('relative humidity');
  const over = relative?.values.filter((value) => value > 100 && value <= 105).length ?? 0;
  if (over === 0) return;
  const text = `${over} relative ${over === 1 ? 'humidity' : 'humidities'} above 100 % read as 100 %`;
  notes.push({ id: 'humidity-overshoot', text });
}

const FIRST = 'the file names steps by their end: the first reading also stands one step earlier';
