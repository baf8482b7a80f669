import type { Adjustable } from '../../scenario/edits/adjustables.ts';
import { seededRandom } from '../../units/seeded-random.ts';
import type { Habitual } from '../judge/daily-habit.ts';
import { leastSd, TWO_SIDED, valueAt } from '../parameters/scaled-parameter.ts';
import { costOf } from '../search/gauss-newton.ts';
import { posteriorOf } from '../search/posterior.ts';
import { profileSd } from '../search/profile.ts';
import type { Channel } from '../simulate/channel.ts';
import { ERROR_FORMS, type ErrorForm } from '../statistics/error-form.ts';
import { meanOf, rootMeanSquare } from '../statistics/misfit.ts';
import type { Evaluations } from './evaluations.ts';
import { type Hours, type Searched, searchStage, weighted, weightsOf } from './search-stage.ts';
import { spreadOf } from './spread.ts';

/** A parameter as the log has it. */
export interface FittedParameter {
  readonly adjustable: Adjustable;
  /** Prior standard deviations from what was assumed. */
  readonly place: number;
  readonly value: number;
  /** Range of 95 %. */
  readonly low: number;
  readonly high: number;
  /** Standard deviation over that of the prior. */
  readonly left: number;
  /** Whether the log tells it, tells it only together with another, or does not tell it. */
  readonly told: 'yes' | 'together' | 'no';
  /** The parameter it hangs together with most, and how. */
  readonly mostLike: { readonly name: string; readonly correlation: number } | null;
}

/** What a fit leaves of one channel. [unit] */
export interface Left {
  readonly rmse: number;
  readonly bias: number;
  readonly rho: number;
  readonly unseen: number;
  /** Hour by hour, of the last search and of the one that did not see the last quarter. */
  readonly errors: Habitual;
}

/** What came of fitting some parameters to some channels. */
export interface StageFit {
  readonly parameters: readonly FittedParameter[];
  readonly form: ErrorForm;
  readonly runs: number;
  readonly iterations: number;
  readonly ended: Searched['minimum']['ended'];
  /** Whether searches from other starts came to the same place, as far as they came to an end. */
  readonly startsAgree: boolean;
  /** Half the weighted sum of squares with the prior. */
  readonly cost: number;
  /** One a channel: what is left in the hours fitted, and in the last quarter when it was not fitted. [unit] */
  readonly left: readonly Left[];
}

/** What is to be found, and what it shows in. */
export interface Asked {
  readonly adjustables: readonly Adjustable[];
  readonly channels: readonly Channel[];
}

/**
 * Fit parameters to a stretch of a log.
 *
 * Every form of the error is tried on the first three quarters and judged by a free run through the
 * last; the better one is fitted to all of it. Ranges: see `rangesOf`; what correlates by more than 0.9 with
 * another is profiled besides.
 *
 * @param mostRuns  most runs that it may take
 * @param begin     where the first search begins; the others begin elsewhere
 * @returns null where the scenario cannot be run at all
 */
export async function fitStage(
  { adjustables, channels }: Asked,
  evaluations: Evaluations,
  hours: Hours,
  mostRuns: number,
  begin: readonly number[],
): Promise<StageFit | null> {
  const split = Math.round(hours.from + 0.75 * (hours.to - hours.from));
  const first: Hours = { from: hours.from, to: split };
  const last: Hours = { from: split, to: hours.to };
  const search = (
    form: ErrorForm,
    within: Hours,
    start: readonly number[],
    share: number,
    near = true,
  ) => {
    const what = { channels, form, hours: within, near };
    return searchStage(evaluations, what, start, Math.floor(share * mostRuns));
  };
  const starts = [begin, ...startsOf(adjustables.length, STARTS - 1)];
  const frees: Searched[] = [];
  for (const [k, start] of starts.entries()) {
    const found = await search('free run', first, start, k === 0 ? 0.4 : 0.6, false);
    if (found !== null) frees.push(found);
    if (evaluations.used() > 0.4 * mostRuns) break;
  }
  const weights = frees[0]?.weights ?? [];
  const costOfAll = ({ residuals, minimum: { at } }: Searched) =>
    costOf(at, weighted(residuals, weights, 'free run', first));
  const free = frees.toSorted((a, b) => costOfAll(a) - costOfAll(b))[0];
  if (free === undefined) return null;
  const startsAgree = frees.every(
    ({ minimum }) =>
      minimum.ended === 'budget' ||
      minimum.at.every((z, i) => Math.abs(z - free.minimum.at[i]!) < AGREE),
  );
  const tried = new Map<ErrorForm, Searched>([['free run', free]]);
  for (const [k, form] of ERROR_FORMS.slice(1).entries()) {
    const found = await search(form, first, free.minimum.at, 0.7 + 0.1 * k);
    if (found !== null) tried.set(form, found);
  }
  const [form, best] = [...tried].toSorted(
    ([, a], [, b]) => unseenError(channels, a, last) - unseenError(channels, b, last),
  )[0]!;
  const whole = (await search(form, hours, best.minimum.at, 0.92)) ?? best;
  const parameters = await rangesFor(
    { adjustables, channels },
    evaluations,
    hours,
    form,
    whole,
    mostRuns,
  );
  return {
    parameters,
    form,
    runs: evaluations.used(),
    iterations: whole.minimum.iterations,
    ended: whole.minimum.ended,
    startsAgree,
    cost: whole.minimum.cost,
    left: channels.map((_, c) => {
      const residuals = whole.residuals[c]!.subarray(hours.from, hours.to);
      return {
        rmse: rootMeanSquare(residuals),
        bias: -meanOf(residuals),
        rho: whole.weights[c]!.rho,
        unseen: rootMeanSquare(best.residuals[c]!.subarray(last.from, last.to)),
        errors: {
          ...{ residuals: whole.residuals[c]!, before: best.residuals[c]! },
          ...{ from: hours.from, split, to: hours.to },
        },
      };
    }),
  };
}

/** Free-run error in some hours, each channel over what its sensor is good for. */
function unseenError(channels: readonly Channel[], { residuals }: Searched, hours: Hours): number {
  return channels.reduce((sum, { floor }, c) => {
    const error = rootMeanSquare(residuals[c]!.subarray(hours.from, hours.to));
    return sum + (Number.isNaN(error) ? 0 : (error / floor) ** 2);
  }, 0);
}

/** Ranges of all parameters, by some more runs. */
async function rangesFor(
  { adjustables, channels }: Asked,
  evaluations: Evaluations,
  hours: Hours,
  form: ErrorForm,
  { minimum: { at }, weights: own }: Searched,
  mostRuns: number,
): Promise<FittedParameter[]> {
  const beside = at.map((_, i) => at.map((z, j) => (i === j ? z + (z > 0 ? -STEP : STEP) : z)));
  const [here, ...around] = await evaluations.ask([at, ...beside]);
  // Curvature is of whitened errors, whose correlation is that of the run as it is.
  const weights = form === 'restarted' ? weightsOf(channels, here!, hours) : own;
  const derivatives = (as: ErrorForm, by = weights): Derivatives => {
    const residuals = weighted(here!, by, as, hours);
    const columns = around.map((other, i) => {
      if (other === null || other === undefined) return new Float64Array(residuals.length);
      const there = weighted(other, by, as, hours);
      return residuals.map((r, k) => (r - there[k]!) / (beside[i]![i]! - at[i]!));
    });
    return { columns, residuals };
  };
  const innovations = derivatives('whitened');
  const posterior = posteriorOf(innovations.columns);
  const found = form === 'whitened' ? innovations : derivatives(form, own);
  const spread = spreadOf(found.columns, found.residuals, at, weights.length);
  const costsAt = async (places: readonly (readonly number[])[]) =>
    (await evaluations.ask(places)).map((each, k) =>
      each === null ? null : costOf(places[k]!, weighted(each, weights, 'whitened', hours)),
    );
  const fitted: FittedParameter[] = [];
  for (const [i, adjustable] of adjustables.entries()) {
    const mostLike = likest(posterior.correlation[i]!, i, adjustables);
    const tied = mostLike !== null && Math.abs(mostLike.correlation) > TIED;
    const profiled =
      tied && evaluations.used() + 3 <= mostRuns ? await profileSd(at, posterior, i, costsAt) : 0;
    const widest = Math.max(posterior.sd[i]!, spread[i]!, profiled, leastSd(adjustable));
    const told = widest > UNTOLD ? 'no' : tied ? 'together' : 'yes';
    // What is not told is as uncertain as before.
    const sd = told === 'no' ? 1 : widest;
    const end = (sign: number) => valueAt(adjustable, at[i]! + sign * TWO_SIDED * sd);
    fitted.push({
      adjustable,
      place: at[i]!,
      value: valueAt(adjustable, at[i]!),
      low: end(-1),
      high: end(1),
      left: sd,
      told,
      mostLike,
    });
  }
  return fitted;
}

interface Derivatives {
  readonly columns: readonly Float64Array[];
  readonly residuals: Float64Array;
}

function likest(
  correlations: readonly number[],
  own: number,
  adjustables: readonly Adjustable[],
): FittedParameter['mostLike'] {
  let best: FittedParameter['mostLike'] = null;
  correlations.forEach((correlation, j) => {
    if (j === own || Math.abs(correlation) <= Math.abs(best?.correlation ?? 0)) return;
    best = { name: adjustables[j]!.name, correlation };
  });
  return best;
}

/** Places to search from besides the first, within a standard deviation of the prior's centre, always the same. */
function startsOf(parameters: number, count: number): number[][] {
  const random = seededRandom(SEED);
  return Array.from({ length: count }, () =>
    Array.from({ length: parameters }, () => 2 * random() - 1),
  );
}

/** Searches from different places. */
const STARTS = 2;
/** Places that are taken for the same. [prior standard deviations] */
const AGREE = 0.3;
/** Step of the numerical derivative. [prior standard deviations] */
const STEP = 0.1;
/** Correlation from which two parameters are told only together. */
const TIED = 0.9;
/** Part of the prior's standard deviation above which the log tells nothing. */
const UNTOLD = 0.8;
const SEED = 1;
