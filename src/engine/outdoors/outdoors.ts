import type { OutdoorSeries, Species } from '../../home/home.ts';
import type { Weather } from '../../weather/weather.ts';
import type { SunSeries } from './sun-series.ts';

/**
 * Outdoor conditions as means over control steps, for one span of steps at a time.
 *
 * Columns that hold at an instant are interpolated and averaged over the step. A periodic year
 * repeats; any other file's first and last values hold beyond its ends.
 */
export interface Outdoors {
  /** [°C] */
  readonly temperature: Float64Array;
  /** [kg/kg] */
  readonly humidityRatio: Float64Array;
  /** [m/s] */
  readonly windSpeed: Float64Array;
  /** Direction the wind comes from, as last read; where unknown it goes round. [deg] */
  readonly windFrom: Float64Array;
  /** Number of the interval of the sun's series that the step lies in. */
  readonly interval: Int32Array;
  /** Outdoor level by species: from the weather, by month, or constant. [species unit] */
  readonly species: readonly Float64Array[];
}

/** Allocate outdoor conditions for a span of at most `steps` steps. */
export function createOutdoors(species: readonly Species[], steps: number): Outdoors {
  return {
    temperature: new Float64Array(steps),
    humidityRatio: new Float64Array(steps),
    windSpeed: new Float64Array(steps),
    windFrom: new Float64Array(steps),
    interval: new Int32Array(steps),
    species: species.map(() => new Float64Array(steps)),
  };
}

/**
 * Fill the outdoor conditions of one span of steps.
 *
 * @param start  instant at which the first step begins [s UTC]
 * @param dt     control step [s]
 * @param shift  added to every instant before the weather is looked up, for spin-ups [s]
 */
export function layOutOutdoors(
  out: Outdoors,
  weather: Weather,
  sun: SunSeries,
  species: readonly Species[],
  start: number,
  dt: number,
  steps: number,
  shift: number,
): void {
  layOutSpecies(out, weather, species, start + shift, dt, steps);
  const samples = Math.max(1, Math.ceil(dt / weather.step));
  for (let s = 0; s < steps; s++) {
    let temperature = 0;
    let humidity = 0;
    let wind = 0;
    for (let q = 0; q < samples; q++) {
      const at = start + shift + (s + (q + 0.5) / samples) * dt;
      const place = (at - weather.start) / weather.step;
      const k = Math.floor(place);
      const part = place - k;
      const a = wrap(k, weather.count, weather.periodic);
      const b = wrap(k + 1, weather.count, weather.periodic);
      temperature += weather.temperature[a]! * (1 - part) + weather.temperature[b]! * part;
      humidity += weather.humidityRatio[a]! * (1 - part) + weather.humidityRatio[b]! * part;
      wind += weather.windSpeed[a]! * (1 - part) + weather.windSpeed[b]! * part;
    }
    const middle = start + shift + (s + 0.5) * dt;
    out.interval[s] = wrap(
      Math.floor((middle - sun.start) / sun.step),
      sun.count,
      weather.periodic,
    );
    out.temperature[s] = temperature / samples;
    out.humidityRatio[s] = humidity / samples;
    out.windSpeed[s] = wind / samples;
    const reading = Math.round((middle - weather.start) / weather.step);
    const from = weather.windDirection[wrap(reading, weather.count, weather.periodic)]!;
    out.windFrom[s] = Number.isNaN(from) ? goingRound(Math.round(middle / dt)) : from;
  }
}

/** Outdoor levels of the species over the span. */
function layOutSpecies(
  out: Outdoors,
  weather: Weather,
  species: readonly Species[],
  start: number,
  dt: number,
  steps: number,
): void {
  species.forEach(({ name, outdoor, outdoorByMonth, outdoorSeries }, q) => {
    const column = out.species[q]!;
    const series = weather.species[name];
    const own = outdoorSeries && openSeries(outdoorSeries);
    for (let s = 0; s < steps; s++) {
      const middle = start + (s + 0.5) * dt;
      if (series !== undefined) {
        column[s] = meanLevel(weather, series, start + s * dt, dt);
      } else if (own !== undefined) {
        column[s] = meanLevel(own, outdoorSeries!.values, start + s * dt, dt);
      } else if (outdoorByMonth !== undefined) {
        column[s] = outdoorByMonth[new Date(middle * 1000).getUTCMonth()]!;
      } else {
        column[s] = outdoor;
      }
    }
  });
}

/** Where the values of an interval column lie. */
type Evenly = Pick<Weather, 'start' | 'step' | 'count' | 'periodic'>;

const openSeries = ({ start, step, values }: OutdoorSeries): Evenly => ({
  ...{ start, step, count: values.length, periodic: false },
});

/** Mean of an interval column over a step, by evenly spread samples. */
function meanLevel(weather: Evenly, series: Float64Array, from: number, dt: number): number {
  const samples = Math.max(1, Math.ceil(dt / weather.step));
  let sum = 0;
  for (let q = 0; q < samples; q++) {
    const at = from + ((q + 0.5) / samples) * dt;
    const interval = Math.floor((at - weather.start) / weather.step);
    sum += series[wrap(interval, weather.count, weather.periodic)]!;
  }
  return sum / samples;
}

/**
 * Direction of a wind that nobody recorded: another one in every step, spread evenly over any dozen of
 * them, so that a day is a mean over directions. [deg]
 */
function goingRound(step: number): number {
  return 360 * ((step * GOLDEN) % 1);
}

/** Number of the value that stands for number k, which may lie before or after the n there are. */
function wrap(k: number, n: number, periodic: boolean): number {
  if (k >= 0 && k < n) return k;
  if (periodic) return ((k % n) + n) % n;
  return k < 0 ? 0 : n - 1;
}

/** Fraction of the golden ratio: its multiples fall evenly between the integers. */
const GOLDEN = 0.6180339887498949;
