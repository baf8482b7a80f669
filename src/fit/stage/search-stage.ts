import { type Minimum, minimise } from '../search/gauss-newton.ts';
import type { Channel } from '../simulate/channel.ts';
import type { ErrorForm } from '../statistics/error-form.ts';
import { type Autocorrelation, autocorrelationOf, weigh } from '../statistics/whitening.ts';
import type { Evaluations, Residuals } from './evaluations.ts';

/** Hours of a log that count, the first and the one behind the last. */
export interface Hours {
  readonly from: number;
  readonly to: number;
}

/** Where a search ended, with the weights it ended with. */
export interface Searched {
  readonly minimum: Minimum;
  /** One a channel. */
  readonly weights: readonly Autocorrelation[];
  readonly residuals: Residuals;
}

/** What a search is for. */
export interface Search {
  readonly channels: readonly Channel[];
  readonly form: ErrorForm;
  readonly hours: Hours;
  /** Whether the start is near the minimum, so that its residuals show how errors hang together. */
  readonly near: boolean;
}

/**
 * Search with one form of the error. How residuals hang together is taken from the residuals where a
 * round begins, and rounds follow until the place stays.
 *
 * @param most  runs that may have been made when it ends, those before it included
 */
export async function searchStage(
  evaluations: Evaluations,
  { channels, form, hours, near }: Search,
  start: readonly number[],
  most: number,
): Promise<Searched | null> {
  let place = start;
  let found: Searched | null = null;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const [here = null] = await evaluations.ask([place]);
    if (here === null) return found;
    const far = round === 0 && !near;
    const weights = far ? usualWeights(channels) : weightsOf(channels, here, hours, form);
    const minimum = await minimise({
      start: place,
      residuals: async (places) =>
        (await evaluations.ask(places)).map((each) =>
          each === null ? null : weighted(each, weights, form, hours),
        ),
      derivativeStep: DERIVATIVE_STEP,
      mostIterations: far ? FEW_ITERATIONS : MOST_ITERATIONS,
      budget: () => most - evaluations.used(),
    });
    if (minimum === null) return found;
    const [residuals] = await evaluations.ask([minimum.at]);
    const moved = Math.max(...minimum.at.map((z, k) => Math.abs(z - place[k]!)));
    place = minimum.at;
    found = { minimum, weights, residuals: residuals! };
    if ((!far && moved < STAYS) || evaluations.used() >= most) break;
  }
  return found;
}

/** What to expect of errors before any is seen: some times what sensors are good for, slow to change. */
const usualWeights = (channels: readonly Channel[]): Autocorrelation[] =>
  channels.map(({ floor }) => ({ rho: 0.95, sd: 6 * floor }));

export const weightsOf = (
  channels: readonly Channel[],
  residuals: Residuals,
  { from, to }: Hours,
  form: ErrorForm = 'free run',
): Autocorrelation[] =>
  channels.map(({ floor }, c) => autocorrelationOf(residuals[c]!.subarray(from, to), floor, form));

/** Residuals of all channels within some hours, weighted, one channel behind the other. */
export function weighted(
  residuals: Residuals,
  weights: readonly Autocorrelation[],
  form: ErrorForm,
  { from, to }: Hours,
): Float64Array {
  const length = to - from;
  const all = new Float64Array(residuals.length * length);
  residuals.forEach((each, c) => {
    const into = all.subarray(c * length, (c + 1) * length);
    weigh(form, each.subarray(from, to), weights[c]!, into);
  });
  return all;
}

const MOST_ROUNDS = 2;
const MOST_ITERATIONS = 25;
/** Towards a minimum whose weights will change. */
const FEW_ITERATIONS = 4;
/** Wide enough that a thermostat that switches one step sooner does not decide it. [prior standard deviations] */
const DERIVATIVE_STEP = 0.15;
/** [prior standard deviations] */
const STAYS = 0.1;
