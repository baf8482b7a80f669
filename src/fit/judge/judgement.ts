import type { LocalClock } from '../../units/local-clock.ts';
import { meanOf, rootMeanSquare } from '../statistics/misfit.ts';
import { naiveForecasts } from './naive-forecasts.ts';

/** How well a stretch that was withheld was foreseen. */
export interface Judgement {
  /** Hours that were observed. */
  readonly hours: number;
  /** Root mean square error of the model, and its mean. [unit] */
  readonly rmse: number;
  readonly bias: number;
  /** Root mean square errors of guessing. [unit] */
  readonly guesses: { readonly mean: number; readonly week: number; readonly day: number };
  readonly bestGuess: 'mean' | 'week' | 'day';
  /** 1 less the model's error over that of the best guess; above 0 beats guessing. */
  readonly skill: number;
  /** Half width of the stated band of 95 %, and the share of hours inside it. [unit], [-] */
  readonly band: number;
  readonly inside: number;
}

/**
 * @param observed  hourly from the log's start, NaN in gaps
 * @param forecast  from hour `from` on
 * @param sd        standard deviation of an hour's error, as foreseen [unit]
 */
export function judge(
  observed: Float64Array,
  forecast: Float64Array,
  from: number,
  sd: number,
  start: number,
  clock: LocalClock,
): Judgement {
  const truth = observed.subarray(from);
  const errors = (of: Float64Array): Float64Array => truth.map((x, k) => of[k]! - x);
  const naive = naiveForecasts(observed, from, start, clock);
  const guesses = {
    mean: rootMeanSquare(errors(naive.mean)),
    week: rootMeanSquare(errors(naive.week)),
    day: rootMeanSquare(errors(naive.day)),
  };
  const bestGuess = (['mean', 'week', 'day'] as const).reduce((best, each) =>
    guesses[each] < guesses[best] ? each : best,
  );
  const own = errors(forecast);
  const rmse = rootMeanSquare(own);
  const band = TWO_SIDED * sd;
  const inside = own.map((e) => (Number.isNaN(e) ? e : Math.abs(e) <= band ? 1 : 0));
  return {
    hours: own.filter((e) => !Number.isNaN(e)).length,
    rmse,
    bias: meanOf(own),
    guesses,
    bestGuess,
    skill: 1 - rmse / guesses[bestGuess],
    band,
    inside: meanOf(inside),
  };
}

const TWO_SIDED = 1.96;
