import type { PreparedPlan } from '../scenario/prepared.ts';
import type { FittedStage } from './fit-home.ts';
import { type Guideline14, guideline14 } from './judge/guideline-14.ts';
import { type Judgement, judge } from './judge/judgement.ts';
import { naiveForecasts } from './judge/naive-forecasts.ts';
import type { Readings } from './readings/readings.ts';
import type { Division } from './readings/span-of.ts';
import { type Channel, modelled } from './simulate/channel.ts';
import { loggedRequest } from './simulate/logged-request.ts';
import type { RunLogged } from './simulate/run-logged.ts';

/** The withheld hours of one channel as they were foreseen, and judged. */
export interface Foreseen {
  readonly channel: Channel;
  /** Whether temperatures were as logged, or nothing was known but the weather. */
  readonly from: 'logged temperature' | 'weather alone';
  /** Hourly, from the first withheld hour on. */
  readonly forecast: Float64Array;
  /** What the guess that came nearest says of those hours. */
  readonly guess: Float64Array;
  readonly judgement: Judgement;
  /** CV(RMSE) and NMBE of heating; null of everything else. */
  readonly guideline14: Guideline14 | null;
}

/** Foresee the withheld hours: once with temperatures as logged, and once from the weather alone. */
export async function foresee(
  run: RunLogged,
  plan: PreparedPlan,
  readings: Readings,
  { start, hours, withheld }: Division,
  stages: readonly FittedStage[],
): Promise<Foreseen[]> {
  const from = Math.max(0, withheld - HELD);
  const kinds = [true, false].map((temperature) => ({
    temperature,
    logged: loggedRequest(readings, plan.dt, { from, release: withheld, to: hours, temperature }),
  }));
  const found = await run(kinds.map(({ logged }) => ({ plan, logged })));
  return kinds.flatMap(({ temperature }, k): Foreseen[] => {
    const columns = found[k] ?? null;
    if (columns === null) return [];
    return stages.flatMap(({ group, channels, fit }) => {
      if (temperature && group === 'heat') return [];
      return channels.map((channel, c): Foreseen => {
        const forecast = modelled(columns, channel).slice(withheld - from);
        const { rmse, unseen } = fit.left[c]!;
        const seen = Math.max(rmse, Number.isNaN(unseen) ? 0 : unseen);
        const sd = Math.hypot(seen, SENSORS * channel.floor);
        const { clock } = plan.household;
        const judgement = judge(channel.observed, forecast, withheld, sd, start, clock);
        return {
          channel,
          from: temperature ? 'logged temperature' : 'weather alone',
          forecast,
          guess: naiveForecasts(channel.observed, withheld, start, clock)[judgement.bestGuess],
          guideline14:
            channel.quantity === 'heating'
              ? guideline14(channel.observed.subarray(withheld), forecast)
              : null,
          judgement,
        };
      });
    });
  });
}

/** Least deviation of a forecast over what a sensor is good for. */
const SENSORS = 2;
/** Hours before the release through which rooms are held at the log. */
const HELD = 7 * 24;
