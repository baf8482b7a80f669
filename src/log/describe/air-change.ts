import { vapourPressureFromRelativeHumidity } from '../../physics/moist-air/relative-humidity.ts';
import { vapourDensity } from '../../physics/moist-air/vapour-density.ts';
import { SPECIES } from '../../species/species-table.ts';
import { type Log, type LoggedSeries, roomsOf, seriesOf } from '../log.ts';
import { middleOf } from '../middle-of.ts';
import { type EvenSteps, meansOverSteps } from '../onto-steps.ts';
import { type Decay, decaysIn } from './decays.ts';
import type { SeriesFacts } from './series-facts.ts';

/** How fast a room's air lost something, by the decays that its log shows. */
export interface AirChange {
  readonly room: string;
  /** Name of the species whose decays they are, or "moisture". */
  readonly by: string;
  readonly decays: readonly Decay[];
  /** The one in the middle, and the range of the middle half. [1/h] */
  readonly rate: number;
  readonly low: number;
  readonly high: number;
}

/** Rates of every room with decays in what people breathe out, and in moisture after it rose. */
export function airChanges(log: Log, facts: FactsOfSeries): AirChange[] {
  const rooms = roomsOf(log);
  return rooms.flatMap((room) => [...byBreath(log, room, facts), ...byMoisture(log, room, facts)]);
}

type FactsOfSeries = ReadonlyMap<LoggedSeries, SeriesFacts>;

function byBreath(log: Log, room: string, facts: FactsOfSeries): AirChange[] {
  if (BREATH === undefined) return [];
  const series = seriesOf(log, BREATH.name, room);
  const steps = series === undefined ? null : fineSteps(facts.get(series)!);
  if (series === undefined || steps === null) return [];
  const outside = seriesOf(log, BREATH.name, null, 'outdoors');
  const level = outside === undefined ? BREATH.outdoors.value : middleOf(outside.values);
  const excess = meansOverSteps(series, steps, LONGEST_GAP).map((value) => value - level);
  const rule = { least: level, until: 0.25, lasts: 30 * 60 };
  return summary(room, BREATH.name, decaysIn(excess, steps, rule));
}

/** Moisture over what it was in the hours before it rose, after baths and cooking. */
function byMoisture(log: Log, room: string, facts: FactsOfSeries): AirChange[] {
  const humidity = seriesOf(log, 'relative humidity', room);
  const temperature = seriesOf(log, 'temperature', room);
  const steps = humidity === undefined ? null : fineSteps(facts.get(humidity)!);
  if (humidity === undefined || temperature === undefined || steps === null) return [];
  const warm = meansOverSteps(temperature, steps, LONGEST_GAP);
  const vapour = meansOverSteps(humidity, steps, LONGEST_GAP).map((percent, k) =>
    vapourGrams(warm[k]!, percent),
  );
  const before = Math.round((3 * 3600) / steps.step);
  const excess = vapour.map((value, k) => value - quietBefore(vapour, k, before));
  const rule = { least: 1.5, until: 0.3, lasts: 20 * 60 };
  return summary(room, 'moisture', decaysIn(excess, steps, rule));
}

/** Water in the air. [g/m3] */
export function vapourGrams(celsius: number, percent: number): number {
  if (Number.isNaN(celsius) || Number.isNaN(percent)) return Number.NaN;
  const pressure = vapourPressureFromRelativeHumidity(celsius, Math.min(100, percent));
  return vapourDensity(pressure, celsius);
}

/** The lowest of the steps before one, which a rise began from; NaN where too few are known. */
function quietBefore(values: Float64Array, k: number, steps: number): number {
  let lowest = Number.POSITIVE_INFINITY;
  let known = 0;
  for (let n = Math.max(0, k - steps); n < k; n++) {
    if (Number.isNaN(values[n]!)) continue;
    known++;
    if (values[n]! < lowest) lowest = values[n]!;
  }
  return known * 2 >= steps ? lowest : Number.NaN;
}

/** Steps as fine as a series is read; null where decays would fall between its readings. */
function fineSteps({ every, start, end }: SeriesFacts): EvenSteps | null {
  const step = STEPS.find((fine) => fine >= every);
  if (step === undefined) return null;
  const from = Math.ceil(start / step) * step;
  const count = Math.floor((end - from) / step);
  return count < 12 ? null : { start: from, step, count };
}

function summary(room: string, by: string, decays: readonly Decay[]): AirChange[] {
  if (decays.length < FEWEST) return [];
  const rates = Float64Array.from(decays, ({ rate }) => rate).sort();
  const at = (share: number) => rates[Math.round(share * (rates.length - 1))]!;
  return [{ room, by, decays, rate: at(0.5), low: at(0.25), high: at(0.75) }];
}

const BREATH = SPECIES.find(({ sources }) => sources.body?.breathed === true);
const STEPS = [300, 600, 900]; // [s]
const LONGEST_GAP = 1800; // [s]
const FEWEST = 3;
