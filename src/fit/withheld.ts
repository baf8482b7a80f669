import type { PreparedPlan } from '../scenario/prepared.ts';
import type { Weather } from '../weather/weather.ts';
import type { FittedStage } from './fitted-stage.ts';
import { hourOfDay, seenHabit, withoutHabit } from './judge/daily-habit.ts';
import { type Guideline14, guideline14 } from './judge/guideline-14.ts';
import { type Judgement, judge } from './judge/judgement.ts';
import { naiveForecasts } from './judge/naive-forecasts.ts';
import { beyondFitted } from './readings/beyond-fitted.ts';
import type { Readings } from './readings/readings.ts';
import type { Division } from './readings/span.ts';
import { type Channel, modelled } from './simulate/channel.ts';
import type { HourlyColumns } from './simulate/hourly-columns.ts';
import { loggedRequest } from './simulate/logged-request.ts';
import type { RunLogged } from './simulate/run-logged.ts';
import type { Left } from './stage/fit-stage.ts';
import { meanOf } from './statistics/misfit.ts';

/** The withheld hours of one channel as they were foreseen, and judged. */
export interface Foreseen {
  readonly channel: Channel;
  /** Whether temperatures were as logged, or nothing was known but the weather. */
  readonly from: 'logged temperature' | 'weather alone';
  /** Hourly, from the first withheld hour on; what errors repeated every day in the fitted hours is in it, but of heat. */
  readonly forecast: Float64Array;
  /** What the guess that came nearest says of those hours. */
  readonly guess: Float64Array;
  readonly judgement: Judgement;
  /** Of the fitted scenario alone, without what errors repeat. */
  readonly alone: Judgement;
  /** CV(RMSE) and NMBE of heating, of the fitted scenario alone; null of everything else. */
  readonly guideline14: Guideline14 | null;
}

/** What was fitted, to which hours, under which weather. */
export interface Fitted {
  readonly division: Division;
  readonly weather: Weather;
  readonly stages: readonly FittedStage[];
}

/** Foresee the withheld hours: once with temperatures as logged, and once from the weather alone. */
export async function foresee(
  run: RunLogged,
  plan: PreparedPlan,
  readings: Readings,
  { division, weather, stages }: Fitted,
): Promise<Foreseen[]> {
  const { start, hours, withheld } = division;
  // Habits of weather that the fit never saw are not known.
  const strange = 1 + beyondFitted(weather, division);
  const from = Math.max(0, withheld - HELD);
  const kinds = [true, false].map((temperature) => ({
    temperature,
    logged: loggedRequest(readings, plan.dt, { from, release: withheld, to: hours, temperature }),
  }));
  const found = await Promise.all(kinds.map(({ logged }) => run({ plan, logged })));
  return kinds.flatMap(({ temperature }, k): Foreseen[] => {
    const columns = found[k] ?? null;
    if (columns === null) return [];
    const known = { columns, plan, from, withheld, start, stages, strange };
    return stages.flatMap(({ group, channels, fit }) => {
      if (temperature && group === 'heat') return [];
      const kind = temperature ? 'logged temperature' : 'weather alone';
      return channels
        .map((channel, c) => foreseenOf(channel, fit.left[c]!, kind, known))
        .filter(({ judgement }) => judgement.hours > 0);
    });
  });
}

interface Known {
  readonly columns: HourlyColumns;
  readonly plan: PreparedPlan;
  readonly from: number;
  readonly withheld: number;
  readonly start: number;
  readonly stages: readonly FittedStage[];
  /** By how much errors may be larger than those that were seen. [-] */
  readonly strange: number;
}

function foreseenOf(
  channel: Channel,
  left: Left,
  from: Foreseen['from'],
  { columns, plan, from: first, withheld, start, stages, strange }: Known,
): Foreseen {
  const { clock } = plan.household;
  const simulated = modelled(columns, channel, first).slice(withheld - first);
  // What is missing of a meter's heat every day is no habit of people, and nobody plans by it.
  const heating = channel.quantity === 'heating';
  const seen = heating ? withoutHabit(left.errors) : seenHabit(left.errors, start, clock);
  const forecast = simulated.map((value, k) =>
    within(channel, value + seen.habit[hourOfDay(withheld + k, start, clock)]!),
  );
  const typical = Math.max(seen.rmse, Number.isNaN(seen.unseen) ? 0 : seen.unseen);
  const warmth = from === 'weather alone' ? byTemperature(channel, forecast, stages) : 0;
  const sd = strange * Math.hypot(typical, SENSORS * channel.floor, warmth);
  const judged = (of: Float64Array) => judge(channel.observed, of, withheld, sd, start, clock);
  const judgement = judged(forecast);
  return {
    ...{ channel, from, forecast, judgement, alone: judged(simulated) },
    guess: naiveForecasts(channel.observed, withheld, start, clock)[judgement.bestGuess],
    guideline14: heating ? guideline14(channel.observed.subarray(withheld), simulated) : null,
  };
}

/** Humidity stays within 0 and 100 %, and nothing but a temperature falls below 0. */
function within({ quantity }: Channel, value: number): number {
  if (quantity === 'temperature') return value;
  return Math.max(0, quantity === 'humidity' ? Math.min(100, value) : value);
}

/** Error of a humidity by that of the temperature which was foreseen with it. [%] */
function byTemperature(
  { quantity, room }: Channel,
  forecast: Float64Array,
  stages: readonly FittedStage[],
): number {
  if (quantity !== 'humidity') return 0;
  const errors = stages.flatMap(({ channels, fit }) =>
    channels.flatMap((channel, c) =>
      channel.quantity === 'temperature' && channel.room === room
        ? [Math.max(fit.left[c]!.rmse, fit.left[c]!.unseen || 0)]
        : [],
    ),
  );
  return Math.max(0, ...errors) * FALLS * meanOf(forecast);
}

/** By which share relative humidity falls where air is a kelvin warmer, at 10 to 25 °C. [1/K] */
const FALLS = 0.062;
/** Least deviation of a forecast over what a sensor is good for. */
const SENSORS = 2;
/** Hours before the release through which rooms are held at the log. */
const HELD = 7 * 24;
