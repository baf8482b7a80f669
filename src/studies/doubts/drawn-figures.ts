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
export function drawnFigures<Plan>(
  draws: readonly DrawnPlans<Plan>[],
  p: number,
  figure: (plan: Plan) => number,
): number[] {
  let own = 0;
  let longer = 0;
  for (const draw of draws) {
    if (draw.own === null) continue;
    own += figure(draw.own[p]!);
    longer += figure(draw.runs[p]!);
  }
  const ratio = longer > 0 ? own / longer : 1;
  return draws.map((draw) =>
    draw.own === null ? ratio * figure(draw.runs[p]!) : figure(draw.own[p]!),
  );
}

/**
 * What a plan adds to a figure of the first in each draw, where its own step did not tell it times the
 * slope of the straight line through nought that fits those best that were run in either step. Longer
 * steps do most to what plans do for minutes, so that the difference of corrected figures would be
 * corrected by the wrong amount; and plans that are alike in a draw stay so.
 *
 * @param p  number of the plan
 */
export function drawnDifferences<Plan>(
  draws: readonly DrawnPlans<Plan>[],
  p: number,
  figure: (plan: Plan) => number,
): number[] {
  const added = (plans: readonly Plan[]) => figure(plans[p]!) - figure(plans[0]!);
  let both = 0;
  let squares = 0;
  for (const draw of draws) {
    if (draw.own === null) continue;
    const longer = added(draw.runs);
    both += added(draw.own) * longer;
    squares += longer ** 2;
  }
  // Where the steps do not even agree on the sign, there is nothing to correct by.
  const slope = both > 0 ? Math.min(MOST, Math.max(1 / MOST, both / squares)) : 1;
  return draws.map((draw) => (draw.own === null ? slope * added(draw.runs) : added(draw.own)));
}

/**
 * Of a slope, either way: what the few draws that are run in both steps say beyond it they say of next to
 * nothing, which others would be multiplied by. On the demonstration homes slopes are 0.6 to 2. [-]
 */
const MOST = 3;
