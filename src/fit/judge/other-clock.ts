import type { FittedStage } from '../fitted-stage.ts';
import type { Division } from '../readings/span.ts';
import { meanOf, rootMeanSquare } from '../statistics/misfit.ts';

/**
 * Whether every reading would fit the home better an hour or two earlier or later, in a sentence; none
 * where they fit best as they are. A logger whose clock keeps another time shifts all at once: sun and
 * weather with the household's hours.
 */
export function otherClock(stages: readonly FittedStage[], division: Division): string[] {
  const found = SHIFTS.map((shift) => {
    const gains = gainsOf(shift, stages, division);
    return { shift, gain: isClear(gains, gainsOf(-shift, stages, division)) ? middle(gains) : 0 };
  });
  const best = found.reduce((one, other) => (other.gain > one.gain ? other : one));
  if (best.gain === 0) return [];
  const by = Math.abs(best.shift) === 1 ? 'an hour' : `${Math.abs(best.shift)} hours`;
  const [readings, household] = best.shift > 0 ? ['later', 'earlier'] : ['earlier', 'later'];
  return [
    `All readings would fit clearly better if they were taken ${by} ${readings} than they say. ` +
      `The clock of the logger may keep another time, such as UTC or winter time: say which with --zone (UTC, +01:00) and fit again. Else the household does everything ${by} ${household} than the scenario says. Until that is right, other values make up for it, above all airing and sun.`,
  ];
}

/**
 * Whether errors fall clearly: those of the middle channel by a fifth and each by a twentieth, or, of a home
 * that is much unlike the model, half of that in four channels and more that all are worse the other way.
 */
function isClear(gains: readonly number[], otherWay: readonly number[]): boolean {
  if (gains.length === 0) return false;
  const [least, usual] = [Math.min(...gains), middle(gains)];
  if (least >= LEAST && usual > CLEARLY) return true;
  const agree = gains.length >= MANY && otherWay.every((gain) => gain < 0);
  return agree && least >= LEAST / 2 && usual > CLEARLY / 2;
}

const middle = (gains: readonly number[]): number =>
  gains.toSorted((a, b) => a - b)[Math.floor(gains.length / 2)]!;

/** By which share the error of each channel falls where readings are taken so many hours later, the mean error apart. */
function gainsOf(shift: number, stages: readonly FittedStage[], division: Division): number[] {
  return stages.flatMap(({ channels, fit }) =>
    channels.flatMap(({ observed, stretches }, c) => {
      // A meter that is read every day knows no hours.
      if (stretches !== undefined) return [];
      const { residuals } = fit.left[c]!.errors;
      const [as, then] = [0, shift].map((by) => spread(observed, residuals, by, division));
      return Number.isNaN(as! + then!) || as === 0 ? [] : [1 - then! / as!];
    }),
  );
}

/** Standard deviation of what was observed over what is modelled some hours later, in the fitted hours. [unit] */
function spread(
  observed: Float64Array,
  residuals: Float64Array,
  by: number,
  { release, withheld }: Division,
): number {
  const errors = new Float64Array(Math.max(0, withheld - release - 2 * FURTHEST)).map((_, k) => {
    const hour = release + FURTHEST + k;
    const modelled = observed[hour + by]! - residuals[hour + by]!;
    return observed[hour]! - modelled;
  });
  const mean = meanOf(errors);
  return rootMeanSquare(errors.map((e) => e - mean));
}

/** [h] */
const SHIFTS = [-2, -1, 1, 2];
const FURTHEST = 2;
/** Shares by which errors fall at another clock: in the middle, and of each channel at least. [-] */
const CLEARLY = 0.2;
const LEAST = 0.05;
const MANY = 4;
