import { type Random, standardNormal } from '../../units/seeded-random.ts';

/**
 * Normal random numbers, mean 0 and standard deviation 1, of which each keeps a part of the one
 * before: a first-order autoregressive series that closes on itself.
 *
 * The same draws are run through twice, so that the end leads into the start; what is left of the
 * beginning then is persistence to the power of the length.
 *
 * @param count  how many
 * @param persistence  correlation of neighbours, -1 to 1, both excluded
 */
export function persistentSeries(random: Random, count: number, persistence: number): Float64Array {
  const fresh = Math.sqrt(1 - persistence * persistence);
  const draws = Float64Array.from({ length: count }, () => standardNormal(random));
  const series = new Float64Array(count);
  let value = 0;
  for (let round = 0; round < 2; round++) {
    for (let k = 0; k < count; k++) {
      value = persistence * value + fresh * draws[k]!;
      series[k] = value;
    }
  }
  return series;
}
