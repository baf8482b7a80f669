import type { Posterior } from './posterior.ts';

/**
 * Standard deviation of one parameter by its profile likelihood: the cost at 1.96 standard deviations to
 * either side, the other parameters moved along as their correlation says. On a quadratic cost it rises
 * by 1.92 there; where it rises less, the range is as much wider as a parabola through the found rise
 * says. The wider side counts.
 *
 * @param at       the minimum
 * @param costsAt  half sums of squares with the prior at some places; null where they cannot be run
 */
export async function profileSd(
  at: readonly number[],
  { sd, correlation }: Posterior,
  i: number,
  costsAt: (places: readonly (readonly number[])[]) => Promise<readonly (number | null)[]>,
): Promise<number> {
  const along = (sign: number) =>
    at.map((z, j) => z + sign * TWO_SIDED * correlation[i]![j]! * sd[j]!);
  const [least = null, ...sides] = await costsAt([at, along(-1), along(1)]);
  if (least === null) return sd[i]!;
  const widths = sides.map((cost) => {
    if (cost === null) return 1;
    const rise = (cost - least) / (0.5 * TWO_SIDED ** 2);
    return 1 / Math.sqrt(Math.max(rise, FLATTEST));
  });
  return sd[i]! * Math.max(...widths);
}

const TWO_SIDED = 1.96;
/** Least rise, over that of the parabola, that is told from none. */
const FLATTEST = 0.0625;
