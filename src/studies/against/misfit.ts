import { HOURS_PER_WEEK } from '../../units/time-units.ts';

/** How far a run is from a log, and whether guessing from the log would have been nearer. */
export interface Misfit {
  /** Hours in which both are known. */
  readonly hours: number;
  readonly mean_logged: number;
  readonly mean_simulated: number;
  /** Mean of simulated less logged. */
  readonly bias: number;
  readonly rmse: number;
  /**
   * Skill against three naive forecasts: 1 is perfect, 0 no better than guessing, below 0 worse; null
   * where too few hours have one. 1 - mean square of the run / mean square of the guess, in the hours
   * that both know.
   */
  readonly skill: {
    /** Against the log's own mean. */
    readonly mean: number | null;
    /** Against the mean of the same hour of the week in the other weeks. */
    readonly same_hour_of_week: number | null;
    /** Against what was logged 24 hours before. */
    readonly last_day_repeated: number | null;
  };
}

/** @returns null where fewer than 24 hours are known of both */
export function misfitOf(logged: Float64Array, simulated: Float64Array): Misfit | null {
  let [hours, sumLogged, sumRun, square] = [0, 0, 0, 0];
  for (let h = 0; h < logged.length; h++) {
    const off = simulated[h]! - logged[h]!;
    if (Number.isNaN(off)) continue;
    hours++;
    sumLogged += logged[h]!;
    sumRun += simulated[h]!;
    square += off * off;
  }
  if (hours < FEWEST) return null;
  const mean = sumLogged / hours;
  const skill = (guess: (h: number) => number) => skillOf(logged, simulated, guess);
  return {
    hours,
    mean_logged: mean,
    mean_simulated: sumRun / hours,
    bias: (sumRun - sumLogged) / hours,
    rmse: Math.sqrt(square / hours),
    skill: {
      mean: skill(() => mean),
      same_hour_of_week: skill(sameHourOfWeek(logged)),
      last_day_repeated: skill((h) => (h < 24 ? Number.NaN : logged[h - 24]!)),
    },
  };
}

function skillOf(
  logged: Float64Array,
  simulated: Float64Array,
  guess: (h: number) => number,
): number | null {
  let [hours, run, naive] = [0, 0, 0];
  for (let h = 0; h < logged.length; h++) {
    const off = simulated[h]! - logged[h]!;
    const guessed = guess(h) - logged[h]!;
    if (Number.isNaN(off) || Number.isNaN(guessed)) continue;
    hours++;
    run += off * off;
    naive += guessed * guessed;
  }
  return hours < FEWEST || naive === 0 ? null : 1 - run / naive;
}

/** Mean of the hours a whole number of weeks away, the hour itself left out. */
function sameHourOfWeek(logged: Float64Array): (h: number) => number {
  const sums = new Float64Array(HOURS_PER_WEEK);
  const counts = new Float64Array(HOURS_PER_WEEK);
  for (let h = 0; h < logged.length; h++) {
    if (Number.isNaN(logged[h]!)) continue;
    sums[h % HOURS_PER_WEEK]! += logged[h]!;
    counts[h % HOURS_PER_WEEK]! += 1;
  }
  return (h) => (sums[h % HOURS_PER_WEEK]! - logged[h]!) / (counts[h % HOURS_PER_WEEK]! - 1);
}

const FEWEST = 24;
