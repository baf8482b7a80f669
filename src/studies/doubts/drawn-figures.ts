/** One draw of all doubtful inputs: every plan in the time step of the draws, and in its own. */
export interface DrawnPlans<Plan> {
  readonly runs: readonly Plan[];
  /** Null where only the step of the draws was run. */
  readonly own: readonly Plan[] | null;
}

/**
 * A figure of one plan in each draw: as its own step gives it where it was run in it too, otherwise
 * times the ratio of what those draws come to in either step. So hours never fall below nought.
 *
 * @param p  number of the plan
 */
export const drawnFigures = <Plan>(
  draws: readonly DrawnPlans<Plan>[],
  p: number,
  figure: (plan: Plan) => number,
): number[] => corrected(draws, (plans) => figure(plans[p]!), ratioOf);

/**
 * What a plan adds to a figure of the first in each draw, where its own step did not tell it times the
 * slope of the straight line through nought that fits those best that were run in either step. Longer
 * steps do most to what plans do for minutes, so that the difference of corrected figures would be
 * corrected by the wrong amount; and plans that are alike in a draw stay so.
 *
 * @param p  number of the plan
 */
export const drawnDifferences = <Plan>(
  draws: readonly DrawnPlans<Plan>[],
  p: number,
  figure: (plan: Plan) => number,
): number[] => corrected(draws, (plans) => figure(plans[p]!) - figure(plans[0]!), slopeOf);

/** A figure in both steps. */
interface Pair {
  readonly own: number;
  readonly longer: number;
}

/** Each draw's figure in the plans' own step, or in the longer one times what the draws in both come to. */
function corrected<Plan>(
  draws: readonly DrawnPlans<Plan>[],
  figure: (plans: readonly Plan[]) => number,
  factorOf: (pairs: readonly Pair[]) => number,
): number[] {
  const pairs = draws.flatMap(({ runs, own }): Pair[] =>
    own === null ? [] : [{ own: figure(own), longer: figure(runs) }],
  );
  const factor = factorOf(pairs);
  return draws.map(({ runs, own }) => (own === null ? factor * figure(runs) : figure(own)));
}

function ratioOf(pairs: readonly Pair[]): number {
  const own = pairs.reduce((sum, pair) => sum + pair.own, 0);
  const longer = pairs.reduce((sum, pair) => sum + pair.longer, 0);
  return longer > 0 ? own / longer : 1;
}

function slopeOf(pairs: readonly Pair[]): number {
  const both = pairs.reduce((sum, { own, longer }) => sum + own * longer, 0);
  const squares = pairs.reduce((sum, { longer }) => sum + longer ** 2, 0);
  // Where the steps do not even agree on the sign, there is nothing to correct by.
  return both > 0 ? Math.min(MOST, Math.max(1 / MOST, both / squares)) : 1;
}

/**
 * Of a slope, either way: what the few draws that are run in both steps say beyond it they say of next to
 * nothing, which others would be multiplied by. On the demonstration homes slopes are 0.6 to 2. [-]
 */
const MOST = 3;
