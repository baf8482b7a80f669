import { dot, information, solveSymmetric } from './posterior.ts';

/**
 * A model to be fitted. Parameters are in units of their prior standard deviation, 0 where the prior
 * has its centre, so that the prior is a standard normal one and every bound is behind a transformation.
 */
export interface Problem {
  /** Where the search begins; its length is the number of parameters. */
  readonly start: readonly number[];
  /**
   * Weighted residuals at several places, which may be worked out at one time: observed less modelled,
   * of unit variance; null where the model cannot be run.
   */
  residuals(places: readonly (readonly number[])[]): Promise<(Float64Array | null)[]>;
  /** Step of the numerical derivative. [prior standard deviations] */
  readonly derivativeStep: number;
  readonly mostIterations: number;
  /** Places that may still be asked for; the search ends before it would go beyond. */
  budget(): number;
}

/** Where the search ended. */
export interface Minimum {
  readonly at: readonly number[];
  /** Half the sum of squares of residuals and of parameters. */
  readonly cost: number;
  readonly residuals: Float64Array;
  /** Derivative of the modelled values (less the residuals') by each parameter, taken here or one short step away. */
  readonly columns: readonly Float64Array[];
  readonly iterations: number;
  readonly ended: 'converged' | 'budget' | 'iterations' | 'no better step';
}

/**
 * Maximum a posteriori by Gauss-Newton with Levenberg's damping.
 *
 * Each step solves (J'J + 1 + lambda diag(J'J + 1)) step = J'r - z. Damping falls after a step that
 * lowers the cost and rises after one that does not. Derivatives are forward differences, taken anew after
 * each step, unless the step came out as the linear model said: then they are kept, with Broyden's
 * update of rank one. The search ends when the cost falls by less than 1e-4 of itself.
 *
 * Source: Levenberg 1944, Marquardt 1963, Broyden 1965 (from memory).
 */
export async function minimise(problem: Problem): Promise<Minimum | null> {
  const { start, mostIterations } = problem;
  const [first = null] = await problem.residuals([start]);
  if (first === null) return null;
  let here: Place = { at: start, residuals: first, cost: costOf(start, first) };
  let columns: readonly Float64Array[] = await derivatives(problem, here);
  let fresh = true;
  let damping = FIRST_DAMPING;
  let ended: Minimum['ended'] = 'iterations';
  let iterations = 0;
  while (iterations < mostIterations) {
    if (problem.budget() < 1 + start.length) {
      ended = 'budget';
      break;
    }
    iterations++;
    const found = await dampedStep(problem, here, columns, damping);
    if (found === null) {
      if (fresh || problem.budget() < start.length) {
        ended = 'no better step';
        break;
      }
      columns = await derivatives(problem, here);
      fresh = true;
      continue;
    }
    const { next, asForeseen } = found;
    const gain = (here.cost - next.cost) / here.cost;
    damping = Math.max(LEAST_DAMPING, found.damping / 5);
    const before = here;
    here = next;
    // Only derivatives of this very place can tell that there is no lower one.
    if (gain < ENOUGH && fresh) {
      ended = 'converged';
      break;
    }
    fresh = (gain < ENOUGH || asForeseen < WELL_FORESEEN) && problem.budget() >= start.length;
    columns = fresh ? await derivatives(problem, here) : updated(columns, before, here);
  }
  return { ...here, columns, iterations, ended };
}

interface Place {
  readonly at: readonly number[];
  readonly residuals: Float64Array;
  readonly cost: number;
}

interface Step {
  readonly next: Place;
  readonly damping: number;
  /** Fall of the cost over what the linear model foresaw. */
  readonly asForeseen: number;
}

/** The first step of rising damping that lowers the cost; null where none does. */
async function dampedStep(
  problem: Problem,
  { at, residuals, cost }: Place,
  columns: readonly Float64Array[],
  firstDamping: number,
): Promise<Step | null> {
  const matrix = information(columns);
  const right = columns.map((column, i) => dot(column, residuals) - at[i]!);
  let damping = firstDamping;
  for (let tries = 0; tries < MOST_TRIES && problem.budget() > 0; tries++, damping *= 8) {
    const damped = matrix.clone();
    for (let i = 0; i < at.length; i++) damped.set(i, i, matrix.get(i, i) * (1 + damping));
    const step = solveSymmetric(damped, right).map((d) => clamp(d, LONGEST_STEP));
    const place = at.map((z, i) => clamp(z + step[i]!, FARTHEST));
    const [there = null] = await problem.residuals([place]);
    if (there === null) continue;
    const found = costOf(place, there);
    if (!(found < cost)) {
      if (cost - found > -ENOUGH * cost) return sameCost(place, there, found, damping);
      continue;
    }
    const foreseen = cost - linearCost(at, residuals, columns, place);
    const asForeseen = (cost - found) / Math.max(foreseen, 1e-12);
    return { next: { at: place, residuals: there, cost: found }, damping, asForeseen };
  }
  return null;
}

/** A step that changes next to nothing: the search is over there. */
const sameCost = (
  at: readonly number[],
  residuals: Float64Array,
  cost: number,
  damping: number,
): Step => ({ next: { at, residuals, cost }, damping, asForeseen: 1 });

/** Cost that the linear model gives at a place. */
function linearCost(
  from: readonly number[],
  residuals: Float64Array,
  columns: readonly Float64Array[],
  place: readonly number[],
): number {
  const there = Float64Array.from(residuals);
  columns.forEach((column, i) => {
    const step = place[i]! - from[i]!;
    for (let k = 0; k < there.length; k++) there[k] = there[k]! - column[k]! * step;
  });
  return costOf(place, there);
}

/** Forward differences, towards the prior's centre where the other side cannot be run. */
async function derivatives(problem: Problem, here: Place): Promise<Float64Array[]> {
  const h = problem.derivativeStep;
  const moved = (i: number, by: number) => here.at.map((z, j) => (i === j ? z + by : z));
  const signs = here.at.map((z) => (z > 0 ? -1 : 1));
  const there = await problem.residuals(signs.map((sign, i) => moved(i, sign * h)));
  const columns: Float64Array[] = [];
  for (const [i, found] of there.entries()) {
    let by = signs[i]! * h;
    let other = found;
    if (other === null) {
      by = -by;
      [other = null] = await problem.residuals([moved(i, by)]);
    }
    columns.push(
      other === null
        ? new Float64Array(here.residuals.length)
        : here.residuals.map((r, k) => (r - other[k]!) / by),
    );
  }
  return columns;
}

/** Broyden's update: the columns that agree with the last step and change least otherwise. */
function updated(
  columns: readonly Float64Array[],
  before: Place,
  after: Place,
): readonly Float64Array[] {
  const step = after.at.map((z, i) => z - before.at[i]!);
  const length = step.reduce((sum, d) => sum + d * d, 0);
  if (length === 0) return columns;
  const missed = before.residuals.map((r, k) => r - after.residuals[k]!);
  columns.forEach((column, i) => {
    for (let k = 0; k < missed.length; k++) missed[k] = missed[k]! - column[k]! * step[i]!;
  });
  return columns.map((column, i) => column.map((c, k) => c + (missed[k]! * step[i]!) / length));
}

export function costOf(at: readonly number[], residuals: Float64Array): number {
  return 0.5 * (dot(residuals, residuals) + at.reduce((sum, z) => sum + z * z, 0));
}

const clamp = (x: number, most: number): number => Math.min(most, Math.max(-most, x));

const ENOUGH = 1e-4;
const FIRST_DAMPING = 0.01;
const LEAST_DAMPING = 1e-6;
const MOST_TRIES = 5;
/** Of the cost's fall; above it the derivatives are good enough to go on with. */
const WELL_FORESEEN = 0.3;
/** [prior standard deviations] */
const LONGEST_STEP = 1.5;
const FARTHEST = 4;
