/**
 * Heat of one batch of wood at one moment, of which `stoveHeatOver` is the mean over an interval.
 *
 * @param since  the wood was laid on [s]; nothing burns before 0 or after the interval
 * @returns heat [W]; other parameters as of stoveHeatOver
 */
export function stoveHeat(
  batch: number,
  energy: number,
  efficiency: number,
  interval: number,
  since: number,
): number {
  const x = since / interval;
  if (x < 0 || x > 1) return 0;
  const mean = (batch * energy * efficiency) / interval;
  return mean * (0.3 + 0.7 * 12 * x * (1 - x) ** 2);
}
